import { convertLength, INCHES_PER_FOOT, type LengthUnit } from "./conversion";
import { feetInches } from "./feet-inches";
import { messages } from "./messages";
import { DECIMAL, decimal } from "./number-text";
import { notAllowed } from "./refusal";

/** How a text is read: whether 30-4 1/2 is feet and inches. */
export interface LengthReading {
  dash?: boolean;
}

const FRACTION = String.raw`\d+\s*/\s*\d+`;
const SIZE = String.raw`(?:\d+\s+${FRACTION}|${FRACTION}|${DECIMAL})`;
const INCHES = String.raw`(?:\d+\s*-\s*${FRACTION}|${SIZE})`;
const FOOT_MARK = String.raw`(?:'|ft\.?|feet|foot)`;
const INCH_MARK = String.raw`(?:"|in\.?|inch|inches)`;

const one = (pattern: string) => new RegExp(`^${pattern}$`);
const FEET_AND_INCHES = one(String.raw`(\d+)\s*${FOOT_MARK}\s*-?\s*(${INCHES})\s*${INCH_MARK}?`);
const DASHED = one(String.raw`(\d+)\s*-\s*(\d+\s+${FRACTION}|${DECIMAL})\s*${INCH_MARK}?`);
const INCHES_ALONE = one(String.raw`(${INCHES})\s*${INCH_MARK}`);
const ONE_UNIT = one(String.raw`(${SIZE})\s*(${FOOT_MARK}|[a-z]+\.?)?`);

const UNITS: Record<string, LengthUnit | undefined> = {
  "'": "ft",
  ft: "ft",
  foot: "ft",
  feet: "ft",
  yd: "yd",
  yard: "yd",
  yards: "yd",
  m: "m",
  meter: "m",
  meters: "m",
  metre: "m",
  metres: "m",
  cm: "cm",
  mm: "mm",
};

/**
 * A length as people write it, in the unit asked for: 30', 30' 4 1/2", 30 ft 4 in, 30'-4", 126 in, 18,5 m, 450 mm,
 * 10 yd or a bare number; with straight or curly quotes or primes, and with a sign. Refuses what it cannot read, with
 * examples, 12 or more inches beside feet, and a comma before exactly three digits.
 */
export function readLength(text: string, unit: "ft" | "in", reading: LengthReading = {}): number {
  const plain = plainMarks(text);
  const negative = /^-/.test(plain);
  const size = sizeOf(plain.replace(/^[+-]\s*/, ""), unit, reading);
  if (size === undefined || !Number.isFinite(size))
    throw notAllowed(messages.unreadable(text.trim(), messages.lengthExamples));
  return negative ? -size : size;
}

function sizeOf(text: string, unit: "ft" | "in", { dash }: LengthReading): number | undefined {
  const both = FEET_AND_INCHES.exec(text) ?? (dash ? DASHED.exec(text) : null);
  if (both) return feetAndInches(Number(both[1]), amount(both[2]), unit, text);
  const inches = INCHES_ALONE.exec(text);
  if (inches) return convertLength(amount(inches[1]), "in", unit);
  const found = ONE_UNIT.exec(text);
  const written = found?.[2] ? UNITS[found[2].replace(".", "")] : unit;
  return found && written ? convertLength(amount(found[1]), written, unit) : undefined;
}

/** Twelve inches or more beside feet are refused: they are likelier a slip of the pen than meant. */
function feetAndInches(feet: number, inches: number, unit: "ft" | "in", text: string): number {
  if (inches >= INCHES_PER_FOOT)
    throw notAllowed(messages.inchesOverFoot(text, feetInches(feet + inches / INCHES_PER_FOOT, 64)));
  return unit === "ft"
    ? feet + inches / INCHES_PER_FOOT
    : convertLength(feet * INCHES_PER_FOOT + inches, "in", unit);
}

/** The value of a decimal, a fraction, or a whole number and a fraction. */
function amount(text: string): number {
  const mixed = /^(?:(\d+)(?:\s*-\s*|\s+))?(\d+)\s*\/\s*(\d+)$/.exec(text);
  return mixed ? Number(mixed[1] ?? 0) + Number(mixed[2]) / Number(mixed[3]) : decimal(text);
}

/** The same text with straight marks, plain spaces and fractions written out. */
function plainMarks(text: string): string {
  return text
    .trim()
    .toLowerCase()
    .replace(/[\u00bc-\u00be\u2150-\u215e]/g, (sign) => ` ${sign.normalize("NFKC")}`)
    .replace(/\u2044/g, "/")
    .replace(/[\u2010-\u2015\u2212]/g, "-")
    .replace(/[\u2018\u2019\u201b\u2032\u02b9\u00b4`]/g, "'")
    .replace(/[\u201c\u201d\u201f\u2033\u02ba]|''/g, '"')
    .replace(/\s+/g, " ")
    .trim();
}
