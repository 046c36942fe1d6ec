import fc from "fast-check";
import { calls } from "../../functions/calls";
import { boughtItems } from "../../src/estimate/bought-items";
import { repriced } from "../../src/estimate/compare";
import { estimate } from "../../src/estimate/estimate";
import { type Job } from "../../src/estimate/job";
import { orderTotal } from "../../src/estimate/order-total";
import { unpricedRow, type PriceRow } from "../../src/estimate/prices";
import { together } from "../../src/estimate/together";
import { draws } from "../../src/estimate/draws";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { contentOfPlans } from "../../src/sheets/calculate";
import { bidPlan } from "../../src/sheets/documents/bid";
import { drawsOf } from "../../src/sheets/documents/bid-draws";
import { comparePlan } from "../../src/sheets/documents/compare";
import { orderDefaults, purchaseOrderPlan } from "../../src/sheets/documents/purchase-order";
import { readDocument } from "../../src/sheets/documents/read";
import { boughtOf, cellOf, estimateSource, type EstimateSource } from "../../src/sheets/documents/source";
import { totalIn } from "../../src/sheets/documents/together";
import { estimatePlan } from "../../src/sheets/estimate";
import { type SheetPlan } from "../../src/sheets/plan";
import { plainForm } from "../../src/sheets/plain";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { type WorkbookContent } from "../../src/sheets/workbook-content";
import { Refusal } from "../../src/units/refusal";
import { randomJob } from "../estimate/random-job";
import { contentBy } from "../sheets/documents/books";
import { randomPairs, togetherOf } from "../sheets/documents/together-books";
import { shownBy } from "../sheets/shown";
import { officeTest, recalculate } from "./libreoffice";

const pen = (name: string) => calls[name];
const seed = 2_611;

/** A document to hold: the sheets that it takes, and the money that its keyed cells must show, by src. */
interface Held {
  plans: SheetPlan[];
  name: string;
  figures: Record<string, number>;
}

/** What makes documents of some estimates. Others are added to this list. */
type Maker = (sources: EstimateSource[], jobs: Job[], prices: PriceRow[], k: number) => Held[];

const answers = { bid_number: 1, deposit: 12.5, milestone_share: 33 };

function bidFigures(price: number): Record<string, number> {
  const due = draws(price, { percent: 12.5 }, [{ name: "", percent: 33 }, { name: "", percent: 54.5 }]); // prettier-ignore
  const nonzero = due.length === 3 ? due : [{ name: "", amount: 0 }, ...due];
  return {
    price,
    ...Object.fromEntries(nonzero.map(({ amount }, n) => [`draw_${n + 1}`, amount])),
  };
}

const bids: Maker = (sources, [job], prices, k) => {
  const price = estimate(job, prices).charges.total.toNumber();
  const data = { sources: [sources[0]], price: cellOf(sources[0], "total"), answers, draws: drawsOf(answers), alternates: [] }; // prettier-ignore
  const name = `Bid ${k}`;
  return [{ plans: [bidPlan(data, name)], name, figures: bidFigures(price) }];
};

const bidsTogether: Maker = (sources, jobs, prices, k) => {
  const { charges } = together(jobs.map((job) => ({ job })), prices);
  const shared = togetherOf(sources, `Together ${k}`);
  const price = totalIn(sources, shared.name);
  const name = `Bid of several ${k}`;
  const bid = bidPlan({ sources, price, answers, draws: drawsOf(answers), alternates: [] }, name);
  const total = charges.total.toNumber();
  const steps = { direct: charges.direct.toNumber(), overhead_amount: charges.overhead.toNumber(), total };
  return [
    { plans: [shared, bid], name, figures: bidFigures(total) },
    { plans: [], name: shared.name, figures: steps },
  ];
}; // prettier-ignore

/** Sizes around a job's own side by side; the first is the job itself. */
const comparisons: Maker = ([source], [job], prices, k) => {
  const name = `Compare ${k}`;
  const sizes = [0, 2, 4].map((more) => ({ label: String(more), answers: sizeOf(job, more) }));
  const { price } = repriced(job, sizes[0].answers, prices);
  return [
    {
      plans: [comparePlan(source, prices, sizes, name, "2026-11-25")],
      name,
      figures: { price: price! },
    },
  ];
};

/** A job's size, so many feet larger. */
const sizeOf = (job: Job, more: number): Job =>
  String(job.structure).endsWith("arena")
    ? { arena_length: Number(job.arena_length) + more, arena_width: job.arena_width }
    : { size: Number(job.size) + more };

