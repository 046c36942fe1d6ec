import { notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";

/**
 * A rectangle whose corners are square (radius 0) or quarter circles, all in one unit of length. The radius is at most
 * half the shorter side: a larger one is refused.
 */
export interface RoundedRectangle {
  length: number;
  width: number;
  cornerRadius: number;
}

/** The area inside. */
export function roundedRectangleArea(shape: RoundedRectangle): number {
  const radius = cornerRadius(shape);
  return shape.length * shape.width - (4 - Math.PI) * radius * radius;
}

/** The distance around. */
export function roundedRectanglePerimeter(shape: RoundedRectangle): number {
  return 2 * (shape.length + shape.width) - (8 - 2 * Math.PI) * cornerRadius(shape);
}

/** The distance between opposite corners of a rectangle with square corners. */
export const diagonal = (length: number, width: number) => Math.hypot(length, width);

/** The corner radius of a shape, at most half its shorter side. Refuses a larger one. */
export function cornerRadius({ length, width, cornerRadius }: RoundedRectangle): number {
  const most = Math.min(length, width) / 2;
  if (cornerRadius > most * (1 + EPSILON)) throw notAllowed(messages.cornerRadius(most));
  return Math.min(cornerRadius, most);
}
