import fc from "fast-check";
import { byOtherOf } from "../../src/estimate/by-other";
import { newJob, type Job } from "../../src/estimate/job";
import { panelPen } from "../../src/estimate/panel-pen";
import { panelLayout } from "../../src/fence/panel-layout";
import { radiusLine } from "../../src/fence/radius-line";
import { runningDistances } from "../../src/fence/stake-check";
import { centerAgain, referenceStakes } from "../../src/fence/reference-stakes";
import { labels } from "../../src/sheets/layout-messages";
import { columns, rows } from "../../src/sheets/layout-places";
import { layoutRows, layoutSheetPlan } from "../../src/sheets/layout-sheet";
import { usualLine } from "../../src/fence/radius-line";
import { contentOfPlans } from "../../src/sheets/calculate";
import { asksPen } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { feetInches } from "../../src/units/feet-inches";
import { isError } from "../../src/units/cell";
import { randomPanelJob } from "../estimate/random-job";
import { expectWalkCloses } from "../fence/closed-walk";
import { layoutOf, layoutSheet, pen, shownAt, stakeRows } from "./layouts";

const job: Job = { ...newJob(), job_name: "Copperleaf Bend (invented)", gate_1: 10, gate_2: 6, pin_gap: 0.5, gate_bearing: 33 }; // prettier-ignore
const sheet = layoutSheet(job);
const data = layoutOf(job);
const at = layoutRows(data);
const text = (row: number, column: number) => shownAt(sheet, row, column);
const rowSaying = (label: string) => sheet.cells.find(({ value }) => value === label)!.row;

/** Jobs whose pen has an answer; the others are passed over. */
const laidOutJob = randomPanelJob
  .chain((one) =>
    fc.record({
      gate_bearing: fc.integer({ min: 0, max: 720 }).map((half) => half / 2),
      gate_hand: fc.constantFrom("left", "right"),
    }).map((more): Job => ({ ...one, ...more })),
  ); // prettier-ignore

function isLaidOut(one: Job): boolean {
  try {
    byOtherOf(one, panelPen(one));
    return panelLayout(parts(one), 0).length > 0;
  } catch {
    return false;
  }
}

function parts(one: Job) {
  const { lengths, counts, gates, pinGap } = panelPen(one);
  const panels = lengths.flatMap((length, k) => (length && counts[k] ? [{ length, count: counts[k] }] : []));
  return { panels, gates, pinGap };
}

