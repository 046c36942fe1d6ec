import { type RoundFence } from "../fence/fence-line";
import { type ConvexOutline, convexOutline, cornered, grown } from "../geometry/convex-outline";
import { turned } from "../geometry/point";
import { roundedOutline } from "../geometry/rounded-outline";
import { isArena, isPosted, type Pen } from "./pen";

/**
 * The line that nothing of a pen or an arena stands outside of, ft about its center, its bearing as piecesOnGround takes
 * it: a circle, or an arena's outline with posts and boards on top of the line through its post centers.
 */
export function outerFence(pen: Pen, bearing: number): RoundFence | ConvexOutline {
  if (!isArena(pen)) return { center: { east: 0, north: 0 }, diameter: pen.outside };
  if (!isPosted(pen)) return cornered(pen.layout.corners.map((corner) => turned(corner, bearing)));
  const { line, sizes } = pen;
  return grown(convexOutline(roundedOutline(line, bearing).pieces), (sizes.outside.length - line.length) / 2);
}
