import { notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";

/** Rows of rails on posts, all in inches: the top of the highest is level with the top of the posts. */
export interface RailRows {
  rows: number;
  /** Face width of a board, diameter of pipe. */
  width: number;
  /** How high the board at the foot is; 0 where there is none. */
  foot: number;
  /** Open between the ground, or the board at the foot, and the lowest rail. */
  under: number;
  /** From the ground to the top of the posts. */
  height: number;
}

/** Where they stand, in inches above the ground. */
export interface RailHeights {
  /** The middles, from the lowest rail up. */
  middles: number[];
  /** Open from one rail to the next; 0 where there is one. */
  between: number;
}

/**
 * The heights of the rows: the lowest over its open space, the highest level with the posts, the others evenly between
 * them. One row stands at the top. Refuses rows that do not fit over one another. Common practice, no source.
 */
export function railHeights({ rows, width, foot, under, height }: RailRows): RailHeights {
  const open = height - foot - under - rows * width;
  if (open < -EPSILON) throw notAllowed(messages.railsTooMany(rows, width, foot + under, height));
  const between = rows > 1 ? Math.max(0, open) / (rows - 1) : 0;
  const middles = Array.from({ length: rows }, (_, k) => height - width / 2 - (rows - 1 - k) * (width + between));
  return { middles, between };
} // prettier-ignore
