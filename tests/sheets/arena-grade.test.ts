import { estimate } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { isArena } from "../../src/estimate/pen";
import { examplePrices } from "../../src/estimate/prices";
import { arenaLayoutData } from "../../src/sheets/arena-layout-data";
import { arenaLayoutPlan, arenaLayoutRows } from "../../src/sheets/arena-layout-sheet";
import { arenaLabels } from "../../src/sheets/arena-layout-words";
import { contentOfPlans } from "../../src/sheets/calculate";
import { asksPen } from "../../src/sheets/expression";
import { gradeInputs } from "../../src/sheets/layout-grade";
import { columns, factColumns } from "../../src/sheets/layout-places";
import { isError } from "../../src/units/cell";
import { pen, shownAt } from "./layouts";

const jobs: Job[] = [
  { ...newJob(), structure: "panel arena", gate_1: 12, gate_at_1: 0, length_bearing: 217 },
  { ...newJob(), structure: "post arena", corner_radius: 20, leaf_2: 4, length_bearing: 33 },
];

function dataOf(job: Job) {
  const { pen: arena, work } = estimate(job, examplePrices);
  if (!isArena(arena)) throw new Error("not an arena");
  return arenaLayoutData(job, arena, work, { revision: 1, date: "2026-11-25" });
}

/** What an arena's sheet says at its stakes once these heights and grades are typed. */
function said(job: Job, shots: (number | null)[], typed: Partial<Record<keyof typeof gradeInputs, number>>) {
  const data = dataOf(job);
  const at = arenaLayoutRows(data);
  const plan = arenaLayoutPlan(data, "Layout");
  const rowOf = (name: string) => at.grade + 1 + Object.keys(gradeInputs).indexOf(name);
  const values = new Map<string, number | null>([
    ...shots.map((shot, k) => [`${at.first + k},${columns.shot}`, shot] as const),
    ...Object.entries(typed).map(([name, value]) => [`${rowOf(name)},${factColumns.figure}`, value] as const),
  ]);
  let filled = 0;
  const cells = plan.cells.map((cell) => {
    const value = values.get(`${cell.row},${cell.column}`);
    if (value === undefined || !cell.input) return cell;
    filled++;
    return { ...cell, says: { kind: "constant" as const, value } };
  });
  expect(filled).toBe(values.size);
  const sheet = contentOfPlans([{ ...plan, cells }], pen).sheets[0];
  expect(sheet.cells.filter(({ value }) => isError(value ?? null))).toEqual([]);
  return shots.map((_, k) => shownAt(sheet, at.first + k, columns.cutOrFill));
}

describe("cut and fill on an arena's layout sheet", () => {
  it.each(jobs)("says nothing without a shot, cuts what stands over the grade and fills what lies under it: %#", (job) => {
    expect(said(job, [null, 100.25, 99, 100], {})).toEqual(["", "cut 0.25", "fill 1.00", "0.00"]);
    expect(said(job, [100.25], { benchmark: 250, centerGrade: -149.5 })).toEqual(["fill 0.25"]);
  });

  it.each(jobs)("falls along its bearing, and with a crown from the middle line to both long sides: %#", (job) => {
    const { stakes } = dataOf(job);
    const [fall, toward, crown] = [1.5, 120, 2];
    const found = said(job, stakes.map(() => 100), { fall, fallBearing: toward, crown });
    const along = (bearing: number, { east, north }: (typeof stakes)[number]) =>
      east * Math.sin((bearing * Math.PI) / 180) + north * Math.cos((bearing * Math.PI) / 180);
    for (const [k, stake] of stakes.entries()) {
      const offMiddle = Math.abs(along(Number(job.length_bearing) + 90, stake));
      const needed = Math.round((-(fall / 100) * along(toward, stake) - (crown / 100) * offMiddle) * 100) / 100;
      const words = needed > 0 ? "fill " : needed < 0 ? "cut " : "";
      expect(found[k]).toBe(`${words}${Math.abs(needed).toFixed(2)}`);
    }
    expect(new Set(found).size).toBeGreaterThan(10);
  });

  it("asks no function of this add-in, prints with the stakes, and names what the crown falls from in both languages", () => {
    for (const [language, name] of [["en", "English"], ["es", "Spanish"]] as const) {
      const data = dataOf({ ...jobs[1], language: name });
      const { grade, first, last, end } = arenaLayoutRows(data);
      const plan = arenaLayoutPlan(data, "Layout");
      const answers = plan.cells.filter(({ row, column }) => column === columns.cutOrFill && row >= first && row <= last && row < first + data.stakes.length);
      expect(answers).toHaveLength(data.stakes.length);
      expect(answers.some(({ says }) => asksPen(says))).toBe(false);
      expect([plan.print.area.bottom, Math.max(...plan.cells.filter(({ column }) => column <= columns.asSet).map(({ row }) => row))]).toEqual([end, end]);
      const shown = contentOfPlans([plan], pen).sheets[0];
      expect(shownAt(shown, grade + Object.keys(gradeInputs).length, factColumns.label)).toBe(arenaLabels.crown[language]);
    }
  });
}); // prettier-ignore
