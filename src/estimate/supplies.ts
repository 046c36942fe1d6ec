import { roundUp } from "../units/rounding";
import { circleOf, isArena, isPosted, stakesOf, type Pen } from "./pen";

/** Stakes of a round pen beside those at the joints: the center and two reference stakes outside the work (common practice, no source). */
export const extraStakes = 3;

/** Line to tie off at an end, and past the circle at both ends of the reference line, in ft. */
export const lineToTieOff = 5;
export const lineBeyond = 20;

/** Ends of the four lines of an arena, each with a stake past the corner (common practice, no source). */
export const lineEnds = 8;

/** Corners of an arena, which are staked beside the posts where they are round. */
export const corners = 4;

/** What is needed to lay a pen or an arena out; counts of whole pieces. */
export interface Supplies {
  stakes: number;
  rolls: number;
  cans: number;
}

/** Stakes, and feet of line: of a pen one radius and the reference line across the center, of an arena its four sides. */
function stakesAndLine(pen: Pen): { stakes: number; line: number } {
  if (!isArena(pen))
    return {
      stakes: stakesOf(pen) + extraStakes,
      line: circleOf(pen) / 2 + lineToTieOff + circleOf(pen) + lineBeyond,
    };
  const { length, width } = isPosted(pen) ? pen.line : pen;
  const round = isPosted(pen) && pen.line.cornerRadius > 0 ? corners + pen.layout.arcCenters.length : 0;
  return {
    stakes: stakesOf(pen) + lineEnds + round,
    line: 2 * (length + width) + lineEnds * lineToTieOff,
  };
}

/**
 * Stakes at every joint and where lines and arcs are held, line, and paint for once around (common practice, no
 * source). Lengths in ft, of a roll of line and of what one can marks.
 */
export function layoutSupplies(pen: Pen, roll: number, reach: number): Supplies {
  const { stakes, line } = stakesAndLine(pen);
  return { stakes, rolls: roundUp(line / roll), cans: roundUp(pen.distanceAround / reach) };
}
