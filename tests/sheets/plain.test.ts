import { type PenFunction } from "../../src/sheets/evaluate";
import { plainExpression, plainForm } from "../../src/sheets/plain";
import { formulaText } from "../../src/sheets/formula";
import { parseFormula } from "../../src/sheets/parse";
import { styles } from "../../src/sheets/styles";
import { type CellData, type SheetData } from "../../src/sheets/workbook-content";
import { type Cell } from "../../src/units/cell";

const functions: Record<string, PenFunction> = {
  AREA: (diameter) => Number(diameter) ** 2,
  TEXT: () => `30' 4"`,
  NONE: () => ({ error: "#N/A", message: "gates alone need more" }),
  LOADS: () => [[2], [1]],
  TABLE: () => [["kind", true], [1.5, { error: "#N/A" }]],
}; // prettier-ignore
const pen = (name: string) => functions[name];

type Row = [value: Cell, formula?: string, more?: Partial<CellData>];

const sheet = (name: string, rows: Row[], more: Partial<SheetData> = {}): SheetData => ({
  name,
  cells: rows.map(([value, formula, other], row) => ({ row, column: 1, value, ...(formula ? { formula } : {}), ...other })),
  columns: [{ width: 8, hidden: true }, { width: 20 }],
  hiddenRows: [], heights: {}, frozenRows: 0, merges: [], pictures: [], ...more,
}); // prettier-ignore

const input: Partial<CellData> = {
  input: true,
  style: styles.inputNumber,
  accepts: { kind: "number", least: 20, most: 300, message: "20 to 300 ft" },
};
const fixedPlaces = (...sheets: SheetData[]) =>
  plainForm({ sheets }, pen).fixed.map(({ sheet, row }) => `${sheet} ${row}`).sort(); // prettier-ignore

test("each call becomes its value as a literal, and what stands around it stays live", () => {
  const around = { cell: () => 6, pen };
  const cases = [
    ["=PEN.AREA(B1)*B2", "36*B2"],
    ["=IF(B2>0,B2,PEN.AREA(B1))", "IF(B2>0,B2,36)"],
    ['="Fence "&PEN.TEXT(B1)', `"Fence "&"30' 4"""`],
    ["=IFERROR(PEN.NONE(B1),B2)", "IFERROR(#N/A,B2)"],
    ["=INDEX(PEN.LOADS(B1),2)", "1"],
    ["=INDEX(PEN.LOADS(B1),ROWS(B$1:B2))", "1"],
    ["=INDEX(PEN.LOADS(B1),B2)", "INDEX({2;1},B2)"],
    ["=SUM(PEN.TABLE(B1),B2)", 'SUM({"kind",TRUE;1.5,#N/A},B2)'],
    ["=PEN.AREA(PEN.AREA(B1))", "1296"],
    ["=SUM(A:A)+PEN.AREA(B1)", "SUM(A:A)+36"],
    ["=B1+B2", "B1+B2"],
    ["=-PEN.AREA(B1)%", "-36%"],
  ];
  for (const [live, plain] of cases)
    expect(formulaText(plainExpression(parseFormula(live), around))).toBe(plain);
});

test("an input that leads to a frozen figure is fixed: no input look, no validation, a note", () => {
  const { content, fixed } = plainForm({ sheets: [sheet("Job", [[60, undefined, input], [3600, "=PEN.AREA(B1)"], [4, undefined, input], [14400, "=B2*B3"]])] }, pen); // prettier-ignore
  const [diameter, area, price, amount] = content.sheets[0].cells;
  expect(fixed.map(({ row }) => row)).toEqual([0]);
  expect(diameter).toEqual({ row: 0, column: 1, value: 60, style: { ...styles.fixed, format: styles.inputNumber.format, align: "right" }, note: expect.stringMatching(/^Fixed in this copy/) }); // prettier-ignore
  expect(area).toEqual({ row: 1, column: 1, value: 3600 });
  expect(price).toMatchObject(input);
  expect(amount).toMatchObject({ value: 14400, formula: "=B2*B3" });
});

