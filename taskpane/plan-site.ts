import { sitedPlan, type SitedPlan } from "../src/drawing/plan-of-site";
import { answerOf, type Job } from "../src/estimate/job";
import { type Pen } from "../src/estimate/pen";
import { siteSentences } from "../src/estimate/site-sentences";

/** How a job's plan shows its site, and what was found there in sentences; nothing where there is nothing to show. */
export function planSite(job: Job, pen: Pen): Partial<Pick<SitedPlan, "options">> & { notes?: string[] } {
  const sited = sitedPlan(job, pen);
  return sited
    ? { options: sited.options, notes: siteSentences(sited.found, answerOf(job, "turning_room")) }
    : {};
}
