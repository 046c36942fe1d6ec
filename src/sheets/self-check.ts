import { isError, type Cell, type CellError } from "../units/cell";
import { call, cell, expression, minus, operate, text, times, when, type Expression } from "./expression";
import { liveFormula } from "./formula";
import { messages } from "./messages";
import { type PlanCell, type SheetPlan } from "./plan";
import { type StyleName } from "./styles";

/** One thing to check: a formula that gives one value, the value it must give, and what it shows in a few words. */
export interface SelfCheck {
  formula: Expression;
  expected: Cell;
  says: string;
}

const say = messages.selfCheck;
const columns = { says: 0, formula: 1, result: 2, expected: 3, verdict: 4 } as const;
const headerRow = 3;
const firstRow = headerRow + 1;

/** How far a number may lie off, as a share of the number expected. */
const tolerance = 1e-9;

/** The number by which ERROR.TYPE knows an error. */
const errorTypes: Record<CellError["error"], number> = {
  "#NULL!": 1,
  "#DIV/0!": 2,
  "#VALUE!": 3,
  "#REF!": 4,
  "#NAME?": 5,
  "#NUM!": 6,
  "#N/A": 7,
};

/**
 * A sheet that checks functions in the program that holds it: each formula, its result, the value expected and a
 * verdict by formula, and above them how many pass. Of an array result the first element is compared.
 */
export function selfCheckPlan(checks: readonly SelfCheck[], name: string): SheetPlan {
  const lastRow = firstRow + Math.max(checks.length, 1) - 1;
  const verdicts = { row: firstRow, column: columns.verdict };
  const put = (row: number, column: number, says: string | Expression, style: StyleName): PlanCell => ({
    row,
    column,
    says: expression(says),
    style,
  });
  const passes = call(
    "COUNTIF",
    { kind: "range", from: verdicts, to: { row: lastRow, column: columns.verdict } },
    say.pass,
  );
  return {
    name,
    cells: [
      put(0, 0, say.title, "title"),
      put(1, 0, text(passes, say.ofPass(checks.length)), "totalLabel"),
      { ...put(2, 0, say.hint, "caution"), across: 5 },
      ...say.headers.map((header, column) => put(headerRow, column, header, "heading")),
      ...checks.flatMap((check, k) => checkCells(check, firstRow + k)),
    ],
    columns: [44, 52, 20, 20, 10].map((width) => ({ width })),
    hiddenRows: [],
    heights: { 0: 24, 2: 26 },
    frozenRows: firstRow,
    print: {
      area: { top: 0, left: 0, bottom: lastRow, right: columns.verdict },
      landscape: true,
      pages: { wide: 1, tall: 0 },
      repeatRows: firstRow,
      footer: messages.footer,
    },
    pictures: [],
  };
}

function checkCells({ formula, expected, says }: SelfCheck, row: number): PlanCell[] {
  const put = (column: number, content: Expression, style: StyleName): PlanCell => ({ row, column, says: content, style });
  // A function's result may be an array; INDEX keeps it from spilling over the rows below.
  const one = formula.kind === "pen" ? call("INDEX", formula, 1, 1) : formula;
  const shown: Cell = isError(expected) ? expected.error : expected;
  return [
    put(columns.says, expression(says), "label"),
    put(columns.formula, expression(liveFormula(formula)), "note"),
    put(columns.result, one, "fixed"),
    put(columns.expected, { kind: "constant", value: shown }, "fixed"),
    put(columns.verdict, verdict(row, expected), "mark"),
  ];
} // prettier-ignore

/** "pass" where the result beside it is the value expected, else "FAIL", whatever the result is. */
function verdict(row: number, expected: Cell): Expression {
  const result = cell({ row, column: columns.result });
  const wanted = cell({ row, column: columns.expected });
  const judge = (test: Expression) => when(test, say.pass, say.fail);
  const failed = call("ISERROR", result);
  if (isError(expected))
    return when(
      failed,
      judge(operate(call("ERROR.TYPE", result), "=", errorTypes[expected.error])),
      say.fail,
    );
  if (typeof expected !== "number") return when(failed, say.fail, judge(operate(result, "=", wanted)));
  const off = call("ABS", minus(result, wanted));
  const near = operate(off, "<=", times(call("ABS", wanted), tolerance));
  return when(call("ISNUMBER", result), judge(near), say.fail);
}
