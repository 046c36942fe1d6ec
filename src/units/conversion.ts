/** Exact by definition: NIST SP 811 (foot, pound) and NIST Handbook 44, Appendix C (yard, gallon, short ton). */
export const METERS_PER_FOOT = 0.3048;
export const INCHES_PER_FOOT = 12;
export const FEET_PER_YARD = 3;
export const CUBIC_FEET_PER_CUBIC_YARD = FEET_PER_YARD ** 3;
export const CUBIC_INCHES_PER_GALLON = 231;
export const POUNDS_PER_SHORT_TON = 2000;
export const KILOGRAMS_PER_POUND = 0.45359237;

const INCHES = { in: 1, ft: INCHES_PER_FOOT, yd: FEET_PER_YARD * INCHES_PER_FOOT };
const MILLIMETERS = { mm: 1, cm: 10, m: 1000 };
const MILLIMETERS_PER_INCH = 25.4;

/** The units that a length may be written in. */
export type LengthUnit = keyof typeof INCHES | keyof typeof MILLIMETERS;

/** A length in another unit; in its own unit it stays as it is, to the last digit. */
export function convertLength(length: number, from: LengthUnit, to: LengthUnit): number {
  return from === to ? length : fromInches(inInches(length, from), to);
}

const isMetric = (unit: LengthUnit): unit is keyof typeof MILLIMETERS => unit in MILLIMETERS;

function inInches(length: number, unit: LengthUnit): number {
  return isMetric(unit) ? (length * MILLIMETERS[unit]) / MILLIMETERS_PER_INCH : length * INCHES[unit];
}

function fromInches(inches: number, unit: LengthUnit): number {
  return isMetric(unit) ? (inches * MILLIMETERS_PER_INCH) / MILLIMETERS[unit] : inches / INCHES[unit];
}

/** Cubic yards in cubic feet. */
export const cubicYards = (cubicFeet: number) => cubicFeet / CUBIC_FEET_PER_CUBIC_YARD;

/** Cubic feet in cubic yards. */
export const cubicFeet = (cubicYards: number) => cubicYards * CUBIC_FEET_PER_CUBIC_YARD;
