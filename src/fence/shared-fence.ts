import { distance } from "../geometry/point";
import { INCHES_PER_FOOT } from "../units/conversion";
import { type Stake } from "./layout";

/** What of a second pen's fence the first pen's estimate brings. */
export interface Shared {
  /** Whether the stake is one of the other pen's. */
  byOther: boolean;
  /** Whether the bay, panel or gate from the stake before is the other pen's. */
  runByOther: boolean;
}

/** Stakes no farther apart than this are one, ft: a quarter of an inch, as near as a stake is set. */
const SAME_STAKE = 0.25 / INCHES_PER_FOOT;

/**
 * The second pen's stakes, each marked with whether it and the run before it are the first pen's already. Both layouts
 * are in site coordinates, ft. A run is shared where both its stakes are, and follow one another in both pens.
 */
export function markShared<S extends Stake>(second: readonly S[], first: readonly Stake[]): (S & Shared)[] {
  const same = second.map((stake) => first.findIndex((other) => distance(stake, other) <= SAME_STAKE));
  return second.map((stake, i) => {
    const [here, before] = [same[i], same.at(i - 1) as number];
    const step = Math.abs(here - before);
    const neighbors = step === 1 || step === first.length - 1;
    return { ...stake, byOther: here >= 0, runByOther: here >= 0 && before >= 0 && neighbors };
  });
}
