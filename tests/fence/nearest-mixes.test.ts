import fc from "fast-check";
import { nearestMixes, panelMix } from "../../src/fence/panel-mix";
import { Refusal } from "../../src/units/refusal";
import { exhaustiveMixes } from "./exhaustive-mix";

const anyJob = fc.record({
  diameter: fc.oneof(
    fc.double({ min: 3, max: 18, noNaN: true }),
    fc.double({ min: 18, max: 45, noNaN: true }),
  ),
  panels: fc.uniqueArray(
    fc.record(
      {
        length: fc.oneof(
          fc.constantFrom(6, 8, 10, 12, 16),
          fc.integer({ min: 60, max: 240 }).map((inches) => inches / 12),
        ),
        stock: fc.integer({ min: 0, max: 14 }),
      },
      { requiredKeys: ["length"] },
    ),
    { minLength: 1, maxLength: 3, selector: ({ length }) => length },
  ),
  gates: fc.array(fc.constantFrom(4, 6, 8, 10, 12, 16), { maxLength: 4 }),
  pinGap: fc.constantFrom(0, 1 / 24, -1 / 48),
  fit: fc.constantFrom("nearest" as const, "at least" as const, "at most" as const),
});
const whole = { priced: false, tolerance: Infinity };

function mixesOf(job: Parameters<typeof nearestMixes>[0], many: number): number[][] {
  try {
    return nearestMixes(job, many);
  } catch (error) {
    if (error instanceof Refusal) return [];
    throw error;
  }
}

describe("nearestMixes", () => {
  it("gives the best three, or five, that trying every mix gives, in any small job", () => {
    fc.assert(
      fc.property(anyJob, fc.constantFrom(3, 5), (job, many) => {
        expect(mixesOf(job, many)).toEqual(exhaustiveMixes({ ...job, ...whole }, many));
      }),
      { numRuns: 800 },
    );
  });

  it("begins with the mix of panelMix on pens too large to try every mix", () => {
    for (const fit of ["nearest", "at least", "at most"] as const) {
      const panels = [16, 14, 12, 10, 8].map((length) => ({ length }));
      const job = { diameter: 120, panels, gates: [12, 8, 4], pinGap: 1 / 24, fit };
      const mixes = nearestMixes(job, 3);
      expect(mixes[0]).toEqual(panelMix({ ...job, ...whole }));
      expect(new Set(mixes.map(String)).size).toBe(3);
    }
  });

  it("answers for six lengths and four gates at 200 ft, with mixes that are all as near where many are", () => {
    for (const lengths of [[16, 14, 12, 10, 8, 5.5], [6, 5.5, 5, 4.5, 4, 3.5]]) {
      const gates = [12, 10, 8, 4];
      const job = { diameter: 200, panels: lengths.map((length) => ({ length })), gates, pinGap: 0, fit: "nearest" } as const;
      const mixes = nearestMixes(job, 3);
      expect(mixes[0]).toEqual(panelMix({ ...job, ...whole }));
      const off = (counts: number[]) =>
        Math.abs(counts.reduce((sum, n, i) => sum + n * lengths[i], 34) / Math.PI - 200);
      const pieces = (counts: number[]) => counts.reduce((sum, n) => sum + n, 0);
      for (const mix of mixes) expect(off(mix)).toBeCloseTo(off(mixes[0]), 9);
      expect(mixes.map(pieces)).toEqual(mixes.map(pieces).sort((a, b) => a - b));
      expect(new Set(mixes.map(String)).size).toBe(3);
    }
  }); // prettier-ignore

  it("gives fewer where the stock leaves fewer pens", () => {
    const panels = [{ length: 12, stock: 4 }];
    expect(nearestMixes({ diameter: 15, panels, gates: [], pinGap: 0, fit: "nearest" }, 3)).toEqual([
      [4],
      [3],
    ]);
  });

  it("refuses what panelMix refuses", () => {
    const panels = [{ length: 12, stock: 2 }];
    expect(() => nearestMixes({ diameter: 60, panels, gates: [], pinGap: 0, fit: "nearest" }, 3)).toThrow(
      /close no pen/,
    );
  });
});
