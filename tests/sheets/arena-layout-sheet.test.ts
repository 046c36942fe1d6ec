import fc from "fast-check";
import { estimate } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { isArena } from "../../src/estimate/pen";
import { examplePrices } from "../../src/estimate/prices";
import { arenaLayoutData } from "../../src/sheets/arena-layout-data";
import { arenaLayoutPlan } from "../../src/sheets/arena-layout-sheet";
import { arenaLabels } from "../../src/sheets/arena-layout-words";
import { contentOfPlans } from "../../src/sheets/calculate";
import { estimatePlan } from "../../src/sheets/estimate";
import { labels } from "../../src/sheets/layout-messages";
import { columns, rows } from "../../src/sheets/layout-places";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { type Structure } from "../../src/estimate/structures";
import { isError } from "../../src/units/cell";
import { Refusal } from "../../src/units/refusal";
import { randomPanelArena, randomPostArena } from "../estimate/random-job";
import { expectWalkCloses } from "../fence/closed-walk";
import { pen, shownAt } from "./layouts";
import { placesIn } from "./typed-plan";

function dataOf(job: Job) {
  const { pen: arena, work } = estimate(job, examplePrices);
  if (!isArena(arena)) throw new Error("not an arena");
  const cells = placesIn[job.structure as Structure];
  return arenaLayoutData(job, arena, work, {
    revision: 1,
    date: "2026-11-25",
    estimate: { name: "Estimate", cells },
  });
}

/** The layout sheet of `laidOut` beside the estimate of a job, worked out, and the row of its first stake. */
function sheetOf(job: Job, laidOut = job) {
  const data = dataOf(laidOut);
  const plans = [
    estimatePlan(job, "Estimate", pricesName),
    pricesPlan(examplePrices),
    arenaLayoutPlan(data, "Layout"),
  ];
  const sheet = contentOfPlans(plans, pen).sheets[2];
  const first = sheet.cells.find(({ column, value }) => column === columns.stake && value === 1)!.row;
  return { data, sheet, first };
}

const posts: Job = {
  ...newJob(),
  structure: "post arena",
  corner_radius: 20,
  leaf_2: 4,
  length_bearing: 33,
  setting: "concrete",
};
const panels: Job = { ...newJob(), structure: "panel arena", gate_1: 12 };

