import { noAnswer, notAllowed } from "../units/refusal";
import { charge } from "./charges";
import { costOfLines, estimate, priced, ratesOf, type Estimate, type PricedLine } from "./estimate";
import { fields, slotKeys, type Field, type FieldValue } from "./fields";
import { type Job } from "./job";
import { messages } from "./messages";
import { type OwnLine } from "./own-lines";
import { findPrice, type PriceRow } from "./prices";
import { hauled, layers, ownLoads } from "./layers";
import { hauledLines, type Ground } from "./takeoff";
import { takeoffLine, toBuy } from "./takeoff-line";

/** One of several jobs that are priced as one, with the user's own lines in it. */
export interface JobAndOwn {
  job: Job;
  own?: readonly OwnLine[];
}

/** A line of jobs priced as one: which job it belongs to, from 0; null where all of them share it. */
export interface SharedLine extends PricedLine {
  of: number | null;
}

/** Several jobs priced as one. */
export interface Together extends Pick<Estimate, "charges" | "missing" | "pricesMissing" | "onExamples"> {
  /** Each as it is priced alone. */
  alone: Estimate[];
  /** The base and the sand of all of them and the loads that bring them. */
  ground: Ground;
  lines: SharedLine[];
}

const alike = (one: FieldValue | undefined, other: FieldValue | undefined) =>
  (one ?? null) === (other ?? null);

const hauling = [
  "short",
  "burden",
  ...slotKeys("truck"),
  ...layers.flatMap(({ unit, tonsPerCy }) => [unit, tonsPerCy]),
];

/** What jobs priced as one must have in common: how base and sand come, and what comes on top of the lines. */
export const inCommon: readonly Field[] = fields.filter(
  ({ key, section }) => section === "charges" || hauling.includes(key),
);

/**
 * Several jobs as one: the base and the sand that all of them need come in loads counted once, there is one mobilization (the most
 * that one of them has), and the charges, the least charge and the rounding are laid on the lines of all of them once.
 * All other lines, hours of labor among them, are those of each job alone. Refuses answers in which the jobs may not
 * differ, by name, and loads that the user set; passes on the refusal of a job without an answer.
 */
export function together(jobs: readonly JobAndOwn[], prices: readonly PriceRow[]): Together {
  if (jobs.length === 0) throw notAllowed(messages.noJobs);
  const [{ job: first }] = jobs;
  const differing = inCommon.filter(({ key }) => jobs.some(({ job }) => !alike(job[key], first[key])));
  if (differing.length > 0) throw noAnswer(messages.answersDiffer(differing.map(({ label }) => label.en)));
  if (jobs.some(({ job }) => ownLoads.some((key) => (job[key] ?? null) !== null)))
    throw noAnswer(messages.ownLoads);
  const alone = jobs.map(({ job, own }) => estimate(job, prices, own));
  const ground = Object.fromEntries(
    layers.map((layer) => {
      const need = alone.reduce((sum, one) => sum + one[layer.material].need, 0);
      return [layer.material, hauled(first, layer, need)];
    }),
  ) as Ground;
  const trips = Math.max(...jobs.map(({ job }) => Number(job.mobilization ?? 0)));
  const counted = [
    ...hauledLines(first, ground),
    takeoffLine("mobilization", "equipment", "mobilization", null, trips),
  ];
  const shared = counted.filter((line) => toBuy(line) !== 0);
  const keys = counted.map(({ key }) => key);
  const lines: SharedLine[] = [
    ...alone.flatMap((one, of) =>
      one.lines.filter(({ key }) => !keys.includes(key)).map((line) => ({ ...line, of })),
    ),
    ...shared.map((line) => ({ ...priced(line, prices), of: null })),
  ];
  const asked = [
    ...alone.flatMap(({ takeoff }) =>
      takeoff.filter((line) => toBuy(line) !== 0 && !keys.includes(line.key)),
    ),
    ...shared,
  ];
  return {
    alone,
    ground,
    lines,
    charges: charge(costOfLines(lines), ratesOf(first)),
    missing: asked.filter((line) => findPrice(prices, line).price === null),
    pricesMissing: lines.filter(({ price }) => price === null).length,
    onExamples: lines.filter(({ example }) => example).length,
  };
}
