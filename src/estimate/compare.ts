import { Refusal } from "../units/refusal";
import { estimate, totalOf, type Estimate } from "./estimate";
import { fields } from "./fields";
import { type Job } from "./job";
import { type OwnLine } from "./own-lines";
import { type PriceRow } from "./prices";

/** Answers that differ from the job's: a size, or anything else of it. */
export type Answers = Readonly<Job>;

/** A job priced again with some of its answers changed. */
export interface Repriced {
  answers: Answers;
  /** Absent where the job then has no answer; `refusal` says why. */
  made?: Estimate;
  refusal?: string;
  /** The price, $; null where there is none: no answer, or prices missing. */
  price: number | null;
}

/** Prices a job with other answers as a job of its own. The user's own counts are of the present size and do not go along. */
export const repriced: typeof pricedWith = (job, answers, prices, own) =>
  pricedWith(withoutOwnCounts(job), answers, prices, own);

/** Prices a job with other answers; whatever else the user set stays. */
export function pricedWith(
  job: Job,
  answers: Answers,
  prices: readonly PriceRow[],
  own: readonly OwnLine[] = [],
): Repriced {
  try {
    const made = estimate({ ...job, ...answers }, prices, own);
    const price = totalOf(made);
    return { answers, made, price: typeof price === "number" ? price : null };
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return { answers, refusal: refusal.message, price: null };
  }
}

const ownCounts = fields.filter(({ insteadOf }) => insteadOf !== undefined).map(({ key }) => key);

/** The counts that the user set in the place of computed ones, by their keys. */
export const ownCountsOf = (job: Job) => ownCounts.filter((key) => (job[key] ?? null) !== null);

/** A job as it counts by itself. */
export const withoutOwnCounts = (job: Job): Job => ({
  ...job,
  ...Object.fromEntries(ownCounts.map((key) => [key, null])),
});

/** The place of the largest of some repriced jobs, by the area built, whose price is within the budget; -1 where none is. */
export function largestWithin(some: readonly Repriced[], budget: number): number {
  return some.reduce((best, { made, price }, k) => {
    if (!made || price === null || price > budget) return best;
    return best < 0 || made.pen.area > some[best].made!.pen.area ? k : best;
  }, -1);
}