describe("the layout sheet of a panel pen", () => {
  it("gives every stake a row with the radius, chord and ties that set it, as the layout has them", () => {
    let held = 0;
    fc.assert(
      fc.property(laidOutJob, (one) => {
        fc.pre(isLaidOut(one));
        const stakes = panelLayout(parts(one), one.gate_bearing as number);
        const running = runningDistances(stakes);
        const radius = panelPen(one).pinCircle / 2;
        const found = stakeRows(layoutSheet(one), one);
        expect(found).toHaveLength(stakes.length);
        found.forEach((row, k) => {
          const { stake, chord, tie1, tie2, bearing, east, north } = stakes[k];
          expect(row).toMatchObject({ stake, chord, tie1, tie2, bearing, east, north });
          expect(row.radius).toBeCloseTo(radius, 9);
          expect(row.running).toBeCloseTo(running[k], 9);
          const angle = (bearing - stakes[0].bearing + 360) % 360;
          expect(Math.min(Math.abs(row.angle - angle), 360 - Math.abs(row.angle - angle))).toBeLessThan(1e-8);
          held++;
        });
      }),
      { numRuns: 25 },
    );
    expect(held).toBeGreaterThan(200);
  });

  it("walks back to the first stake by its own chords and bearings, within 1e-9", () => {
    for (const more of [{}, { gate_2: null }, { gate_1: null, gate_2: null }, { panel_1: 16, panel_2: 10, size: 180 }] as Job[])
      expectWalkCloses(stakeRows(layoutSheet({ ...job, ...more }), { ...job, ...more }).map((row) => ({ ...row, atGate: false })));
  }); // prettier-ignore

  it("ends with the way back to stake 1, which brings the running distance all around", () => {
    const back = at.first + data.stakes.length;
    expect(text(back, columns.stake)).toBe("→ 1");
    expect(text(back, columns.chord + 1)).toBeCloseTo(data.stakes[0].chord, 9);
    expect(text(back, columns.running + 1)).toBeCloseTo(panelPen(job).distanceAround, 9);
  });

  it("writes every length in feet and inches to the sixteenth beside its decimal", () => {
    let lengths = 0;
    for (const column of [columns.radius, columns.chord, columns.tie1, columns.tie2, columns.running])
      for (let row = at.first; row <= at.last; row++) {
        const [shown, feet] = [text(row, column), text(row, column + 1)];
        if (typeof feet !== "number") continue;
        expect(shown).toBe(feet === 0 ? "0'" : feetInches(feet));
        lengths++;
      }
    expect(lengths).toBe(5 * data.stakes.length + 2 + 2 * 3);
    expect(text(at.first, columns.asSet)).toBe("");
  });

  it("says which gate pin carries the hinge: the right one as seen from outside, or the left", () => {
    const sides = (one: Job) => layoutOf(one).stakes.map(({ kind, sides }) => `${kind} ${sides.join()}`);
    expect(sides(job).slice(0, 3)).toEqual(["gate pin hinge", "gate pin latch", "pin "]);
    expect(sides({ ...job, gate_hand: "left" }).slice(0, 3)).toEqual(["gate pin latch", "gate pin hinge", "pin "]);
    const adjoining = { ...newJob(), panel_1: 4, panel_1_use: 2, gate_1: 12, gate_2: 12, gate_3: 12 };
    expect(sides(adjoining)).toContain("gate pin latch,hinge");
    expect(text(at.first, columns.side)).toBe("hinge");
  }); // prettier-ignore

  it("cuts the radius line for the stake, the can and the loops that it states, and follows them", () => {
    const { centerStake, can, loop } = usualLine;
    const line = (stake: number) =>
      radiusLine({ radius: panelPen(job).pinCircle / 2, centerStake: stake / 12, can: can / 12, loop: loop / 12 });
    const [tight, cut] = [rowSaying(labels.tight.en), rowSaying(labels.cut.en)];
    expect(text(tight, columns.tie1 + 1)).toBeCloseTo(line(centerStake).tight, 9);
    expect(text(cut, columns.tie1 + 1)).toBeCloseTo(line(centerStake).cut, 9);
    const plan = layoutSheetPlan(data, "Layout");
    const typed = plan.cells.map((cell) =>
      cell.row === rowSaying(labels.centerStake.en) && cell.input ? { ...cell, says: { kind: "constant" as const, value: 4 } } : cell,
    );
    const after = contentOfPlans([{ ...plan, cells: typed }], pen).sheets[0];
    expect(shownAt(after, cut, columns.tie1 + 1)).toBeCloseTo(line(4).cut, 9);
    expect(plan.cells.filter(({ input, row }) => input && row < at.headers)).toHaveLength(3);
  }); // prettier-ignore

  it("sets the center again from its two reference stakes, which stand outside the work", () => {
    const [a, b] = data.references;
    const radius = panelPen(job).pinCircle / 2;
    for (const { distance } of [a, b]) expect(distance).toBeGreaterThanOrEqual(radius + 10);
    const set = referenceStakes({ east: 0, north: 0 }, radius, [a, b]);
    expect(centerAgain(set, a.distance, b.distance).off).toBeLessThan(1e-9);
    expect(text(rowSaying(labels.apart.en), columns.tie1 + 1)).toBeCloseTo(set.apart, 9);
    data.references.forEach(({ name }, k) => {
      const row = at.first + data.stakes.length + 1 + k;
      expect(text(row, columns.stake)).toBe(name);
      data.stakes.slice(0, 2).forEach((stake, tie) => {
        const away = Math.hypot(set.stakes[k].east - stake.east, set.stakes[k].north - stake.north);
        expect(text(row, [columns.tie1, columns.tie2][tie] + 1)).toBeCloseTo(away, 9);
      });
    });
  });

  it("asks PANEL_LAYOUT for the stakes' figures and writes no error", () => {
    expect(sheet.cells.filter(({ value }) => isError(value))).toEqual([]);
    const cell = layoutSheetPlan(data, "Layout").cells.find(({ row, column }) => row === at.first && column === columns.chord + 1)!;
    expect(asksPen(cell.says)).toBe(true);
    expect(liveFormula(cell.says)).toBe("=INDEX(PEN.PANEL_LAYOUT(AC6:AC11,AC12:AC17,AC18:AC21,AC22,AC23),2,3)");
  }); // prettier-ignore

  it("keeps what is not for the crew out of print and puts every cell in a place of its own", () => {
    const { cells, print } = layoutSheetPlan(data, "Layout");
    const places = cells.map(({ row, column }) => `${row},${column}`);
    expect(new Set(places).size).toBe(places.length);
    expect(print.area).toEqual({ top: 1, left: 1, bottom: at.end, right: columns.asSet });
    expect([print.repeatFrom, print.repeatRows, print.pages.tall]).toEqual([at.headers, 2, 2]);
    expect(text(rows.title, columns.kind)).toBe("Revision 2, 2026-11-25");
    expect(text(rows.job, columns.stake)).toBe("Copperleaf Bend (invented)");
  });

  it("never takes a person's text for a formula", () => {
    const shown = layoutSheetPlan(layoutOf({ ...job, job_name: '=HYPERLINK("x")' }), "Layout");
    const cell = shown.cells.find(({ row, column }) => row === rows.job && column === columns.stake)!;
    expect(cell.says).toEqual({ kind: "constant", value: '=HYPERLINK("x")' });
  });
});

