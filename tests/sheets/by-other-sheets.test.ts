import { estimate } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { isArena, isPosted } from "../../src/estimate/pen";
import { examplePrices } from "../../src/estimate/prices";
import { type Structure } from "../../src/estimate/structures";
import { fixedOf } from "../../src/estimate/fixed";
import { figuresOf } from "../../src/estimate/figures";
import { arenaLayoutData } from "../../src/sheets/arena-layout-data";
import { arenaLayoutPlan, arenaLayoutRows } from "../../src/sheets/arena-layout-sheet";
import { contentOfPlans } from "../../src/sheets/calculate";
import { scopeOf } from "../../src/sheets/documents/bid-scope";
import { estimatePlan, typedInto } from "../../src/sheets/estimate";
import { changedFixed, changedInputs, isOutOfDate, ownChanges, readEstimate } from "../../src/sheets/keyed";
import { labels } from "../../src/sheets/layout-messages";
import { columns, rows } from "../../src/sheets/layout-places";
import { layoutRows, layoutSheetPlan } from "../../src/sheets/layout-sheet";
import { messages } from "../../src/sheets/messages";
import { panelPenLayout } from "../../src/sheets/panel-pen-layout";
import { postPenLayout } from "../../src/sheets/post-pen-layout";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { type Cell } from "../../src/units/cell";
import { sourcesOf } from "./documents/books";
import { pen, shownAt } from "./layouts";
import { shownBy } from "./shown";
import { placesIn } from "./typed-plan";

const shared = {
  "panel pen": { gate_2: 6, gates_by_other: 2, fence_by_other: "3; 7" },
  "post pen": { leaf_2: 6, gates_by_other: 2, fence_by_other: "3; 7" },
  "panel arena": { gate_1: 12, gate_2: 8, gates_by_other: 2, fence_by_other: "3; 7" },
  "post arena": { leaf_2: 4, corner_radius: 20, gates_by_other: 2, fence_by_other: "3; 7" },
} as const satisfies Record<Structure, Job>;
const jobs = (Object.keys(shared) as Structure[]).map(
  (structure) => [structure, { ...newJob(), structure, ...shared[structure] } as Job] as const,
);

/** An estimate as its sheet shows it once these are typed into it. */
const sheetOf = (job: Job, typed: Record<string, Cell> = {}) =>
  readEstimate(
    shownBy(
      contentOfPlans(
        [typedInto(estimatePlan(job, "Estimate", pricesName), typed), pricesPlan(examplePrices)],
        pen,
      ).sheets[0],
    ),
  );

describe("fence by other on an estimate's sheet", () => {
  it.each(jobs)("of a %s is out of date once other stakes are typed, and not before", (_, job) => {
    expect(isOutOfDate(sheetOf(job))).toBe(false);
    expect(sheetOf(job).cells.stale_warning.value).toBe("");
    for (const typed of [{ fence_by_other: "3; 6" }, { fence_by_other: null }]) {
      const sheet = sheetOf(job, typed);
      expect([isOutOfDate(sheet), sheet.cells.stale_warning.value]).toEqual([
        true,
        messages.writtenOutOfDate,
      ]);
    }
  });

  it("of a panel pen is out of date on a pen of another size, where without it every figure follows", () => {
    const [, job] = jobs[0];
    const larger = sheetOf(job, { size: 90 });
    expect([isOutOfDate(larger), larger.cells.stale_warning.value]).toEqual([
      true,
      messages.writtenOutOfDate,
    ]);
    const alone = sheetOf({ ...job, fence_by_other: null }, { size: 90 });
    expect([isOutOfDate(alone), alone.cells.stale_warning.value]).toEqual([false, ""]);
    const figured = { ...job, fence_by_other: null, size: 90 };
    expect(ownChanges(alone, figuresOf(figured, estimate(figured, examplePrices)))).toEqual([]);
  });

  it.each(jobs)(
    "of a %s is right again once the panel updates inputs and numbers, with more of it, with less and with none",
    (_, job) => {
      for (const fence_by_other of ["3; 5", "3; 7; 8; 9", null]) {
        const now = { ...job, fence_by_other };
        const sheet = sheetOf(job);
        const cells = new Map(
          [...changedInputs(sheet, now), ...changedFixed(sheet, now, fixedOf(now))].map(
            ({ row, column, value }) => [`${row},${column}`, value],
          ),
        );
        const plan = estimatePlan(job, "Estimate", pricesName);
        const updated = {
          ...plan,
          cells: plan.cells.map((cell) => {
            const value = cells.get(`${cell.row},${cell.column}`);
            return value === undefined ? cell : { ...cell, says: { kind: "constant" as const, value } };
          }),
        };
        const read = readEstimate(
          shownBy(contentOfPlans([updated, pricesPlan(examplePrices)], pen).sheets[0]),
        );
        expect(isOutOfDate(read)).toBe(false);
        expect(ownChanges(read, figuresOf(now, estimate(now, examplePrices)))).toEqual([]);
      }
    },
  );

  it("names beside panels how many are by other", () => {
    const plan = contentOfPlans(
      [estimatePlan(jobs[0][1], "Estimate", pricesName), pricesPlan(examplePrices)],
      pen,
    ).sheets[0];
    const words = plan.cells
      .map(({ value }) => String(value))
      .filter((one) => one.startsWith(messages.panelItem));
    expect(words).toEqual(["Panel, 12 ft, 4 by other"]);
  });
});

