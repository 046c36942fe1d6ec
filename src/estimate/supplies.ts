import { roundUp } from "../units/rounding";

/** Stakes beside those at the joints: the center and two reference stakes outside the work (common practice, no source). */
export const extraStakes = 3;

/** Line to tie off at the radius's far end, and past the circle at both ends of the reference line, in ft. */
export const lineToTieOff = 5;
export const lineBeyond = 20;

/** What is needed to lay a pen out; counts of whole pieces. */
export interface Supplies {
  stakes: number;
  rolls: number;
  cans: number;
}

/**
 * Stakes at every joint, at the center and at two reference points; line for one radius and for the reference line
 * across the center; paint for once around (common practice, no source). Lengths in ft, `reach` of one can.
 */
export function layoutSupplies(
  joints: number,
  circle: number,
  around: number,
  roll: number,
  reach: number,
): Supplies {
  return {
    stakes: joints + extraStakes,
    rolls: roundUp((circle / 2 + lineToTieOff + circle + lineBeyond) / roll),
    cans: roundUp(around / reach),
  };
}
