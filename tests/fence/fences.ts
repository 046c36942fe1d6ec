import { isRound, type RoundFence, type StraightFence } from "../../src/fence/fence-line";
import { distance, type Point } from "../../src/geometry/point";

/** A straight run of fence by the east and north of its two ends. */
export const run = (...[a, b, c, d]: [number, number, number, number]): StraightFence => ({
  from: { east: a, north: b },
  to: { east: c, north: d },
}); // prettier-ignore

/** From a place to a fence by the fence's own points: it knows no ball and no wedge. */
export function away(place: Point, fence: RoundFence | StraightFence): number {
  if (isRound(fence)) return Math.abs(distance(place, fence.center) - fence.diameter / 2);
  const { from, to } = fence;
  const [x, y] = [to.east - from.east, to.north - from.north];
  const dot = (place.east - from.east) * x + (place.north - from.north) * y;
  const share = Math.min(1, Math.max(0, dot / (x * x + y * y)));
  return distance(place, { east: from.east + share * x, north: from.north + share * y });
}
