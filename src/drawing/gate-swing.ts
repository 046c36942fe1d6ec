import { type Hand } from "../estimate/fields";
import { onCircle, type PlanColors } from "./frame";
import { type PlacedPiece } from "./pieces";
import { shape, type Shape } from "./shape";

/** The quarter turn that a gate's leaf swings inward, walked clockwise: hinged at its right as seen from outside, or its left. */
export function gateSwing({ from, to }: PlacedPiece, hand: Hand, { faint }: PlanColors): Shape {
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
