import { type Page } from "playwright-core";
import { type FilledCell, type RewrittenCell } from "../../../src/hosts/host";
import { cell, operate, pen, text } from "../../../src/sheets/expression";
import { messages } from "../../../src/sheets/messages";
import { type SheetData } from "../../../src/sheets/workbook-content";
import { describeInBrowser, forOneUser } from "./page";
import { samplePlan } from "./sample-plan";

const read = (page: Page, sheets: string[]) =>
  page.evaluate((names) => window.penstake.host.read(names), sheets);
const fillCopy = (page: Page, sheet: string, name: string, cells: FilledCell[]) =>
  page.evaluate(([from, to, given]) => window.penstake.host.fillCopy(from, to, given), [sheet, name, cells] as const); // prettier-ignore
const rewrite = (page: Page, sheet: string, cells: RewrittenCell[]) =>
  page.evaluate(([name, given]) => window.penstake.host.rewrite(name, given), [sheet, cells] as const);
const undo = (page: Page) =>
  page.evaluate(async () => {
    await window.penstake.workbook.grid.undo();
    await window.penstake.workbook.recalculate();
  });
const names = (page: Page) => page.evaluate(async () => (await window.penstake.host.look()).sheetNames);
const data = async (page: Page, name: string): Promise<SheetData> => {
  const { sheets } = await page.evaluate(() => window.penstake.workbook.snapshot());
  return sheets.find((sheet) => sheet.name === name)!;
};
const cellAt = ({ cells }: SheetData, row: number, column: number) =>
  cells.find((one) => one.row === row && one.column === column);

