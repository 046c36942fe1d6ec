import { piecesAround, type PanelPen } from "../estimate/panel-pen";
import { pieceInWords } from "../estimate/sentences";
import { onCircle, type PlanFrame, type Point } from "./frame";
import { messages } from "./messages";

/** One straight piece of the fence on the drawing, and what it is called. Lengths in ft. */
export interface PlacedPiece {
  kind: "panel" | "gate";
  name: string;
  length: number;
  from: Point;
  to: Point;
}

/** The pieces in the order they stand, clockwise; the first one's middle is at the foot of the plan. */
export function placedPieces(pen: PanelPen, { center, radius }: PlanFrame): PlacedPiece[] {
  const pieces = piecesAround(pen);
  const all = { panel: pieces.length - pen.gates.length, gate: pen.gates.length };
  const placed = { panel: 0, gate: 0 };
  let angle = Math.PI / 2 - (pieces[0]?.angle ?? 0) / 2;
  return pieces.map(({ kind, length, angle: turn }) => {
    const from = onCircle(center, radius, angle);
    angle += turn;
    const name = messages[kind](++placed[kind], all[kind], pieceInWords(length));
    return { kind, name, length, from, to: onCircle(center, radius, angle) };
  });
}

/** The middle of a piece. */
export const middleOf = ({ from, to }: PlacedPiece): Point => ({
  x: (from.x + to.x) / 2,
  y: (from.y + to.y) / 2,
});
