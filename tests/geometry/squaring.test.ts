import fc from "fast-check";
import { outOfSquare } from "../../src/geometry/squaring";

describe("outOfSquare", () => {
  it("G12: is 1.3416 in for diagonals 223.5 and 223.7 on 200 by 100, the longer first positive", () => {
    // Derived: (d1^2 - d2^2) / (4 length), corner 0.06406 degrees (G12).
    expect(outOfSquare(200, 100, 223.7, 223.5) * 12).toBeCloseTo(1.3416, 4);
    expect(outOfSquare(200, 100, 223.5, 223.7) * 12).toBeCloseTo(-1.3416, 4);
    expect((Math.asin(outOfSquare(200, 100, 223.7, 223.5) / 100) * 180) / Math.PI).toBeCloseTo(0.06406, 5);
  });

  it("gives back how far the side of a rectangle was slid", () => {
    const side = fc.double({ min: 20, max: 400, noNaN: true });
    fc.assert(
      fc.property(side, side, fc.double({ min: -3, max: 3, noNaN: true }), (length, width, slid) => {
        const height = Math.sqrt(width ** 2 - slid ** 2);
        const found = outOfSquare(
          length,
          width,
          Math.hypot(length + slid, height),
          Math.hypot(length - slid, height),
        );
        expect(found).toBeCloseTo(slid, 9);
      }),
    );
  });

  it("is 0 where the diagonals are equal", () => {
    expect(outOfSquare(40, 30, 50, 50)).toBe(0);
  });

  it("refuses measures that fit no four sides within 2 %, and says so", () => {
    const cannot = "These four measures cannot belong together";
    expect(() => outOfSquare(200, 100, 223.6, 210)).toThrow(cannot);
    expect(() => outOfSquare(200, 100, 235, 235)).toThrow(cannot);
    expect(outOfSquare(100, 100, Math.sqrt(20000 * 1.019), Math.sqrt(20000 * 1.019))).toBe(0);
  });
});
