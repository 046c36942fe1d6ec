import { type Page } from "playwright-core";
import { newJob } from "../../src/estimate/job";
import { labels } from "../../src/sheets/layout-messages";
import { columns, rows } from "../../src/sheets/layout-places";
import { type Cell } from "../../src/units/cell";
import { describeInBrowser, forOneUser } from "../hosts/browser/page";
import { pageCount, pdfText } from "../hosts/browser/pdf-text";
import { layoutOf, stakeRows } from "../sheets/layouts";

const job = { ...newJob(), size: 72, gate_1: 10, gate_bearing: 200 };

describeInBrowser("a layout sheet in the browser workbook", () => {
  let page: Page;
  forOneUser(async (opened) => {
    page = opened;
    await page.getByRole("button", { name: "New job" }).click();
    await page.getByText("Layout sheet for the crew").click();
    const answers = { size: "72", gate_1: "10'", gate_bearing: "200" };
    for (const [field, answer] of Object.entries(answers)) await page.fill(`#penstake-${field}`, answer);
  });

  /** What the sheet in view shows. */
  const shown = () => page.evaluate(async () => (await window.penstake.host.look()).active.values);
  const show = (sheet: string) => page.evaluate((name) => window.penstake.host.show(name), sheet);

  /** Waits until the warning at the top of the layout sheet is this, and fails with what it is where it never is. */
  async function warningBecomes(wanted: string): Promise<void> {
    const warning = async () => (await shown())[rows.warning]?.[columns.stake] ?? "";
    for (let k = 0; k < 50 && (await warning()) !== wanted; k++) await page.waitForTimeout(100);
    expect(await warning()).toBe(wanted);
  }

  test("waits for the estimate, and then has every figure of the layout", async () => {
    const write = page.getByRole("button", { name: "Write layout sheet" });
    expect(await write.isDisabled()).toBe(true);
    await page.click(".main");
    await page.getByText("Written on the new sheet").waitFor();
    await write.click();
    await page.getByText('Written on the new sheet "Layout"').waitFor();
    await warningBecomes("");
    const values: Cell[][] = await shown();
    expect(values.flat().filter((value) => typeof value === "object" && value !== null)).toEqual([]);
    const cells = values.flatMap((line, row) => line.map((value, column) => ({ row, column, value })));
    const rowsShown = stakeRows({ name: "", cells, columns: [], hiddenRows: [], heights: {}, frozenRows: 0, merges: [], pictures: [] }, job);
    layoutOf(job).stakes.forEach(({ chord, tie1, tie2, bearing }, k) => {
      for (const [figure, value] of Object.entries({ chord, tie1, tie2, bearing }))
        expect(rowsShown[k][figure as "chord"]).toBeCloseTo(value, 9);
    });
  });

  test("prints on two pages with the stakes' headers on both", async () => {
    await page.click("#print");
    const sent = await page.waitForFunction(() => window.printed?.pop());
    const paper = await page.context().newPage();
    await paper.setContent((await sent.jsonValue()) as string);
    const file = await paper.pdf({ preferCSSPageSize: true, printBackground: true });
    expect(pageCount(file)).toBe(2);
    expect(pdfText(file).match(/As set/g)).toHaveLength(2);
    await paper.close();
  });

  test("says OUT OF DATE once the estimate has another gate, and no longer when it has the old one again", async () => {
    for (const [gate, warning] of [["12'", labels.outOfDate.en], ["10'", ""]]) {
      await show("Estimate");
      await page.fill("#penstake-gate_1", gate);
      await page.click(".main");
      await page.getByText("holds your answers now").waitFor();
      await page.getByRole("button", { name: "Close", exact: true }).click();
      await show("Layout");
      await warningBecomes(warning);
    }
  });
}); // prettier-ignore
