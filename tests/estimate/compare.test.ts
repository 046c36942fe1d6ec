import fc from "fast-check";
import { largestWithin, ownCountsOf, repriced } from "../../src/estimate/compare";
import { estimate, totalOf } from "../../src/estimate/estimate";
import { newJob } from "../../src/estimate/job";
import { examplePrices } from "../../src/estimate/prices";
import { waysUnder } from "../../src/estimate/ways-under";
import { Refusal } from "../../src/units/refusal";
import { randomJob, randomPrices } from "./random-job";

/** The total of a job by itself, or why there is none. */
function alone(...asked: Parameters<typeof estimate>): number | string {
  try {
    return totalOf(estimate(...asked));
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return refusal.message;
  }
}

describe("sizes side by side", () => {
  it("have each the price that it has alone, over random jobs and prices", () => {
    let priced = 0;
    fc.assert(
      fc.property(randomJob, randomPrices, fc.integer({ min: 30, max: 150 }), (job, prices, size) => {
        const own = [{ key: "own_fence_1", quantity: 2, price: 35.25, taxed: true }];
        const found = repriced(job, { size }, prices, own);
        const uses = Object.fromEntries(ownCountsOf(job).map((key) => [key, null]));
        const expected = alone({ ...job, ...uses, size }, prices, own);
        expect(found.price ?? found.refusal ?? totalOf(found.made!)).toBe(expected);
        if (found.price !== null) priced++;
      }),
      { numRuns: 200 },
    );
    expect(priced).toBeGreaterThan(20);
  });

  it("say why one of them cannot be built", () => {
    const { made, refusal, price } = repriced({ ...newJob(), gate_1: 40 }, { size: 9 }, examplePrices);
    expect([made, price]).toEqual([undefined, null]);
    expect(refusal).toMatch(/gates? alone/);
  });

  it("do not take the user's own counts along, and name them", () => {
    const job = { ...newJob(), panel_1_use: 12, stakes_use: 3 };
    expect(ownCountsOf(job)).toEqual(["panel_1_use", "stakes_use"]);
    expect(repriced(job, {}, examplePrices).price).toBe(repriced(newJob(), {}, examplePrices).price);
  });

  it("mark the largest by built area within the budget, and none where all are over it", () => {
    const some = [60, 80, 50, 66].map((size) => repriced(newJob(), { size }, examplePrices));
    const prices = some.map(({ price }) => price!);
    expect(prices).toEqual([...prices].sort((a, b) => a - b).map((_, k) => prices[k]));
    expect(largestWithin(some, prices[3])).toBe(3);
    expect(largestWithin(some, prices[0])).toBe(0);
    expect(largestWithin(some, prices[0] - 0.01)).toBe(2);
    expect(largestWithin(some, prices[2] - 0.01)).toBe(-1);
  });
});

describe("ways under a budget", () => {
  it("are priced as whole jobs and save what they say, the largest saving first", () => {
    fc.assert(
      fc.property(randomJob, (job) => {
        const now = repriced(job, {}, examplePrices).price;
        const ways = waysUnder(job, examplePrices);
        for (const { answers, price, saves } of ways) {
          expect(price).toBe(repriced(job, answers, examplePrices).price);
          expect(saves!).toBeGreaterThan(0);
          expect(price! + saves!).toBeCloseTo(now!, 6);
        }
        expect(ways.map(({ saves }) => saves)).toEqual(ways.map(({ saves }) => saves!).sort((a, b) => b - a));
      }),
    );
  }); // prettier-ignore

  it("are less footing, down to 2 in, the other fence, a narrower gate, fewer rails", () => {
    const words = (changes: object) =>
      waysUnder({ ...newJob(), ...changes }, examplePrices).map((way) => way.words);
    expect(words({ depth: 4, gate_1: 12 })).toEqual(
      expect.arrayContaining(["3 in of footing", "2 in of footing", "a gate of 10 ft"]),
    );
    expect(words({ depth: 2, gate_1: 6 })).not.toContainEqual(expect.stringMatching(/footing|gate of/));
    expect(words({ structure: "post pen", rail_rows: 4 })).toContain("3 rows of rails");
    expect(words({ structure: "post pen", rail_rows: 3 })).not.toContainEqual(
      expect.stringMatching(/rows of rails/),
    );
    const fences = ["panel pen", "post pen"].map((structure) => words({ structure }));
    expect(fences.flat().filter((said) => /^a (panel|post) pen$/.test(said))).toHaveLength(1);
  });

  it("are a thinner base down to 4 in, and none, its fabric with it", () => {
    const job = { ...newJob(), truck_1: null, base_depth: 6, fabric: "under base" };
    const ways = (changes: object) =>
      waysUnder({ ...job, ...changes }, examplePrices).filter(({ words }) => words.endsWith(" base"));
    const said = (changes: object) => ways(changes).map(({ words }) => words.replace(" in of base", ""));
    expect(said({})).toEqual(["no base", "4", "5"]);
    expect(said({ base_depth: 5 })).toEqual(["no base", "4"]);
    expect(said({ base_depth: 3 })).toEqual(["no base"]);
    expect(said({ base_depth: 0 })).toEqual([]);
    const [{ price }] = ways({});
    expect(price).toBe(repriced({ ...newJob(), truck_1: null }, {}, examplePrices).price);
  });

  it("are the owner's own work, which saves every hour", () => {
    const way = waysUnder(newJob(), examplePrices).find(({ words }) => words === "the owner doing the work")!;
    const line = (made: typeof way.made) => made!.lines.find(({ key }) => key === "labor");
    expect(line(estimate(newJob(), examplePrices))!.quantity).toBeGreaterThan(0);
    expect(line(way.made)?.quantity ?? 0).toBe(0);
  });

  it("are none where a price is missing", () => {
    expect(waysUnder({ ...newJob(), panel_1: 11 }, examplePrices)).toEqual([]);
  });
});
