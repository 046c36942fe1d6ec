import { INCHES_PER_FOOT } from "./conversion";
import { roundDown } from "./rounding";

/** How feet and inches are marked: 30' 4 1/2" in a cell, 30 ft 4 1/2 in in a sentence. */
const MARKS = { signs: ["'", '"'], words: [" ft", " in"] } as const;

/**
 * A length in feet as feet and inches, rounded (half up) to the nearest part of an inch: 30' 4 1/2", 30', 30' 0 1/2"
 * or 4 1/2". Inches never reach 12. The denominator is 1 or any other whole number.
 */
export function feetInches(feet: number, denominator = 16, marks: keyof typeof MARKS = "signs"): string {
  const [footMark, inchMark] = MARKS[marks];
  const parts = roundDown(Math.abs(feet) * INCHES_PER_FOOT * denominator + 0.5);
  const sign = feet < 0 && parts > 0 ? "-" : "";
  const whole = Math.floor(parts / (INCHES_PER_FOOT * denominator));
  const rest = parts - whole * INCHES_PER_FOOT * denominator;
  if (whole > 0 && rest === 0) return `${sign}${whole}${footMark}`;
  const inches = `${mixed(rest, denominator, whole > 0)}${inchMark}`;
  return whole > 0 ? `${sign}${whole}${footMark} ${inches}` : `${sign}${inches}`;
}

/** A length of 0 inches or more as inches alone, however long, rounded the same way: 14 1/2". */
export function inchesAlone(inches: number, denominator = 16, marks: keyof typeof MARKS = "signs"): string {
  return `${mixed(roundDown(inches * denominator + 0.5), denominator, false)}${MARKS[marks][1]}`;
}

/** So many parts as a whole number and a fraction in lowest terms; behind feet the whole number is written even if 0. */
function mixed(parts: number, denominator: number, behindFeet: boolean): string {
  const whole = Math.floor(parts / denominator);
  const left = parts % denominator;
  if (left === 0) return String(whole);
  const common = greatestDivisor(left, denominator);
  const fraction = `${left / common}/${denominator / common}`;
  return whole > 0 || behindFeet ? `${whole} ${fraction}` : fraction;
}

function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b);
}
