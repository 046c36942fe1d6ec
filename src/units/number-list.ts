import { messages } from "./messages";
import { notAllowed } from "./refusal";
import { type Range, readQuantity } from "./range";

const SEPARATOR = ";";

/**
 * The numbers of a text, with a semicolon or a comma and a space between them: 80; -12.5; 60. With a unit each may
 * be written as a length, with a sign. Refuses what it cannot read.
 */
export function readNumbers(given: number | string, range: Range): number[] {
  if (typeof given === "number") return [given];
  const parts = given.split(given.includes(SEPARATOR) ? SEPARATOR : /,\s+/).map((part) => part.trim());
  if (parts.includes("")) throw notAllowed(messages.unreadable(given, messages.listExamples));
  return parts.map((part) => readQuantity(part, range));
}

/** The same numbers, to a millionth, as a cell holds them: one as itself, several as a text that no spreadsheet takes for a number. */
export const numbersAsCell = (values: readonly number[]): number | string =>
  values.length === 1 ? values[0] : values.map((value) => Number(value.toFixed(6))).join(`${SEPARATOR} `);
