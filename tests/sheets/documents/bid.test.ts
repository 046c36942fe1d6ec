import JSZip from "jszip";
import { newJob, type Job } from "../../../src/estimate/job";
import { examplePrices } from "../../../src/estimate/prices";
import { writeXlsx } from "../../../src/hosts/xlsx/xlsx";
import { bidPlan } from "../../../src/sheets/documents/bid";
import { drawsOf } from "../../../src/sheets/documents/bid-draws";
import { bidAsked } from "../../../src/sheets/documents/bid-entries";
import { issuedCells } from "../../../src/sheets/documents/issue";
import { isOfKind } from "../../../src/sheets/documents/marks";
import { messages } from "../../../src/sheets/documents/messages";
import { readDocument, shownNumber } from "../../../src/sheets/documents/read";
import { cellOf } from "../../../src/sheets/documents/source";
import { draws } from "../../../src/estimate/draws";
import { shownBy } from "../shown";
import { contentBy, ownPrices, sourcesOf, wordsOf, worked } from "./books";

const panels: Job = {
  ...newJob(),
  gate_1: 10,
  truck_1: 16,
  truck_2: 10,
  tax: 6.25,
  contingency: 3,
  customer: "=cmd|x",
  site: "Invented Lane 7",
};
const posts: Job = { ...panels, structure: "post pen", leaf_1: 12, setting: "concrete" };
const answers = {
  ...Object.fromEntries(bidAsked.map(({ key, default: value }) => [key, value])),
  business: "+Invented pens", bid_number: 12, bid_date: "2026-11-25", extra_hour: 75,
}; // prettier-ignore

function bidOf(job: Job, prices = ownPrices) {
  const { plans, sources } = sourcesOf([job], prices);
  const price = cellOf(sources[0], "total");
  const data = { sources, price, answers, draws: drawsOf(answers), alternates: [{ words: "Footing 4 in deep", difference: -12.5 }] }; // prettier-ignore
  const plan = bidPlan(data, "Bid 12");
  return { sources, plans, plan, sheet: worked(plans, plan) };
}

/** Prices that no other number of a document is like. */
const odd = ownPrices.map((row, k) => ({ ...row, price: row.price! + 0.37 + k / 1000 }));

/** Everything that a written file holds, as text. */
async function everything(file: Uint8Array): Promise<string> {
  const zip = await JSZip.loadAsync(file);
  return (await Promise.all(Object.values(zip.files).map((one) => one.async("string")))).join("\n");
}

describe("a bid", () => {
  test.each([["panels", panels], ["posts", posts]])("of %s shows the estimate's total, and draws that come to it to the cent", (_, job) => {
    const { sources, sheet } = bidOf(job);
    const read = readDocument(shownBy(sheet), []);
    const total = sources[0].made.charges.total.toNumber();
    const due = draws(total, { percent: 10 }, [{ name: "", percent: 50 }, { name: "", percent: 40 }]);
    expect(shownNumber(read, "price")).toBe(total);
    expect([1, 2, 3].map((k) => shownNumber(read, `draw_${k}`))).toEqual(due.map(({ amount }) => amount));
  }); // prettier-ignore

  test("names the license and the insurance beside what was typed of them, and leaves out a blank one", () => {
    const { sources } = bidOf(panels);
    const rowsOf = (more: Record<string, string>) => {
      const data = { sources, price: cellOf(sources[0], "total"), answers: { ...answers, ...more }, draws: [], alternates: [] };
      return bidPlan(data, "Bid 12").cells;
    };
    const says = (value: string) => ({ says: { kind: "constant", value } });
    const both = rowsOf({ license: "No. 0-invented", insurance: "Invented Mutual" });
    for (const [label, value] of [["License", "No. 0-invented"], ["Insurance", "Invented Mutual"]]) {
      const { row } = both.find((cell) => cell.says.kind === "constant" && cell.says.value === value)!;
      expect(both.filter((cell) => cell.row === row)).toContainEqual(expect.objectContaining(says(label)));
    }
    expect(rowsOf({ license: "No. 0-invented" })).not.toContainEqual(expect.objectContaining(says("Insurance")));
  }); // prettier-ignore

  test("says what is built, the sand in yards, and keeps a person's text a text", () => {
    const { sheet, sources } = bidOf(posts);
    const words = wordsOf(sheet);
    expect(words).toContain("Post pen for riding.");
    expect(words).toContain("Four rows of 2x6 board rails on the inside, held by screws.");
    expect(words).toContain(
      `about ${Math.round(sources[0].made.sand.delivered)} cubic yards, about 3 in loose`,
    );
    expect(words).toContain("=cmd|x");
    expect(words).toContain("+Invented pens");
  });

  test("says how deep a compacted base lies only where there is one", () => {
    const based = bidOf({ ...posts, base_depth: 4, base_settle: 10, fabric: "under base" });
    const words = wordsOf(based.sheet);
    const { delivered, depthSettled } = based.sources[0].made.base;
    expect(words).toContain("4 in compacted base on road fabric.");
    expect(words).toContain(
      `about ${Math.round(delivered)} cubic yards, about ${Math.round(depthSettled * 4) / 4} in compacted`,
    );
    expect(wordsOf(bidOf({ ...posts, base_depth: 4.5 }).sheet)).toContain("4 1/2 in compacted base.");
    expect(wordsOf(bidOf(posts).sheet)).not.toMatch(/compacted base|in compacted|^\s*Base stone$/m);
  });

  test("says of an arena that trucks reach the arena, and that it is laid out by its diagonals", () => {
    const words = wordsOf(bidOf({ ...panels, structure: "panel arena" }).sheet);
    expect(words).toContain("A loaded dump truck reaches the arena and can turn");
    expect(words).toContain("Laid out square by its diagonals");
    expect(words).not.toMatch(/reaches the pen and|center stake/);
  });

  test("says the depth asked for and the least that full loads give, where that is less", () => {
    const { sheet, sources } = bidOf({ ...panels, truck_1: 16, truck_2: null, short: 10, size: 70 });
    const { delivered, depthLoose } = sources[0].made.sand;
    expect(depthLoose).toBeLessThan(2.875);
    expect(wordsOf(sheet)).toContain(
      `about ${Math.round(delivered)} cubic yards, to lie 3 in deep. Sand comes in full loads: it may lie ${Math.floor(depthLoose * 4) / 4} in, and no less.`,
    );
  });

  test("holds no cost, markup or tax, neither in its cells nor in the file written of it", async () => {
    const { sheet, sources } = bidOf(panels, odd);
    const { lines, charges, sums } = sources[0].made;
    const figures = [
      ...lines.flatMap(({ price, amount }) => [price, amount]),
      ...Object.values(charges).filter((one) => !one.eq(charges.total)),
      ...Object.values(sums),
    ].filter((one) => one && !one.isInteger());
    expect(figures.length).toBeGreaterThan(16);
    const file = await everything(await writeXlsx({ sheets: [sheet] }));
    const said = figures.flatMap((figure) => [String(figure), figure!.toFixed(2)]);
    expect(said.filter((text) => file.includes(text))).toEqual([]);
    expect(file).toContain(String(charges.total));
    for (const word of ["Overhead", "Profit", "Contingency", "Supplier", "overhead", "profit", "contingency"])
      expect(file).not.toContain(word);
    const asked = Object.entries(sources[0].sheet.cells).filter(([key]) =>
      /_(price|amount)$|^(direct|tax|contingency|overhead|profit|burden|markup|budget)/.test(key),
    );
    const named = (formula: string, { row, column }: { row: number; column: number }) =>
      new RegExp(`Estimate!\\$?${String.fromCharCode(65 + column)}\\$?${row + 1}(?!\\d)`).test(formula);
    expect(asked.length).toBeGreaterThan(20);
    for (const { formula } of sheet.cells)
      for (const [key, place] of asked)
        expect([key, formula ? named(formula, place) : false]).toEqual([key, false]);
  });

  test("on example prices says so across its top", () => {
    expect(wordsOf(bidOf(panels, [...examplePrices]).sheet)).toContain(messages.bid.example);
    expect(wordsOf(bidOf(panels).sheet)).not.toContain(messages.bid.example);
  });

  test("refuses shares of the price over 100 %", () => {
    expect(() => drawsOf({ deposit: 60, milestone_share: 50 })).toThrow(messages.bid.drawsTooMuch);
    expect(drawsOf({ deposit: 0, milestone_share: 0 })).toEqual([
      { words: "When all is done", percent: 100 },
    ]);
  });
});

