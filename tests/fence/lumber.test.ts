import fc from "fast-check";
import { square } from "../../src/geometry/section";
import { dressed, lumber, squarePost } from "../../src/fence/lumber";
import { Refusal } from "../../src/units/refusal";

describe("A nominal size", () => {
  const published = [
    // H6: American Softwood Lumber Standard PS 20.
    ["4x4", 3.5, 3.5],
    ["4x6", 3.5, 5.5],
    ["6x6", 5.5, 5.5],
    ["1x6", 0.75, 5.5],
    ["2x6", 1.5, 5.5],
    // American Softwood Lumber Standard PS 20, memory.
    ["1x4", 0.75, 3.5],
    ["1x8", 0.75, 7.25],
    ["5/4x6", 1, 5.5],
    ["2x4", 1.5, 3.5],
    ["2x8", 1.5, 7.25],
    ["2x10", 1.5, 9.25],
    ["2x12", 1.5, 11.25],
    ["3x6", 2.5, 5.5],
    // Timbers of 7 to 15 in are at most 3/4 in under their name: reference page on lumber sizes, after PS 20-05.
    ["8x8", 7.25, 7.25],
  ] as const;

  test.each(published)("%s is %p by %p in", (size, thickness, width) => {
    expect(lumber(size)).toEqual({ thickness, width });
  });

  test("is held against fourteen rows", () => expect(published).toHaveLength(14));

  test("is read however it is spaced", () => {
    for (const text of [" 2 x 6 ", "2X6", "2×6", "2*6"]) expect(lumber(text)).toEqual({ thickness: 1.5, width: 5.5 });
  }); // prettier-ignore

  test("is always a little more than the actual one, by at most an inch", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 24 }), fc.integer({ min: 2, max: 24 }), (a, b) => {
        const [thin, wide] = [Math.min(a, b), Math.max(a, b)];
        const actual = dressed(thin, wide);
        for (const off of [thin - actual.thickness, wide - actual.width]) {
          expect(off).toBeGreaterThan(0);
          expect(off).toBeLessThanOrEqual(1);
        }
        expect(actual.width).toBeGreaterThanOrEqual(actual.thickness);
      }),
    );
  });

  test.each(["6", "two by six", "2x", "x6", "2x6x8", "", "2/4/4x6"])("that reads %p is refused with examples", (text) => {
    expect(() => lumber(text)).toThrow(Refusal);
    expect(() => lumber(text)).toThrow(`cannot read "${text}": write a nominal size such as 2x6`);
  }); // prettier-ignore

  test.each(["6x2", "0x4", "2x30", "0/4x6", "1x1"])("of %s is refused, and what is allowed said", (text) => {
    expect(() => lumber(text)).toThrow("the smaller first, from 1x2 to 24x24");
  });

  test("of a post is its section, the thickness along the fence", () => {
    expect(squarePost("4x6")).toEqual(square(3.5, 5.5));
  });
});
