import fc from "fast-check";
import { type PostPen } from "../../src/fence/posts";
import {
  arenaSizes,
  type FenceBody,
  penSizes,
  postCircleOf,
  sizeMeanings,
} from "../../src/fence/size-meaning";
import { round, square } from "../../src/geometry/section";
import { Refusal } from "../../src/units/refusal";
import { anyPostPen } from "./post-pens";

const anyBody: fc.Arbitrary<FenceBody> = fc.record({
  post: fc.constantFrom(round(4), round(6), square(3.5), square(3.5, 5.5), square(5.5)),
  board: fc.constantFrom(0, 0.75, 1.5, 2.375),
  side: fc.constantFrom("inside", "outside"),
});
const pen = (diameter: number, gates: number[] = []): PostPen => ({
  diameter,
  spacing: 8,
  gates,
  gatePost: 0.5,
});

describe("The size of a post pen", () => {
  test("is that of its circle, less what stands inside and with what stands outside", () => {
    const hexagon: PostPen = { diameter: 16, spacing: 8, gates: [], gatePost: 0 };
    const inside = penSizes(hexagon, { post: round(6), board: 1.5, side: "inside" });
    expect(inside["inside clear"]).toBeCloseTo(2 * ((8 - 0.25) * Math.cos(Math.PI / 6) - 0.125), 12);
    expect(inside.outside).toBeCloseTo(16.5, 12);
    const outside = penSizes(hexagon, { post: round(6), board: 1.5, side: "outside" });
    expect(outside["inside clear"]).toBeCloseTo(2 * (8 * Math.cos(Math.PI / 6) + 0.25), 12);
    expect(outside.outside).toBeCloseTo(2 * (8 + (0.25 + 0.125) / Math.cos(Math.PI / 6)), 12);
  });

  test("is kept clear by the posts where boards stand outside of many bays, and by a wide gate", () => {
    const body: FenceBody = { post: round(6), board: 1.5, side: "outside" };
    expect(penSizes(pen(120), body)["inside clear"]).toBeCloseTo(119.5, 12);
    expect(penSizes(pen(60, [12]), body)["inside clear"]).toBeCloseTo(Math.sqrt(60 ** 2 - 12.5 ** 2), 12);
  });

  test("grows from inside clear over the post circle to outside", () => {
    fc.assert(
      fc.property(anyPostPen, anyBody, (asked, body) => {
        const sizes = penSizes(asked, body);
        expect(sizes["inside clear"]).toBeLessThan(sizes["post circle"]);
        expect(sizes["post circle"]).toBeLessThan(sizes.outside);
      }),
    );
  });

  test("leads back to its post circle: enough inside with none less, no more outside with no room to grow", () => {
    fc.assert(
      fc.property(anyPostPen, anyBody, fc.constantFrom(...sizeMeanings), (asked, body, meaning) => {
        const size = penSizes(asked, body)[meaning];
        const diameter = postCircleOf(size, meaning, asked, body);
        const sizes = penSizes({ ...asked, diameter }, body);
        if (meaning === "inside clear") {
          expect(sizes[meaning]).toBeGreaterThanOrEqual(size - 1e-9);
          expect(diameter).toBeLessThanOrEqual(asked.diameter + 1e-9);
        } else if (meaning === "outside") {
          expect(sizes[meaning]).toBeLessThanOrEqual(size + 1e-9);
          expect(penSizes({ ...asked, diameter: diameter * (1 + 1e-9) }, body)[meaning]).toBeGreaterThan(
            size,
          );
        } else expect(diameter).toBe(asked.diameter);
      }),
    );
  });

  test("that leaves nothing inside is refused", () => {
    const tiny: PostPen = { diameter: 1, spacing: 1, gates: [], gatePost: 0 };
    const body: FenceBody = { post: square(5.5), board: 2, side: "inside" };
    expect(() => penSizes(tiny, body)).toThrow(Refusal);
    expect(() => penSizes(tiny, body)).toThrow(/nothing is left inside/);
    expect(() => postCircleOf(0.5, "outside", { ...tiny, spacing: 0.1 }, body)).toThrow(
      /nothing is left inside/,
    );
  });

  test("that its gates or spacing do not allow is refused as the circle is, whatever it means", () => {
    const body: FenceBody = { post: round(6), board: 1.5, side: "inside" };
    expect(() => postCircleOf(20, "outside", pen(20, [60]), body)).toThrow(/no longer than the diameter, 20'/);
    for (const meaning of ["inside clear", "outside"] as const)
      expect(() => postCircleOf(20, meaning, { ...pen(20), spacing: 90 }, body)).toThrow("the spacing must be at most the diameter, 20'");
  }); // prettier-ignore
});

describe("The size of an arena's side", () => {
  test("counts a post and the boards of both ends", () => {
    const body: FenceBody = { post: square(5.5), board: 1.5, side: "inside" };
    const line = arenaSizes(100, "post circle", body);
    expect(line["inside clear"]).toBeCloseTo(100 - 8.5 / 12, 12);
    expect(line.outside).toBeCloseTo(100 + 5.5 / 12, 12);
    const outside = arenaSizes(100, "post circle", { ...body, side: "outside" });
    expect(outside["inside clear"]).toBeCloseTo(100 - 5.5 / 12, 12);
    expect(outside.outside).toBeCloseTo(100 + 8.5 / 12, 12);
  });

  test("is the same from whichever of the three it is given", () => {
    fc.assert(
      fc.property(fc.double({ min: 30, max: 400, noNaN: true }), anyBody, fc.constantFrom(...sizeMeanings), (line, body, meaning) => {
        const sizes = arenaSizes(line, "post circle", body);
        const back = arenaSizes(sizes[meaning], meaning, body);
        for (const one of sizeMeanings) expect(back[one]).toBeCloseTo(sizes[one], 9);
      }),
    );
  }); // prettier-ignore

  test("that leaves nothing inside is refused", () => {
    expect(() => arenaSizes(0.5, "post circle", { post: round(6), board: 1.5, side: "inside" })).toThrow(
      /nothing is left inside/,
    );
  });
});
