import { fixedOf } from "../estimate/fixed";
import { fixedKeys } from "../estimate/fixed-keys";
import { type Job } from "../estimate/job";
import { type Structure } from "../estimate/structures";
import { blank, expression, type Expression } from "./expression";

/** The numbers of the time of writing that the formulas of a structure rest on; blank where the job has no answer. */
export function fixedFormulas(structure: Structure, job: Job): Record<string, Expression> {
  const fixed = fixedOf(job);
  return Object.fromEntries(
    fixedKeys[structure].map((key) => [`${key}_fixed`, key in fixed ? expression(fixed[key]) : blank]),
  );
}
