import { choiceOf, type Job } from "../estimate/job";
import { type North } from "../estimate/fields";
import { type Pen } from "../estimate/pen";
import { neighborsOf, placed, siteFindings } from "../estimate/site";
import { strikes, type Findings } from "../estimate/site-findings";
import { stakesOnGround } from "../estimate/stakes-on-ground";
import { Refusal } from "../units/refusal";
import { type PlanOptions } from "./plan";

/** What was found on a job's site, and how its plan shows it: laid out by its bearings. */
export interface SitedPlan {
  found: Findings;
  options: Required<Pick<PlanOptions, "site" | "bearing" | "north">>;
}

/** The site of a job where there is something to show: a fence nearby, or a leaf that strikes. Of places that do not fit the gate nothing is told. */
export function sitedPlan(job: Job, pen: Pen): SitedPlan | undefined {
  const neighbors = neighborsOf(job);
  try {
    const { bearing } = placed(job, pen, (asked) => stakesOnGround(pen, asked));
    const found = siteFindings(job, pen, bearing);
    if (neighbors.length === 0 && !found.leaves.some(strikes)) return undefined;
    const north = choiceOf(job, "north") as North;
    return { found, options: { site: { findings: found, neighbors }, bearing, north } };
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}
