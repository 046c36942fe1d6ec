import fc from "fast-check";
import { estimate } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { examplePrices } from "../../src/estimate/prices";
import { contentOfPlans } from "../../src/sheets/calculate";
import { estimatePlan } from "../../src/sheets/estimate";
import { labels } from "../../src/sheets/layout-messages";
import { columns, rows } from "../../src/sheets/layout-places";
import { layoutRows, layoutSheetPlan } from "../../src/sheets/layout-sheet";
import { postPenLayout } from "../../src/sheets/post-pen-layout";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { randomPostJob } from "../estimate/random-job";
import { Refusal } from "../../src/units/refusal";
import { expectWalkCloses } from "../fence/closed-walk";
import { pen, shownAt } from "./layouts";
import { placesIn } from "./typed-plan";

function layoutOf(job: Job) {
  const made = estimate(job, examplePrices);
  if (made.pen.structure !== "post pen") throw new Error("not a pen of posts");
  const cells = placesIn["post pen"];
  return postPenLayout(job, made.pen, made.work!, { revision: 1, date: "2026-11-25", estimate: { name: "Estimate", cells } });
} // prettier-ignore

/** False for a job whose fence by other passes a gate of its own. */
function isAnswered(job: Job): boolean {
  try {
    return layoutOf(job) !== undefined;
  } catch (refusal) {
    if (refusal instanceof Refusal && refusal.message.startsWith("fence by other")) return false;
    throw refusal;
  }
}

/** The layout sheet of `laidOut` beside the estimate of a job, worked out. */
function sheetOf(job: Job, laidOut = job) {
  const data = layoutOf(laidOut);
  const plans = [estimatePlan(job, "Estimate", pricesName), pricesPlan(examplePrices), layoutSheetPlan(data, "Layout")];
  return { data, first: layoutRows(data).first, sheet: contentOfPlans(plans, pen).sheets[2] };
} // prettier-ignore

const job: Job = { ...newJob(), structure: "post pen", leaf_2: 4, gate_bearing: 33, setting: "concrete" };

describe("the layout sheet of a post pen", () => {
  it("shows by its formulas the stakes as they are laid out, over random jobs, and the walk comes back", () => {
    fc.assert(
      fc.property(randomPostJob.filter(isAnswered), fc.integer({ min: 0, max: 359 }), (some, bearing) => {
        const { data, first, sheet } = sheetOf({ ...some, gate_bearing: bearing });
        const at = (k: number, column: number) => Number(shownAt(sheet, first + k, column));
        data.stakes.forEach((stake, k) => {
          for (const name of ["chord", "tie1", "tie2"] as const)
            expect(at(k, columns[name] + 1)).toBeCloseTo(stake[name], 9);
          expect([at(k, columns.east), at(k, columns.north)]).toEqual([expect.closeTo(stake.east, 9), expect.closeTo(stake.north, 9)]);
        });
        expectWalkCloses(data.stakes.map((stake, k) => ({ ...stake, atGate: stake.kind === "gate post", stake: k + 1 })));
        expect(shownAt(sheet, rows.warning, columns.stake)).toBe("");
      }),
      { numRuns: 25 },
    );
  }); // prettier-ignore

  it("hangs a gate of two leaves on both its posts, and says its leaves and opening in both languages", () => {
    const two = { ...job, gates_of_two: 1 };
    const { data, first, sheet } = sheetOf(two);
    const sides = [0, 1].map((k) => shownAt(sheet, first + k, columns.side));
    expect(sides).toEqual([labels.hinge.en, labels.hinge.en]);
    expect(data.stakes.filter(({ sides: some }) => some.includes("latch"))).toHaveLength(1);
    const said = (some: Job) => sheetOf(some).sheet.cells.map(({ value }) => value);
    expect(said(two)).toContain("1 gate of two leaves of 10', clear opening 20' 6\"");
    expect(said({ ...two, language: "Spanish" })).toContain("1 puerta de dos hojas de 10', paso libre 20' 6\"");
    expect(said(two)).toContain("1 gate of 4', clear opening 4' 4\"");
    const moved = sheetOf({ ...job, gate_room: 6 }, job).sheet;
    expect(shownAt(moved, rows.warning, columns.stake)).toBe(labels.outOfDate.en);
  }); // prettier-ignore

  it("names each post, gives it its hole, and hangs each gate between a hinge and a latch", () => {
    const { data, first, sheet } = sheetOf(job);
    const row = (k: number) =>
      [columns.kind, columns.side, columns.hole, columns.holeDepth].map((column) => shownAt(sheet, first + k, column));
    expect(row(0)).toEqual([labels["gate post"].en, labels.hinge.en, 12, 34]);
    expect(row(1)).toEqual([labels["gate post"].en, labels.latch.en, 12, 34]);
    expect(row(2)).toEqual([labels.post.en, "", 10, 34]);
    expect(data.stakes.filter(({ kind }) => kind === "gate post")).toHaveLength(4);
    expect(data.measuredTo).toBe("post center");
    expect(layoutOf({ ...job, setting: "driven" }).stakes.every(({ hole }) => hole === undefined)).toBe(true);
  }); // prettier-ignore

  it("is out of date once the estimate has other posts, gates or holes", () => {
    const warning = (changes: Partial<Job>) =>
      shownAt(sheetOf({ ...job, ...changes } as Job, job).sheet, rows.warning, columns.stake);
    expect(warning({})).toBe("");
    for (const changes of [{ size: 70 }, { spacing: 7 }, { leaf_1: 12 }, { gate_room: 6 }, { hole_gravel: 6 }, { setting: "driven" }, { gate_post: "6x6" }])
      expect([changes, warning(changes)]).toEqual([changes, labels.outOfDate.en]);
    expect(warning({ rail_rows: 5 })).toContain("OUT OF DATE");
    expect(warning({ rail_waste: 12 })).toBe("");
  }); // prettier-ignore
});
