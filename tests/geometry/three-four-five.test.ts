import fc from "fast-check";
import { rightTriangles } from "../../src/geometry/three-four-five";

describe("The 3-4-5 triangles of an arena", () => {
  it("run from 3, 4 and 5 ft to the largest whose legs lie along the sides", () => {
    const found = rightTriangles(200, 100);
    expect(found[0]).toEqual({ multiple: 1, short: 3, long: 4, hypotenuse: 5 });
    expect(found.at(-1)).toEqual({ multiple: 33, short: 99, long: 132, hypotenuse: 165 });
    expect(found).toHaveLength(33);
    expect(rightTriangles(60, 120)).toEqual(rightTriangles(120, 60));
    expect(rightTriangles(40, 30)).toHaveLength(10);
    expect(rightTriangles(100, 100).at(-1)?.long).toBe(100);
  });

  it("are right, fit, and leave no room for the next", () => {
    const size = fc.double({ min: 4, max: 500, noNaN: true });
    fc.assert(
      fc.property(size, size, (length, width) => {
        const [longer, shorter] = [Math.max(length, width), Math.min(length, width)];
        const found = rightTriangles(length, width);
        for (const { short, long, hypotenuse } of found) {
          expect(short ** 2 + long ** 2).toBe(hypotenuse ** 2);
          expect(short <= shorter * (1 + 1e-9) && long <= longer * (1 + 1e-9)).toBe(true);
        }
        const next = found.length + 1;
        expect(3 * next > shorter || 4 * next > longer).toBe(true);
      }),
    );
  });

  it("do not fit an arena under 3 by 4 ft", () => {
    expect(() => rightTriangles(3.9, 3.9)).toThrow("The arena is too small for a triangle of 3, 4 and 5 ft.");
  });
});
