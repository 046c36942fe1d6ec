import fc from "fast-check";
import { across, round, type Section, sectionArea, square } from "../../src/geometry/section";
import { AUGERS, bags, type Hole, holeConcrete, holeDiameter, holeGravel, holesPerYard, roomAllRound } from "../../src/ground/holes"; // prettier-ignore
import { Refusal } from "../../src/units/refusal";

const inches = fc.double({ min: 1, max: 24, noNaN: true });
const anyPost: fc.Arbitrary<Section> = fc.oneof(
  inches.map(round),
  fc.tuple(inches, inches).map(([width, depth]) => square(width, depth)),
);

describe("A hole", () => {
  test.each<{ id: string; hole: Hole; cubicFeet: number }>([
    // H4, derived: the cylinder above the gravel less the post.
    { id: "10 x 24 without a post", hole: { diameter: 10, depth: 24, gravel: 0 }, cubicFeet: 1.0908 },
    { id: "12 x 36 without a post", hole: { diameter: 12, depth: 36, gravel: 0 }, cubicFeet: 2.3562 },
    {
      id: "16 x 42 with 6 in of gravel and a 5.5 in square post",
      hole: { diameter: 16, depth: 42, gravel: 6, post: square(5.5) },
      cubicFeet: 3.5586,
    },
  ])("of $id takes the concrete of H4", ({ hole, cubicFeet }) => {
    expect(Math.abs(holeConcrete(hole) - cubicFeet)).toBeLessThanOrEqual(1e-4);
  });

  test("H2: 12 x 36 in, 6 in of gravel and a 4x4, goes 15 1/2 to the cubic yard (fence handbook extract, general do-it-yourself press; exact 15.42)", () => {
    const hole = { diameter: 12, depth: 36, gravel: 6, post: square(3.5) };
    expect(Math.abs(holesPerYard(hole) - 15.5)).toBeLessThanOrEqual(0.1);
    expect(holesPerYard(hole)).toBeCloseTo(15.42, 2);
  });

  test("is filled by its concrete, its gravel and the post that stands on the gravel", () => {
    fc.assert(
      fc.property(anyPost, inches, inches, fc.double({ min: 0, max: 1, noNaN: true }), (post, more, depth, part) => {
        const hole = { diameter: across(post) + more, depth, gravel: depth * part, post };
        const cubicInches = 1728 * (holeConcrete(hole) + holeGravel(hole)) + sectionArea(post) * (depth - hole.gravel);
        expect(cubicInches / ((Math.PI / 4) * hole.diameter ** 2 * depth)).toBeCloseTo(1, 9);
      }),
    );
  }); // prettier-ignore

  test("holds a post that just fits, a square one by its diagonal, and no wider one", () => {
    expect(holeConcrete({ diameter: 6, depth: 24, gravel: 0, post: round(6) })).toBe(0);
    expect(holeConcrete({ diameter: 5 * Math.SQRT2, depth: 24, gravel: 0, post: square(5) })).toBeGreaterThan(0); // prettier-ignore
    const tooWide = () => holeConcrete({ diameter: 7, depth: 24, gravel: 0, post: square(5) });
    expect(tooWide).toThrow(Refusal);
    expect(tooWide).toThrow("post_in: this post is 7 1/16 in from corner to corner, too wide for a hole of 7 in"); // prettier-ignore
    expect(() => holeConcrete({ diameter: 7, depth: 24, gravel: 0, post: round(8) })).toThrow("8 in across");
  });

  test("holds gravel up to its depth and no more", () => {
    expect(holeConcrete({ diameter: 12, depth: 6, gravel: 6 })).toBe(0);
    expect(() => holeConcrete({ diameter: 12, depth: 6, gravel: 7 })).toThrow(
      "gravel_in: at most the depth of the hole, 6 in",
    );
  });
});

describe("The auger for a post", () => {
  const facts = [
    // Facts of the trade: common practice, no source.
    { fact: "a 6 in post with two inches all round", post: round(6), allRound: 2, auger: 10 },
    { fact: "a heavy gate post, 6x6, with two inches all round", post: square(5.5), allRound: 2, auger: 12 },
    { fact: "a heavy gate post, 8 in round, with two inches all round", post: round(8), allRound: 2, auger: 12 }, // prettier-ignore
    { fact: "a 4x4 line post with an inch and a half", post: square(3.5), allRound: 1.5, auger: 8 },
    { fact: "a 4x6 line post with half an inch and more", post: square(3.5, 5.5), allRound: 0.7, auger: 8 },
  ];

  test.each(facts)("is $auger in for $fact (common practice, no source)", ({ post, allRound, auger }) => {
    expect(holeDiameter(post, allRound)).toBe(auger);
  });

  test("is held to five facts", () => expect(facts).toHaveLength(5));

  test("of 8 in leaves room around 4x4 and 4x6 line posts (common practice, no source)", () => {
    expect(roomAllRound(8, square(3.5))).toBeCloseTo(1.525, 3);
    expect(roomAllRound(8, square(3.5, 5.5))).toBeCloseTo(0.74, 2);
  });

  test("is the narrowest of the list that leaves the concrete all round", () => {
    fc.assert(
      fc.property(anyPost, fc.double({ min: 0, max: 4, noNaN: true }), fc.shuffledSubarray([...AUGERS], { minLength: 1 }), (post, allRound, augers) => {
        fc.pre(across(post) + 2 * allRound <= Math.max(...augers));
        const auger = holeDiameter(post, allRound, augers);
        expect(roomAllRound(auger, post)).toBeGreaterThanOrEqual(allRound - 1e-9);
        for (const other of augers.filter((one) => one < auger)) expect(roomAllRound(other, post)).toBeLessThan(allRound);
      }),
    );
  }); // prettier-ignore

  test("takes no wider one for the noise of the arithmetic", () => {
    expect(holeDiameter(round(9.4), 0.3)).toBe(10);
  });

  test("that is not on the list is refused, and the width said", () => {
    const none = () => holeDiameter(round(16), 2, [6, 8, 12]);
    expect(none).toThrow("the hole must be at least 1 ft 8 in wide and the widest auger is 1 ft");
    expect(none).toThrow(expect.objectContaining({ kind: "answer" }));
    expect(() => holeDiameter(round(16), 2, [])).toThrow(Refusal);
  });
});

describe("Bags", () => {
  test.each([
    // H1: common practice (bag labels).
    { pounds: 40, cubicFeet: 0.3 },
    { pounds: 50, cubicFeet: 0.375 },
    { pounds: 60, cubicFeet: 0.45 },
    { pounds: 80, cubicFeet: 0.6 },
  ])("of $pounds lb make $cubicFeet cu ft each (H1, common practice)", ({ pounds, cubicFeet }) => {
    for (let n = 0; n <= 400; n++) expect(bags(n * cubicFeet, pounds)).toBe(n);
    expect(bags(cubicFeet + 1e-6, pounds)).toBe(2);
  });

  test("are 80 lb where nothing else is said, and waste is bought on top", () => {
    expect(bags(6)).toBe(10);
    expect(bags(6, 80, 10)).toBe(11);
    expect(bags(6, 80, 10.1)).toBe(12);
  });
});
