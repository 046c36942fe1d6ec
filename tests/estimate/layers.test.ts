import fc from "fast-check";
import { estimate, type Estimate } from "../../src/estimate/estimate";
import { slotKeys } from "../../src/estimate/fields";
import { figuresOf } from "../../src/estimate/figures";
import { newJob, type Job } from "../../src/estimate/job";
import { baseLayer, footingLayer, hauled, laid, layers, ownLoads } from "../../src/estimate/layers";
import { examplePrices } from "../../src/estimate/prices";
import { circleArea } from "../../src/geometry/circle";
import { loads } from "../../src/ground/hauling";
import { LIFT, liftsOf } from "../../src/ground/lifts";
import { Refusal } from "../../src/units/refusal";
import { randomJob, randomPrices } from "./random-job";

const jobOf = (some: Job): Job => ({ ...newJob(), ...some });
const withBase = jobOf({ base_depth: 4, truck_1: 16, truck_2: 10 });
const lineOf = ({ lines }: Estimate, key: string) => lines.find((line) => line.key === key);

function answered(job: Job): Estimate | undefined {
  try {
    return estimate(job, examplePrices);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

describe("the base under the footing", () => {
  it("V6: needs 34.9066 cubic yards for 4 in on a 60 ft circle (derived)", () => {
    const { need, delivered } = laid(jobOf({ base_depth: 4, truck_1: null }), baseLayer, circleArea(60));
    expect(Math.abs(need - 34.9066)).toBeLessThan(1e-3);
    expect(delivered).toBe(need);
  });

  it("V9: needs 17 loads of 10 yards for 160.494 cubic yards, nothing short (derived)", () => {
    const { counts } = hauled(jobOf({ truck_1: 10, short: 0 }), baseLayer, 160.494);
    expect(counts).toEqual([17, null, null, null]);
  });

  it("V10: bought loose, lies as deep as was asked for once it is compacted (US Army FM 5-434, memory)", () => {
    const base_settle = (1 - 0.95 / 1.11) * 100;
    const { need, depthLoose, depthSettled } = laid(jobOf({ base_depth: 4, base_settle, truck_1: null }), baseLayer, 3421);
    expect(need / ((3421 * 4) / 324)).toBeCloseTo(1.11 / 0.95, 12);
    expect(depthLoose).toBeCloseTo((4 * 1.11) / 0.95, 12);
    expect(depthSettled).toBeCloseTo(4, 12);
  });

  it("weighs 1.4 tons a cubic yard until the quarry says otherwise (memory)", () => {
    const { delivered, tons } = laid(withBase, baseLayer, 3000);
    expect(tons).toBeCloseTo(1.4 * delivered, 12);
    expect(laid({ ...withBase, base_tons_per_cy: 1.5 }, baseLayer, 3000).tons).toBeCloseTo(1.5 * delivered, 12);
  });

  it("is compacted in lifts of at most 4 in (common practice, no source)", () => {
    expect(LIFT).toBe(4);
    expect([0, 2, 4, 4.5, 8, 9].map(liftsOf)).toEqual([0, 1, 1, 2, 2, 3]);
  });

  it("leaves every other figure of a job as it is where its depth is 0 or blank", () => {
    const without = Object.fromEntries(
      Object.entries(newJob()).filter(([key]) => key.startsWith("base_") || key === "fabric"),
    );
    expect(Object.keys(without)).toHaveLength(10);
    let held = 0;
    fc.assert(
      fc.property(randomJob, fc.constantFrom(0, null), (some, base_depth) => {
        const uses = Object.fromEntries(slotKeys("truck").map((truck) => [`base_${truck}_use`, null]));
        const job = { ...some, ...uses, base_depth };
        const made = answered(job);
        if (!made) return;
        expect(figuresOf(job, made)).toEqual(figuresOf(some, answered({ ...some, ...without })!));
        expect(made.lines.filter(({ key }) => /^(base|fabric)/.test(key))).toEqual([]);
        held++;
      }),
    );
    expect(held).toBeGreaterThan(20);
  });

  it("comes in loads of its own, each layer's the best for its need, and one line a truck prices both", () => {
    fc.assert(
      fc.property(randomJob, randomPrices, (some, prices) => {
        const job = { ...some, ...Object.fromEntries(ownLoads.map((key) => [key, null])) };
        const made = answered(job);
        if (!made || job.truck_1 === null) return;
        const trucks = slotKeys("truck").map((key) => ({ size: Number(job[key] ?? 0) }));
        for (const { material } of layers) {
          const best = loads(made[material].need, trucks, Number(job.short));
          expect(made[material].counts.map((count) => count ?? 0)).toEqual(best);
        }
        const again = estimate(job, prices);
        slotKeys("truck").forEach((key, k) => {
          const both = (made.base.counts[k] ?? 0) + (made.sand.counts[k] ?? 0);
          const quantity = lineOf(again, key)?.quantity ?? 0;
          expect(quantity).toBeGreaterThanOrEqual(both);
          if (both === 0) expect(quantity).toBe(0);
        });
      }),
    );
  });

  it("counts its yards among those that are spread, and its fabric over the built area, lap on top", () => {
    const plain = estimate(jobOf({ hours_panel: 0, hours_gate: 0, hours_yard: 1 }), examplePrices);
    const made = estimate(jobOf({ hours_panel: 0, hours_gate: 0, hours_yard: 1, base_depth: 4 }), examplePrices);
    const hours = (one: Estimate) => lineOf(one, "labor")!.quantity;
    expect(hours(made)).toBe(Math.ceil(4 * (made.base.delivered + made.sand.delivered)) / 4);
    expect(hours(plain)).toBe(Math.ceil(4 * plain.sand.delivered) / 4);
    const area = ({ pen, takeoff }: Estimate) => [pen.area, takeoff.find(({ key }) => key === "fabric")!.counted];
    expect(area(made)[1]).toBe(0);
    const laidOut = estimate(jobOf({ base_depth: 4, fabric: "under base" }), examplePrices);
    expect(area(laidOut)[1]).toBe(area(laidOut)[0]);
    expect(lineOf(laidOut, "fabric")!.quantity).toBe(Math.ceil(laidOut.pen.area * 1.1));
    expect(lineOf(estimate(jobOf({ fabric: "under base" }), examplePrices), "fabric")).toBeUndefined();
  });

  it("takes the user's own loads, and sells by ton or yard as the quarry does", () => {
    const own = { ...withBase, base_truck_1_use: 2, base_truck_2_use: 0 };
    const { base, sand } = estimate(own, examplePrices);
    expect([base.counts, base.delivered]).toEqual([[2, 0, null, null], 32]);
    expect(sand.counts).toEqual(estimate(withBase, examplePrices).sand.counts);
    const quantity = (base_unit: string | null) => lineOf(estimate({ ...own, base_unit }, examplePrices), "base")!.quantity;
    expect([quantity("ton"), quantity(null), quantity("cu yd")]).toEqual([32 * 1.4, 32 * 1.4, 32]);
  });

  it("has keys of its own beside the footing's", () => {
    expect([baseLayer.depth, footingLayer.depth]).toEqual(["base_depth", "depth"]);
    expect(ownLoads).toHaveLength(8);
    for (const key of ownLoads) expect(newJob()).toHaveProperty(key);
  });
}); // prettier-ignore
