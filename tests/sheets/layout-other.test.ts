import { newJob, type Job } from "../../src/estimate/job";
import { contentOfPlans } from "../../src/sheets/calculate";
import { type LaidStake, type LayoutData } from "../../src/sheets/layout-data";
import { GRADE_ROWS } from "../../src/sheets/layout-grade";
import { labels, layoutCautions } from "../../src/sheets/layout-messages";
import { columns } from "../../src/sheets/layout-places";
import { layoutRows, layoutSheetPlan } from "../../src/sheets/layout-sheet";
import { layoutOf, layoutSheet, pen, shownAt, stakeRows } from "./layouts";

const job: Job = { ...newJob(), job_name: "Copperleaf Bend (invented)", gate_1: 10, gate_2: 6 };
const sheet = layoutSheet(job);
const data = layoutOf(job);

describe("a layout sheet in Spanish", () => {
  const spanish = layoutSheet({ ...job, language: "Spanish" });
  const words = (of: typeof sheet) =>
    of.cells.filter(({ value }) => typeof value === "string" && /[a-z]{2}/i.test(value)).map(({ row, column, value }) => [`${row},${column}`, value] as const);

  it("has a Spanish word for every English one", () => {
    for (const { en, es } of [...Object.values(labels), ...layoutCautions]) {
      expect(en.trim() && es.trim()).not.toBe("");
      expect(es).not.toBe(en);
    }
  });

  it("says nothing in English but what a person wrote and what the estimate holds", () => {
    const inEnglish = new Map(words(sheet));
    const same = words(spanish).filter(([place, value]) => inEnglish.get(place) === value).map(([, value]) => value);
    expect(same).toEqual(["penstake layout 1", "Copperleaf Bend (invented)", "site", "site", "pin circle", "pin circle", "right", "right", "in", "in"]);
    expect(words(spanish)).toHaveLength(words(sheet).length);
    expect(spanish.pictures[0].svg).toContain("estaca central");
    expect(spanish.print!.footer).toContain("Medidas");
  });

  it("has the same figures", () => {
    expect(stakeRows(spanish, job)).toEqual(stakeRows(sheet, job));
  });
}); // prettier-ignore

describe("the layout sheet of another fence", () => {
  it("takes posts with holes and figures computed at writing, with no function to ask", () => {
    const posts = data.stakes.map(({ ...stake }): LaidStake => ({
      ...stake, kind: stake.kind === "pin" ? "post" : "gate post", hole: { diameter: 12, depth: 36 },
    })); // prettier-ignore
    const plain: LayoutData = {
      ...data,
      stakes: posts,
      asks: undefined,
      radius: undefined,
      measuredTo: "post center",
    };
    const plan = layoutSheetPlan(plain, "Layout");
    const shown = contentOfPlans([plan], pen).sheets[0];
    const first = layoutRows(plain).first;
    expect(shownAt(shown, first, columns.kind)).toBe("gate post");
    expect([shownAt(shown, first, columns.hole), shownAt(shown, first, columns.holeDepth)]).toEqual([12, 36]);
    expect(plan.columns[columns.hole].hidden).toBeUndefined();
    expect(layoutSheetPlan(data, "Layout").columns[columns.hole].hidden).toBe(true);
    posts.forEach(({ chord, tie2 }, k) => {
      expect(shownAt(shown, first + k, columns.chord + 1)).toBe(chord);
      expect(shownAt(shown, first + k, columns.tie2 + 1)).toBe(tie2);
    });
    const inputs = plan.cells.filter(({ input }) => input).map(({ column }) => column);
    expect(inputs.filter((column) => column === columns.shot)).toHaveLength(posts.length);
    expect(inputs).toHaveLength(posts.length + GRADE_ROWS - 1);
  });
});
