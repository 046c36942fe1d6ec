import { type Point, bearingTo, moved, stepTo, turned } from "./point";
import { alongAndAcross } from "./rounded-outline";

/** Where a corner has to go: along side 1 (positive from corner 1 toward 2) and across it (positive toward side 3). */
export interface CornerMove {
  along: number;
  across: number;
  distance: number;
}

/** Which corners may move: all of them as little as can be, or none off the line of side 1, and corner 1 not at all. */
export type Held = "nothing" | "side 1";

/**
 * How each of four corners (clockwise, side 1 from corner 1 to 2) moves to make a true rectangle, side 1 the length.
 * With nothing held the squares of the moves add up to the least; with side 1 held corner 1 stays and corner 2 only
 * slides along the line. In the unit of the corners.
 */
export function cornerMoves(
  corners: readonly Point[],
  length: number,
  width: number,
  held: Held = "nothing",
): CornerMove[] {
  const rectangle = [
    { east: 0, north: 0 },
    { east: 0, north: length },
    { east: width, north: length },
    { east: width, north: 0 },
  ];
  const [from, about] =
    held === "nothing" ? [middle(corners), middle(rectangle)] : [corners[0], rectangle[0]];
  const steps = rectangle.map((corner) => stepTo(about, corner));
  const heading =
    held === "nothing"
      ? bestTurn(
          corners.map((corner) => stepTo(from, corner)),
          steps,
        )
      : bearingTo(corners[0], corners[1]);
  return corners.map((corner, i) => {
    const target = moved(from, turned(steps[i], heading));
    const { along, across } = alongAndAcross(corner, target, heading);
    return { along, across, distance: Math.hypot(along, across) };
  });
}

const middle = (points: readonly Point[]): Point => ({
  east: points.reduce((sum, { east }) => sum + east, 0) / points.length,
  north: points.reduce((sum, { north }) => sum + north, 0) / points.length,
});

/** The clockwise turn, degrees, that brings one figure nearest to another of the same middle. */
function bestTurn(to: readonly Point[], figure: readonly Point[]): number {
  let [sine, cosine] = [0, 0];
  figure.forEach(({ east, north }, i) => {
    sine += to[i].east * north - to[i].north * east;
    cosine += to[i].east * east + to[i].north * north;
  });
  return (Math.atan2(sine, cosine) * 180) / Math.PI;
}
