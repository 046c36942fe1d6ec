import { type PlanColors } from "./frame";
import { label } from "./label";
import { shape, type Shape } from "./shape";

/** An arrow to the top of the plan in its right corner, with the name of that north under it. */
export function northArrow(name: string, width: number, { ink, paper }: PlanColors): Shape[] {
  const x = width - 22;
  return [
    shape("line", { x1: x, y1: 46, x2: x, y2: 14, stroke: ink, "stroke-width": 2 }),
    shape("path", { d: `M${x} 4 L${x + 6} 18 L${x} 15 L${x - 6} 18 Z` }),
    label(name, { x: width - 4, y: 62 }, paper, { "text-anchor": "end", "font-size": 12.5, "data-north": name }),
  ];
} // prettier-ignore