describe("fence by other on a layout sheet", () => {
  const issue = (structure: Structure) => ({
    revision: 1,
    date: "2026-11-25",
    estimate: { name: "Estimate", cells: placesIn[structure] },
  });
  const laidOut = (structure: Structure, laid: Job, job = laid) => {
    const { pen: built, work } = estimate(laid, examplePrices);
    const told = issue(structure);
    const book = [estimatePlan(job, "Estimate", pricesName), pricesPlan(examplePrices)];
    if (isArena(built)) {
      const data = arenaLayoutData(laid, built, work, told);
      return {
        data,
        first: arenaLayoutRows(data).first,
        sheet: contentOfPlans([...book, arenaLayoutPlan(data, "Layout")], pen).sheets[2],
      };
    }
    const data = isPosted(built)
      ? postPenLayout(laid, built, work!, told)
      : panelPenLayout(laid, built, told);
    return {
      data,
      first: layoutRows(data).first,
      sheet: contentOfPlans([...book, layoutSheetPlan(data, "Layout")], pen).sheets[2],
    };
  };

  it.each(jobs)(
    "of a %s marks each of its stakes where the crew writes what it set, without a hole, and is said and drawn",
    (structure, job) => {
      const { data, first, sheet } = laidOut(structure, { ...job, setting: "concrete" });
      const theirs = data.stakes.flatMap(({ stake, byOther }) => (byOther ? [stake] : []));
      expect(theirs).toEqual(expect.arrayContaining([3, 4, 5, 6, 7]));
      expect(theirs).toHaveLength(7);
      data.stakes.forEach(({ byOther }, k) => {
        expect(shownAt(sheet, first + k, columns.asSet) ?? "").toBe(byOther ? labels.byOther.en : "");
        const hole = shownAt(sheet, first + k, columns.hole) ?? "";
        if (structure.startsWith("post")) expect(hole === "").toBe(byOther === true);
      });
      expect(data.notes.filter((note) => note.includes("by other"))).toHaveLength(2);
      expect(data.plan.svg).toContain("by other");
      expect(shownAt(sheet, rows.warning, columns.stake)).toBe("");
    },
  );

  it.each(jobs)("of a %s is out of date once the estimate names other stakes or gates", (structure, job) => {
    for (const change of [{ fence_by_other: "3; 6" }, { gates_by_other: null }] as Job[])
      expect(shownAt(laidOut(structure, job, { ...job, ...change }).sheet, rows.warning, columns.stake)).toBe(
        labels.outOfDate.en,
      );
  });
});

describe("fence by other in a bid", () => {
  it("is the last of the scope, after the words that every bid has", () => {
    const own = scopeOf(sourcesOf([{ ...jobs[1][1], gates_by_other: null, fence_by_other: null }], [...examplePrices]).sources[0]);
    const bid = scopeOf(sourcesOf([jobs[1][1]], [...examplePrices]).sources[0]);
    expect(bid.slice(0, own.length).at(-1)).toBe(own.at(-1));
    expect(bid.slice(own.length)).toEqual([
      "Gate 2 of the estimate, 6', and its posts are by other.",
      "The fence from stake 3 to stake 7, 4 bays, is by other, with the posts at both ends.",
    ]);
  });
}); // prettier-ignore
