import { newComparison } from "../../taskpane/documents/compare";
import { estimatesIn, readBook, sourcesIn } from "../../taskpane/documents/book";
import { written } from "./opened";

async function withEstimate() {
  const all = await written();
  const book = await readBook(all.host);
  return { ...all, book, sources: sourcesIn(book, estimatesIn(book)) };
}

describe("a comparison from the panel", () => {
  it("is written on a sheet of its own under a free name, with the estimate's price at its own size", async () => {
    const { host, book, sources, total } = await withEstimate();
    await host.write([newComparison(book, sources, "50, 60, 72")]);
    expect(host.active).toBe("Compare");
    const [shown] = await host.read(["Compare"]);
    expect(shown.values.flat()).toContain(total());
    await host.write([newComparison(await readBook(host), sources, "50, 60, 72")]);
    expect(host.active).toBe("Compare 2");
  });

  it("is refused in a sentence, and nothing is written: sizes that cannot be read, more than one estimate", async () => {
    const { host, book, sources } = await withEstimate();
    const before = host.sheets.length;
    expect(() => newComparison(book, sources, "50, 60")).toThrow("Write 3 to 8 sizes, separated by commas.");
    expect(() => newComparison(book, [...sources, ...sources], "50, 60, 70")).toThrow(/tick just one/);
    expect(host.sheets).toHaveLength(before);
  });
});
