import fc from "fast-check";
import { type PostPen, bayLength, postCircle, postCount } from "../../src/fence/posts";
import { Refusal } from "../../src/units/refusal";
import { anyPostPen } from "./post-pens";

const pen = (diameter: number, spacing: number, gates: number[] = [], gatePost = 0): PostPen => ({ diameter, spacing, gates, gatePost }); // prettier-ignore
const refusal = (asked: PostPen) => {
  try {
    return String(postCount(asked));
  } catch (error) {
    if (error instanceof Refusal) return `${error.kind}: ${error.message}`;
    throw error;
  }
};

describe("Posts of a round pen", () => {
  const published = [
    // Horsekeeping on a Small Acreage (handbook), p. 383; the split into 29 equal bays is derived (G14).
    { id: "G14", asked: pen(66, 7, [5.5]), bays: 29, posts: 30, bay: 6.95, within: 0.1 },
    // A regular hexagon: six chords of the radius close a circle.
    { id: "hexagon", asked: pen(16, 8), bays: 6, posts: 6, bay: 8, within: 1e-9 },
    // Chord 12 on radius 30 takes 23.07392 degrees (G13, derived): 15.6 of them, so 16 bays of 22.5 degrees.
    { id: "G13", asked: pen(60, 12), bays: 16, posts: 16, bay: 60 * Math.sin(Math.PI / 16), within: 1e-9 },
  ];

  test.each(published)("divide the circle of $id as published", ({ asked, bays, posts, bay, within }) => {
    expect(postCircle(asked).bays).toBe(bays);
    expect(postCount(asked)).toBe(posts);
    expect(Math.abs(bayLength(asked) - bay)).toBeLessThanOrEqual(within);
  });

  it("are held to three circles", () => expect(published).toHaveLength(3));

  it("stand in equal bays that are no longer than the spacing and together with the gates make one turn", () => {
    fc.assert(
      fc.property(anyPostPen, (asked) => {
        const { bays, bayAngle, gateAngles } = postCircle(asked);
        expect(bays * bayAngle + gateAngles.reduce((a, b) => a + b, 0)).toBeCloseTo(2 * Math.PI, 12);
        expect(bayLength(asked)).toBeLessThanOrEqual(asked.spacing * (1 + 1e-8));
        expect(postCount(asked)).toBe(bays + asked.gates.length);
        expect(bays).toBeGreaterThanOrEqual(asked.gates.length);
        const fewer = 2 * Math.asin(asked.spacing / asked.diameter) * (bays - 1);
        if (bays > Math.max(1, 3 - asked.gates.length)) expect(fewer).toBeLessThan(bays * bayAngle);
      }),
    );
  });

  it("are never fewer than three", () => {
    expect(postCount(pen(20, 20))).toBe(3);
    expect(postCount(pen(20, 20, [19]))).toBe(3);
  });

  it("take the gate's chord from post center to post center, whichever way the opening is measured", () => {
    expect(postCircle(pen(60, 8, [10], 0.5)).gateChords).toEqual([10.5]);
    expect(bayLength(pen(60, 8, [10], 0.5))).toBe(bayLength(pen(60, 8, [10.5])));
  });

  it("do not lose a bay to the noise of the arithmetic", () => {
    for (let n = 3; n <= 200; n++) expect(postCount(pen(60, 60 * Math.sin(Math.PI / n)))).toBe(n);
  });

  test.each<[string, PostPen, RegExp]>([
    [
      "a spacing longer than the diameter",
      pen(20, 21),
      /^value: the spacing must be at most the diameter, 20'/,
    ],
    [
      "a gate longer than the diameter",
      pen(20, 8, [19.8], 0.5),
      /^value: a gate .* no longer than the diameter/,
    ],
    [
      "gates longer than the circle",
      pen(20, 8, [16, 16, 16, 16]),
      /^answer: the gates are as long as the whole circle/,
    ],
    [
      "more gates than bays",
      pen(60, 60, [10, 10, 10]),
      /^answer: 3 gates need a bay between each two, .* room for 2 only/,
    ],
  ])("refuse %s and say what is wrong", (_, asked, message) => {
    expect(refusal(asked)).toMatch(message);
  });
});
