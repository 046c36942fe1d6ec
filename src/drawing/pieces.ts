import { piecesAround, type Pen, type PieceAround } from "../estimate/pen";
import { pieceInWords } from "../estimate/sentences";
import { angleOf, onCircle, type PlanFrame, type Point } from "./frame";
import { messages, type PlanWords } from "./messages";

/** One straight piece of the fence on the drawing, and what it is called. Lengths in ft. */
export interface PlacedPiece {
  kind: PieceAround["kind"];
  name: string;
  length: number;
  from: Point;
  to: Point;
}

/**
 * The pieces in the order they stand, clockwise. The first one's middle is at the foot of the plan; with a bearing,
 * degrees, the plan's top is north and the pen lies as its layout does: the first gate's middle, without a gate the
 * first pin, at the bearing.
 */
export function placedPieces(
  pen: Pen,
  { center, radius }: PlanFrame,
  bearing?: number,
  words: PlanWords = messages.en,
): PlacedPiece[] {
  const pieces = piecesAround(pen);
  const fence = pieces.length - pen.gates.length;
  const all = { panel: fence, bay: fence, gate: pen.gates.length };
  const placed = { panel: 0, bay: 0, gate: 0 };
  const toMiddle = bearing === undefined || pen.gates.length > 0 ? (pieces[0]?.angle ?? 0) / 2 : 0;
  let angle = angleOf(bearing ?? 180) - toMiddle;
  return pieces.map(({ kind, length, angle: turn }) => {
    const from = onCircle(center, radius, angle);
    angle += turn;
    const name = words[kind](++placed[kind], all[kind], pieceInWords(length));
    return { kind, name, length, from, to: onCircle(center, radius, angle) };
  });
}

/** The middle of a piece. */
export const middleOf = ({ from, to }: PlacedPiece): Point => ({
  x: (from.x + to.x) / 2,
  y: (from.y + to.y) / 2,
});
