import { type Call } from "./cells";
import { fenceCalls } from "./fence-calls";
import { groundCalls } from "./ground-calls";
import { layoutCalls } from "./layout-calls";
import { lengthCalls } from "./length-calls";
import { penCalls } from "./pen-calls";
import { shapeCalls } from "./shape-calls";

/**
 * Every worksheet function by its id, on plain data: numbers, texts, blanks and errors in, the same out, a rectangle
 * for a range. Bad input gives #VALUE!, a question without an answer #N/A, each with a message. None throws.
 */
export const calls: Record<string, Call> = {
  ...shapeCalls,
  ...penCalls,
  ...fenceCalls,
  ...layoutCalls,
  ...groundCalls,
  ...lengthCalls,
};
