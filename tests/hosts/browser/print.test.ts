import { type Page } from "playwright-core";
import { type SheetPlan } from "../../../src/sheets/plan";
import { describeInBrowser, forOneUser } from "./page";
import { pageCount, pdfText } from "./pdf-text";
import { samplePlan } from "./sample-plan";

describeInBrowser("printing the active sheet", () => {
  let page: Page;
  forOneUser((opened) => (page = opened));

  /** Writes the plan, prints it by the page's button, and gives back the page that went to the printer. */
  async function printed(plan: SheetPlan): Promise<Page> {
    await page.evaluate((given) => window.penstake.host.write([given]), plan);
    await page.click("#print");
    const sent = await page.waitForFunction(() => window.printed?.pop());
    const paper = await page.context().newPage();
    await paper.setContent((await sent.jsonValue()) as string);
    return paper;
  }
  const pdf = (paper: Page) => paper.pdf({ preferCSSPageSize: true, printBackground: true });

  test("puts the print area on paper, figures as they are shown, and nothing outside it", async () => {
    const file = await pdf(await printed(samplePlan("Paper")));
    const text = pdfText(file);
    expect(pageCount(file)).toBe(1);
    for (const said of [
      "Sample pen (invented)",
      "Distance around",
      "226.19",
      "452.39",
      "72'",
      "#VALUE!",
      "=1+1",
    ])
      expect(text).toContain(said);
    for (const hidden of ["Outside", "sample key row"]) expect(text).not.toContain(hidden);
  });

  test("writes the footer as text, and the page's number beside it", async () => {
    const text = pdfText(await pdf(await printed(samplePlan("Footer"))));
    expect(text).toContain("Sheet <b>&P</b>");
    expect(text).toMatch(/1 +\/ +1/);
  });

  test("shows the pictures of the sheet with what they show in words", async () => {
    const paper = await printed(samplePlan("Picture"));
    const picture = paper.getByAltText("Plan view of the sample pen");
    expect(await picture.evaluate((image: HTMLImageElement) => image.complete && image.naturalWidth)).toBe(
      90,
    );
  });

  test("takes what cells say as text, never as markup", async () => {
    const plan = samplePlan("Markup");
    const cells = [
      { ...plan.cells[1], says: { kind: "constant" as const, value: "<img src=x onerror=alert(1)>" } },
    ];
    const paper = await printed({ ...plan, cells, pictures: [] });
    expect(await paper.locator("img").count()).toBe(0);
    expect(await paper.locator("td", { hasText: "<img src=x onerror=alert(1)>" }).count()).toBe(1);
  });

  /** A sheet of 120 lines, its columns and rows of a given size, set up for one page's width and any number of pages. */
  function longPlan(name: string, width: number, height: number): SheetPlan {
    const plan = samplePlan(name);
    const rows = Array.from({ length: 120 }, (_, k) => 3 + k);
    const line = (row: number) => ({ row, column: 1, style: "label" as const, says: { kind: "constant" as const, value: `Line ${row - 2}.` } }); // prettier-ignore
    return {
      ...plan,
      cells: [...plan.cells.filter(({ row }) => row === 2), ...rows.map(line)],
      columns: plan.columns.map((column) => ({ ...column, width })),
      heights: Object.fromEntries(rows.map((row) => [row, height])),
      pictures: [],
      print: { ...plan.print, area: { ...plan.print.area, bottom: 122 }, pages: { wide: 1, tall: 0 } },
    };
  }

  test("fits a wide sheet to one page's width", async () => {
    const paper = await printed(longPlan("Wide", 60, 15));
    const width = await paper.locator("table").evaluate((table) => table.getBoundingClientRect().width);
    expect(width).toBeGreaterThan(650);
    expect(width).toBeLessThan(700);
    expect(pdfText(await pdf(paper))).toContain("Line 120.");
  });

  test("takes as many pages as a long sheet needs and repeats its header rows on each", async () => {
    const file = await pdf(await printed(longPlan("Long", 20, 30)));
    expect(pageCount(file)).toBeGreaterThan(2);
    expect(pdfText(file).match(/Quantity/g)).toHaveLength(pageCount(file));
  });

  test("shows headers below the top where they stand, and from there on every page", async () => {
    const plan = longPlan("Low headers", 20, 30);
    const low = { ...plan, cells: plan.cells.map((cell) => ({ ...cell, row: cell.row === 2 ? 40 : cell.row === 40 ? 2 : cell.row })) }; // prettier-ignore
    const file = await pdf(await printed({ ...low, print: { ...low.print, repeatRows: 1, repeatFrom: 40 } }));
    const text = pdfText(file);
    expect(text.indexOf("Quantity")).toBeGreaterThan(text.indexOf("Line 37."));
    expect(text.match(/Quantity/g)!.length).toBe(pageCount(file) - 1);
  });

  test("leaves no frame behind in the page", async () => {
    expect(await page.locator("iframe").count()).toBe(0);
  });
});
