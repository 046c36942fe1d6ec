import { type Value } from "../src/units/cell";

/** A use of a function: what it answers, and its arguments as the calls take them. The sizes are invented. */
export interface Example {
  asks: string;
  terms: (Value | undefined)[];
}

/** What the help of a function shows beside its metadata: two examples, and where its rule comes from. */
export interface Guide {
  examples: [Example, Example];
  source: string;
}

/** A column of cells as an argument. */
export const column = (...cells: (number | string | null)[]): Value => cells.map((cell) => [cell]);

/** An example with its arguments in their order. */
export const example = (asks: string, ...terms: (Value | undefined)[]): Example => ({ asks, terms });
