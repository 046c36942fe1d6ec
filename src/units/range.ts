import { INCHES_PER_FOOT } from "./conversion";
import { readLength } from "./length";
import { messages } from "./messages";
import { readNumber } from "./number-text";
import { notAllowed } from "./refusal";

/** The longest length that is legal, in feet; also the largest bare number that is taken for a length in any unit. */
export const LONGEST_FT = 5000;

/** What a number may be, both ends included. With a unit it is a length, and a text may name another unit. */
export interface Range {
  unit?: "ft" | "in";
  least: number;
  most: number;
  /** True where the least itself is not legal. */
  over?: boolean;
  whole?: boolean;
  /** True where 30-4 1/2 is read as feet and inches. */
  dash?: boolean;
}

/** The range of an ordinary length: over 0 to 5000 ft. */
export const lengthRange = (unit: "ft" | "in"): Range => ({
  unit,
  least: 0,
  over: true,
  most: unit === "ft" ? LONGEST_FT : LONGEST_FT * INCHES_PER_FOOT,
});

/** What a range allows, in words: over 0 to 5000 ft. */
export function allowed({ unit, least, most, over, whole }: Range): string {
  const inFeet = unit === "in" && most >= LONGEST_FT;
  const high = inFeet ? `${most / INCHES_PER_FOOT} ft` : unit ? `${most} ${unit}` : String(most);
  return messages.range(String(least), high, over ? "over" : whole ? "whole" : "from");
}

/** What a person gave, a number or a text with or without a unit, in the unit of the range. Refuses what it cannot read. */
export function readQuantity(given: number | string, { unit, dash }: Range): number {
  if (typeof given === "number") return given;
  return unit ? readLength(given, unit, { dash }) : readNumber(given);
}

/**
 * The same, held to the range: refuses what lies outside and says what is allowed. A bare number over 5000 where a
 * length belongs is a date that a spreadsheet made of 12-6, and is told so.
 */
export function readWithin(given: number | string, range: Range): number {
  const read = readQuantity(given, range);
  if (range.unit && typeof given === "number" && read > LONGEST_FT)
    throw notAllowed(messages.looksLikeDate(allowed(range)));
  if (!isWithin(read, range)) throw notAllowed(messages.outside(allowed(range)));
  return read;
}

/** True where the number is in the range. */
export function isWithin(read: number, { least, most, over, whole }: Range): boolean {
  return (over ? read > least : read >= least) && read <= most && (!whole || Number.isInteger(read));
}
