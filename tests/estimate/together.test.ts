import fc from "fast-check";
import { estimate, totalOf } from "../../src/estimate/estimate";
import { fieldOf } from "../../src/estimate/fields";
import { newJob, type Job } from "../../src/estimate/job";
import { ownLoads } from "../../src/estimate/layers";
import { messages } from "../../src/estimate/messages";
import { examplePrices } from "../../src/estimate/prices";
import { together } from "../../src/estimate/together";
import { Refusal } from "../../src/units/refusal";
import { ownFor, randomJob, randomOwn, randomPrices } from "./random-job";

const jobOf = (some: Job): Job => ({ ...newJob(), ...some });
const linesOf = (jobs: Job[], key: string) =>
  together(
    jobs.map((job) => ({ job })),
    examplePrices,
  ).lines.filter((line) => line.key === key);

describe("several estimates priced as one", () => {
  it("gives a single one the price that it has alone, line by line", () => {
    let priced = 0;
    fc.assert(
      fc.property(randomJob, randomPrices, randomOwn, (some, prices, typed) => {
        const job: Job = {
          ...some,
          ...Object.fromEntries(ownLoads.map((key) => [key, null])),
        };
        const own = ownFor(job, typed);
        const alone = totalOrRefusal(() => totalOf(estimate(job, prices, own)));
        expect(totalOrRefusal(() => totalOf(together([{ job, own }], prices)))).toBe(alone);
        priced += typeof alone === "number" ? 1 : 0;
      }),
      { numRuns: 60 },
    );
    expect(priced).toBeGreaterThan(5);
  });

  // 35 ft by 3 in is 8.9 cu yd inside the panels, less than a load of 16: two such pens need two loads apart and two
  // together; three of them, 26.7 cu yd, need three apart and two together.
  it("counts the loads of all of them once", () => {
    const small = jobOf({ size: 35 });
    const [load] = linesOf([small], "truck_1");
    expect(load.quantity).toBe(1);
    expect(linesOf([small, small, small], "truck_1")).toMatchObject([{ of: null, quantity: 2 }]);
    const made = together([{ job: small }, { job: small }, { job: small }], examplePrices);
    expect(made.ground.sand.need).toBeCloseTo(3 * made.alone[0].sand.need, 9);
    expect(made.ground.sand.delivered).toBe(32);
    expect(linesOf([small, small, small], "sand")[0].quantity).toBeCloseTo(32 * 1.35, 9);
  });

  it("counts the loads of base of all of them once, apart from those of sand", () => {
    const small = jobOf({ size: 35, base_depth: 3 });
    const made = together([{ job: small }, { job: small }, { job: small }], examplePrices);
    const { base, sand } = made.ground;
    expect(base.need).toBeCloseTo(3 * made.alone[0].base.need, 9);
    expect([base.delivered, sand.delivered]).toEqual([32, 32]);
    expect(made.lines.filter(({ key }) => key === "truck_1")).toMatchObject([{ of: null, quantity: 4 }]);
    expect(linesOf([small, small, small], "base")[0].quantity).toBeCloseTo(32 * 1.4, 9);
    const own = { job: { ...small, base_truck_1_use: 1 } };
    expect(() => together([own, { job: small }], examplePrices)).toThrow(messages.ownLoads);
  });

  it("moves crew and machines once, charges the least once and rounds once", () => {
    const job = jobOf({ size: 35, minimum: 9000, rounding: "100 dollars" });
    expect(linesOf([job, { ...job, mobilization: 2 }], "mobilization")).toMatchObject([
      { of: null, quantity: 2 },
    ]);
    const { charges } = together([{ job }, { job: { ...job, size: 40 } }], examplePrices);
    expect(charges.total.toNumber()).toBe(9000);
    const larger = together([{ job }, { job: { ...job, size: 150 } }], examplePrices);
    expect(larger.charges.total.toNumber()).toBeGreaterThan(9000);
    expect(larger.charges.total.mod(100).toNumber()).toBe(0);
  });

  it("keeps the other lines of each estimate, and prices them on the charges in common", () => {
    const [pen, posts] = [jobOf({}), jobOf({ structure: "post pen", burden: 0 })];
    const made = together([{ job: pen }, { job: posts }], examplePrices);
    const amount = (key: string, of: number | null) =>
      made.lines.find((line) => line.key === key && line.of === of)?.amount?.toNumber();
    const alone = estimate(pen, examplePrices);
    expect(amount("panel_1", 0)).toBe(alone.lines.find(({ key }) => key === "panel_1")!.amount!.toNumber());
    expect(amount("line_posts", 1)).toBeGreaterThan(0);
    expect(amount("sand", 0)).toBeUndefined();
    const sum = made.lines.reduce((all, line) => all + line.amount!.toNumber(), 0);
    expect(made.charges.direct.toNumber()).toBeCloseTo(sum, 6);
  });

  it("refuses answers in which they may not differ, by name", () => {
    const other = { tons_per_cy: 1.45, truck_2: 10, profit: 20 };
    const labels = ["tons_per_cy", "truck_2", "profit"].map((key) => fieldOf(key).label.en);
    expect(() => together([{ job: newJob() }, { job: jobOf(other) }], examplePrices)).toThrow(
      messages.answersDiffer(labels),
    );
    expect(() => together([{ job: jobOf({ truck_1_use: 3 }) }, { job: newJob() }], examplePrices)).toThrow(
      messages.ownLoads,
    );
    expect(() => together([], examplePrices)).toThrow(messages.noJobs);
    expect(() =>
      together([{ job: newJob() }, { job: jobOf({ gate_1: 40, size: 8 }) }], examplePrices),
    ).toThrow(Refusal);
  });

  it("names what has no price, shared lines too", () => {
    const without = examplePrices.filter(({ item }) => item !== "panel" && item !== "mobilization");
    const made = together([{ job: newJob() }, { job: newJob() }], without);
    expect(made.pricesMissing).toBe(3);
    expect(totalOf(made)).toBe("3 prices missing");
    expect(made.missing.map(({ item }) => item)).toEqual(["panel", "panel", "mobilization"]);
  });
});

function totalOrRefusal(work: () => number | string): number | string {
  try {
    return work();
  } catch (refusal) {
    if (refusal instanceof Refusal) return refusal.message;
    throw refusal;
  }
}
