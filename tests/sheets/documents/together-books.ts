import fc from "fast-check";
import { type Job } from "../../../src/estimate/job";
import { ownLoads } from "../../../src/estimate/layers";
import { inCommon, together } from "../../../src/estimate/together";
import { newPricesLayout } from "../../../src/sheets/prices-layout";
import { pricesName } from "../../../src/sheets/prices-layout";
import { togetherPlan } from "../../../src/sheets/documents/together";
import { type EstimateSource } from "../../../src/sheets/documents/source";
import { Refusal } from "../../../src/units/refusal";
import { randomJob } from "../../estimate/random-job";

const noOwnLoads = Object.fromEntries(ownLoads.map((key) => [key, null]));

/** A job with what several jobs priced as one have in common taken from the first. */
export const like = (first: Job, other: Job): Job => ({
  ...other,
  ...Object.fromEntries(inCommon.map(({ key }) => [key, first[key]])),
  ...noOwnLoads,
});

/** Pairs of random jobs that can be priced as one. */
export function randomPairs(count: number, seed: number): Job[][] {
  const found: Job[][] = [];
  const many = fc.sample(fc.tuple(randomJob, randomJob), { seed, numRuns: count * 8 });
  for (const [first, other] of many) {
    const jobs = [{ ...first, ...noOwnLoads }, like(first, other)];
    if (found.length < count && haveAnswer(jobs)) found.push(jobs);
  }
  return found;
}

function haveAnswer(jobs: Job[]): boolean {
  try {
    return Boolean(together(jobs.map((job) => ({ job })), []));
  } catch (refusal) {
    if (refusal instanceof Refusal) return false;
    throw refusal;
  }
} // prettier-ignore

/** The sheet that prices some estimates as one, beside the sheet of prices. */
export const togetherOf = (sources: EstimateSource[], name = "Together") =>
  togetherPlan(sources, newPricesLayout(pricesName), name);
