import { type Hand } from "../estimate/fields";
import { onCircle, type PlanColors } from "./frame";
import { middleOf, type PlacedPiece } from "./pieces";
import { shape, type Shape } from "./shape";

/**
 * The quarter turns that a gate's leaves swing inward, walked clockwise: one hinged at its right as seen from outside, or
 * its left; two from either end to its middle.
 */
export function gateSwings(gate: PlacedPiece, hand: Hand, colors: PlanColors): Shape[] {
  if (gate.leaves !== 2) return [gateSwing(gate, hand, colors)];
  const middle = middleOf(gate);
  return [gateSwing({ from: gate.from, to: middle }, "right", colors), gateSwing({ from: middle, to: gate.to }, "left", colors)];
} // prettier-ignore

function gateSwing({ from, to }: Pick<PlacedPiece, "from" | "to">, hand: Hand, { faint }: PlanColors): Shape {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const inward = Math.atan2(to.y - from.y, to.x - from.x) + Math.PI / 2;
  const [hinge, latch] = hand === "right" ? [from, to] : [to, from];
  const open = onCircle(hinge, length, inward);
  const at = ({ x, y }: typeof open) => `${Math.round(x * 100) / 100} ${Math.round(y * 100) / 100}`;
  const radius = Math.round(length * 100) / 100;
  return shape("path", {
    d: `M${at(latch)} A${radius} ${radius} 0 0 ${hand === "right" ? 1 : 0} ${at(open)} L${at(hinge)}`,
    fill: "none", stroke: faint, "stroke-width": 1, "stroke-dasharray": "3 2", "data-swing": hand,
  }); // prettier-ignore
}
