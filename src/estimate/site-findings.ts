import { type RoundFence, type StraightFence } from "../fence/fence-line";
import { gateLeaves, leafFouls, leavesFoul, type Leaf } from "../fence/leaf-swing";
import { wedgesBetween, type Wedge } from "../fence/wedges";
import { wedgesAlong } from "../fence/wedges-along";
import { type ConvexOutline } from "../geometry/convex-outline";
import { Refusal } from "../units/refusal";
import { type Hand, type Swing } from "./fields";
import { type PieceOnGround } from "./pieces-on-ground";

/** How far a leaf is to open, degrees: square to the fence (common practice, no source). */
export const OPENS = 90;

/** A fence on its site, with what is near it. */
export interface Surrounded {
  pieces: readonly PieceOnGround[];
  /** The line that nothing of the fence stands outside of. */
  outer: RoundFence | ConvexOutline;
  neighbors: readonly (RoundFence | StraightFence)[];
  turningRoom: number;
  hand: Hand;
  swing: Swing;
}

/** One leaf with its gate's number from 1, and what it strikes. */
export interface SwungLeaf {
  gate: number;
  leaf: Leaf;
  /** The least opening, degrees, at which it strikes the pen's own fence. */
  own?: number;
  /** The same of fences nearby, by their number from 1. */
  neighbors: { neighbor: number; at: number }[];
  /** Gates of higher number whose leaf it can meet. */
  gates: number[];
}

/** What was found: how the leaves swing, the wedges by the neighbor's number, and neighbors that stand in the fence. */
export interface Findings {
  leaves: SwungLeaf[];
  wedges: { neighbor: number; wedge: Wedge }[];
  /** Neighbors of which it cannot be told, and why. */
  unclear: { neighbor: number; why: string }[];
}

/** What is wrong between a fence, its gates and the fences near it. */
export function findingsOf(site: Surrounded): Findings {
  const wedges: Findings["wedges"] = [];
  const unclear: Findings["unclear"] = [];
  site.neighbors.forEach((fence, k) => {
    try {
      wedges.push(...wedgesOf(site, fence).map((wedge) => ({ neighbor: k + 1, wedge })));
    } catch (refusal) {
      if (!(refusal instanceof Refusal)) throw refusal;
      unclear.push({ neighbor: k + 1, why: refusal.message });
    }
  });
  return { leaves: leavesOf(site), wedges, unclear };
}

const wedgesOf = ({ outer, turningRoom }: Surrounded, fence: RoundFence | StraightFence): Wedge[] =>
  "center" in outer ? wedgesBetween(outer, fence, turningRoom) : wedgesAlong(outer, fence, turningRoom);

function leavesOf({ pieces, neighbors, hand, swing }: Surrounded): SwungLeaf[] {
  const hung = pieces.flatMap((piece, at) => {
    if (piece.kind !== "gate") return [];
    const chord = Math.hypot(piece.to.east - piece.from.east, piece.to.north - piece.from.north);
    const length = Math.min(piece.length, chord);
    const hung = { from: piece.from, to: piece.to, leaf: length, hingeInset: (chord - length) / 2 };
    return gateLeaves({ ...hung, leaves: 1, hand, swing, opens: OPENS }).map((leaf) => ({ at, leaf }));
  });
  return hung.map(({ at, leaf }, k): SwungLeaf => {
    const others = pieces.filter((_, j) => j !== at);
    const struck = leafFouls(leaf, others).map((foul) => foul.at);
    return {
      gate: k + 1,
      leaf,
      ...(struck.length > 0 && { own: Math.min(...struck) }),
      neighbors: leafFouls(leaf, neighbors).map(({ fence, at }) => ({ neighbor: fence + 1, at })),
      gates: hung.flatMap((other, j) => (j > k && leavesFoul(leaf, other.leaf) ? [j + 1] : [])),
    };
  });
}
