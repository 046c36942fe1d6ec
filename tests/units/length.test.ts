import fc from "fast-check";
import { feetInches } from "../../src/units/feet-inches";
import { readLength } from "../../src/units/length";
import { Refusal } from "../../src/units/refusal";

describe("A length as people write it", () => {
  const readings: [text: string, feet: number][] = [
    ["30'", 30],
    [`30' 4"`, 30 + 4 / 12],
    [`30'4 1/2"`, 30.375],
    ["30 ft 4 in", 30 + 4 / 12],
    ["30ft. 4in.", 30 + 4 / 12],
    ["30 feet 4 inches", 30 + 4 / 12],
    ["1 foot 1 inch", 1 + 1 / 12],
    ["30 ft 4", 30 + 4 / 12],
    [`30'-4"`, 30 + 4 / 12],
    [`30' 4-1/2"`, 30.375],
    ["30\u2019 4\u201d", 30 + 4 / 12],
    ["30\u2032 4\u00bd\u2033", 30.375],
    ["30' 4''", 30 + 4 / 12],
    [`30' 0 1/2"`, 30 + 1 / 24],
    ["30 1/2'", 30.5],
    ["30.5", 30.5],
    [".5", 0.5],
    ["30,5", 30.5],
    ["30,25 ft", 30.25],
    ["1,2345", 1.2345],
    ["126 in", 10.5],
    [`126"`, 10.5],
    [`4 1/2"`, 0.375],
    [`1/2"`, 1 / 24],
    ["18 m", 18 / 0.3048],
    ["18,5 m", 18.5 / 0.3048],
    ["1850 cm", 18.5 / 0.3048],
    ["450 mm", 0.45 / 0.3048],
    ["10 yd", 30],
    ["2 yards", 6],
    ["3 meters", 3 / 0.3048],
    ["  60\u00a0FT ", 60],
    ["-3 in", -0.25],
    ["\u22123 in", -0.25],
  ];

  test.each(readings)("%p is read", (text, feet) => {
    expect(readLength(text, "ft")).toBeCloseTo(feet, 12);
    expect(readLength(text, "ft", { dash: true })).toBeCloseTo(feet, 12);
  });

  test("is given in inches where inches are asked for, and a bare number is inches there", () => {
    expect(readLength(`1' 6"`, "in")).toBe(18);
    expect(readLength("1,5", "in")).toBe(1.5);
    expect(readLength("75 mm", "in")).toBeCloseTo(75 / 25.4, 12);
    expect(readLength("4 1/2", "in")).toBe(4.5);
  });

  test.each([
    ["30-4 1/2", 30.375],
    ["30-4", 30 + 4 / 12],
    [`12-6"`, 12.5],
    ["30-0 1/2", 30 + 1 / 24],
    ["30\u20134.5", 30.375],
  ])("%p is feet and inches in the panel, and refused elsewhere", (text, feet) => {
    expect(readLength(text, "ft", { dash: true })).toBeCloseTo(feet, 12);
    expect(() => readLength(text, "ft")).toThrow(/cannot read/);
  });

  test.each(["1,500", "1,500'", "12,250 mm", `10' 1,125"`])(
    "%p is refused: its comma is ambiguous",
    (text) => {
      expect(() => readLength(text, "ft")).toThrow(/comma.*may part thousands or decimals/);
    },
  );

  test.each([
    [`72' 13"`, `73' 1"`],
    ["6 ft 12 in", "7'"],
    [`30' 100 1/64"`, `38' 4 1/64"`],
    ["30 feet 12", "31'"],
  ])("%p is refused: it may be a slip, and what it would come to is said", (text, same) => {
    for (const unit of ["ft", "in"] as const) {
      expect(() => readLength(text, unit)).toThrow(`inches beside feet must be under 12: for ${text} write ${same}`);
      expect(() => readLength(text, unit)).toThrow(Refusal);
    }
  }); // prettier-ignore

  test("feet and inches by a dash are refused from 12 inches on, and read just below", () => {
    expect(() => readLength("30-12", "ft", { dash: true })).toThrow(/must be under 12: for 30-12 write 31'/);
    expect(readLength("30-11 15/16", "ft", { dash: true })).toBeCloseTo(30 + 191 / 192, 12);
    expect(readLength(`72' 11.999"`, "in")).toBeCloseTo(875.999, 9);
  }); // prettier-ignore

  test.each(["", "abc", "12x6", "30.5' 4\"", "5 m 20 cm", `1/0"`, "0/0", "1e3", "12 furlongs", "4-1/2", "'", "1.2.3", "NaN", "Infinity", "9".repeat(400)])(
    "%p is refused with an example of what can be read",
    (text) => {
      expect(() => readLength(text, "ft")).toThrow(Refusal);
      expect(() => readLength(text, "ft")).toThrow(/write 30' 4 1\/2"/);
    },
  ); // prettier-ignore

  test("gives a finite number or a refusal for any text", () => {
    fc.assert(
      fc.property(
        fc.oneof(fc.string(), fc.stringMatching(/^[-0-9 '"./,ftinmcyd]{0,12}$/)),
        fc.boolean(),
        (text, dash) => {
          try {
            expect(Number.isFinite(readLength(text, "ft", { dash }))).toBe(true);
          } catch (error) {
            expect(error).toBeInstanceOf(Refusal);
          }
        },
      ),
      { numRuns: 5000 },
    );
  });
});

describe("Feet and inches", () => {
  test.each([
    [30.375, 16, `30' 4 1/2"`],
    [30, 16, "30'"],
    [0.5, 16, `6"`],
    [1 / 24, 16, `1/2"`],
    [30 + 1 / 24, 16, `30' 0 1/2"`],
    [72.26821792, 4, `72' 3 1/4"`],
    [11.9999, 16, "12'"],
    [29.97, 1, "30'"],
    [5 + 11.97 / 12, 16, "6'"],
    [8.4, 10, `8' 4 4/5"`],
    [30 + 4.03125 / 12, 16, `30' 4 1/16"`],
    [-2.5, 16, `-2' 6"`],
    [-0.0001, 16, `0"`],
    [0, 16, `0"`],
  ])("%p ft to 1/%p in is written %p", (feet, denominator, expected) => {
    expect(feetInches(feet, denominator)).toBe(expected);
  });

  test("are written out in words for a sentence", () => {
    expect(feetInches(72.26821792, 4, "words")).toBe("72 ft 3 1/4 in");
    expect(feetInches(71, 4, "words")).toBe("71 ft");
  });

  test("are read back within half of the denominator, and never hold 12 inches", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5000, noNaN: true }),
        fc.integer({ min: 1, max: 64 }),
        (feet, denominator) => {
          const written = feetInches(feet, denominator);
          // 1/12" is a twelfth of an inch and no 12 inches.
          expect(written).not.toMatch(/(?<!\/)\b12(?: \d+\/\d+)?"/);
          expect(Math.abs(readLength(written, "ft") - feet)).toBeLessThanOrEqual(
            0.5 / denominator / 12 + 1e-9,
          );
        },
      ),
      { numRuns: 3000 },
    );
  });
});
