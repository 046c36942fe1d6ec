import { type Side } from "../geometry/rounded-outline";
import { type ArenaStake } from "./arena-layout";

/** Equal bays between two stakes that end them: corners, tangent points or gate posts. Lengths in ft. */
export interface ArenaStretch {
  bays: number;
  /** Center to center along the chord. */
  bay: number;
  /** The side that they are on; none on an arc. */
  side?: Side;
  from: ArenaStake;
  to: ArenaStake;
}

/** The stretches of bays between the gates of an arena, in the order walked, without those that are by other. */
export function arenaStretches(
  stakes: readonly ArenaStake[],
  byOther: readonly boolean[] = [],
): ArenaStretch[] {
  const isOurs = stakes.map(({ gate }, k) => gate === undefined && !byOther[k]);
  const ends = ({ place, atGate }: ArenaStake, k: number) =>
    place === "corner" || place === "tangent point" || atGate || isOurs[k] !== isOurs.at(k - 1);
  const first = Math.max(0, stakes.findIndex(ends));
  const round = stakes.map((_, k) => (first + k) % stakes.length);
  const stretches: ArenaStretch[] = [];
  let open = false;
  round.forEach((k) => {
    const next = (k + 1) % stakes.length;
    const [from, to] = [stakes[k], stakes[next]];
    if (isOurs[k] && !open) stretches.push({ bays: 1, bay: to.chord, side: from.side, from, to });
    else if (isOurs[k]) {
      const stretch = stretches[stretches.length - 1];
      stretch.bays++;
      stretch.to = to;
    }
    open = isOurs[k] && !ends(to, next);
  });
  return stretches;
}
