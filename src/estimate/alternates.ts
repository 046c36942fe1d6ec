import { Decimal } from "decimal.js";
import { Refusal } from "../units/refusal";
import { estimate, totalOf } from "./estimate";
import { fieldOf } from "./fields";
import { problemsOf, type Job } from "./job";
import { type OwnLine } from "./own-lines";
import { type PriceRow } from "./prices";
import { together, type JobAndOwn } from "./together";

/** Something that a customer may choose: other answers of the job (a wider gate, deeper sand, a base), or a second pen beside it. */
export type Alternate = { name: string } & ({ answers: Readonly<Job> } | { beside: JobAndOwn });

/** An alternate with what it adds to the price, or takes from it. */
export interface PricedAlternate {
  name: string;
  /** The whole price with it, $; null where there is none. */
  price: number | null;
  /** That less the price without it; null where one of the two is no price. */
  difference: number | null;
  /** Why there is no price: what is refused, or how many prices are missing. */
  refusal?: string;
}

/**
 * What each alternate does to the price of a job: the whole job is priced again with it. The user's own counts and lines
 * stay as they are. A second pen is priced together with the job, so that loads and the mobilization are shared. An
 * alternate without an answer keeps the sentence that says why.
 */
export function pricedAlternates(
  { job, own = [] }: JobAndOwn,
  alternates: readonly Alternate[],
  prices: readonly PriceRow[],
): PricedAlternate[] {
  const without = priceOf(() => alone(job, own, prices));
  return alternates.map((alternate) => {
    const { price, refusal } = priceOf(() =>
      "answers" in alternate
        ? alone({ ...job, ...alternate.answers }, own, prices)
        : totalOf(together([{ job, own }, alternate.beside], prices)),
    );
    const difference =
      price === null || without.price === null ? null : new Decimal(price).minus(without.price).toNumber();
    const why = refusal ?? without.refusal;
    return { name: alternate.name, price, difference, ...(why !== undefined && { refusal: why }) };
  });
}

/** The price of a job by itself, $, or how many prices are missing. Refuses answers that their field does not allow. */
function alone(job: Job, own: readonly OwnLine[], prices: readonly PriceRow[]): number | string {
  const [problem] = Object.entries(problemsOf(job));
  if (problem) throw new Refusal("value", `${fieldOf(problem[0]).label.en}: ${problem[1]}`);
  return totalOf(estimate(job, prices, own));
}

function priceOf(work: () => number | string): Pick<PricedAlternate, "price" | "refusal"> {
  try {
    const price = work();
    return typeof price === "number" ? { price } : { price: null, refusal: price };
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return { price: null, refusal: refusal.message };
  }
}
