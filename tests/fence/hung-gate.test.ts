import fc from "fast-check";
import { GATE_ROOM, gateChord, gateOpening, gatePostAdequacy, hingePlace, type HungGate, leafOf } from "../../src/fence/hung-gate"; // prettier-ignore
import { Refusal } from "../../src/units/refusal";

const gate = (over: Partial<HungGate> = {}): HungGate => ({ leaf: 10, leaves: 1, hung: "between posts", ...GATE_ROOM, ...over }); // prettier-ignore

describe("A hung gate", () => {
  test("of 10 ft needs an opening of 10 ft 4 in (common practice, no source)", () => {
    expect(gateOpening(gate())).toBeCloseTo(10 + 4 / 12, 12);
  });

  test("of two leaves takes hinge room twice and meets at one latch", () => {
    expect(gateOpening(gate({ leaf: 6, leaves: 2, hingeRoom: 3, latchRoom: 1 }))).toBeCloseTo(12 + 7 / 12, 12); // prettier-ignore
  });

  test("on the face laps the posts and takes no hinge room", () => {
    expect(gateOpening(gate({ hung: "on the face", lap: 3 }))).toBeCloseTo(9.5, 12);
    expect(gateOpening(gate({ hung: "on the face", leaves: 2, leaf: 6, lap: 3, latchRoom: 2 }))).toBeCloseTo(12 - 4 / 12, 12); // prettier-ignore
  });

  test("is as far from post center to post center as its opening and a post", () => {
    expect(gateChord(10, 6)).toBe(10.5);
  });

  test("has the leaf that its opening takes, and the other way around", () => {
    const anyGate = fc.record<HungGate>({
      leaf: fc.double({ min: 2, max: 20, noNaN: true }),
      leaves: fc.constantFrom(1, 2),
      hung: fc.constantFrom("between posts", "on the face"),
      hingeRoom: fc.double({ min: 0, max: 8, noNaN: true }),
      latchRoom: fc.double({ min: 0, max: 8, noNaN: true }),
      lap: fc.double({ min: 0, max: 6, noNaN: true }),
    });
    fc.assert(fc.property(anyGate, (one) => expect(leafOf(gateOpening(one), one)).toBeCloseTo(one.leaf, 9)));
  });

  test("turns half a post and the hinges' room from the post's center, on the face a lap back and half a post off", () => {
    const post = { shape: "square", width: 3.5, depth: 5.5 } as const;
    expect(hingePlace(gate(), post)).toEqual({ inset: 3.75 / 12, off: 0 });
    expect(hingePlace(gate({ hung: "on the face", lap: 3 }), post)).toEqual({ inset: -1.25 / 12, off: 2.75 / 12 });
  }); // prettier-ignore

  test("of which nothing is left is refused", () => {
    expect(() => leafOf(0.25, gate())).toThrow(Refusal);
    expect(() => leafOf(0.25, gate())).toThrow(/leaves nothing of the gate/);
    expect(() => gateOpening(gate({ hung: "on the face", leaf: 0.5, lap: 3 }))).toThrow(/leaves nothing/);
  });
});

describe("A gate post", () => {
  const facts = [
    // Facts of the trade: common practice, no source.
    { post: 6, adequacy: "serves" },
    { post: 4, adequacy: "marginal" },
    { post: 10, adequacy: "more than needed" },
    // The same posts as they are dressed (American Softwood Lumber Standard PS 20).
    { post: 5.5, adequacy: "serves" },
    { post: 3.5, adequacy: "marginal" },
    { post: 9.25, adequacy: "more than needed" },
  ];

  test.each(facts)(
    "of $post in with a 10 ft gate: $adequacy (common practice, no source)",
    ({ post, adequacy }) => {
      expect(gatePostAdequacy(post, 10).adequacy).toBe(adequacy);
    },
  );

  test("is held to six facts", () => expect(facts).toHaveLength(6));

  test("is judged in words with a caution", () => {
    expect(gatePostAdequacy(4, 10).sentence).toBe(
      "A 4 in post is marginal for a leaf of 10 ft and 100 lb: it may lean in time; 5 1/2 in serves.",
    );
    expect(gatePostAdequacy(6, 10).sentence).toBe("A 6 in post serves a leaf of 10 ft and 100 lb.");
    expect(gatePostAdequacy(2.5, 10).sentence).toMatch(/is too light for .*: use at least 5 1\/2 in\.$/);
    expect(gatePostAdequacy(10, 10).sentence).toMatch(/is more than .* needs: 5 1\/2 in serves\.$/);
    expect(gatePostAdequacy(6, 10).caution).toMatch(/screening only: the gate maker's sheet governs, .* engineer/);
  }); // prettier-ignore

  test("is judged no better for a wider or heavier leaf, and no worse for being thicker", () => {
    const grades = ["too light", "marginal", "serves", "more than needed"];
    const grade = (post: number, leaf: number, pounds: number) =>
      grades.indexOf(gatePostAdequacy(post, leaf, pounds).adequacy);
    const some = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(some(2, 14), some(3, 20), some(20, 500), some(1, 3), (post, leaf, pounds, more) => {
        expect(grade(post, leaf * more, pounds)).toBeLessThanOrEqual(grade(post, leaf, pounds));
        expect(grade(post, leaf, pounds * more)).toBeLessThanOrEqual(grade(post, leaf, pounds));
        expect(grade(post * more, leaf, pounds)).toBeGreaterThanOrEqual(grade(post, leaf, pounds));
      }),
    );
  });

  test("bends as much at twice the weight as at twice the width, and needs twice its size for eight times", () => {
    expect(gatePostAdequacy(6, 10, 200).sentence.replace(/of .* lb/, "")).toBe(
      gatePostAdequacy(6, 20, 100).sentence.replace(/of .* lb/, ""),
    );
    expect(gatePostAdequacy(4, 10, 800).sentence).toMatch(/use at least 11 in\.$/);
  });
});
