import { type Point, ahead, bearingTo, distance } from "./point";
import { type OutlineArc, type Straight, alongAndAcross } from "./rounded-outline";

/** A straight of an outline, walked clockwise: where it begins, how long it is, and its heading, degrees. */
export type Edge = Omit<Straight, "side">;

/** A closed line that bends one way only, walked clockwise: straights, arcs, and at square corners arcs of radius 0. */
export type ConvexOutline = readonly (Edge | OutlineArc)[];

/** A place on an outline, and which way is out there, degrees. */
export interface Contact {
  place: Point;
  outward: number;
}

const isEdge = (piece: Edge | OutlineArc): piece is Edge => "heading" in piece;

/** The outline of pieces in the order walked, with a turn put in where one straight follows another at an angle. */
export const convexOutline = (pieces: ConvexOutline): ConvexOutline =>
  pieces.flatMap((piece, k) => {
    const next = pieces[(k + 1) % pieces.length];
    if (!isEdge(piece) || !isEdge(next)) return [piece];
    const turn = (((next.heading - piece.heading) % 360) + 360) % 360;
    return [piece, { center: next.from, radius: 0, start: piece.heading - 90, turn }];
  });

/** The outline through corners in the order walked, clockwise. */
export const cornered = (corners: readonly Point[]): ConvexOutline =>
  convexOutline(
    corners.map((from, k) => {
      const to = corners[(k + 1) % corners.length];
      return { from, length: distance(from, to), heading: bearingTo(from, to) };
    }),
  );

/** The outline so far outside of another, ft: what a ball's center draws that is twice as wide and rolls around it. */
export const grown = (outline: ConvexOutline, by: number): ConvexOutline =>
  outline.map((piece) =>
    isEdge(piece)
      ? { ...piece, from: ahead(piece.from, piece.heading - 90, by) }
      : { ...piece, radius: piece.radius + by },
  );

/** The place on a piece at a share (0 to 1) of its way. */
export function contactOn(piece: Edge | OutlineArc, share: number): Contact {
  if (isEdge(piece))
    return { place: ahead(piece.from, piece.heading, piece.length * share), outward: piece.heading - 90 };
  const outward = piece.start + piece.turn * share;
  return { place: ahead(piece.center, outward, piece.radius), outward };
}

/** How long a piece is, ft; a square corner is 0. */
export const lengthOf = (piece: Edge | OutlineArc) =>
  isEdge(piece) ? piece.length : (piece.radius * piece.turn * Math.PI) / 180;

/** Parts of an arc, by whose ends it is told on which side of it a place lies. */
const PARTS = 16;

/** Whether a place lies inside of an outline or on it. */
export const holds = (outline: ConvexOutline, at: Point): boolean =>
  outline.every((piece) =>
    Array.from({ length: isEdge(piece) ? 1 : PARTS }, (_, k) => contactOn(piece, k / PARTS)).every(
      ({ place, outward }) => alongAndAcross(place, at, outward).along <= 0,
    ),
  );
