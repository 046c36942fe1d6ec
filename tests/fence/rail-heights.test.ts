import fc from "fast-check";
import { railHeights } from "../../src/fence/rail-heights";

describe("the heights of rails", () => {
  // Worked by hand; the lowest board 8 to 12 in up: extension fence bulletins.
  it.each([
    [{ rows: 4, width: 5.5, foot: 0, under: 10, height: 60 }, [12.75, 27.583333, 42.416667, 57.25], 9.333333],
    [{ rows: 3, width: 5.5, foot: 0, under: 12, height: 54 }, [14.75, 33, 51.25], 12.75],
    [{ rows: 1, width: 2, foot: 0, under: 8, height: 48 }, [47], 0],
    [{ rows: 2, width: 10, foot: 0, under: 0, height: 20 }, [5, 15], 0],
    // A 2x10 at the foot is 9 1/4 in high (American Softwood Lumber Standard PS 20).
    [{ rows: 3, width: 5.5, foot: 9.25, under: 8, height: 60 }, [20, 38.625, 57.25], 13.125],
  ])("of %o are these", (rows, middles, between) => {
    const found = railHeights(rows);
    found.middles.forEach((middle, k) => expect(middle).toBeCloseTo(middles[k], 5));
    expect(found.middles).toHaveLength(middles.length);
    expect(found.between).toBeCloseTo(between, 5);
  });

  it("leave the open space under the lowest, end level with the posts, and rise evenly", () => {
    const rows = fc.record({
      rows: fc.integer({ min: 2, max: 8 }),
      width: fc.double({ min: 1, max: 8, noNaN: true }),
      foot: fc.double({ min: 0, max: 12, noNaN: true }),
      under: fc.double({ min: 0, max: 24, noNaN: true }),
      height: fc.double({ min: 102, max: 144, noNaN: true }),
    });
    fc.assert(
      fc.property(rows, (asked) => {
        const { middles, between } = railHeights(asked);
        expect(middles[0] - asked.width / 2).toBeCloseTo(asked.foot + asked.under, 9);
        expect(middles.at(-1)! + asked.width / 2).toBeCloseTo(asked.height, 9);
        middles.slice(1).forEach((middle, k) => expect(middle - middles[k]).toBeCloseTo(asked.width + between, 9));
      }),
    );
  }); // prettier-ignore

  it("refuse rows that do not fit over one another, in a sentence that says what to change", () => {
    expect(() => railHeights({ rows: 8, width: 7.25, foot: 0, under: 10, height: 60 })).toThrow(
      "8 rows of 7.25 in, the lowest 10 in up, do not fit under 60 in: fewer rows, less open, or higher posts",
    );
  });
});
