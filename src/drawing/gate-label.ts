import { bearingOf, onCircle, type PlanFrame, type Point } from "./frame";
import { label } from "./label";
import { middleOf, type PlacedPiece } from "./pieces";
import { type Shape } from "./shape";

/** A gate's label stands inside the pen, beside the gate, so that the pen can fill the plan's width. */
export function gateLabel(
  words: string,
  gate: PlacedPiece,
  { center, radius }: PlanFrame,
  paper: string,
): Shape {
  const angle = bearingOf(middleOf(gate), center);
  const at = onCircle(center, radius - 12, angle);
  const across = Math.cos(angle);
  return label(words, { x: at.x, y: at.y + 5 - 8 * Math.sin(angle) }, paper, {
    "text-anchor": across > 0.4 ? "end" : across < -0.4 ? "start" : "middle",
  });
}

/** The label of a gate on a side of an arena, inside the fence and beside the gate. */
export function gateLabelBeside(words: string, gate: PlacedPiece, center: Point, paper: string): Shape {
  const { x, y } = middleOf(gate);
  const along = Math.atan2(gate.to.y - gate.from.y, gate.to.x - gate.from.x);
  const [inX, inY] = [-Math.sin(along), Math.cos(along)];
  const upright = Math.abs(inX) > 0.7;
  // In a corner of the arena the label keeps clear of the sides.
  const [left, right] = [center.x - x > 30, x - center.x > 30];
  const anchor = upright ? (inX > 0 ? "start" : "end") : left ? "start" : right ? "end" : "middle";
  const aside = upright ? 0 : left ? -8 : right ? 8 : 0;
  // Near a corner it moves on toward the middle, where a gate around the corner has no label.
  const toMiddle = upright && Math.abs(center.y - y) > 90 ? Math.sign(center.y - y) * 22 : 0;
  return label(words, { x: x + inX * 12 + aside, y: y + 5 + toMiddle + inY * (upright ? 12 : 17) }, paper, {
    "text-anchor": anchor,
  });
}

/** Half the width of a sign, and of its line's height, in pixels; and what stays free inside the fence. */
const half = { sign: 3.9, line: 8 };
const free = 8;

/** The same, as near to the gate as it lies whole inside the fence, so that it covers no stake and no number. */
export function gateLabelInside(
  words: string,
  gate: PlacedPiece,
  { center, radius }: PlanFrame,
  paper: string,
): Shape {
  const angle = bearingOf(middleOf(gate), center);
  const across = half.sign * words.length;
  let inset = 12;
  const corner = () => {
    const { x, y } = onCircle({ x: 0, y: 0 }, radius - inset, angle);
    return Math.hypot(Math.abs(x) + across, Math.abs(y) + half.line);
  };
  while (corner() > radius - free && inset < radius) inset += 2;
  const { x, y } = onCircle(center, radius - inset, angle);
  return label(words, { x, y: y + 5 }, paper);
}
