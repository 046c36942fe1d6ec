import { EPSILON } from "../units/rounding";
import { type Point, ahead, stepTo, turned } from "./point";
import { cornerRadius, type RoundedRectangle } from "./rounded-rectangle";

/** The sides clockwise, as seen from the near end looking along the length. */
export const sides = ["left", "far", "right", "near"] as const;
export type Side = (typeof sides)[number];

/** A straight piece of an outline, walked clockwise. */
export interface Straight {
  side: Side;
  from: Point;
  length: number;
  /** The way it is walked, degrees clockwise from north. */
  heading: number;
}

/** An arc of an outline, walked clockwise: where its first end is seen from its center, and what it turns, degrees. */
export interface OutlineArc {
  center: Point;
  radius: number;
  start: number;
  turn: number;
}

/** The line of a rectangle with square or rounded corners, its middle at 0, 0. */
export interface RoundedOutline {
  /** Where the sides meet, or would without the rounding: near left, far left, far right, near right. */
  corners: Point[];
  /** The pieces in the order walked; a side of which the rounding leaves nothing is not among them. */
  pieces: (Straight | OutlineArc)[];
}

/**
 * The outline with its length along the bearing (degrees clockwise from north). The arcs of a half-round end are one
 * piece. Refuses a corner radius over half the shorter side.
 */
export function roundedOutline(shape: RoundedRectangle, bearing: number): RoundedOutline {
  const { length, width } = shape;
  const radius = cornerRadius(shape);
  const straightLength = (side: number) => {
    const left = (side % 2 === 0 ? length : width) - 2 * radius;
    return left > EPSILON * Math.max(1, radius) ? left : 0;
  };
  const corners = [
    { east: -width / 2, north: -length / 2 },
    { east: -width / 2, north: length / 2 },
    { east: width / 2, north: length / 2 },
    { east: width / 2, north: -length / 2 },
  ].map((corner) => turned(corner, bearing));
  const pieces: RoundedOutline["pieces"] = [];
  const first = straightLength(0) > 0 ? 0 : 1;
  for (let i = first; i < first + 4; i++) {
    const side = i % 4;
    const heading = bearing + side * 90;
    const from = ahead(corners[side], heading, radius);
    const along = straightLength(side);
    if (along > 0) pieces.push({ side: sides[side], from, length: along, heading });
    const center = ahead(ahead(from, heading, along), heading + 90, radius);
    if (radius > 0) addArc(pieces, { center, radius, start: heading - 90, turn: 90 });
  }
  return { corners, pieces };
}

/** Adds an arc, or lets the one before it go on where no straight lies between them. */
function addArc(pieces: RoundedOutline["pieces"], arc: OutlineArc) {
  const before = pieces.at(-1);
  if (before && !isStraight(before)) before.turn += arc.turn;
  else pieces.push(arc);
}

/** True for a straight piece. */
export const isStraight = (piece: Straight | OutlineArc): piece is Straight => "side" in piece;

/** The place on a piece at a share (0 to 1) of its way. */
export function placeOn(piece: Straight | OutlineArc, share: number): Point {
  return isStraight(piece)
    ? ahead(piece.from, piece.heading, piece.length * share)
    : ahead(piece.center, piece.start + piece.turn * share, piece.radius);
}

/** How far a place lies along a heading, and to the right of it, from another. */
export function alongAndAcross(from: Point, to: Point, heading: number): { along: number; across: number } {
  const { east, north } = turned(stepTo(from, to), -heading);
  return { along: north, across: east };
}
