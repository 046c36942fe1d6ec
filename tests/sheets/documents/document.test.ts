import { newJob } from "../../../src/estimate/job";
import { documentPlan } from "../../../src/sheets/documents/document";
import { moneyEntry, numberEntry, textEntry } from "../../../src/sheets/documents/entries";
import { isOfKind, marks } from "../../../src/sheets/documents/marks";
import { messages } from "../../../src/sheets/documents/messages";
import { readDocument } from "../../../src/sheets/documents/read";
import {
  entryRow,
  moneyEntryRow,
  moneyRow,
  paragraphRow,
  titleRow,
} from "../../../src/sheets/documents/rows";
import { builtFrom, cellOf, estimateSource, totalShown } from "../../../src/sheets/documents/source";
import { plus } from "../../../src/sheets/expression";
import { type SheetPlan } from "../../../src/sheets/plan";
import { shownBy } from "../shown";
import { contentBy, estimatePlans, ownPrices, pen, sourcesOf, wordsOf, worked } from "./books";
import { contentOfPlans } from "../../../src/sheets/calculate";

const number = numberEntry("number", "Number", "Número");
const words = textEntry("words", "Words", "Palabras");
const paid = moneyEntry("paid", "Paid", "Pagado");

const jobs = [newJob(), { ...newJob(), size: 80 }];

function sample(): { plans: SheetPlan[]; document: SheetPlan } {
  const { plans, sources } = sourcesOf(jobs);
  const totals = sources.map((source) => cellOf(source, "total"));
  const document = documentPlan({
    mark: marks.bid,
    name: "Bid 3",
    rows: [
      titleRow("Bid"),
      entryRow(number, 3),
      paragraphRow(words, "=1+1"),
      moneyEntryRow(paid),
      moneyRow("Price", () => plus(totals[0], totals[1]), { key: "price", total: true }),
    ],
    footer: "Bid 3",
    used: builtFrom(sources),
  });
  return { plans, document };
}

/** The plans with another value in the cell of an estimate's input. */
function typed(plans: SheetPlan[], name: string, place: { row: number; column: number }, value: number) {
  const cells = (plan: SheetPlan) =>
    plan.cells.map((cell) =>
      cell.row === place.row && cell.column === place.column
        ? { ...cell, says: { kind: "constant" as const, value } }
        : cell,
    );
  return plans.map((plan) => (plan.name === name ? { ...plan, cells: cells(plan) } : plan));
}

describe("a document over estimates", () => {
  test("adds the totals of its estimates up live", () => {
    const { plans, document } = sample();
    const { sources } = sourcesOf(jobs);
    const read = readDocument(shownBy(worked(plans, document)), [number]);
    expect(read.cells.price.value).toBe(totalShown(sources[0]) + totalShown(sources[1]));
  });

  test("gives its own entries back from its sheet, also below inserted rows, and a text stays a text", () => {
    const { plans, document } = sample();
    const shown = shownBy(worked(plans, document));
    shown.values.splice(1, 0, [], []);
    expect(isOfKind(shown, "bid")).toBe(true);
    expect(readDocument(shown, [number, words, paid])).toMatchObject({
      entries: { number: 3, words: "=1+1", paid: null },
      problems: {},
    });
  });

  test("says why an entry cannot be read, and reads the others", () => {
    const { plans, document } = sample();
    const shown = shownBy(worked(plans, document));
    const { cells } = readDocument(shown, []);
    shown.values[cells.number.row][cells.number.column] = 0;
    shown.values[cells.paid.row][cells.paid.column] = 12;
    const read = readDocument(shown, [number, words, paid]);
    expect(read.problems).toEqual({ number: "Allowed is 1 to 999,999." });
    expect(read.entries).toMatchObject({ words: "=1+1", paid: 12 });
  });

  test("says OUT OF DATE once an input of one of its estimates has changed, and not before", () => {
    const { plans, document } = sample();
    expect(wordsOf(worked(plans, document))).not.toContain(messages.outOfDate);
    const { sources } = sourcesOf(jobs);
    const moved = typed(plans, "Estimate 2", sources[1].sheet.cells.depth, 4);
    expect(wordsOf(worked(moved, document))).toContain(messages.outOfDate);
    const charged = typed(plans, "Estimate 2", sources[1].sheet.cells.profit, 25);
    expect(wordsOf(worked(charged, document))).not.toContain(messages.outOfDate);
  });

  test("refuses an estimate whose inputs cannot be read, lead to nothing or are not priced, by its name", () => {
    const made = (size: number | string, prices = ownPrices) => {
      const content = contentBy(contentOfPlans(estimatePlans([newJob()], prices), pen).sheets[0]);
      const { size: at } = sourcesOf([newJob()]).sources[0].sheet.cells;
      content.values[at.row][at.column] = size;
      return () => totalShown(estimateSource(content, prices));
    };
    expect(made("wide")).toThrow('"Estimate", Size across:');
    expect(made(8)).toThrow(/^"Estimate": /);
    expect(made(66, [])).toThrow(/"Estimate": \d+ prices missing/);
  });
});
