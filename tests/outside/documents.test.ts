import { type Job } from "../../src/estimate/job";
import { repriced } from "../../src/estimate/compare";
import { estimate, totalOf } from "../../src/estimate/estimate";
import { together } from "../../src/estimate/together";
import { unpricedRow, type PriceRow } from "../../src/estimate/prices";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { contentOfPlans } from "../../src/sheets/calculate";
import { comparePlan } from "../../src/sheets/documents/compare";
import { compareWords } from "../../src/sheets/documents/compare-words";
import { readDocument } from "../../src/sheets/documents/read";
import { columns } from "../../src/sheets/documents/rows";
import { cellOf, estimateSource } from "../../src/sheets/documents/source";
import { totalIn } from "../../src/sheets/documents/together";
import { plainForm } from "../../src/sheets/plain";
import { pricesName } from "../../src/sheets/prices-layout";
import { type SheetData } from "../../src/sheets/workbook-content";
import { contentBy, pen } from "../sheets/documents/books";
import { randomPairs, togetherOf } from "../sheets/documents/together-books";
import { shownBy } from "../sheets/shown";
import { agree, bare, told } from "./books";
import { contractTrail } from "./contract-trail";
import { holdEstimates, plansOf, randomBooks, type Book } from "./job-books";
import { officeTest, recalculate } from "./libreoffice";
import { purchaseTrail } from "./purchase-trail";
import { work, type Held, type Priced, type Trail } from "./trail";

/** How many jobs stand on each of how many sheets of prices, and how many pairs are priced as one. */
const [BOOKS, PRICED, PAIRS] = [4, 50, 10];

/** Sizes around a job's own side by side, the first the job itself; refused where none can be built without the user's own counts. */
function comparisonTrail({ sources: [source], beside, k }: Priced, prices: PriceRow[]): Trail {
  const sizes = [0, 2, 4].map((more) => ({ label: String(more), answers: sizeOf(source.job, more) }));
  const compared = sizes.map(({ answers }) => repriced(source.job, answers, prices, source.sheet.own));
  const written = () => work([comparePlan(source, prices, sizes, `Compare ${k}`, "2026-11-25")], beside);
  if (compared.every(({ made }) => !made)) {
    expect(written).toThrow(compareWords.none(compareWords.why("0", compared[0].refusal!)));
    return { sheets: [], held: [] };
  }
  const [sheet] = written();
  const priced = compared.map(({ price }) => price);
  const { row } = readDocument(shownBy(sheet), []).cells.price;
  const held = priced.flatMap((price, n) => (price === null ? [] : [{ column: columns.words + n, price }]));
  const rows = { from: row, columns: held.map(({ column }) => column), values: [held.map(({ price }) => price)] };
  return { sheets: [sheet], held: [{ name: sheet.name, figures: {}, rows }] };
} // prettier-ignore

/** A job's size, so many feet larger. */
const sizeOf = (job: Job, more: number): Job =>
  String(job.structure).endsWith("arena")
    ? { arena_length: Number(job.arena_length) + more, arena_width: job.arena_width }
    : { size: Number(job.size) + more };

/** Every document of each job of a book that has a price; `first` numbers their sheets. */
const trailsOf = ({ prices, jobs }: Book, sheets: Map<string, SheetData>, first: number): Trail[] =>
  jobs
    .flatMap(({ name, job, own }) => {
      const made = estimate(job, prices, own);
      const total = totalOf(made);
      return typeof total === "number" ? [{ sheet: sheets.get(name)!, made, total }] : [];
    })
    .flatMap(({ sheet, made, total }, n) => {
      const source = estimateSource(contentBy(sheet), prices);
      const priced: Priced = {
        sources: [source], made: [made], price: cellOf(source, "total"), total, beside: [sheet], k: first + n,
      };
      return [contractTrail(priced), purchaseTrail(priced), comparisonTrail(priced, prices)];
    }); // prettier-ignore

/** Prices, to the cent, of everything that some pairs of jobs need, each alone and as one. */
function pricesFor(pairs: readonly Job[][]): PriceRow[] {
  const asOne = pairs.map((jobs) => together(jobs.map((job) => ({ job })), []));
  const needed = [...pairs.flat().map((job) => estimate(job, [])), ...asOne].flatMap(({ missing }) => missing);
  const once = new Map(needed.map((one) => [JSON.stringify([one.item, one.size]), one]));
  return [...once.values()].map((one, k) => ({ ...unpricedRow(one), price: (911 + ((k * 7919) % 15_000)) / 100 }));
} // prettier-ignore

/** Every document over two jobs that are priced as one; the sheet that prices them so is among them. */
function pairTrail(pair: Job[], prices: PriceRow[], sheets: SheetData[], k: number): Trail[] {
  const { alone, charges } = together(pair.map((job) => ({ job })), prices);
  const sources = sheets.slice(0, 2).map((sheet) => estimateSource(contentBy(sheet), prices));
  const [shared] = work([togetherOf(sources, `Together ${k}`)], sheets);
  const total = charges.total.toNumber();
  const price = totalIn(sources, shared.name);
  const figures = { direct: charges.direct.toNumber(), overhead_amount: charges.overhead.toNumber(), profit_amount: charges.profit.toNumber(), total };
  const priced: Priced = { sources, made: alone, price, total, beside: [...sheets, shared], k };
  return [
    { sheets: [shared], held: [{ name: shared.name, figures }] },
    contractTrail(priced),
    purchaseTrail(priced),
  ];
} // prettier-ignore