describeInBrowser("copies and rewritten cells in the browser workbook", () => {
  let page: Page;
  forOneUser(async (opened) => {
    page = opened;
    await page.evaluate((given) => window.penstake.host.write([given]), samplePlan("Sample"));
  });

  test("several sheets are read at once, in the order asked for, and a name that none has is refused", async () => {
    const [first] = await read(page, ["Sample"]);
    expect([first.name, first.values[3][2], first.formulas[5][2]]).toEqual(["Sample", 72, "=PEN.CIRCUMFERENCE(C4)"]); // prettier-ignore
    const all = await read(page, (await names(page)).reverse());
    expect(all.map(({ name }) => name)).toEqual((await names(page)).reverse());
    await expect(read(page, ["Sample", "Gone"])).rejects.toThrow('no sheet "Gone"');
  });

  test("a copy has all that its sheet has, and what was filled in", async () => {
    const before = await data(page, "Sample");
    const place = { sheet: "Sample", row: 5, column: 2 };
    const lost = await fillCopy(page, "Sample", "Filled", [
      { row: 8, column: 1, says: text("Pen of ", cell(place), " ft") },
      { row: 1, column: 1, says: "=1+1" },
      { row: 9, column: 3, says: 4 },
      { row: 2, column: 3, says: null },
    ]);
    expect(lost).toEqual([]);
    expect(await page.evaluate(async () => (await window.penstake.host.look()).active.name)).toBe("Filled");
    const after = await data(page, "Filled");
    expect(await data(page, "Sample")).toEqual(before);
    expect(cellAt(after, 8, 1)).toMatchObject({ formula: `="Pen of "&Sample!C6&" ft"` });
    expect(cellAt(after, 8, 1)?.value).toMatch(/^Pen of 226\.19\d+ ft$/);
    expect([cellAt(after, 1, 1)?.value, cellAt(after, 1, 1)?.formula]).toEqual(["=1+1", undefined]);
    expect([cellAt(after, 9, 3)?.value, cellAt(after, 2, 3)?.value]).toEqual([4, null]);
    const rest = ({ cells, ...sheet }: SheetData) => ({
      ...sheet,
      name: "",
      cells: cells.filter(({ row, column }) => ![[8, 1], [1, 1], [9, 3], [2, 3]].some(([r, c]) => r === row && c === column)),
    }); // prettier-ignore
    expect(rest(after)).toEqual(rest(before));
    expect(after.pictures).toHaveLength(1);
  });

  test("a copy is undone whole, and refused where its name is taken", async () => {
    const before = await names(page);
    await fillCopy(page, "Sample", "Undone", [{ row: 3, column: 2, says: 50 }]);
    await undo(page);
    expect(await names(page)).toEqual(before);
    await expect(fillCopy(page, "Sample", "FILLED", [])).rejects.toThrow('already a sheet "FILLED"');
    await expect(fillCopy(page, "Sample", "a/b", [])).rejects.toThrow('"a/b" cannot name a sheet');
    await expect(fillCopy(page, "Gone", "New", [])).rejects.toThrow('no sheet "Gone"');
    await expect(fillCopy(page, "Sample", "New", [{ row: -1, column: 0, says: 1 }])).rejects.toThrow('"New" could not be written'); // prettier-ignore
    expect(await names(page)).toEqual(before);
  });

  test("cells are rewritten and marked in one step, which undo takes back", async () => {
    const before = await data(page, "Sample");
    await rewrite(page, "Sample", [
      { row: 5, column: 2, says: 226.2 },
      { row: 3, column: 2, says: 72, style: "fixed" },
      { row: 4, column: 2, says: "nearest", style: "fixed" },
      { row: 7, column: 2, says: operate(pen("AREA", cell({ row: 3, column: 2 })), "*", 2) },
    ]);
    const after = await data(page, "Sample");
    expect(cellAt(after, 5, 2)).toEqual({ ...cellAt(before, 5, 2)!, value: 226.2, formula: undefined });
    const fixed = cellAt(after, 3, 2)!;
    expect([fixed.value, fixed.note, fixed.input, fixed.accepts]).toEqual([72, messages.fixedInCopy, undefined, undefined]); // prettier-ignore
    expect([fixed.style?.fill, fixed.style?.line, fixed.style?.align]).toEqual([undefined, undefined, "right"]); // prettier-ignore
    expect(cellAt(after, 7, 2)?.formula).toBe("=PEN.AREA(C4)*2");
    expect(cellAt(after, 9, 4)?.value).toBeCloseTo(452.4);
    await undo(page);
    expect(await data(page, "Sample")).toEqual(before);
  });

  test("a mark is taken away again where a cell is to live", async () => {
    await rewrite(page, "Sample", [{ row: 4, column: 2, says: "nearest", style: "fixed" }]);
    await rewrite(page, "Sample", [{ row: 4, column: 2, says: "at least", style: "live" }]);
    const found = cellAt(await data(page, "Sample"), 4, 2)!;
    expect([found.value, found.note]).toEqual(["at least", undefined]);
    await undo(page);
    await undo(page);
  });

  test("a rewrite of which one cell fails leaves the sheet and the steps of undo as they were", async () => {
    const before = await data(page, "Sample");
    const broken = { row: -1, column: 0, says: 1 };
    for (const cells of [[{ row: 3, column: 2, says: 99 }, broken], [broken]])
      await expect(rewrite(page, "Sample", cells)).rejects.toThrow("could not be written");
    expect(await data(page, "Sample")).toEqual(before);
  });

  test("cells of several sheets are rewritten in one step, which undo takes back, and all or none", async () => {
    await fillCopy(page, "Sample", "Second", []);
    const both = async () => [await data(page, "Sample"), await data(page, "Second")];
    const before = await both();
    const cells: RewrittenCell[] = [
      { row: 3, column: 2, says: 50 },
      { row: 3, column: 2, says: 60, style: "fixed", sheet: "Second" },
      { row: 7, column: 2, says: pen("AREA", cell({ sheet: "Sample", row: 3, column: 2 })), sheet: "Second" },
    ];
    await rewrite(page, "Sample", cells);
    const [first, second] = await both();
    expect([cellAt(first, 3, 2)?.value, cellAt(first, 3, 2)?.note]).toEqual([50, undefined]);
    expect([cellAt(second, 3, 2)?.value, cellAt(second, 3, 2)?.note]).toEqual([60, messages.fixedInCopy]);
    expect(cellAt(second, 7, 2)?.value).toBeCloseTo(Math.PI * 625);
    await undo(page);
    expect(await both()).toEqual(before);
    await expect(rewrite(page, "Sample", [...cells, { row: -1, column: 0, says: 1, sheet: "Second" }])).rejects.toThrow('"Second" could not be written');
    await expect(rewrite(page, "Sample", [...cells, { row: 0, column: 0, says: 1, sheet: "Gone" }])).rejects.toThrow('no sheet "Gone"');
    expect(await both()).toEqual(before);
  });
}); // prettier-ignore
