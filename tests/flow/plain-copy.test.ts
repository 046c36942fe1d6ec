import { readFile } from "node:fs/promises";
import { type Page } from "playwright-core";
import { isError, type Cell } from "../../src/units/cell";
import { describeInBrowser, forOneUser } from "../hosts/browser/page";

/** What every cell shows, by sheet and place; the line that a plain copy adds at a sheet's foot left out. */
async function shown(page: Page): Promise<Record<string, Cell>> {
  const { sheets } = await page.evaluate(() => window.penstake.workbook.snapshot());
  const cells = sheets.flatMap(({ name, cells }) =>
    cells.map(({ row, column, value }): [string, Cell] => [`${name} ${row} ${column}`, value]),
  );
  return Object.fromEntries(
    cells
      .filter(([, value]) => value !== null && value !== "" && !/^Plain copy/.test(String(value)))
      .map(([place, value]) => [place, typeof value === "number" ? Number(value.toPrecision(10)) : value]),
  );
}

describeInBrowser("a plain copy of the example workbook", () => {
  let page: Page;
  forOneUser((opened) => (page = opened));

  test("shows in every cell what the live one shows once it is opened again, and asks no function", async () => {
    const before = await shown(page);
    expect(Object.values(before).filter(isError)).toEqual([]);
    const [file] = await Promise.all([page.waitForEvent("download"), page.click("#download")]);
    const buffer = await readFile(await file.path());
    const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.click("#open")]);
    await chooser.setFiles({ name: "copy.xlsx", mimeType: "", buffer });
    await page.getByRole("button", { name: "Replace it" }).click();
    await page.getByText("This could not be carried over").waitFor();
    await page.getByRole("button", { name: "OK" }).click();
    expect(await shown(page)).toEqual(before);
    const { sheets } = await page.evaluate(() => window.penstake.workbook.snapshot());
    const formulas = sheets.flatMap(({ cells }) => cells.flatMap(({ formula }) => formula ?? []));
    expect(formulas.length).toBeGreaterThan(100);
    expect(formulas.filter((formula) => /\bPEN\./i.test(formula))).toEqual([]);
  });

  test("is made live again from the panel, with the same total", async () => {
    const total = () => page.locator(".total strong").innerText();
    const before = await total();
    await page.getByRole("button", { name: "Make it live again" }).click();
    await page.getByText("is a live estimate of").waitFor();
    expect(await total()).toBe(before);
    const { active } = await page.evaluate(() => window.penstake.host.look());
    expect(active.formulas.flat().filter((cell) => String(cell).includes("PEN.")).length).toBeGreaterThan(20);
  });
});
