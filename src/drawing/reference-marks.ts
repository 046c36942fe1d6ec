import { angleOf, onCircle, type PlanColors, type PlanFrame } from "./frame";
import { label } from "./label";
import { shape, type Shape } from "./shape";

/** A stake outside the work, seen from the center: its bearing in degrees and its distance in ft. */
export interface Reference {
  name: string;
  bearing: number;
  distance: number;
}

/** Half the side of a mark, in pixels. */
const half = 5;

/** A reference stake as a square with a cross, its name, and the line to the center as far as the pins. */
export function referenceMarks(
  { name, bearing, distance }: Reference,
  pinRadius: number,
  { center, radius }: PlanFrame,
  { ink, faint, paper }: PlanColors,
): Shape[] {
  const angle = angleOf(bearing);
  const at = onCircle(center, (radius * distance) / pinRadius, angle);
  const pin = onCircle(center, radius, angle);
  const cross = (way: 1 | -1) =>
    shape("line", {
      x1: at.x - half, y1: at.y - way * half, x2: at.x + half, y2: at.y + way * half, stroke: ink, "stroke-width": 1,
    }); // prettier-ignore
  const beside = onCircle(at, 14, angle + Math.PI / 2);
  const line = shape("line", {
    x1: pin.x, y1: pin.y, x2: at.x, y2: at.y, stroke: faint, "stroke-width": 1, "stroke-dasharray": "6 4",
  }); // prettier-ignore
  return [
    ...(distance > pinRadius ? [line] : []),
    shape("rect", {
      x: at.x - half, y: at.y - half, width: 2 * half, height: 2 * half, fill: paper, stroke: ink, "stroke-width": 1.5,
    }), // prettier-ignore
    cross(1),
    cross(-1),
    label(name, { x: beside.x, y: beside.y + 5 }, paper, { "data-reference": name, "font-weight": "bold" }),
  ];
}
