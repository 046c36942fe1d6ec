import { type RoundFence, type StraightFence } from "../fence/fence-line";
import { gateLeaves, leafFouls, leavesFoul, type Leaf } from "../fence/leaf-swing";
import { wedgesBetween, type Wedge } from "../fence/wedges";
import { wedgesAlong } from "../fence/wedges-along";
import { type ConvexOutline } from "../geometry/convex-outline";
import { distance } from "../geometry/point";
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

/** Whether a leaf strikes anything on its way. */
export const strikes = ({ own, neighbors, gates }: SwungLeaf) =>
  own !== undefined || neighbors.length > 0 || gates.length > 0;

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
  const gates = pieces.filter(({ kind }) => kind === "gate");
  const hung = gates.flatMap((piece, k) =>
    gateLeaves({ ...leavesIn(piece), hand, swing, opens: OPENS }).map((leaf) => ({
      piece,
      gate: piece.hung?.place ?? k + 1,
      leaf,
    })),
  );
  return hung.map(({ piece, gate, leaf }): SwungLeaf => {
    const others = pieces.filter((other) => other !== piece);
    const struck = leafFouls(leaf, others).map((foul) => foul.at);
    const met = hung.filter((other) => other.gate > gate && leavesFoul(leaf, other.leaf));
    return {
      gate,
      leaf,
      ...(struck.length > 0 && { own: Math.min(...struck) }),
      neighbors: leafFouls(leaf, neighbors).map(({ fence, at }) => ({ neighbor: fence + 1, at })),
      gates: [...new Set(met.map((other) => other.gate))],
    };
  });
}

/** The leaves of a gate between its stakes; the frame of a gate panel is one, in the middle of its chord. */
function leavesIn({ from, to, length, hung }: PieceOnGround) {
  if (hung) {
    const { leaves, leaf, hinge } = hung;
    return { from, to, leaves, leaf, hingeInset: hinge.inset, hingeOff: hinge.off };
  }
  const chord = distance(from, to);
  const leaf = Math.min(length, chord);
  return { from, to, leaves: 1 as const, leaf, hingeInset: (chord - leaf) / 2, hingeOff: 0 };
}
