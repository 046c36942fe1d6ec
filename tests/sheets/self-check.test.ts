import { calculate } from "../../src/sheets/calculate";
import { type PenFunction } from "../../src/sheets/evaluate";
import { call, over, pen, type Expression } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { selfCheckPlan, type SelfCheck } from "../../src/sheets/self-check";
import { type Cell } from "../../src/units/cell";

const answers: Record<string, PenFunction> = {
  CIRCUMFERENCE: (diameter) => Math.PI * Number(diameter),
  LOADS: () => [[2, 1]],
  FEET_INCHES: () => `72' 3 1/4"`,
  DIAGONAL: () => ({ error: "#VALUE!" }),
};

/** The verdicts of a self-check as a spreadsheet would show them, and the line above them. */
function judged(checks: SelfCheck[]): { line: Cell; verdicts: Cell[]; results: Cell[] } {
  const plan = selfCheckPlan(checks, "Self-check");
  const shown = calculate([plan], (name) => answers[name]);
  return {
    line: shown(plan.name, 1, 0),
    verdicts: checks.map((_, k) => shown(plan.name, 4 + k, 4)),
    results: checks.map((_, k) => shown(plan.name, 4 + k, 2)),
  };
}

const check = (formula: Expression, expected: Cell): SelfCheck => ({
  formula,
  expected,
  says: "invented check",
});
const round = pen("CIRCUMFERENCE", 60);

describe("the self-check sheet", () => {
  it("counts as passed what agrees and says how many of all do", () => {
    const { line, verdicts } = judged([
      check(round, 60 * Math.PI),
      check(pen("LOADS"), 2),
      check(call("INDEX", pen("LOADS"), 2), 1),
      check(pen("FEET_INCHES", 72), `72' 3 1/4"`),
      check(over(10, 4), 2.5),
      check(over(0, 4), 0),
    ]);
    expect(verdicts).toEqual(["pass", "pass", "pass", "pass", "pass", "pass"]);
    expect(line).toBe("6 of 6 pass");
  });

  it("takes a number as the same within a billionth of it, and no further", () => {
    const exact = 60 * Math.PI;
    const { line, verdicts } = judged(
      [1 + 0.9e-9, 1 - 0.9e-9, 1 + 1.1e-9, 1 - 1.1e-9].map((share) => check(round, exact * share)),
    );
    expect(verdicts).toEqual(["pass", "pass", "FAIL", "FAIL"]);
    expect(line).toBe("2 of 4 pass");
  });

  it("fails a text where a number is expected, a number where a text is, another text, and an error", () => {
    const { line, verdicts } = judged([
      check(pen("FEET_INCHES", 72), 72),
      check(round, "188.5"),
      check(pen("FEET_INCHES", 72), `72' 3"`),
      check(pen("DIAGONAL", 1, 1), 1.4),
      check(pen("DIAGONAL", 1, 1), "1.4"),
    ]);
    expect(verdicts).toEqual(["FAIL", "FAIL", "FAIL", "FAIL", "FAIL"]);
    expect(line).toBe("0 of 5 pass");
  });

  it("passes an expected error only where the result is that error", () => {
    const { cells } = selfCheckPlan([check(pen("DIAGONAL", 1, 1), { error: "#N/A" })], "Self-check");
    const formula = liveFormula(cells.find(({ row, column }) => row === 4 && column === 4)!.says);
    expect(formula).toBe('=IF(ISERROR(C5),IF(ERROR.TYPE(C5)=7,"pass","FAIL"),"FAIL")');
    expect(judged([check(round, { error: "#N/A" })]).verdicts).toEqual(["FAIL"]);
  });

  it("shows each formula as a text and keeps an array result from spilling", () => {
    const { cells } = selfCheckPlan([check(pen("LOADS", 36), 2)], "Self-check");
    const says = (column: number) => cells.find((one) => one.row === 4 && one.column === column)!.says;
    expect(says(1)).toEqual({ kind: "constant", value: "=PEN.LOADS(36)" });
    expect(liveFormula(says(2))).toBe("=INDEX(PEN.LOADS(36),1,1)");
    expect(judged([check(pen("LOADS", 36), 2)]).results).toEqual([2]);
  });

  it("puts one row a check inside its print area, under a frozen head", () => {
    const plan = selfCheckPlan([check(round, 1), check(round, 2), check(round, 3)], "Self-check 2");
    expect(plan.name).toBe("Self-check 2");
    expect(plan.print.area).toEqual({ top: 0, left: 0, bottom: 6, right: 4 });
    expect(plan.frozenRows).toBe(4);
    expect(Math.max(...plan.cells.map(({ row }) => row))).toBe(6);
  });
});