describe("a layout sheet that the estimate has left behind", () => {
  const warning = (now: Job) => shownAt(layoutSheet(now, job), rows.warning, columns.stake);

  it("is silent while the estimate has the inputs that it used, whatever else changes", () => {
    for (const more of [{}, { depth: 6 }, { customer: "Someone (invented)" }, { truck_2: 8 }] as Job[])
      expect(warning({ ...job, ...more })).toBe("");
  });

  it("says OUT OF DATE once an input has changed, and which", () => {
    for (const [more, label] of [
      [{ size: 90 }, "Count of panel 1"],
      [{ panel_1_use: 22 }, "Count of panel 1"],
      [{ gate_2: 8 }, "Gate frame, pin to pin, 2"],
      [{ gate_2: null }, "Gate frame, pin to pin, 2"],
      [{ pin_gap: 0.75 }, "Pin gap, each joint"],
      [{ gate_bearing: 34 }, "Bearing of the first gate's middle"],
      [{ north: "true" }, "Bearings are from north"],
    ] as [Job, string][]) {
      const now = { ...job, ...more };
      expect(warning(now)).toBe(labels.outOfDate.en);
      const after = layoutSheet(now, job);
      const changed = after.cells.filter(({ value, column }) => value === "changed" && column === columns.changed && value);
      const rowsOf = changed.map(({ row }) => row).filter((row) => row > rows.top);
      expect(rowsOf.map((row) => shownAt(after, row, columns.label))).toContain(label);
    }
  }); // prettier-ignore

  it("keeps its own figures, which fit its plan, until it is written again", () => {
    expect(stakeRows(layoutSheet({ ...job, size: 90 }, job), job)).toEqual(stakeRows(sheet, job));
  });
});

describe("a layout sheet of a pen set from its gate", () => {
  const length = panelLayout(parts(job), 0)[1].chord;
  const first: Job = { ...job, gate_right: "40; 100", gate_left: `${40 + length}; 100` };

  it("gives the center stake, the bearing and every stake from the crew's mark", () => {
    const found = layoutSheet(first);
    const { stakes, center, bearing } = layoutOf(first);
    expect(layoutOf(job).center).toBeUndefined();
    const east = found.cells.find(({ value }) => value === labels.centerEast.en)!.row;
    expect(shownAt(found, east, columns.tie1 + 1)).toBeCloseTo(center!.east, 9);
    const rowOf = (k: number) => layoutRows(layoutOf(first)).first + k;
    stakes.forEach((stake, k) => {
      expect(shownAt(found, rowOf(k), columns.siteEast)).toBeCloseTo(stake.east + center!.east, 9);
      expect(shownAt(found, rowOf(k), columns.siteNorth)).toBeCloseTo(stake.north + center!.north, 9);
    });
    expect([0, 1].map((k) => shownAt(found, rowOf(k), columns.siteNorth))).toEqual([
      expect.closeTo(100, 6),
      expect.closeTo(100, 6),
    ]);
    expect(bearing).toBeDefined();
  });

  it("is out of date once the gate stands elsewhere, a gate swings the other way or a fence comes near", () => {
    const warning = (now: Job) => shownAt(layoutSheet(now, first), rows.warning, columns.stake);
    expect(warning(first)).toBe("");
    for (const more of [{ gate_right: "41; 100" }, { gate_left: null }, { gate_swing: "out" }, { neighbor_2: "80; 0; 60" }, { turning_room: 12 }] as Job[])
      expect([more, warning({ ...first, ...more })]).toEqual([more, labels.outOfDate.en]);
  }); // prettier-ignore

  it("says above its cautions what was found on the site", () => {
    const found = layoutSheet({ ...job, neighbor_1: "0; -70; 60" });
    const words = found.cells.filter(
      ({ column, value }) => column === columns.stake && /#1/.test(String(value)),
    );
    expect(words.length).toBeGreaterThan(0);
    expect(layoutSheet(job).cells.filter(({ value }) => /#1/.test(String(value)))).toEqual([]);
  });
});
