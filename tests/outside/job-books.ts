import fc from "fast-check";
import { estimate } from "../../src/estimate/estimate";
import { figuresOf } from "../../src/estimate/figures";
import { type Job } from "../../src/estimate/job";
import { type PriceRow } from "../../src/estimate/prices";
import { ownChanges, readEstimate } from "../../src/sheets/keyed";
import { estimatePlan } from "../../src/sheets/estimate";
import { type SheetPlan } from "../../src/sheets/plan";
import { pricesPlan } from "../../src/sheets/prices";
import { type WorkbookContent } from "../../src/sheets/workbook-content";
import { Refusal } from "../../src/units/refusal";
import { ownFor, randomJob, randomOwn, randomPrices, type TypedLine } from "../estimate/random-job";
import { shownBy } from "../sheets/shown";
import { withOwnLines } from "../sheets/typed-plan";

/** A job as it stands in a workbook: its estimate's name, and the lines of the user's own typed into it. */
export interface BookedJob {
  name: string;
  job: Job;
  own: TypedLine[];
}

/** Jobs that stand on one sheet of prices. */
export interface Book {
  pricesName: string;
  prices: PriceRow[];
  jobs: BookedJob[];
}

const seed = 20_260;

/** What src makes of a job; nothing where it has no answer. */
export function madeOf({ job, own }: Pick<BookedJob, "job" | "own">, prices: PriceRow[]) {
  try {
    return estimate(job, prices, own);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

/** Random jobs that have an answer on so many sheets of random prices: as many on each as have a price, and those met beside them that lack one. */
export function randomBooks(count: number, pricedEach: number): Book[] {
  const many = fc.sample(fc.record({ job: randomJob, own: randomOwn }), { seed, numRuns: count * pricedEach * 5 });
  return fc.sample(randomPrices, { seed, numRuns: count }).map((prices, b) => {
    const jobs: BookedJob[] = [];
    for (let priced = 0; priced < pricedEach;) {
      const next = many.pop()!;
      const own = ownFor(next.job, next.own);
      const made = madeOf({ job: next.job, own }, prices);
      if (!made) continue;
      if (made.pricesMissing === 0) priced++;
      jobs.push({ name: `Estimate ${b + 1}.${jobs.length + 1}`, job: next.job, own });
    }
    return { pricesName: `Prices ${b + 1}`, prices, jobs };
  });
} // prettier-ignore

/** The sheets of a book: its estimates, and its prices behind them. */
export const plansOf = ({ pricesName, prices, jobs }: Book): SheetPlan[] => [
  ...jobs.map(({ name, job, own }) => withOwnLines(estimatePlan(job, name, pricesName), own)),
  { ...pricesPlan(prices), name: pricesName },
];

/** Holds every keyed figure of a recalculated workbook against the figures of its jobs; returns how many were held. */
export function holdEstimates(content: WorkbookContent, { prices, jobs }: Book): number {
  return jobs.reduce((held, { name, job, own }) => {
    const sheet = readEstimate(shownBy(content.sheets.find((one) => one.name === name)!));
    const figures = figuresOf(job, estimate(job, prices, own));
    expect({ job, changes: ownChanges(sheet, figures) }).toEqual({ job, changes: [] });
    return held + Object.keys(figures).length;
  }, 0);
}
