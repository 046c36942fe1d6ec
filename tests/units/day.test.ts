import { dayAsText, dayNumber, readDay } from "../../src/units/day";

describe("a day", () => {
  it("is read in any form that people write, as the number that a sheet counts", () => {
    const written = ["2026-04-09", "2026/4/9", "4/9/2026", "4/9/26", "9.4.2026", "Apr 9, 2026", "April 9th 2026", "9 Apr 2026", "9-abr-26", "9 de abril de 2026", 46121, 46121.75]; // prettier-ignore
    for (const one of written) expect([one, readDay(one)]).toEqual([one, 46121]);
    expect(readDay("25/12/2026")).toBe(dayNumber(2026, 12, 25));
    expect(dayAsText(46121)).toBe("2026-04-09");
  });

  it("is not taken from what is none", () => {
    for (const one of ["", "soon", "2026-02-30", "13/13/2026", "4/9", "1 foo 2026", -1, 12.5, 1e9, NaN, null])
      expect([one, readDay(one)]).toEqual([one, undefined]);
  });

  // Memory: day 25569 of a sheet that counts from 1900 is 1970-01-01, and 36526 is 2000-01-01.
  it("counts as a spreadsheet does", () => {
    expect(dayNumber(1970, 1, 1)).toBe(25569);
    expect(dayNumber(2000, 1, 1)).toBe(36526);
  });
});
