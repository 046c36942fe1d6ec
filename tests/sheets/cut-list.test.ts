import { estimate } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { isArena, isPosted } from "../../src/estimate/pen";
import { examplePrices } from "../../src/estimate/prices";
import { arenaLayoutData } from "../../src/sheets/arena-layout-data";
import { arenaLayoutPlan } from "../../src/sheets/arena-layout-sheet";
import { contentOfPlans } from "../../src/sheets/calculate";
import { layoutSheetPlan } from "../../src/sheets/layout-sheet";
import { postPenLayout } from "../../src/sheets/post-pen-layout";
import { pen } from "./layouts";
import { placesIn } from "./typed-plan";

/** The layout sheet of a pen or an arena of posts, worked out, and its plan. */
function sheetOf(answers: Job) {
  const job: Job = { ...newJob(), structure: "post pen", ...answers };
  const made = estimate(job, examplePrices);
  if (!isPosted(made.pen)) throw new Error("not of posts");
  const issue = { revision: 1, date: "2026-11-25", estimate: { name: "Estimate", cells: placesIn[made.pen.structure] } };
  const plan = isArena(made.pen)
    ? arenaLayoutPlan(arenaLayoutData(job, made.pen, made.work, issue), "Layout")
    : layoutSheetPlan(postPenLayout(job, made.pen, made.work!, issue), "Layout");
  return { plan, words: plan.cells.flatMap(({ says }) => (says.kind === "constant" ? [says.value] : [])) };
} // prettier-ignore

describe("the cut list on a layout sheet", () => {
  const answers = { leaf_1: null, rail_length: 16, kick_board: "2x10" };

  it("says the lengths, their pieces to a sixteenth, what is left, and what decided", () => {
    const { words } = sheetOf(answers);
    expect(words).toContain("Rails, 2x6 board: 52 lengths of 16' into 104 pieces");
    expect(words).toContain("Kick board, 2x10: 26 lengths of 8' into 26 pieces");
    // 2 (33 - 1/4) sin(pi / 26) is 7.8952 ft, to a sixteenth 7' 10 3/4"; two of them leave 2 1/2" of 16'.
    expect(words).toEqual(expect.arrayContaining([52, "16'", "2 of 7' 10 3/4\"", "2 1/2\""]));
    expect(words).toContain("On the curve both ends of a bay are cut 6.9° off square: 7' 10 3/4\" on the long face, 7' 10 3/8\" on the short one. Ends at gate posts are square.");
    expect(words.filter((one) => /^One bay a piece: a radius of /.test(String(one)))).toHaveLength(1);
  }); // prettier-ignore

  it("says the same in Spanish", () => {
    const { words } = sheetOf({ ...answers, language: "Spanish" });
    expect(words).toContain("Travesaños, tabla 2x6: 52 de 16', en 104 piezas");
    expect(words).toContain("Tabla al pie, 2x10: 26 de 8', en 26 piezas");
    expect(words).toEqual(expect.arrayContaining(["Lista de cortes", "2 de 7' 10 3/4\"", "Sobra"]));
    expect(words.join("\n")).toMatch(/^Una pieza por tramo: un radio de .* veces el grueso de 1 1\/2", y se dobla a mano desde 400 veces\.$/m);
    expect(words.join("\n")).not.toMatch(/One bay|Cut list|Left over/);
  }); // prettier-ignore

  it.each<Job>([
    { structure: "post pen" },
    { structure: "post arena", corner_radius: 20 },
    { structure: "post arena", corner_radius: 0, setting: "driven" },
  ])("stands inside what is printed, a cell a place: %o", (of) => {
    const { plan } = sheetOf({ ...answers, ...of });
    const title = plan.cells.find(({ says }) => says.kind === "constant" && says.value === "Cut list")!;
    expect(plan.cells.filter(({ row }) => row >= title.row).every(({ row, column }) => row <= plan.print.area.bottom && column <= plan.print.area.right)).toBe(true);
    expect(Math.max(...plan.cells.map(({ row }) => row))).toBe(plan.print.area.bottom);
    const places = plan.cells.map(({ row, column }) => `${row} ${column}`);
    expect(new Set(places).size).toBe(places.length);
    for (const { row } of plan.cells.filter((cell) => cell.row >= title.row)) expect(plan.heights).toHaveProperty(String(row));
    expect(contentOfPlans([plan], pen).sheets[0].cells.length).toBeGreaterThan(0);
  }); // prettier-ignore

  it("rests on inputs that the sheet names, the stock, its length, its side and the kick board among them", () => {
    const { plan } = sheetOf(answers);
    const used = plan.cells.flatMap(({ says }) => (says.kind === "constant" ? [says.value] : []));
    for (const label of ["Rails are", "Rail stock is this long", "Kick board at the foot, inside", "Side that the rails are on"])
      expect(used).toContain(label);
  }); // prettier-ignore
});
