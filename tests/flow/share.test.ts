import { type Page } from "playwright-core";
import { readFile } from "node:fs/promises";
import { readXlsx } from "../../src/hosts/xlsx/xlsx";
import { describeInBrowser, forOneUser } from "../hosts/browser/page";

const formulas = (page: Page) =>
  page.evaluate(async () => (await window.penstake.host.look()).active.formulas.flat().map(String));
const asking = async (page: Page) => (await formulas(page)).filter((cell) => /PEN\./.test(cell)).length;

describeInBrowser("sharing a workbook from the panel", () => {
  let page: Page;
  forOneUser(async (opened) => {
    page = opened;
    await page.locator("summary", { hasText: "Share and mend" }).click();
  });
  const button = (name: string | RegExp) => page.getByRole("button", { name }).first();

  test("a sheet is frozen after what will change was shown, with the same total, and undo takes it back", async () => {
    const before = await formulas(page);
    const total = await page.locator(".total strong").innerText();
    await button("This sheet …").click();
    await page.getByText(/^\d+ cells change:$/).waitFor();
    expect(await formulas(page)).toEqual(before);
    expect(await page.locator(".changes tbody tr").count()).toBeGreaterThan(20);
    await button(/^Freeze \d+ cells$/).click();
    await page.getByText("no figure there asks this add-in any more").waitFor();
    expect(await asking(page)).toBe(0);
    expect(await page.locator(".total strong").innerText()).toBe(total);
    await page.click("#undo");
    await page.waitForFunction(async () =>
      (await window.penstake.host.look()).active.formulas.flat().some((cell) => String(cell).includes("PEN.")),
    );
    expect(await formulas(page)).toEqual(before);
  });

  test("nothing is changed where the user would rather leave it", async () => {
    const before = await formulas(page);
    await button("This sheet …").click();
    await page.getByText(/^\d+ cells change:$/).waitFor();
    await button("Leave it as it is").click();
    expect([await formulas(page), await page.locator(".changes").count()]).toEqual([before, 0]);
  });

  test("the chosen sheets go into a file that asks no function of this add-in", async () => {
    const [file] = await Promise.all([page.waitForEvent("download"), button("Download the plain copy").click()]);
    const { content } = await readXlsx(await readFile(await file.path()));
    expect(content.sheets.map(({ name }) => name)).toEqual(["Example estimate"]);
    const asked = content.sheets[0].cells.filter(({ formula }) => formula && /PEN[._]/i.test(formula));
    expect([asked, content.sheets[0].cells.length > 100]).toEqual([[], true]);
  });
}); // prettier-ignore
