import { circleOf, isArena, type Pen } from "../estimate/pen";
import { type PieceOnGround, bearingAtFoot, piecesOnGround } from "../estimate/pieces-on-ground";
import { turned } from "../geometry/point";
import { pieceInWords } from "../estimate/sentences";
import { onPlan, type PlanFrame, type Point } from "./frame";
import { messages, type PlanWords } from "./messages";

/** One straight piece of the fence on the drawing, and what it is called. Lengths in ft. */
export interface PlacedPiece {
  kind: PieceOnGround["kind"];
  name: string;
  length: number;
  /** Of a gate hung on posts; `length` is then that of one. */
  leaves?: 1 | 2;
  from: Point;
  to: Point;
  /** Another estimate brings it. */
  byOther?: boolean;
}

/**
 * The pieces in the order they stand, clockwise. The first one's middle, of an arena the near end, is at the foot of
 * the plan; with a bearing, degrees, the plan's top is north and the fence lies as its layout does: the first gate's
 * middle, without a gate the first pin, at the bearing, of an arena the left side along it. Pieces by other say so.
 */
export function placedPieces(
  pen: Pen,
  frame: PlanFrame,
  bearing?: number,
  words: PlanWords = messages.en,
  byOther: readonly boolean[] = [],
): PlacedPiece[] {
  const pieces = piecesOnGround(pen, bearing ?? bearingAtFoot(pen));
  const scale = frame.radius / halfExtent(pen, bearing);
  const count = (gates: boolean) => pieces.filter(({ kind }) => (kind === "gate") === gates).length;
  const all = { panel: count(false), bay: count(false), gate: count(true) };
  const placed = { panel: 0, bay: 0, gate: 0 };
  return pieces.map(({ kind, length, from, to, side, hung }, k) => {
    const place = ++placed[kind];
    const clear =
      hung?.opening ??
      (kind === "gate" && pen.structure === "panel pen" ? pen.openings[place - 1] : undefined);
    const size = hung?.leaves === 2 ? words.twoLeaves(pieceInWords(length)) : pieceInWords(length);
    const name = words[kind](place, all[kind], size) + (clear === undefined ? "" : words.opening(clear));
    return {
      kind,
      name: [name, ...(side ? [words.side[side]] : []), ...(byOther[k] ? [words.byOther] : [])].join(", "),
      length,
      ...(hung && { leaves: hung.leaves }),
      from: onPlan(frame, scale, from),
      to: onPlan(frame, scale, to),
      ...(byOther[k] && { byOther: true }),
    };
  });
}

/** How far a fence reaches from its center, ft: of an arena up and down or to the sides, as it lies on the plan. */
export function halfExtent(pen: Pen, bearing = bearingAtFoot(pen)): number {
  if (!isArena(pen)) return circleOf(pen) / 2;
  const reach = pen.layout.corners.flatMap((corner) => {
    const { east, north } = turned(corner, bearing);
    return [Math.abs(east), Math.abs(north)];
  });
  return Math.max(...reach);
}

/** The middle of a piece. */
export const middleOf = ({ from, to }: PlacedPiece): Point => ({
  x: (from.x + to.x) / 2,
  y: (from.y + to.y) / 2,
});
