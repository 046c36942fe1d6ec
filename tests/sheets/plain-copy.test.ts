import { calls } from "../../functions/calls";
import { messages } from "../../src/sheets/messages";
import { nameErrors, plainCopy } from "../../src/sheets/plain-copy";
import { styles } from "../../src/sheets/styles";
import { type CellData, type SheetData, type WorkbookContent } from "../../src/sheets/workbook-content";

const pen = (name: string) => calls[name];
const at = (row: number, column: number, value: CellData["value"], more: Partial<CellData> = {}): CellData => ({ row, column, value, ...more }); // prettier-ignore
const sheet = (name: string, cells: CellData[]): SheetData => ({
  name,
  cells,
  columns: [{ width: 8, hidden: true }, { width: 20 }, { width: 10 }, { width: 10, hidden: true }],
  hiddenRows: [0],
  heights: {},
  frozenRows: 0,
  merges: [],
  pictures: [],
});

/** An invented job: an estimate with its prices, a bid that points at them, and a list of the user's own. */
const book: WorkbookContent = {
  activeSheet: "Estimate",
  sheets: [
    sheet("Estimate", [
      at(0, 0, "penstake estimate 1"),
      at(0, 2, "value"),
      at(1, 0, "value=size"),
      at(1, 2, 50, { input: true, style: styles.inputNumber }),
      at(2, 0, "value=area"),
      at(2, 2, 1963.5, { formula: "=PEN.AREA(C2)" }),
      at(3, 2, 4242.42, { formula: "=C3*Prices!C2" }),
      at(4, 3, 17.17, { note: "markup" }),
    ]),
    sheet("Prices", [at(0, 0, "penstake prices 1"), at(1, 0, "sand"), at(1, 2, 2.16, { input: true })]),
    sheet("Bid", [
      at(0, 0, "penstake bid 1"),
      at(1, 0, "value=price"),
      at(1, 1, "Price", { note: "=Estimate!C4 less 17.17 markup" }),
      at(1, 2, 4242.42, { formula: "=Estimate!C4" }),
      at(2, 2, 8484.84, { formula: "=C2*2" }),
      at(3, 1, "up to date", { formula: '=IF(D5=Estimate!C2,"up to date","OUT OF DATE")' }),
      at(4, 3, 50),
    ]),
    sheet("My list", [at(0, 0, "mine"), at(1, 2, 5, { formula: "=Budget*2", note: "my note" }), at(1, 3, 3)]),
  ],
};
const copyOf = (sheets: string[], keepKeys = false) => plainCopy(book, pen, { sheets, keepKeys });
const found = (copy: WorkbookContent, name: string, row: number, column: number) =>
  copy.sheets.find((one) => one.name === name)?.cells.find((cell) => cell.row === row && cell.column === column); // prettier-ignore

test("a document alone holds nothing of the sheets that stay behind, no key, no hidden cell and no note", () => {
  const copy = copyOf(["Bid"]);
  expect(copy.sheets.map(({ name }) => name)).toEqual(["Bid"]);
  expect(copy.activeSheet).toBe("Bid");
  const text = JSON.stringify(copy);
  for (const secret of ["Estimate", "Prices", "penstake", "value=price", "markup", "17.17", "2.16", "PEN."])
    expect([secret, text.includes(secret)]).toEqual([secret, false]);
  expect(found(copy, "Bid", 1, 2)).toEqual({ row: 1, column: 2, value: 4242.42 });
  expect(found(copy, "Bid", 2, 2)?.formula).toBe("=C2*2");
  expect(found(copy, "Bid", 3, 1)).toEqual({ row: 3, column: 1, value: "up to date" });
});

test("what points at a sheet that comes along stays live", () => {
  const copy = copyOf(["Estimate", "Prices", "Bid"], true);
  expect(found(copy, "Bid", 1, 2)?.formula).toBe("=Estimate!C4");
  expect(found(copy, "Estimate", 3, 2)?.formula).toBe("=C3*Prices!C2");
  expect(found(copy, "Estimate", 2, 2)).toEqual({ row: 2, column: 2, value: 625 * Math.PI });
});

test("an estimate keeps its keys only where it is to be made live again, and a bid never does", () => {
  const kept = copyOf(["Estimate", "Bid"], true);
  expect(found(kept, "Estimate", 1, 0)?.value).toBe("value=size");
  expect(found(kept, "Bid", 1, 0)).toBeUndefined();
  const bare = copyOf(["Estimate", "Bid"]);
  expect(bare.sheets.flatMap(({ cells }) => cells).filter(({ column }) => column === 0 || column === 3)).toEqual([]); // prettier-ignore
});

test("an input from which a fixed figure can be reached is fixed and says so; where its price stays behind, so is the size beside it", () => {
  const copy = copyOf(["Estimate"], true);
  expect(found(copy, "Estimate", 1, 2)).toMatchObject({ value: 50, note: messages.fixedInCopy });
  expect(found(copy, "Estimate", 1, 2)).not.toHaveProperty("input");
  expect(found(copy, "Estimate", 3, 2)).toEqual({ row: 3, column: 2, value: 4242.42 });
});

test("a sheet of the user's own keeps hidden cells and notes, but no name that a copy would not know", () => {
  const copy = copyOf(["My list"]);
  expect(found(copy, "My list", 1, 2)).toEqual({ row: 1, column: 2, value: 5, note: "my note" });
  expect(found(copy, "My list", 1, 3)?.value).toBe(3);
  expect(found(copy, "My list", 0, 0)?.value).toBe("mine");
});

test("the workbook itself is not changed, and #NAME? in a copy is found", () => {
  const before = structuredClone(book);
  copyOf(["Bid"]);
  expect(book).toEqual(before);
  expect(nameErrors({ sheets: [sheet("My list", [at(1, 2, { error: "#NAME?" }), at(2, 2, "#NAME?")])] })).toEqual(["'My list'!C2"]); // prettier-ignore
});

test("what stands right of the pages of a document stays in the house; what was read from there stays as it was", () => {
  const print = { area: { top: 1, left: 1, bottom: 4, right: 2 } } as SheetData["print"];
  const sheets = book.sheets.map((one) =>
    one.name === "Bid"
      ? {
          ...one,
          print,
          columns: [...one.columns.slice(0, 3), { width: 10 }, { width: 10 }],
          cells: [...one.cells, at(2, 4, "Settle"), at(3, 2, 55, { formula: "=D5*1.1" })],
        }
      : one,
  );
  const [bid] = plainCopy({ ...book, sheets }, pen, { sheets: ["Bid"], keepKeys: false }).sheets;
  expect(Math.max(...bid.cells.map(({ column }) => column))).toBe(2);
  expect(bid.columns).toHaveLength(3);
  expect(bid.cells.find(({ row, column }) => row === 3 && column === 2)).toMatchObject({ value: 55 });
  expect(JSON.stringify(bid)).not.toMatch(/D5|Settle/);
});
