import { lumber, squarePost } from "../fence/lumber";
import { STOCK_LENGTHS } from "../fence/rails";
import { round, type Section } from "../geometry/section";

/** The posts that a job can choose, by what a builder calls them, and their actual section, in. */
export const postSizes: Record<string, Section> = {
  "4x4": squarePost("4x4"),
  "4x6": squarePost("4x6"),
  "6x6": squarePost("6x6"),
  "8x8": squarePost("8x8"),
  "4 in round": round(4),
  "5 in round": round(5),
  "6 in round": round(6),
  "8 in round": round(8),
  "10 in round": round(10),
};

/** Stock for rails: thickness and face width of a board or diameter of a pipe, in, and the lengths it is sold in, ft. */
export interface RailStock {
  thickness: number;
  width: number;
  lengths: readonly number[];
}

/** A board of a nominal size. */
export const board = (size: string): RailStock => ({
  ...lumber(size),
  lengths: STOCK_LENGTHS,
});

/** Lengths that pipe for fences is sold in, ft (common practice, no source). */
const PIPE_LENGTHS: readonly number[] = [20, 21, 24, 32];

const pipe = (diameter: number): RailStock => ({
  thickness: diameter,
  width: diameter,
  lengths: PIPE_LENGTHS,
});

/** The rails that a job can choose. Boards are dressed lumber; pipe is named by its outside diameter. */
export const railStocks: Record<string, RailStock> = {
  "2x6 board": board("2x6"),
  "2x8 board": board("2x8"),
  "1x6 board": board("1x6"),
  "5/4x6 board": board("5/4x6"),
  "1 5/8 in pipe": pipe(1.66),
  "2 3/8 in pipe": pipe(2.375),
};

/** Stock for a board laid at the ground along the foot of the fence. */
export const kickBoards = ["2x6", "2x8", "2x10", "2x12"] as const;

/** How posts are set. */
export const settings = ["driven", "tamped earth", "crushed stone", "concrete"] as const;
