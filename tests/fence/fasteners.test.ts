import { fastenerLength } from "../../src/fence/fasteners";
import { round, square } from "../../src/geometry/section";

describe("the length of a fastener", () => {
  const cases = [
    // Common practice, no source: 1 1/2 in into the post, or through it and an inch for washer and nut, to the next half inch.
    { kind: "screws", thickness: 1.5, post: round(6), length: 3 },
    { kind: "nails", thickness: 0.75, post: round(6), length: 2.5 },
    { kind: "bolts", thickness: 1.5, post: round(6), length: 8.5 },
    { kind: "bolts", thickness: 1, post: square(3.5, 5.5), length: 7.5 },
  ] as const;

  it.each(cases)("for $kind through $thickness in is $length in", ({ kind, thickness, post, length }) => {
    expect(fastenerLength(kind, thickness, post)).toBe(length);
  });

  it("is held to four cases", () => expect(cases).toHaveLength(4));
});
