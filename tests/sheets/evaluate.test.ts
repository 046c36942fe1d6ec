import { calculate, contentOfPlans } from "../../src/sheets/calculate";
import { evaluate, Unknown, type PenFunction } from "../../src/sheets/evaluate";
import { pen, plus } from "../../src/sheets/expression";
import { parseFormula } from "../../src/sheets/parse";
import { type PlanCell, type SheetPlan } from "../../src/sheets/plan";
import { type Cell } from "../../src/units/cell";

const noPen = () => () => null;
const book = (...sheets: [string, Record<number, Cell | string>][]) =>
  sheets.map(([name, rows]) => ({
    name,
    cells: Object.entries(rows).map(([row, says]) => ({
      row: Number(row),
      column: 0,
      says: typeof says === "string" && says.startsWith("=") ? parseFormula(says) : ({ kind: "constant", value: says } as const),
    })), // prettier-ignore
  }));

test("a call of the add-in gets its terms as values: ranges as rows, omitted ones as undefined", () => {
  const seen: unknown[] = [];
  const asked: PenFunction = (...terms) => {
    seen.push(...terms);
    return [[7], [8]];
  };
  const around = { cell: ({ row }: { row: number }) => row, pen: () => asked };
  expect(evaluate(parseFormula('=INDEX(PEN.LOADS(A2,A1:B2,,"x"),2)'), around)).toBe(8);
  expect(seen).toEqual([1, [[0, 0], [1, 1]], undefined, "x"]); // prettier-ignore
});

test("an error in a term is the result, and the left one counts", () => {
  const cells: Cell[] = [{ error: "#N/A", message: "no pen" }, { error: "#DIV/0!" }];
  const around = { cell: ({ row }: { row: number }) => cells[row], pen: noPen };
  expect(evaluate(parseFormula("=A1+A2"), around)).toBe(cells[0]);
  expect(evaluate(parseFormula("=A2&A1"), around)).toBe(cells[1]);
  expect(evaluate(parseFormula("=-A1%"), around)).toBe(cells[0]);
});

test("a rest beyond 15 digits is nothing, as spreadsheets show it", () => {
  const around = { cell: () => null, pen: noPen };
  expect(evaluate(parseFormula("=0.1+0.2-0.3"), around)).toBe(0);
  expect(evaluate(parseFormula("=0.1+0.2=0.3"), around)).toBe(true);
  expect(evaluate(parseFormula("=1+1E-14=1"), around)).toBe(false);
});

test("what only a spreadsheet can work out says so instead of guessing", () => {
  const around = { cell: () => 1, pen: noPen };
  for (const formula of ["=Tax*2", "=SUM(A:A)", "=SUM(A1:Z10000)", "=NOW()"])
    expect(() => evaluate(parseFormula(formula), around)).toThrow(Unknown);
});

test("cells are worked out across sheets, whatever the case of a sheet's name", () => {
  const valueAt = calculate(book(["Job", { 0: 3, 1: "=Prices!A1*A1", 2: "=A9" }], ["Prices", { 0: "=Job!A1+1" }]), noPen);
  expect(valueAt("Job", 1, 0)).toBe(12);
  expect(valueAt("PRICES", 0, 0)).toBe(4);
  expect(valueAt("Job", 2, 0)).toBe(0);
  expect(valueAt("Job", 8, 0)).toBeNull();
  expect(valueAt("Nowhere", 0, 0)).toBeNull();
}); // prettier-ignore

test("a chain of ten thousand cells is worked out", () => {
  const rows: Record<number, Cell | string> = { 0: 1 };
  for (let row = 1; row < 10_000; row++) rows[row] = `=A${row}+1`;
  expect(calculate(book(["Job", rows]), noPen)("Job", 9999, 0)).toBe(10_000);
});

test("a cell that depends on itself is an error that says so, and IF may look past it", () => {
  const valueAt = calculate(book(["Job", { 0: "=A2", 1: "=A3+1", 2: "=A1", 3: "=IF(A6>0,5,A4)", 5: 1 }]), noPen);
  for (const row of [0, 1, 2]) expect(valueAt("Job", row, 0)).toMatchObject({ error: "#VALUE!", message: "This cell depends on itself." });
  expect(valueAt("Job", 3, 0)).toBe(5);
}); // prettier-ignore

test("plans become content with values, live formulas, inputs and merged cells", () => {
  const cell = (row: number, says: PlanCell["says"], more: Partial<PlanCell> = {}): PlanCell => ({ row, column: 1, says, style: "figure", ...more }); // prettier-ignore
  const plan: SheetPlan = {
    name: "Job",
    cells: [
      cell(0, { kind: "constant", value: 60 }, { input: true, style: "inputNumber" }),
      cell(1, pen("AREA", { kind: "cell", place: { row: 0, column: 1 } }), { across: 3 }),
      cell(2, plus({ kind: "cell", place: { sheet: "Prices", row: 4, column: 0 } }, 1)),
    ],
    columns: [{ width: 10, hidden: true }],
    hiddenRows: [],
    heights: {},
    frozenRows: 0,
    print: { area: { top: 0, left: 1, bottom: 2, right: 3 }, landscape: false, pages: { wide: 1, tall: 1 }, repeatRows: 0, footer: "" },
    pictures: [],
  }; // prettier-ignore
  const prices = {
    ...plan,
    name: "Prices",
    cells: [{ row: 4, column: 0, value: 9, formula: "=3*3" }],
    merges: [],
  };
  const { sheets } = contentOfPlans([plan], () => (d) => Number(d) ** 2, { sheets: [prices] });
  expect(sheets).toHaveLength(1);
  expect(sheets[0].cells).toMatchObject([
    { value: 60, input: true },
    { value: 3600, formula: "=PEN.AREA(B1)" },
    { value: 10, formula: "=Prices!A5+1" },
  ]);
  expect(sheets[0].cells[0].formula).toBeUndefined();
  expect(sheets[0].merges).toEqual([{ top: 1, left: 1, bottom: 1, right: 3 }]);
});