/** Holds what a document shows by LibreOffice: its figures by src, and every cell as it was worked out here. Returns how many of each. */
function hold(theirs: SheetData, ours: SheetData, { name, figures, rows }: Held): { figures: number; cells: number } {
  const { cells } = readDocument(shownBy(theirs), []);
  const found = Object.fromEntries(Object.keys(figures).map((key) => [key, cells[key]?.value ?? null]));
  expect({ name, ...found }).toEqual({ name, ...close(figures) });
  const values = new Map(theirs.cells.map(({ row, column, value }) => [`${row},${column}`, value]));
  rows?.values.forEach((row, k) => {
    const shown = rows.columns.map((column) => values.get(`${rows.from + k},${column}`) ?? null);
    expect({ name, row: rows.from + k, shown }).toEqual({ name, row: rows.from + k, shown: row.map(near) });
  });
  for (const { row, column, value } of ours.cells) {
    const shown = values.get(`${row},${column}`) ?? null;
    if (!agree(shown, value))
      throw new Error(`${name}: row ${row + 1}, column ${column}: ${told(shown)}, here ${told(value)}`);
  }
  const held = Object.keys(figures).length + (rows ? rows.values.length * rows.columns.length : 0);
  return { figures: held, cells: ours.cells.length };
} // prettier-ignore

/** A sum to the cent must be that very number; any other figure agrees to the last digit that two ways of adding share. */
const near = (value: number): unknown =>
  value === Math.round(value * 100) / 100 ? value + 0 : expect.closeTo(value, 9);
const close = (figures: Record<string, number>) =>
  Object.fromEntries(Object.entries(figures).map(([key, value]) => [key, near(value)]));

describe("200 random jobs in one file, as LibreOffice shows their plain form", () => {
  officeTest("show every figure of their estimates, and every document of theirs equals src to the cent", async () => {
    const books = randomBooks(BOOKS, PRICED);
    const pairs = randomPairs(PAIRS, 2_611);
    const shared = pricesFor(pairs);
    const paired: Book = {
      pricesName, prices: shared,
      jobs: pairs.flatMap((pair, p) => pair.map((job, k) => ({ name: `Pair ${p}.${k}`, job, own: [] }))),
    };
    const trailsIn = (book: Book, b: number, sheets: Map<string, SheetData>) =>
      book === paired
        ? pairs.flatMap((pair, p) =>
            pairTrail(pair, shared, [`Pair ${p}.0`, `Pair ${p}.1`, pricesName].map((name) => sheets.get(name)!), 1000 + p))
        : trailsOf(book, sheets, b * PRICED);
    const made = [...books, paired].map((book, b) => {
      const estimates = contentOfPlans(plansOf(book), pen);
      const trails = trailsIn(book, b, new Map(estimates.sheets.map((sheet) => [sheet.name, sheet])));
      const { content } = plainForm({ sheets: [...estimates.sheets, ...trails.flatMap(({ sheets }) => sheets)] }, pen);
      return { book, trails, content };
    });
    // One file of some 2300 sheets, far larger than what a user may open.
    const whole = { sheets: made.flatMap(({ content }) => content.sheets) };
    const [recalculated] = await recalculate([await writeXlsx(bare(whole))], 1024);

    const figures = made.reduce((sum, { book }) => sum + holdEstimates(recalculated, book), 0);
    expect(figures).toBeGreaterThan((BOOKS * PRICED + 2 * PAIRS) * 80);
    const documents = made.flatMap(({ trails }) => trails.flatMap(({ sheets }) => sheets));
    const [theirs, ours] = [recalculated, whole].map((book) => new Map(book.sheets.map((sheet) => [sheet.name, sheet])));
    expect(ours.size).toBe(whole.sheets.length);
    const counts = made
      .flatMap(({ trails }) => trails.flatMap(({ held }) => held))
      .map((one) => hold(theirs.get(one.name)!, ours.get(one.name)!, one));
    expect(counts).toHaveLength(documents.length);
    const comparisons = documents.filter(({ name }) => name.startsWith("Compare")).length;
    expect(documents.length - comparisons).toBe(BOOKS * PRICED * 8 + PAIRS * 9);
    expect(comparisons).toBeGreaterThan(BOOKS * PRICED * 0.9);
    expect(counts.reduce((sum, { figures }) => sum + figures, 0)).toBeGreaterThan((BOOKS * PRICED + PAIRS) * 100);
    expect(counts.reduce((sum, { cells }) => sum + cells, 0)).toBeGreaterThan((BOOKS * PRICED + PAIRS) * 1000);
  }, 900_000);
}); // prettier-ignore
