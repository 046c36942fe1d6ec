import fc from "fast-check";
import { type MixPanel, type PanelMixJob, panelMix } from "../../src/fence/panel-mix";
import { circumcircle, insideClear, perimeter } from "../../src/geometry/cyclic-polygon";
import { Refusal } from "../../src/units/refusal";
import { exhaustiveMix } from "./exhaustive-mix";

const plain: Omit<PanelMixJob, "diameter" | "panels"> = {
  gates: [],
  pinGap: 0,
  tolerance: 1,
  fit: "nearest",
  priced: false,
};
const job = (diameter: number, lengths: number[], more: Partial<PanelMixJob> = {}): PanelMixJob => ({
  ...plain,
  diameter,
  panels: lengths.map((length) => ({ length })),
  ...more,
});
const pen = ({ panels, gates, pinGap }: PanelMixJob, counts: number[]) => [
  ...panels.map(({ length }, i) => ({ length: length + pinGap, count: counts[i] })),
  ...gates.map((length) => ({ length: length + pinGap, count: 1 })),
];
const refusal = (asked: PanelMixJob) => {
  try {
    return panelMix(asked);
  } catch (error) {
    if (error instanceof Refusal) return `${error.kind}: ${error.message}`;
    throw error;
  }
};

const legalJob = fc.record({
  diameter: fc.oneof(
    fc.double({ min: 3, max: 18, noNaN: true }),
    fc.double({ min: 18, max: 45, noNaN: true }),
  ),
  panels: fc.array(
    fc.record(
      {
        length: fc.oneof(
          fc.constantFrom(6, 8, 10, 12, 16),
          fc.integer({ min: 60, max: 240 }).map((inches) => inches / 12),
        ),
        price: fc.oneof(fc.constant(100), fc.integer({ min: 40, max: 300 })),
        stock: fc.integer({ min: 0, max: 14 }),
      },
      { requiredKeys: ["length"] },
    ),
    { minLength: 1, maxLength: 3 },
  ) as fc.Arbitrary<MixPanel[]>,
  gates: fc.array(fc.constantFrom(4, 6, 8, 10, 12, 16), { maxLength: 4 }),
  pinGap: fc.constantFrom(0, 1 / 24, -1 / 48),
  tolerance: fc.constantFrom(0.25, 1, 3),
  fit: fc.constantFrom("nearest" as const, "at least" as const, "at most" as const),
  priced: fc.boolean(),
});

describe("panelMix", () => {
  it("gives what trying every mix gives, in any small job", () => {
    fc.assert(
      fc.property(legalJob, (asked) => {
        const best = exhaustiveMix(asked);
        if (best) expect(panelMix(asked)).toEqual(best);
        else expect(refusal(asked)).toMatch(/^answer: /);
      }),
      { numRuns: 1500 },
    );
  });

  it("takes the fewest panels where mixes are equally near", () => {
    expect(panelMix(job(120 / Math.PI, [6, 12]))).toEqual([0, 10]);
  });

  it("takes more of the earlier listed where nothing else tells mixes apart", () => {
    const around = 104 / Math.PI;
    expect(
      panelMix(
        job(around, [8, 10, 12], { panels: [{ length: 8 }, { length: 10 }, { length: 12, stock: 6 }] }),
      ),
    ).toEqual([4, 0, 6]);
    expect(
      panelMix(
        job(around, [10, 8, 12], { panels: [{ length: 10 }, { length: 8 }, { length: 12, stock: 6 }] }),
      ),
    ).toEqual([8, 0, 2]);
    expect(panelMix(job(60, [12, 12]))).toEqual([16, 0]);
  });

  it("measures distance around, inside clear or the pin circle, by the fit", () => {
    const lengths = [8, 10, 12];
    const gates = [12, 8];
    for (let diameter = 30; diameter <= 120; diameter += 7.3) {
      const least = job(diameter, lengths, { gates, fit: "at least" });
      expect(insideClear(pen(least, panelMix(least)))).toBeGreaterThanOrEqual(diameter - 1e-9);
      const most = job(diameter, lengths, { gates, fit: "at most" });
      expect(circumcircle(pen(most, panelMix(most))).diameter).toBeLessThanOrEqual(diameter + 1e-9);
      const nearest = job(diameter, lengths, { gates });
      expect(Math.abs(perimeter(pen(nearest, panelMix(nearest))) - Math.PI * diameter)).toBeLessThanOrEqual(
        1 + 1e-9,
      );
    }
  });

  it("takes the cheapest within the tolerance, and never a panel without a price or past its stock", () => {
    const panels = [{ length: 10, price: 90, stock: 4 }, { length: 12, price: 130 }, { length: 16 }];
    const asked = job(60, [], { panels, priced: true });
    // 186 ft around is the first sum from 185.4 ft up (one foot under 60 across) that four tens or fewer leave cheap.
    expect(panelMix(asked)).toEqual([3, 13, 0]);
    expect(exhaustiveMix(asked)).toEqual([3, 13, 0]);
  });

  it("answers for the gates alone where they come near enough", () => {
    expect(panelMix(job(40 / Math.PI, [12], { gates: [10, 10, 10, 10] }))).toEqual([0]);
  });

  it.each<[string, PanelMixJob, RegExp]>([
    ["gates longer than the circle", job(20, [10], { gates: [20, 20, 20, 20] }), /^answer: gates alone need/],
    [
      "gates longer than the circle at most",
      job(20, [10], { gates: [24], fit: "at most" }),
      /^answer: gates alone need/,
    ],
    ["panels that close only a larger pen", job(5, [12]), /^answer: these panels need/],
    [
      "nothing within the tolerance",
      job(50, [], { panels: [{ length: 12, price: 90 }], tolerance: 0.1, priced: true }),
      /^answer: no mix comes within .* the nearest is 49' 7/,
    ],
    [
      "stock that is too small a pen",
      job(60, [], { panels: [{ length: 12, stock: 9 }], fit: "at least" }),
      /^answer: the largest pen that these panels close is 32' 11 5\/8"/,
    ],
    [
      "nothing that closes",
      job(60, [], { panels: [{ length: 12, stock: 2 }] }),
      /^answer: these panels and gates close no pen/,
    ],
    ["a pin gap that leaves nothing", job(60, [12], { pinGap: -12 }), /^value: pin_gap_in: /],
    [
      "more mixes than can be compared",
      job(4000, [1.01, 1.13, 1.27, 1.31, 1.43, 1.57]),
      /^answer: too many mixes/,
    ],
  ])("says why: %s", (_, asked, message) => {
    expect(refusal(asked)).toMatch(message);
  });
});