describe("the layout sheet of an arena", () => {
  it("has a row for every stake without an error, whose walk comes back, over random arenas", () => {
    let laid = 0;
    fc.assert(
      fc.property(fc.oneof(randomPanelArena, randomPostArena), fc.integer({ min: 0, max: 359 }), (some, bearing) => {
        const job = { ...some, length_bearing: bearing };
        try {
          estimate(job, examplePrices);
        } catch (refusal) {
          if (refusal instanceof Refusal) return;
          throw refusal;
        }
        laid++;
        const { data, sheet, first } = sheetOf(job);
        expect(sheet.cells.filter(({ value }) => isError(value ?? null))).toEqual([]);
        data.stakes.forEach((stake, k) => expect(shownAt(sheet, first + k, columns.stake)).toBe(stake.stake));
        expectWalkCloses(data.stakes.map((stake, k) => ({ ...stake, atGate: stake.kind.startsWith("gate"), stake: k + 1 })));
        const around = data.stakes.reduce((sum, { chord }) => sum + chord, 0);
        expect(shownAt(sheet, first + data.stakes.length, columns.running + 1)).toBeCloseTo(around, 9);
        expect(shownAt(sheet, rows.warning, columns.stake)).toBe("");
      }),
      { numRuns: 30 },
    );
    expect(laid).toBeGreaterThan(8);
  });

  it("gives each stake its offsets from the near left corner, whatever the bearing", () => {
    const { sheet, first } = sheetOf({ ...panels, length_bearing: 217 });
    const at = (k: number) => [columns.radius, columns.chord].map((column) => Number(shownAt(sheet, first + k, column + 1)));
    // The near end of 96 ft is walked from right to left: four panels, and the gate at the joint nearest to its middle.
    const [from, to] = [at(0), at(1)];
    expect([from[0], to[0]]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    expect([from[1], to[1]]).toEqual([expect.closeTo(48, 9), expect.closeTo(36, 9)]);
  });

  it("stakes tangent points, corners and arc centers, with holes, sides of gates and the sides of the arena", () => {
    const { data, sheet, first } = sheetOf(posts);
    const kinds = data.stakes.map(({ kind }) => kind);
    expect(kinds.filter((kind) => kind === "tangent point")).toHaveLength(8);
    expect(kinds.filter((kind) => kind === "gate post")).toHaveLength(4);
    const row = (k: number) =>
      [columns.kind, columns.side, columns.hole, columns.holeDepth, columns.angle].map((column) => shownAt(sheet, first + k, column));
    expect(row(0)).toEqual([labels["gate post"].en, labels.hinge.en, 12, 34, "near"]);
    const below = first + data.stakes.length + 1;
    const names = Array.from({ length: 10 }, (_, k) => shownAt(sheet, below + k, columns.stake));
    expect(names).toEqual(["C1", "C2", "C3", "C4", "P1", "P2", "P3", "P4", "A", "B"]);
  });

  it("is set from its gate: center, corners and every stake from the crew's mark, west and south of it too", () => {
    for (const [job, west] of [[panels, -30], [{ ...posts, language: "Spanish" }, 400]] as const) {
      const width = dataOf(job).stakes[1].chord;
      const told = { ...job, gate_right: `${west}; -80`, gate_left: `${west}; ${-80 + width + 1 / 48}` };
      const { data, sheet, first } = sheetOf(told);
      expect(sheet.cells.filter(({ value }) => isError(value ?? null))).toEqual([]);
      const at = (row: number) => [columns.siteEast, columns.siteNorth].map((column) => shownAt(sheet, row, column) as number);
      expect(at(first)).toEqual([expect.closeTo(west, 5), expect.closeTo(-80 + 1 / 96, 5)]);
      expect(at(first + 1)).toEqual([expect.closeTo(west, 5), expect.closeTo(-80 + width + 1 / 96, 5)]);
      expectWalkCloses(data.stakes.map((stake, k) => ({ ...stake, atGate: stake.kind.startsWith("gate"), stake: k + 1 })));
      const words = sheet.cells.map(({ value }) => value);
      expect(words).toContain(labels.gateFirst[data.language]);
      expect(words).toContain(data.center!.east < 0 ? labels.centerWest[data.language] : labels.centerEast[data.language]);
      expect(words.filter((one) => /of the mark$|de la marca$/.test(String(one)) && /corner|esquina/.test(String(one)))).toHaveLength(4);
      expect(words.filter((one) => /1\/4" (farther|más separados)/.test(String(one)))).toHaveLength(1);
      expect(shownAt(sheet, rows.warning, columns.stake)).toBe("");
      const moved = sheetOf({ ...told, gate_right: "0; 0" }, told).sheet;
      expect(shownAt(moved, rows.warning, columns.stake)).toBe(labels.outOfDate[data.language]);
    }
    expect(sheetOf(panels).sheet.columns[columns.siteEast].hidden).toBe(true);
  });

  it("says both diagonals and the 3-4-5 that fit, in English and Spanish", () => {
    const words = (job: Job) => sheetOf(job).sheet.cells.map(({ value }) => value);
    expect(words(panels)).toEqual(expect.arrayContaining(["3-4-5 times 32: 96 and 128 ft along the sides, 160 ft between", "3-4-5 times 10: 30 and 40 ft along the sides, 50 ft between"]));
    expect(words(panels).filter((value) => typeof value === "number" && Math.abs(value - Math.hypot(204, 96)) < 1e-6)).toHaveLength(2);
    expect(words({ ...posts, language: "Spanish" })).toEqual(expect.arrayContaining([arenaLabels.along.es, labels["arc center"].es]));
  });

  it("is out of date once the estimate has another size, corner, post, gate or place of one", () => {
    const warning = (changes: Partial<Job>) =>
      shownAt(sheetOf({ ...posts, ...changes } as Job, posts).sheet, rows.warning, columns.stake);
    expect(warning({})).toBe("");
    for (const changes of [{ arena_length: 190 }, { corner_radius: 25 }, { spacing: 7 }, { gate_side_1: "left side" }, { gate_at_1: 40 }, { gate_post: "6x6" }, { length_bearing: 34 }])
      expect([changes, warning(changes)]).toEqual([changes, labels.outOfDate.en]);
    expect(warning({ rail_rows: 5 })).toContain("OUT OF DATE");
    expect(warning({ rail_waste: 12 })).toBe("");
  });
}); // prettier-ignore
