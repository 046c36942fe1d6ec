import { type Point, ahead, bearingTo, compass, distance } from "../geometry/point";
import { alongAndAcross } from "../geometry/rounded-outline";
import { twoDistances } from "../geometry/two-distances";
import { EPSILON } from "../units/rounding";
import { type RoundFence, type StraightFence, isRound } from "./fence-line";

/** How a gate is hung between the ends of its chord, walked clockwise with the pen on the right. Lengths in ft. */
export interface HungLeaves {
  from: Point;
  to: Point;
  leaves: 1 | 2;
  /** The side of a single leaf's hinges as seen from outside, facing the pen (common practice, no source). */
  hand: "left" | "right";
  swing: "in" | "out";
  /** Of one leaf, from hinge to tip. */
  leaf: number;
  /** Along the chord from each of its ends to the hinge: half the post and the hinge's room. */
  hingeInset: number;
  /** From the chord to the hinge, to the side that the leaf swings to: 0 in line with the posts, more on their face. */
  hingeOff: number;
  /** How far the leaf is to open, degrees. */
  opens: number;
}

/** One leaf and the arc that it sweeps about its hinge. */
export interface Leaf {
  hinge: Point;
  /** Where the closed leaf points, degrees. */
  closed: number;
  /** 1 where it opens clockwise as seen from above, -1 where it opens the other way. */
  way: 1 | -1;
  length: number;
  opens: number;
}

/** What a leaf strikes: which of the fences, and the opening at which it does, degrees. */
export interface Foul {
  fence: number;
  at: number;
}

/** The leaves of a gate: one at the end of its hand, or one at either end, the one at the chord's first end first. */
export function gateLeaves({
  from,
  to,
  leaves,
  hand,
  swing,
  leaf,
  hingeInset,
  hingeOff,
  opens,
}: HungLeaves): Leaf[] {
  const hung = (end: Point, other: Point, inward: 1 | -1): Leaf => {
    const closed = bearingTo(end, other);
    const way = swing === "in" ? inward : inward === 1 ? -1 : 1;
    const hinge = ahead(ahead(end, closed, hingeInset), closed + way * 90, hingeOff);
    return { hinge, closed, way, length: leaf, opens };
  };
  const right = hung(from, to, 1);
  const left = hung(to, from, -1);
  return leaves === 2 ? [right, left] : [hand === "right" ? right : left];
}

/** Where the tip of a leaf is when it is open so far, degrees. */
export const leafTip = (leaf: Leaf, opening: number): Point =>
  ahead(leaf.hinge, leaf.closed + leaf.way * opening, leaf.length);

/** The fences and posts that a leaf strikes before it is open. A post that its hinge is on is none of them. */
export function leafFouls(leaf: Leaf, fences: readonly (RoundFence | StraightFence)[]): Foul[] {
  return fences.flatMap((fence, i) => {
    const at = isRound(fence) ? strikesRound(leaf, fence) : strikesStraight(leaf, fence);
    return at !== undefined && at <= leaf.opens ? [{ fence: i, at }] : [];
  });
}

/** Whether the ground that two leaves sweep overlaps; tips that only meet do not. */
export function leavesFoul(a: Leaf, b: Leaf): boolean {
  const edges = (leaf: Leaf) =>
    [0, leaf.opens].map((opening) => ({ from: leaf.hinge, to: leafTip(leaf, opening) }));
  return leafFouls(a, edges(b)).length > 0 || leafFouls(b, edges(a)).length > 0 || arcsCross(a, b);
}

function arcsCross(a: Leaf, b: Leaf): boolean {
  const apart = distance(a.hinge, b.hinge);
  const [nearest, farthest] = [Math.abs(a.length - b.length), a.length + b.length];
  if (apart <= nearest || apart >= farthest * (1 - EPSILON)) return false;
  return (["left", "right"] as const).some((side) => {
    const crossing = twoDistances(a.hinge, b.hinge, a.length, b.length, side);
    return [a, b].every((leaf) => openingAt(leaf, crossing) <= leaf.opens);
  });
}

/** How far a leaf is open when it points at a place, degrees from 0 to under 360. */
const openingAt = (leaf: Leaf, place: Point) =>
  compass(leaf.way * (bearingTo(leaf.hinge, place) - leaf.closed));

function strikesRound(leaf: Leaf, { center, diameter }: RoundFence): number | undefined {
  const [off, radius] = [distance(leaf.hinge, center), diameter / 2];
  if (off <= radius || off >= (leaf.length + radius) * (1 - EPSILON)) return undefined;
  const toSide = Math.sqrt((off - radius) * (off + radius));
  const reach = Math.min(leaf.length, toSide);
  const cosine = (off ** 2 + reach ** 2 - radius ** 2) / (2 * off * reach);
  const half = (Math.acos(Math.min(1, cosine)) * 180) / Math.PI;
  const middle = openingAt(leaf, center);
  return middle <= half || middle + half >= 360 ? 0 : middle - half;
}

function strikesStraight(leaf: Leaf, { from, to }: StraightFence): number | undefined {
  const heading = bearingTo(from, to);
  const { along: foot, across } = alongAndAcross(from, leaf.hinge, heading);
  if (Math.abs(across) >= leaf.length * (1 - EPSILON)) return undefined;
  const half = Math.sqrt((leaf.length - across) * (leaf.length + across));
  const reached = [Math.max(0, foot - half), Math.min(distance(from, to), foot + half)];
  if (reached[1] - reached[0] <= EPSILON * leaf.length) return undefined;
  const openings = reached
    .map((at) => ahead(from, heading, at))
    .filter((place) => distance(leaf.hinge, place) > EPSILON * leaf.length)
    .map((place) => openingAt(leaf, place));
  const [least, most] = [Math.min(...openings), Math.max(...openings)];
  return most - least > 180 ? 0 : least;
}
