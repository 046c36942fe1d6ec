import { injections } from "../injection";
import { describeInBrowser, startPages, type Pages } from "./page";
import { samplePlan } from "./sample-plan";

describeInBrowser("a text from a person in the browser workbook", () => {
  let pages: Pages;
  beforeAll(async () => {
    pages = await startPages();
  });
  afterAll(() => pages?.close());

  test("is that text in a new document, an input, an added row, a rewritten cell and a copy, and after a file of its own", async () => {
    const page = await pages.open(await pages.newUser());
    const plan = {
      ...samplePlan("Texts"),
      cells: injections.map((value, row) => ({ row, column: 1, says: { kind: "constant" as const, value }, style: "text" as const })),
    };
    const stored = await page.evaluate(
      async ([given, texts]) => {
        const { host, workbook } = window.penstake;
        await host.write([given]);
        await host.update("Texts", texts.map((value, row) => ({ row, column: 2, value })));
        await host.rewrite("Texts", texts.map((says, row) => ({ row, column: 3, says })));
        await host.fillCopy("Texts", "Copy", texts.map((says, row) => ({ row, column: 4, says })));
        await host.append("Copy", texts.map((words) => [null, words]));
        const state = () =>
          ["Texts", "Copy"].map((name) => {
            const sheet = workbook.book.getSheetByName(name)!;
            const cells = (column: number, from = 0) =>
              texts.map((_, row) => {
                const raw = sheet.getSheet().getCellRaw(from + row, column);
                return [raw?.v, raw?.f ?? null];
              });
            return [cells(1), cells(2), cells(3), ...(name === "Copy" ? [cells(4), cells(1, texts.length)] : [])];
          });
        const before = state();
        await workbook.restore(JSON.parse(JSON.stringify(workbook.save())));
        return [before, state()];
      },
      [plan, [...injections]] as const,
    );
    const texts = injections.map((words) => [words, null]);
    const expected = [[texts, texts, texts], [texts, texts, texts, texts, texts]];
    expect(stored).toEqual([expected, expected]);
    expect(pages.faults).toEqual([]);
  });
}); // prettier-ignore
