import { readFile } from "node:fs/promises";
import { type Page } from "playwright-core";
import { readXlsx, writeXlsx } from "../../../src/hosts/xlsx/xlsx";
import { contentOfPlan, type SheetData } from "../../../src/sheets/workbook-content";
import { expression } from "../../../src/sheets/expression";
import { describeInBrowser, forOneUser } from "./page";
import { samplePlan } from "./sample-plan";

const words = "Pen of {size} with {panels} panels";
/** A sheet with merged cells, a picture, widths and a print set-up, and fields in braces in two of its cells. */
const letter = () => {
  const plan = samplePlan("Letter");
  return {
    ...plan,
    cells: plan.cells.map((cell) =>
      cell.row === 8 && cell.column === 1
        ? { ...cell, says: expression(words), across: 3 }
        : cell.row === 9 && cell.column === 1
          ? { ...cell, says: expression("{total}") }
          : cell,
    ),
  };
};
/** A picture of one dot. */
const dot = Buffer.from("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==", "base64"); // prettier-ignore

const sheetOf = async (page: Page, name: string): Promise<SheetData> => {
  const { sheets } = await page.evaluate(() => window.penstake.workbook.snapshot());
  return sheets.find((sheet) => sheet.name === name)!;
};
const cellAt = ({ cells }: SheetData, row: number, column: number) =>
  cells.find((one) => one.row === row && one.column === column);
const names = (page: Page) => page.evaluate(async () => (await window.penstake.host.look()).sheetNames);
const formed = ({ columns, merges, print, heights, hiddenRows, pictures }: SheetData) => ({ columns, merges, print, heights, hiddenRows, pictures }); // prettier-ignore

describeInBrowser("templates of one's own in the browser workbook", () => {
  let page: Page;
  forOneUser(async (opened) => {
    page = opened;
    await page.evaluate((plan) => window.penstake.host.write([plan]), letter());
    await page.locator("summary", { hasText: "Your own templates" }).click();
  });

  const fill = async (name: string) => {
    await page.getByRole("button", { name: `Fill a copy of ${name}`, exact: true }).click();
    await page.getByText(`Written to ${name} filled`).waitFor();
  };
  const expectFilled = (sheet: SheetData) => {
    expect(cellAt(sheet, 8, 1)?.value).toMatch(/^Pen of [\d.]+ with \d+ panels$/);
    expect(cellAt(sheet, 9, 1)?.value).toBeGreaterThan(1000);
    for (const column of [8, 9]) expect(cellAt(sheet, column, 1)?.formula).toMatch(/estimate.*!/i);
  };

  test("a filled copy keeps merged cells, picture, widths and print set-up, and its fields are formulas", async () => {
    const before = await sheetOf(page, "Letter");
    await fill("Letter");
    const filled = await sheetOf(page, "Letter filled");
    expectFilled(filled);
    expect(formed(filled)).toEqual(formed(before));
    expect([filled.merges.length, filled.pictures.length, filled.print?.repeatRows]).toEqual([3, 1, 3]);
    expect(await sheetOf(page, "Letter")).toEqual(before);
  });

  test("a template comes from a file under a free name, is filled, and goes into a file again", async () => {
    const file = await writeXlsx(
      { sheets: [contentOfPlan(letter(), () => null, () => "=1+1")] }, // prettier-ignore
      async () => dot,
    );
    const given = { name: "letters.xlsx", mimeType: "", buffer: Buffer.from(file) };
    await page.getByLabel("Add a template from a file").setInputFiles(given);
    await page.getByText("Added: Letter 2. 1 picture was left out.", { exact: false }).waitFor();
    const added = await sheetOf(page, "Letter 2");
    const own = await sheetOf(page, "Letter");
    expect([added.merges, added.hiddenRows, added.print]).toEqual([own.merges, own.hiddenRows, own.print]);
    expect(cellAt(added, 8, 1)?.value).toBe(words);
    await fill("Letter 2");
    expectFilled(await sheetOf(page, "Letter 2 filled"));
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    const { content } = await readXlsx(await readFile(await download.path()));
    const back = content.sheets.find(({ name }) => name === "Letter 2 filled")!;
    expectFilled(back);
    expect([back.merges, back.print]).toEqual([own.merges, own.print]);
  });

  test("a broken file is refused in a sentence, and the workbook stays", async () => {
    const before = await names(page);
    for (const [bytes, sentence] of [["hello", "This file is no .xlsx workbook"], ["PK\u0003\u0004 broken", "This workbook is damaged"]]) {
      await page.getByLabel("Add a template from a file").setInputFiles({ name: "bad.xlsx", mimeType: "", buffer: Buffer.from(bytes) });
      await page.getByText(sentence).waitFor();
    }
    expect(await names(page)).toEqual(before);
  });
}); // prettier-ignore
