import { INCHES_PER_FOOT } from "../units/conversion";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";

/**
 * How many times its thickness the radius must be for a board or pipe to be pulled around by hand and stay sound:
 * common practice, no source. It leaves a 2x straight on any pen under about 100 ft and bends a 1x from about 50 ft on.
 * At 400 the outer fibers of softwood (1.4 million psi) are under 1750 psi, and steel pipe of 35 000 psi is just short
 * of yielding. Curved laminations, pressed and glued, may go to 100 (southern pine) or 125 (other softwoods): National
 * Design Specification for Wood Construction.
 */
export const LEAST_BEND_RATIO = 400;

/** Whether a piece follows the curve over several bays, and by what that was decided. */
export interface Bend {
  bends: boolean;
  /** Of the curve, ft, and how many times the thickness, in, that is; from `least` times on stock bends. */
  radius: number;
  thickness: number;
  ratio: number;
  least: number;
  sentence: string;
}

/** Whether stock so thick, in, bends to a radius, ft, over 0 both. */
export function bend(thickness: number, radius: number, leastRatio = LEAST_BEND_RATIO): Bend {
  const ratio = (radius * INCHES_PER_FOOT) / thickness;
  const bends = ratio >= leastRatio * (1 - EPSILON);
  const sentence = messages.bend(bends, radius, ratio, thickness, leastRatio);
  return { bends, radius, thickness, ratio, least: leastRatio, sentence };
}