describe("issuing a bid", () => {
  /** The sheet as it stands after the copy was filled. */
  function issued() {
    const content = contentBy(bidOf(posts).sheet);
    const copy = { name: "Bid 12 issued", values: content.values.map((row) => [...row]), formulas: content.formulas.map((row) => [...row]) };
    for (const { row, column, says } of issuedCells(content, "2026-11-26"))
      for (const side of [copy.values, copy.formulas])
        side[row][column] = says as string | null;
    return { content, copy };
  } // prettier-ignore

  test("leaves nothing live, keeps what is printed as it shows, and says the day in its foot", () => {
    const { content, copy } = issued();
    const live = copy.formulas.flatMap((row, at) => row.filter((one, k) => String(one).startsWith("=") && one !== copy.values[at][k]));
    expect(live).toEqual([]);
    const { state } = readDocument(content, []).cells;
    const printed = (values: typeof copy.values) => values.slice(1, state.row).map((row) => Array.from({ length: 6 }, (_, k) => row[k + 1] ?? null));
    expect(printed(copy.values)).toEqual(printed(content.values));
    expect(copy.values[state.row]).toContain(messages.bid.issued("12", "2026-11-26"));
  }); // prettier-ignore

  test("keeps no key but those that later documents ask for, and nothing beside the page", () => {
    const { copy } = issued();
    expect(isOfKind(copy, "issued")).toBe(true);
    const asked = ["bid_date", "bid_for", "bid_job", "bid_number", "bid_site", "business", "price", "state"];
    const draws = [1, 2, 3].flatMap((k) => [`draw_${k}`, `draw_${k}_words`]);
    expect(Object.keys(readDocument(copy, []).cells).sort()).toEqual([...asked, ...draws].sort());
    expect(copy.values.flatMap((row) => row.slice(7)).filter((value) => value !== null)).toEqual([]);
  });

  test("takes the user's own edits, and refuses a bid without a number or a price", () => {
    const { content } = issued();
    const { cells } = readDocument(content, []);
    const type = (key: string, value: string | null) => {
      const copy = { ...content, values: content.values.map((row) => [...row]) };
      copy.values[cells[key].row][cells[key].column] = value;
      return () => issuedCells(copy, "2026-11-26");
    };
    expect(type("scope_1_1", "Built as we said.")).not.toThrow();
    expect(type("bid_number", null)).toThrow(messages.bid.noNumber("Bid 12"));
    expect(type("price", "3 prices missing")).toThrow('"Bid 12": 3 prices missing');
  });
});
