import fc from "fast-check";
import { equal, roundDown, roundUp } from "../../src/units/rounding";

describe("Rounding up and down", () => {
  test("n pieces' worth are n pieces, for n to 400", () => {
    for (const size of [0.1, 0.3, 0.6, 1 / 3, 7.7, 10])
      for (let n = 0; n <= 400; n++) {
        expect(roundUp((n * size) / size)).toBe(n);
        expect(roundDown((n * size) / size)).toBe(n);
      }
  });

  test.each([
    [3.0000000001, 3],
    [3.00000001, 4],
    [2.5, 3],
    [0, 0],
    [-0.2, 0],
  ])("%p rounds up to %p", (x, expected) => expect(Object.is(roundUp(x), expected)).toBe(true));

  test.each([
    [2.9999999999, 3],
    [2.9999999, 2],
    [0.5, 0],
  ])("%p rounds down to %p", (x, expected) => expect(roundDown(x)).toBe(expected));

  test("never lose a piece by more than the allowance", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e6, noNaN: true }), (x) => {
        expect(roundUp(x) - x).toBeGreaterThanOrEqual(-1e-9 * Math.max(1, x) - 1e-12);
        expect(roundUp(x) - x).toBeLessThan(1);
      }),
    );
  });

  test("numbers within 1e-9, relative above 1, are equal", () => {
    expect(equal(1, 1 + 1e-10)).toBe(true);
    expect(equal(1, 1 + 1e-8)).toBe(false);
    expect(equal(1e6, 1e6 + 1e-4)).toBe(true);
  });
});