test("inputs are found through formulas, ranges and other sheets, and only those", () => {
  const job = sheet("Job", [[60], ["=B1+'Price list'!B1", "=B1+'price list'!B1"], [1, "=PEN.AREA(B2)"], [5], [5, "=B4"]]);
  const prices = sheet("Price list", [[2, "=SUM(B2:B3)"], [1], [1], [9]]);
  expect(fixedPlaces(job, prices)).toEqual(["Job 0", "Price list 1", "Price list 2"]);
}); // prettier-ignore

test("a switch beside a call stays live, since both its answers are true", () => {
  expect(fixedPlaces(sheet("Job", [[60], [0], [3600, "=IF(B2>0,B2,PEN.AREA(B1))"]]))).toEqual(["Job 0"]);
});

test("a blank input inside a range that a call looked at is fixed too", () => {
  expect(fixedPlaces(sheet("Job", [[60], [null, undefined, input], [2, "=INDEX(PEN.LOADS(B1:B2),1)"]]))).toEqual(["Job 0", "Job 1"]); // prettier-ignore
});

test("where a term cannot be worked out the cell becomes what it shows, and all it looks at is fixed", () => {
  const { content, fixed } = plainForm({ sheets: [sheet("Job", [[60], [2], [7, "=B2*PEN.AREA(VLOOKUP(B1,B1:B1,1))"]])] }, pen); // prettier-ignore
  expect(content.sheets[0].cells[2]).toEqual({ row: 2, column: 1, value: 7 });
  expect(fixed.map(({ row }) => row)).toEqual([0, 1]);
});

test("whole columns and rows lead to the cells in them", () => {
  expect(fixedPlaces(sheet("Job", [[60], [2], [7, "=PEN.AREA(SUM(Prices!$B:B))"]]), sheet("Prices", [[1], [2]]))).toEqual(["Prices 0", "Prices 1"]); // prettier-ignore
  expect(fixedPlaces(sheet("Job", [[60], [2], [7, "=PEN.AREA(MAX(2:2))"]]))).toEqual(["Job 1"]);
});

test("where only the spreadsheet knows what a frozen figure looks at, every number and input is fixed", () => {
  const prices = sheet("Prices", [["Panel"], [94], [null, undefined, input]]);
  for (const formula of ["=PEN.AREA(Diameter)", '=PEN.AREA(INDIRECT("B1"))', "=PEN.AREA(B1"])
    expect(fixedPlaces(sheet("Job", [["Label"], [7, formula]]), prices)).toEqual(["Prices 1", "Prices 2"]);
});

test("no function of the add-in is left, also where a file stored it under its longer name", () => {
  const rows: Row[] = [[60], [3600, "=_xldudf_PEN_AREA(B1)"], [1, "=pen.area(B1"], [2, '="PEN.AREA("']];
  const [, stored, broken, text] = plainForm({ sheets: [sheet("Job", rows)] }, pen).content.sheets[0].cells;
  expect([stored.formula, stored.value]).toEqual([undefined, 3600]);
  expect([broken.formula, broken.value]).toEqual([undefined, 1]);
  expect(text.formula).toBe('="PEN.AREA("');
});

test("keys stay, and a line below the sheet says how many cells are fixed, below what is printed", () => {
  const print = { area: { top: 0, left: 1, bottom: 2, right: 4 }, landscape: false, pages: { wide: 1, tall: 1 }, repeatRows: 0, footer: "" }; // prettier-ignore
  const job = sheet("Job", [[60], [3600, "=PEN.AREA(B1)"]], { print });
  job.cells.push({ row: 0, column: 0, value: "penstake estimate 1" });
  const before = structuredClone(job);
  const { content } = plainForm({ sheets: [job, sheet("Other", [[1]])], activeSheet: "Job" }, pen);
  const [first, second] = content.sheets;
  expect(job).toEqual(before);
  expect(content.activeSheet).toBe("Job");
  expect(first.cells).toContainEqual({ row: 0, column: 0, value: "penstake estimate 1" });
  expect(first.cells.at(-1)).toMatchObject({ row: 4, column: 1, value: expect.stringMatching(/^Plain copy.*1 cell that leads to them is fixed/) }); // prettier-ignore
  expect(first.print).toEqual(print);
  expect(second.cells).toHaveLength(1);
});
