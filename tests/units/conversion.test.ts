import {
  convertLength,
  cubicFeet,
  cubicYards,
  CUBIC_FEET_PER_CUBIC_YARD,
  CUBIC_INCHES_PER_GALLON,
  INCHES_PER_FOOT,
  KILOGRAMS_PER_POUND,
  METERS_PER_FOOT,
  POUNDS_PER_SHORT_TON,
} from "../../src/units/conversion";

describe("Exact conversions", () => {
  const rows: [id: string, what: string, ours: number, expected: number, source: string][] = [
    ["V1", "cubic feet in a cubic yard", CUBIC_FEET_PER_CUBIC_YARD, 27, "NIST Handbook 44, Appendix C"],
    ["V1", "cubic inches in a cubic yard", CUBIC_FEET_PER_CUBIC_YARD * INCHES_PER_FOOT ** 3, 46656, "NIST Handbook 44, Appendix C"],
    ["V1", "cubic meters in a cubic yard", CUBIC_FEET_PER_CUBIC_YARD * METERS_PER_FOOT ** 3, 0.764554857984, "NIST Handbook 44, Appendix C"],
    ["V2", "gallons in a cubic foot", INCHES_PER_FOOT ** 3 / CUBIC_INCHES_PER_GALLON, 1728 / 231, "NIST Handbook 44, Appendix C"],
    ["V3", "meters in a foot", METERS_PER_FOOT, 0.3048, "NIST SP 811"],
    ["V3", "kilograms in a pound", KILOGRAMS_PER_POUND, 0.45359237, "NIST SP 811"],
    ["V3", "kilograms in a short ton", POUNDS_PER_SHORT_TON * KILOGRAMS_PER_POUND, 907.18474, "NIST SP 811"],
  ]; // prettier-ignore

  test.each(rows)("%s: %s", (_id, _what, ours, expected) => {
    expect(Math.abs(ours - expected)).toBeLessThanOrEqual(expected * Number.EPSILON * 4);
  });

  test("has seven published rows", () => expect(rows).toHaveLength(7));

  test("a length in its own unit stays as it is, and comes back from any other", () => {
    for (const unit of ["in", "ft", "yd", "m", "cm", "mm"] as const) {
      expect(convertLength(60.1, unit, unit)).toBe(60.1);
      expect(convertLength(convertLength(60.1, "ft", unit), unit, "ft")).toBeCloseTo(60.1, 12);
    }
    expect(convertLength(1, "m", "mm")).toBe(1000);
    expect(convertLength(18, "m", "ft")).toBeCloseTo(18 / METERS_PER_FOOT, 12);
  });

  test("cubic yards and cubic feet turn into each other", () => {
    expect(cubicYards(54)).toBe(2);
    expect(cubicFeet(2)).toBe(54);
  });
});
