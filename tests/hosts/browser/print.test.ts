import { type Page } from "playwright-core";
import { type SheetPlan } from "../../../src/sheets/plan";
import { describeInBrowser, startPages, type Pages } from "./page";
import { pageCount, pdfText } from "./pdf-text";
import { samplePlan } from "./sample-plan";

describeInBrowser("printing the active sheet", () => {
  let pages: Pages;
  let page: Page;
  beforeAll(async () => {
    pages = await startPages();
    page = await pages.open(await pages.newUser());
  });
  afterAll(() => pages?.close());
  afterEach(() => expect(pages.faults).toEqual([]));

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

  test("writes the footer as text, with the page's number after it", async () => {
    expect(pdfText(await pdf(await printed(samplePlan("Footer"))))).toMatch(/Sheet <b>&P<\/b>[^]*1 \/ 1/);
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

  test("fits a wide sheet to one page's width and repeats its header rows on every page", async () => {
    const plan = samplePlan("Long");
    const rows = Array.from({ length: 120 }, (_, k) => ({ row: 3 + k, column: 1, style: "label" as const, says: { kind: "constant" as const, value: `Line ${k + 1}.` } })); // prettier-ignore
    const cells = [...plan.cells.filter(({ row }) => row === 2), ...rows];
    const columns = plan.columns.map((column) => ({ ...column, width: 60 }));
    const area = { ...plan.print.area, bottom: 122 };
    const print = { ...plan.print, area, pages: { wide: 1, tall: 0 } };
    const paper = await printed({ ...plan, cells, columns, pictures: [], print });
    const file = await pdf(paper);
    const pagesMade = pageCount(file);
    expect(pdfText(file)).toContain("Line 120.");
    expect(
      await paper.locator("table").evaluate((table) => table.getBoundingClientRect().width),
    ).toBeLessThan(700);
    await page.click("#undo");
    const tall = await printed({ ...plan, name: "Longer", columns, pictures: [], print, cells: cells.map((cell) => cell.row > 2 ? { ...cell, row: cell.row } : cell), heights: Object.fromEntries(rows.map(({ row }) => [row, 40])) }); // prettier-ignore
    const longer = await pdf(tall);
    expect(pageCount(longer)).toBeGreaterThan(Math.max(1, pagesMade));
    expect(pdfText(longer).match(/Quantity/g)).toHaveLength(pageCount(longer));
  });

  test("leaves no frame behind in the page", async () => {
    expect(await page.locator("iframe").count()).toBe(0);
  });
});