/** An order of all that a job buys, at agreed prices. */
const orders: Maker = (sources, _, __, k) => {
  const name = `Purchase order ${k}`;
  const lines = boughtItems(sources.map(boughtOf)).map(({ name: item, quantity, unit }, n) => ({
    item,
    words: "",
    quantity,
    unit,
    price: 3.37 + n * 7.113,
    taxed: n % 3 > 0,
    leadTime: "",
    available: "",
  }));
  const asked = { freight: 120.25, tax: 8.25, tax_status: "taxed" };
  const due = orderTotal(lines, { ...asked, status: asked.tax_status });
  const figures = {
    lines_total: due.lines.toNumber(),
    tax_amount: due.tax.toNumber(),
    total: due.total.toNumber(),
  };
  return [{ plans: [purchaseOrderPlan(lines, { ...orderDefaults, ...asked }, name)], name, figures }];
};

/** A bid of every job, and of every twentieth also the documents beside it. */
const everyDocument: Maker = (...asked) =>
  (asked[3] % 20 === 0 ? [bids, comparisons, orders] : [bids]).flatMap((make) => make(...asked));

/** The sheets of some groups of jobs, the documents over them, and one workbook without functions of this add-in. */
function bookOf(groups: Job[][], make: Maker) {
  const prices = pricesFor(groups);
  const named = groups.map((jobs, g) =>
    jobs.map((job, k) => estimatePlan(job, `Estimate ${g}.${k}`, pricesName)),
  );
  const estimates = contentOfPlans([...named.flat(), pricesPlan(prices)], pen);
  const shown = new Map(estimates.sheets.map((sheet) => [sheet.name, contentBy(sheet)]));
  const held = groups.flatMap((jobs, g) => {
    const sources = named[g].map(({ name }) => estimateSource(shown.get(name)!, prices));
    return make(sources, jobs, prices, g);
  });
  const documents = contentOfPlans(held.flatMap(({ plans }) => plans), pen, estimates);
  const content = { sheets: [...estimates.sheets, ...documents.sheets] };
  return { held, content: plainForm(content, pen).content };
} // prettier-ignore

/** Prices, to the cent, of everything that some groups of jobs need, each alone and as one. */
function pricesFor(groups: readonly Job[][]): PriceRow[] {
  const asOne = groups.filter((jobs) => jobs.length > 1).map((jobs) => together(jobs.map((job) => ({ job })), []));
  const needed = [...groups.flat().map((job) => estimate(job, [])), ...asOne].flatMap(({ missing }) => missing);
  const once = new Map(needed.map((one) => [JSON.stringify([one.item, one.size]), one]));
  return [...once.values()].map((one, k) => ({ ...unpricedRow(one), price: (911 + ((k * 7919) % 15_000)) / 100 }));
} // prettier-ignore

/** Holds every figure of every document in a recalculated workbook; returns how many were held. */
function hold(content: WorkbookContent, held: Held[]): number {
  return held.reduce((sum, { name, figures }) => {
    const { cells } = readDocument(shownBy(content.sheets.find((sheet) => sheet.name === name)!), []);
    const found = Object.fromEntries(Object.keys(figures).map((key) => [key, cells[key]?.value ?? null]));
    expect({ name, ...found }).toEqual({ name, ...figures });
    return sum + Object.keys(figures).length;
  }, 0);
}

/** Random jobs that have an answer. */
const answered = (count: number): Job[] =>
  fc.sample(randomJob, { seed, numRuns: count * 4 }).filter(hasAnswer).slice(0, count); // prettier-ignore

function hasAnswer(job: Job): boolean {
  try {
    return Boolean(estimate(job, []));
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
}

describe("documents in LibreOffice", () => {
  officeTest("show the price, draws, compared price and order of 200 random jobs to the cent, as plain copies", async () => {
    const jobs = answered(200).map((job) => [job]);
    // In two files, since the reader of files refuses one as large as both.
    const books = [jobs.slice(0, 100), jobs.slice(100)].map((some) => bookOf(some, everyDocument));
    const recalculated = await recalculate(await Promise.all(books.map(({ content }) => writeXlsx(content))));
    expect(books.flatMap(({ held }) => held)).toHaveLength(200 + 2 * 10);
    const counts = books.map(({ held }, k) => hold(recalculated[k], held));
    expect(counts[0] + counts[1]).toBe(200 * 4 + 10 + 10 * 3);
  }, 600_000);

  officeTest("show the price of several estimates as one to the cent, as plain copies", async () => {
    const { held, content } = bookOf(randomPairs(10, seed), bidsTogether);
    const [recalculated] = await recalculate([await writeXlsx(content)]);
    expect(hold(recalculated, held)).toBe(10 * 7);
  }, 600_000);
}); // prettier-ignore
