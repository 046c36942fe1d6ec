import { calls } from "../../functions/calls";
import { type CellError, type Value } from "../../src/units/cell";

const message = (value: Value) => (value as CellError).message;

describe("HOLE_CONCRETE", () => {
  test("answers H4 in cubic feet, with inches or texts with a unit (derived)", () => {
    expect(calls.HOLE_CONCRETE(10, 24)).toBeCloseTo(1.0908, 4);
    expect(calls.HOLE_CONCRETE("1 ft", "3'")).toBeCloseTo(2.3562, 4);
    expect(calls.HOLE_CONCRETE(16, 42, 5.5, "square", 6)).toBeCloseTo(3.5586, 4);
  });

  test("takes a post for round where its shape is blank, and none where its size is", () => {
    const withRound = Math.PI / 4 * (12 ** 2 - 6 ** 2) * 36 / 1728; // prettier-ignore
    for (const blank of [null, undefined, "", 0, " "])
      expect(calls.HOLE_CONCRETE(12, 36, 6, blank)).toBeCloseTo(withRound, 12);
    expect(calls.HOLE_CONCRETE(12, 36, 6, " ROUND ")).toBeCloseTo(withRound, 12);
    expect(calls.HOLE_CONCRETE(12, 36, null, "square")).toBe(calls.HOLE_CONCRETE(12, 36));
    expect(calls.HOLE_CONCRETE(12, 0)).toBe(0);
  });

  test("says what does not fit", () => {
    expect(message(calls.HOLE_CONCRETE(null, 36))).toBe("hole_in: needed, over 0 to 5000 ft");
    expect(message(calls.HOLE_CONCRETE(7, 36, 5.5, "square"))).toMatch(
      /^post_in: this post is 7 3\/4 in from corner to corner, too wide for a hole of 7 in$/,
    );
    expect(message(calls.HOLE_CONCRETE(12, 36, 6, "oval"))).toBe('post_shape: must be "round", "square" or blank'); // prettier-ignore
    expect(message(calls.HOLE_CONCRETE(12, 36, 6, "round", 40))).toBe("gravel_in: at most the depth of the hole, 3 ft"); // prettier-ignore
    expect(message(calls.HOLE_CONCRETE(12, -1))).toMatch(/^depth_in: must be from 0 to 5000 ft/);
    expect(message(calls.HOLE_CONCRETE([[12], [10]], 36))).toBe("hole_in: one cell, not a range of 2");
  });
});

describe("BAGS", () => {
  test.each([
    // H1: common practice (bag labels).
    [40, 0.3],
    [50, 0.375],
    [60, 0.45],
    [80, 0.6],
  ])("of %p lb are one for every %p cubic feet (H1, common practice)", (pounds, cubicFeet) => {
    expect(calls.BAGS(cubicFeet * 7, pounds)).toBe(7);
    expect(calls.BAGS(cubicFeet * 7, pounds, 1)).toBe(8);
  });

  test("are of 80 lb without waste where that is blank, and none for no volume", () => {
    for (const blank of [null, undefined, "", 0]) {
      expect(calls.BAGS(6, blank, blank)).toBe(10);
      expect(calls.BAGS(blank)).toBe(0);
    }
  });

  test("say what is allowed", () => {
    expect(message(calls.BAGS(6, 0.5))).toBe("bag_lb: must be from 1 to 5000");
    expect(message(calls.BAGS(6, 80, 101))).toBe("waste_pct: must be from 0 to 100");
    expect(message(calls.BAGS(-1))).toBe("cubic_feet: must be from 0 to 1000000");
  });
});
