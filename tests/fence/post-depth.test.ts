import fc from "fast-check";
import { depthRules, embedment, postDepth, postToBuy, type SidePush } from "../../src/fence/post-depth";

const feet = fc.double({ min: 2, max: 12, noNaN: true });
const push = (pounds: number, height: number, isolated: boolean): SidePush => ({ push: pounds, height, width: 1, soil: 150, isolated }); // prettier-ignore

describe("A post's depth", () => {
  const standard = [
    // H7: ASTM F567 (24 in + 3 in per ft over 4 ft).
    [4, 24],
    [5, 27],
    [6, 30],
    [8, 36],
  ];

  test.each(standard)("under a chain-link fence of %p ft is %p in by ASTM F567 (H7)", (height, inches) => {
    expect(postDepth({ rule: "ASTM F567", height, frost: 0 }).depth * 12).toBeCloseTo(inches, 9);
  });

  test("is held to four rows of the standard", () => expect(standard).toHaveLength(4));

  test("under a lower fence than the standard's is the standard's least", () => {
    expect(postDepth({ rule: "ASTM F567", height: 3, frost: 0 }).depth).toBe(2);
  });

  test("is a third of the total length, or a third of the height above ground", () => {
    expect(postDepth({ rule: "third of length", height: 5, frost: 0 })).toMatchObject({ depth: 2.5, length: 7.5 });
    expect(postDepth({ rule: "third of height", height: 6, frost: 0 })).toMatchObject({ depth: 2, length: 8 });
  }); // prettier-ignore

  test("keeps its rule, the frost line and the length together", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...depthRules),
        feet,
        fc.double({ min: 0, max: 6, noNaN: true }),
        (rule, height, frost) => {
          const set = postDepth({ rule, height, frost, sidePush: push(200, height, true) });
          const free = postDepth({ rule, height, frost: 0, sidePush: push(200, height, true) });
          expect(set.depth).toBe(Math.max(free.depth, frost));
          expect(set.length).toBeCloseTo(height + set.depth, 12);
          expect(set.frostGoverns).toBe(frost > free.depth * (1 + 1e-9));
          if (rule === "third of length") expect(free.depth / free.length).toBeCloseTo(1 / 3, 12);
        },
      ),
    );
  });

  test("by the building code is a screening figure, and says so; the other rules have no such caution", () => {
    for (const rule of depthRules) {
      const { caution } = postDepth({ rule, height: 5, frost: 0, sidePush: push(200, 4.5, false) });
      if (rule === "building code") expect(caution).toMatch(/^A screening figure .* A licensed engineer decides/);
      else expect(caution).toBeUndefined();
    }
    expect(() => postDepth({ rule: "building code", height: 5, frost: 0 })).toThrow(/needs the side push in pounds/);
  }); // prettier-ignore
});

describe("The building code's embedment", () => {
  const worked = [
    // International Building Code 1807.3.2.1, worked notes.
    { id: "H8", asked: push(200, 4.54, false), depth: 4.45 },
    { id: "H8, isolated", asked: push(200, 4.54, true), depth: 3.39 },
    { id: "H9", asked: push(496.1, 7.489, false), depth: 7.07 },
    { id: "H9, isolated", asked: push(496.1, 7.489, true), depth: 5.4 },
  ];

  test.each(worked)("of $id is $depth ft", ({ asked, depth }) => {
    expect(Math.abs(embedment(asked) - depth)).toBeLessThanOrEqual(0.01);
  });

  test("is held to four worked notes", () => expect(worked).toHaveLength(4));

  const anyPush = fc.record({
    push: fc.double({ min: 1, max: 20_000, noNaN: true }),
    height: fc.double({ min: 0, max: 20, noNaN: true }),
    width: fc.double({ min: 0.25, max: 4, noNaN: true }),
    soil: fc.double({ min: 100, max: 400, noNaN: true }),
    isolated: fc.boolean(),
  });

  test("to 12 ft is the one root of the cubic that the formula comes to: d³ = C d + 1.09 C h, C = 7.02 P / (S b)", () => {
    fc.assert(
      fc.property(anyPush, (asked) => {
        const d = embedment(asked);
        fc.pre(d <= 12);
        const c = (7.02 * asked.push) / (asked.soil * (asked.isolated ? 2 : 1) * asked.width);
        expect((c * d + 1.09 * c * asked.height) / d ** 3).toBeCloseTo(1, 9);
      }),
    );
  });

  test("beyond 12 ft counts no more bearing than at 12", () => {
    const asked = { push: 20_000, height: 10, width: 1, soil: 100, isolated: false };
    const a = (2.34 * 20_000) / 400;
    expect(embedment(asked)).toBeCloseTo((a / 2) * (1 + Math.sqrt(1 + 43.6 / a)), 9);
  });

  test("grows with the push and its height, and is none without a push", () => {
    fc.assert(
      fc.property(anyPush, fc.double({ min: 1.01, max: 2, noNaN: true }), (asked, more) => {
        const depth = embedment(asked);
        expect(embedment({ ...asked, push: asked.push * more })).toBeGreaterThan(depth);
        expect(embedment({ ...asked, height: asked.height + more })).toBeGreaterThan(depth);
        expect(embedment({ ...asked, isolated: true })).toBeLessThanOrEqual(depth);
      }),
    );
    expect(embedment(push(0, 5, false))).toBe(0);
  });
});

describe("The post to buy", () => {
  test("is the shortest that is long enough", () => {
    expect(postToBuy(7.5)).toBe(8);
    expect(postToBuy(8 + 1e-12)).toBe(8);
    expect(postToBuy(7.01, [10, 7, 8])).toBe(8);
  });

  test("that nobody lists is refused, and the length said", () => {
    expect(() => postToBuy(17.25)).toThrow("the post must be at least 17 ft 3 in long and the longest is 16 ft");
    expect(() => postToBuy(5, [])).toThrow(expect.objectContaining({ kind: "answer" }));
  }); // prettier-ignore
});
