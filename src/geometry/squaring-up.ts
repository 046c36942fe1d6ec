import { noAnswer } from "../units/refusal";
import { solve } from "./linear-system";
import { messages } from "./messages";
import { type Point, distance } from "./point";

/** Four sides in order around, side 1 from corner 1 to 2, and the diagonals from corner 1 to 3 and from 2 to 4. */
export interface MeasuredCorners {
  sides: [number, number, number, number];
  diagonals: [number, number];
}

/** The corners that fit six measures best. */
export interface AdjustedCorners {
  /** Clockwise: corner 1 at 0, 0, side 1 along the north. */
  corners: [Point, Point, Point, Point];
  /** What each measure takes to fit: four sides, two diagonals. Positive where it was measured too short. */
  corrections: number[];
  /** How far one diagonal of a rectangle alone would have to be off to leave such corrections: 0 where all six close. */
  out: number;
}

/** Each measure as a pair of corners, counted from 0. */
const MEASURES = [[0, 1], [1, 2], [2, 3], [3, 0], [0, 2], [1, 3]] as const; // prettier-ignore

/** How far out, as a part of the diagonals, measures may be that still belong together. */
const MEASURED_WELL = 0.02;
const MOST_STEPS = 50;
/** A step this small, as a part of side 1, is the last. */
const SETTLED = 1e-13;

/**
 * The corners for which the squares of all six corrections add up to the least: Gauss and Newton's method on their
 * coordinates, every measure with the same weight. Lengths over 0, in any one unit. In a rectangle an error e in one
 * diagonal leaves corrections whose squares add up to (e/2)², whatever its sides; hence `out`. Refuses (no answer) two
 * sides that do not reach across their diagonal, and six measures that are out by over 2 % of the diagonals.
 */
export function squareUp(measured: MeasuredCorners): AdjustedCorners {
  const wanted = [...measured.sides, ...measured.diagonals];
  let unknowns = firstCorners(measured);
  for (let step = 0; step < MOST_STEPS; step++) {
    const change = improvement(unknowns, missesOf(unknowns, wanted));
    unknowns = unknowns.map((value, i) => value + change[i]);
    if (squares(change) <= (SETTLED * wanted[0]) ** 2) break;
  }
  const misses = missesOf(unknowns, wanted);
  const out = 2 * Math.sqrt(squares(misses));
  const mean = (measured.diagonals[0] + measured.diagonals[1]) / 2;
  if (!(out <= MEASURED_WELL * mean)) throw noAnswer(messages.sixCannotBelong(out));
  return { corners: cornersOf(unknowns), corrections: misses.map((miss) => -miss), out };
}

/** The north of corner 2, then east and north of corners 3 and 4: all that is free when side 1 lies on the north line. */
type Unknowns = number[];

const cornersOf = ([n2, e3, n3, e4, n4]: Unknowns): [Point, Point, Point, Point] => [
  { east: 0, north: 0 },
  { east: 0, north: n2 },
  { east: e3, north: n3 },
  { east: e4, north: n4 },
];

/** The corners that fit all but the third side. */
function firstCorners({
  sides: [side1, side2, , side4],
  diagonals: [diagonal1, diagonal2],
}: MeasuredCorners) {
  const corner = (toFirst: number, toSecond: number, refusal: string) => {
    const north = (side1 ** 2 + (toFirst - toSecond) * (toFirst + toSecond)) / (2 * side1);
    const east = Math.sqrt((toFirst - north) * (toFirst + north));
    if (!(east > 0)) throw noAnswer(refusal);
    return [east, north];
  };
  return [
    side1,
    ...corner(diagonal1, side2, messages.flatCorner(1, 2, 1)),
    ...corner(side4, diagonal2, messages.flatCorner(1, 4, 2)),
  ];
}

/** How far each measure is over what the corners give. */
function missesOf(unknowns: Unknowns, wanted: readonly number[]): number[] {
  const corners = cornersOf(unknowns);
  return MEASURES.map(([a, b], i) => wanted[i] - distance(corners[a], corners[b]));
}

/** One step of the method: the misses taken as straight lines in the unknowns. */
function improvement(unknowns: Unknowns, misses: readonly number[]): number[] {
  const corners = cornersOf(unknowns);
  const slopes = MEASURES.map(([a, b]) => {
    const length = distance(corners[a], corners[b]);
    const east = (corners[b].east - corners[a].east) / length;
    const north = (corners[b].north - corners[a].north) / length;
    const part = (corner: number) => (corner === b ? 1 : corner === a ? -1 : 0);
    return [part(1) * north, part(2) * east, part(2) * north, part(3) * east, part(3) * north];
  });
  const products = (i: number, j: number) => slopes.reduce((sum, row) => sum + row[i] * row[j], 0);
  const normal = unknowns.map((_, i) => unknowns.map((_, j) => products(i, j)));
  const right = unknowns.map((_, i) => slopes.reduce((sum, row, k) => sum + row[i] * misses[k], 0));
  return solve(normal, right);
}

const squares = (values: readonly number[]) => values.reduce((sum, value) => sum + value * value, 0);
