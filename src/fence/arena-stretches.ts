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

const ends = ({ place, atGate }: ArenaStake) => place === "corner" || place === "tangent point" || atGate;

/** The stretches of bays between the gates of an arena, in the order walked. */
export function arenaStretches(stakes: readonly ArenaStake[]): ArenaStretch[] {
  const first = Math.max(0, stakes.findIndex(ends));
  const round = [...stakes.slice(first), ...stakes.slice(0, first)];
  const stretches: ArenaStretch[] = [];
  let open = false;
  round.forEach((from, k) => {
    const to = round[(k + 1) % round.length];
    if (from.gate === undefined && !open)
      stretches.push({ bays: 1, bay: to.chord, side: from.side, from, to });
    else if (from.gate === undefined) {
      const stretch = stretches[stretches.length - 1];
      stretch.bays++;
      stretch.to = to;
    }
    open = from.gate === undefined && !ends(to);
  });
  return stretches;
}
