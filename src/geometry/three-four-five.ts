import { noAnswer } from "../units/refusal";
import { roundDown } from "../units/rounding";
import { messages } from "./messages";

/** A right triangle of 3, 4 and 5 times a whole number of feet, to set a square corner with a tape. */
export interface RightTriangle {
  multiple: number;
  short: number;
  long: number;
  hypotenuse: number;
}

/**
 * All the 3-4-5 triangles whose legs lie along the sides of an arena, smallest first; the last one squares the corner
 * best. Lengths in ft, over 0; the longer leg goes along the longer side. Refuses (no answer) an arena under 3 by 4 ft.
 */
export function rightTriangles(length: number, width: number): RightTriangle[] {
  const largest = roundDown(Math.min(Math.max(length, width) / 4, Math.min(length, width) / 3));
  if (largest < 1) throw noAnswer(messages.noRightTriangle);
  return Array.from({ length: largest }, (_, i) => {
    const multiple = i + 1;
    return { multiple, short: 3 * multiple, long: 4 * multiple, hypotenuse: 5 * multiple };
  });
}
