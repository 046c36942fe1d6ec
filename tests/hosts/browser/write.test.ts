import { type Page } from "playwright-core";
import { type CellChange } from "../../../src/hosts/host";
import { type SheetPlan } from "../../../src/sheets/plan";
import { type Cell } from "../../../src/units/cell";
import { describeInBrowser, forOneUser } from "./page";
import { samplePlan } from "./sample-plan";

const write = (page: Page, plans: SheetPlan[]) =>
  page.evaluate((given) => window.penstake.host.write(given), plans);
const look = (page: Page) => page.evaluate(() => window.penstake.host.look());
const update = (page: Page, sheet: string, changes: CellChange[]) =>
  page.evaluate(([name, given]) => window.penstake.host.update(name, given), [sheet, changes] as const);
const select = (page: Page, row: number, column: number) =>
  page.evaluate(
    ([r, c]) => void window.penstake.workbook.book.getActiveSheet().getRange(r, c).activate(),
    [row, column],
  );

describeInBrowser("a plan in the browser workbook", () => {
  let page: Page;
  forOneUser(async (opened) => {
    page = opened;
    await write(page, [samplePlan("Sample")]);
  });

  test("is shown once written, and its keyed cells are read back as they were planned", async () => {
    const { active, sheetNames } = await look(page);
    expect(sheetNames).toContain("Sample");
    expect(active.name).toBe("Sample");
    const keyed = Object.fromEntries(
      active.values.filter(([key]) => key !== null).map((row) => [row[0], row[2]]),
    );
    expect(keyed).toEqual({
      "sample key row": null,
      size: 72,
      fit: "nearest",
      around: expect.closeTo(72 * Math.PI, 9),
    });
  });

  test("has live formulas that the functions bundle computes", async () => {
    const { active } = await look(page);
    expect(active.formulas[5][2]).toBe("=PEN.CIRCUMFERENCE(C4)");
    expect(active.values[9][4]).toBeCloseTo(144 * Math.PI, 9);
    expect(active.values[6][2]).toBe("72'");
  });

  test("follows a changed input, and one step of undo takes the change back", async () => {
    await update(page, "Sample", [{ row: 3, column: 2, value: 60 }, { row: 4, column: 2, value: "at least" }]); // prettier-ignore
    const changed = await look(page);
    expect([changed.active.values[9][4], changed.active.values[4][2]]).toEqual([
      expect.closeTo(120 * Math.PI, 9),
      "at least",
    ]);
    await page.click("#undo");
    await page.waitForFunction(async () => (await window.penstake.host.look()).active.values[3][2] === 72);
    expect((await look(page)).active.values[4][2]).toBe("nearest");
  });

  test("keeps a text that starts with an equals sign as a text", async () => {
    await update(page, "Sample", [{ row: 12, column: 2, value: '=HYPERLINK("x")' }]);
    const { active } = await look(page);
    expect([active.values[8][1], active.formulas[8][1]]).toEqual(["=1+1", "=1+1"]);
    expect(active.values[12][2]).toBe('=HYPERLINK("x")');
    const stored = await page.evaluate(() =>
      window.penstake.workbook.book.getActiveSheet().getRange(12, 2).getFormula(),
    );
    expect(stored).toBe("");
  });

  test("says why a cell shows an error when that cell is selected, and nothing at another", async () => {
    await select(page, 7, 2);
    await page.waitForFunction(() =>
      document.querySelector("#why")!.textContent!.startsWith("C8 #VALUE! diameter_ft"),
    );
    await select(page, 3, 2);
    await page.waitForFunction(() => document.querySelector("#why")!.textContent === "");
  });

  test("says why at a cell that a result spills an error into", async () => {
    await page.evaluate(() => {
      const sheet = window.penstake.workbook.book.getActiveSheet();
      [40, { v: "abc", t: 1 }, 50].forEach((size, k) => void sheet.getRange(30 + k, 8).setValue(size));
      sheet.getRange(30, 9).setValue("=PEN.CIRCUMFERENCE(I31:I33)");
    });
    await page.waitForFunction(
      () => window.penstake.workbook.book.getActiveSheet().getRange(31, 9).getValue() === "#VALUE!",
    );
    await select(page, 31, 9);
    await page.waitForFunction(() =>
      document.querySelector("#why")!.textContent!.startsWith("J32 #VALUE! diameter_ft"),
    );
  });

  test("is refused where a sheet has its name in any capitals, or a name that no sheet can have", async () => {
    const before = (await look(page)).sheetNames;
    await expect(write(page, [samplePlan("Other"), samplePlan("SAMPLE")])).rejects.toThrow(
      'already a sheet "SAMPLE"',
    );
    await expect(write(page, [samplePlan("a/b")])).rejects.toThrow('"a/b" cannot name a sheet');
    expect((await look(page)).sheetNames).toEqual(before);
  });

  test("leaves the workbook as it was where one of its sheets cannot be written", async () => {
    const before = (await look(page)).sheetNames;
    const broken = { ...samplePlan("Second"), pictures: [{ ...samplePlan("").pictures[0], svg: "\uD800" }] };
    await expect(write(page, [samplePlan("First"), broken])).rejects.toThrow(
      'The sheet "Second" could not be written',
    );
    const after = await look(page);
    expect([after.sheetNames, after.active.name]).toEqual([before, "Sample"]);
  });

  test("is undone whole by one step", async () => {
    const before = (await look(page)).sheetNames;
    await write(page, [samplePlan("Undone")]);
    await page.click("#undo");
    await page.waitForFunction(
      (count) => window.penstake.workbook.book.getNumSheets() === count,
      before.length,
    );
    expect((await look(page)).sheetNames).toEqual(before);
  });

  test("takes a formula into an empty selected cell and refuses one that holds something, with its address", async () => {
    await page.evaluate(() => window.penstake.host.show("Sample"));
    await select(page, 20, 6);
    const put = (formula: string) =>
      page.evaluate((given) => window.penstake.host.putFormula(given), formula);
    expect(await put("=PEN.CIRCUMFERENCE(10)")).toEqual({ sheet: "Sample", address: "G21" });
    expect((await look(page)).active.values[20][6]).toBeCloseTo(10 * Math.PI, 9);
    await expect(put("=1")).rejects.toThrow("G21 holds something");
  });

  test("adds rows below what a sheet holds and touches nothing else", async () => {
    const before = (await look(page)).active.values;
    const rows: Cell[][] = [
      ["=note", 1],
      [null, true],
    ];
    await page.evaluate((given) => window.penstake.host.append("Sample", given), rows);
    const { values } = (await look(page)).active;
    expect(values.slice(0, before.length)).toEqual(before);
    expect(values.slice(before.length).map((row) => row.slice(0, 2))).toEqual(rows);
  });

  test("keeps an input to what it accepts when a person types", async () => {
    await page.mouse.click(500, 600);
    await select(page, 3, 2);
    await page.keyboard.type("9999");
    await page.keyboard.press("Enter");
    await page.getByText("Write feet from 10 to 400.").first().waitFor();
    await page.keyboard.press("Escape");
    expect((await look(page)).active.values[3][2]).toBe(72);
  });
});
