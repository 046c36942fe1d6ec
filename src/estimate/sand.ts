import { depthOf, fill } from "../ground/footing";
import { loads } from "../ground/hauling";
import { tons } from "../ground/weight";
import { slotKeys } from "./fields";
import { answerOf, type Job } from "./job";

/** The sand that comes for a need, cubic yards, and the loads that bring it. */
export interface Hauled {
  need: number;
  /** Loads of each of the four trucks; null where the job has no such truck. */
  counts: (number | null)[];
  trucks: (number | null)[];
  delivered: number;
  tons: number;
}

/** The sand of a job: what is needed, what comes, and the depth that it gives, inches. */
export interface Sand extends Hauled {
  /** How far the delivery is over the need (under it: negative), in percent; null where nothing is needed. */
  overPercent: number | null;
  depthLoose: number;
  depthSettled: number;
}

/**
 * The sand for a need: the exact best loads of the job's trucks, with the user's own counts in their place. Without
 * trucks just the need is delivered. Throws a Refusal where no truck serves.
 */
export function hauled(job: Job, need: number): Hauled {
  const trucks = slotKeys("truck").map((key) => job[key] as number | null);
  const offered = trucks.some((truck) => truck !== null);
  const listed = trucks.map((size) => ({ size: size ?? 0 }));
  const best = offered ? loads(need, listed, Number(job.short ?? 0)) : [];
  const counts = trucks.map((truck, k) =>
    truck === null ? null : ((job[`truck_${k + 1}_use`] as number | null) ?? best[k]),
  );
  const delivered = offered
    ? trucks.reduce<number>((sum, truck, k) => sum + (truck ?? 0) * (counts[k] ?? 0), 0)
    : need;
  return { need, counts, trucks, delivered, tons: tons(delivered, answerOf(job, "tons_per_cy")) };
}

/** The sand for a footing on the built area (sq ft). Throws a Refusal where no answer is found. */
export function sand(job: Job, area: number): Sand {
  const numberOf = (key: string) => Number(job[key] ?? 0);
  const come = hauled(job, fill(area, numberOf("depth"), numberOf("overrun"), numberOf("settle")));
  const { need, delivered } = come;
  const depthLoose = depthOf(delivered, area);
  return {
    ...come,
    overPercent: need > 0 ? (delivered / need - 1) * 100 : null,
    depthLoose,
    depthSettled: depthLoose * (1 - numberOf("settle") / 100),
  };
}
