import { noAnswer } from "../units/refusal";
import { messages } from "./messages";

/** How far, as a part of the sum, the squares of the diagonals may be off twice the squares of the sides. */
const MEASURED_WELL = 0.02;

/**
 * How far the far long side of a rectangle sits off square along itself, in the unit of the lengths: positive where
 * the first diagonal is the longer. Lengths over 0. In a parallelogram that is slid by s, the diagonals' squares are
 * (length + s)² + height² and (length - s)² + height², which differ by 4 length s. Refuses (no answer) measures whose
 * diagonals and sides differ by over 2 % in d1² + d2² = 2 (length² + width²), which every parallelogram keeps.
 */
export function outOfSquare(length: number, width: number, diagonal1: number, diagonal2: number): number {
  const sides = 2 * (length ** 2 + width ** 2);
  if (Math.abs(diagonal1 ** 2 + diagonal2 ** 2 - sides) > MEASURED_WELL * sides)
    throw noAnswer(messages.cannotBelong);
  return ((diagonal1 - diagonal2) * (diagonal1 + diagonal2)) / (4 * length);
}
