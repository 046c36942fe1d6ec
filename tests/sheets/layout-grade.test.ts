import { newJob, type Job } from "../../src/estimate/job";
import { contentOfPlans } from "../../src/sheets/calculate";
import { asksPen } from "../../src/sheets/expression";
import { gradeInputs } from "../../src/sheets/layout-grade";
import { columns, factColumns } from "../../src/sheets/layout-places";
import { layoutRows, layoutSheetPlan } from "../../src/sheets/layout-sheet";
import { layoutOf, pen, shownAt } from "./layouts";

const job: Job = { ...newJob(), gate_bearing: 33 };
const data = layoutOf(job);
const at = layoutRows(data);
const row = (name: keyof typeof gradeInputs) => at.grade + 1 + Object.keys(gradeInputs).indexOf(name);

/** What the sheet says at the stakes once these heights and grades are typed. */
function said(shots: (number | null)[], typed: Partial<Record<keyof typeof gradeInputs, number>>, of = data) {
  const plan = layoutSheetPlan(of, "Layout");
  const values = new Map<string, number | null>([
    ...shots.map((shot, k) => [`${at.first + k},${columns.shot}`, shot] as const),
    ...Object.entries(typed).map(([name, value]) => [`${row(name as "fall")},${factColumns.figure}`, value] as const),
  ]);
  const cells = plan.cells.map((cell) => {
    const value = values.get(`${cell.row},${cell.column}`);
    return value === undefined || !cell.input ? cell : { ...cell, says: { kind: "constant" as const, value } };
  });
  const sheet = contentOfPlans([{ ...plan, cells }], pen).sheets[0];
  return shots.map((_, k) => shownAt(sheet, at.first + k, columns.cutOrFill));
} // prettier-ignore

describe("cut and fill on a layout sheet", () => {
  it("says nothing where no height was taken", () => {
    expect(said([null, 99.5, null], {})).toEqual(["", "fill 0.50", ""]);
  });

  it("cuts what stands over the grade and fills what lies under it, from the benchmark", () => {
    expect(said([100.25, 99, 100], {})).toEqual(["cut 0.25", "fill 1.00", "0.00"]);
    expect(said([100.25], { benchmark: 250, centerGrade: -149.5 })).toEqual(["fill 0.25"]);
  });

  it("follows the fall along its bearing and the crown from the center, at every stake", () => {
    const [fall, toward, crown] = [1.5, 120, 2];
    const shots = data.stakes.map(() => 100);
    const found = said(shots, { fall, fallBearing: toward, crown });
    data.stakes.forEach(({ east, north }, k) => {
      // The distance downhill is that along the bearing's own direction.
      const off = Math.hypot(east, north);
      const turn = Math.atan2(east, north) - (toward * Math.PI) / 180;
      const grade = 100 - (fall / 100) * off * Math.cos(turn) - (crown / 100) * off;
      const needed = Math.round((grade - 100) * 100) / 100;
      const words = needed > 0 ? "fill " : needed < 0 ? "cut " : "";
      expect(found[k]).toBe(`${words}${Math.abs(needed).toFixed(2)}`);
    });
    expect(new Set(found).size).toBeGreaterThan(5);
  });

  it("says it in Spanish, and asks no function of this add-in", () => {
    expect(said([100.25, 99], {}, layoutOf({ ...job, language: "Spanish" }))).toEqual(["corte 0.25", "relleno 1.00"]);
    const plain = { ...data, asks: undefined, radius: undefined };
    const from = layoutRows(plain).first;
    const cells = layoutSheetPlan(plain, "Layout").cells;
    const answers = cells.filter(({ column, row }) => column === columns.cutOrFill && row >= from);
    expect(answers.filter(({ says }) => says.kind === "call")).toHaveLength(data.stakes.length);
    expect(answers.some(({ says }) => asksPen(says))).toBe(false);
  }); // prettier-ignore
});
