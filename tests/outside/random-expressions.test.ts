import fc from "fast-check";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { call, operate, type Expression, type Operator } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { parseFormula } from "../../src/sheets/parse";
import { type CellData } from "../../src/sheets/workbook-content";
import { type Cell, isError } from "../../src/units/cell";
import { ourValues, sheetOf, told } from "./books";
import { officeTest, recalculate, shown } from "./libreoffice";

const ROWS = 12;
const inputs: Cell[] = [60, 12, 0.25, -3.5, 1.35, 100, null, 7, 2.675, 0, 18, 250.125];
const cellOf = fc.integer({ min: 0, max: ROWS - 1 }).map((row): Expression => ({ kind: "cell", place: { row, column: 0 } })); // prettier-ignore
const rangeOf = fc.tuple(fc.integer({ min: 0, max: ROWS - 1 }), fc.integer({ min: 0, max: ROWS - 1 })).map(
  ([a, b]): Expression => ({
    kind: "range",
    from: { row: Math.min(a, b), column: 0, fixedRow: true },
    to: { row: Math.max(a, b), column: 0 },
  }),
); // prettier-ignore
const constant = fc
  .constantFrom<Cell>(1, 2, 0.5, 12, 100, -4, 3.25, 1.005)
  .map((value): Expression => ({ kind: "constant", value }));

/** Numbers only: where spreadsheets part on texts and truth values is held elsewhere, case by case. */
const { tree } = fc.letrec<{ tree: Expression; test: Expression }>((tie) => ({
  tree: fc.oneof(
    { depthSize: "small", withCrossShrink: true },
    constant,
    cellOf,
    fc.tuple(tie("tree"), fc.constantFrom<Operator>("+", "-", "*", "/"), tie("tree")).map(([a, op, b]) => operate(a, op, b)),
    fc.tuple(tie("tree"), fc.constantFrom(2, 3)).map(([a, power]) => operate(a, "^", power)),
    tie("tree").map((of): Expression => ({ kind: "negative", of })),
    tie("tree").map((of): Expression => ({ kind: "percent", of })),
    fc.tuple(fc.constantFrom("SUM", "MAX", "MIN"), rangeOf, tie("tree")).map(([name, a, b]) => call(name, a, b)),
    fc.tuple(tie("test"), tie("tree"), tie("tree")).map(([a, b, c]) => call("IF", a, b, c)),
    fc.tuple(tie("tree"), tie("tree")).map(([a, b]) => call("IFERROR", a, b)),
    fc.tuple(fc.constantFrom("ROUNDUP", "ROUNDDOWN"), tie("tree")).map(([name, a]) => call(name, call("ROUND", a, 6), 0)),
    tie("tree").map((a) => call("ABS", a)),
    fc.tuple(rangeOf, fc.constantFrom(">5", "<=0", "<>", "12")).map(([a, b]) => call("COUNTIF", a, b)),
  ),
  test: fc
    .tuple(tie("tree"), fc.constantFrom<Operator>("<", ">", ">=", "<=", "=", "<>"), tie("tree"))
    .map(([a, op, b]) => operate(a, op, b)),
})); // prettier-ignore

/** Spreadsheets part on what is nearly nothing, and on the last of 15 digits after long sums. */
const near = (a: Cell, b: Cell) =>
  typeof a === "number" && typeof b === "number"
    ? Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b))
    : isError(a) && isError(b)
      ? a.error === b.error
      : a === b;

officeTest("two thousand random expressions give what LibreOffice gives, and read back as they were written", async () => {
  const trees = fc.sample(tree, { numRuns: 2000, seed: 20 });
  const formulas = trees.map(liveFormula);
  expect(formulas.map((formula) => liveFormula(parseFormula(formula)))).toEqual(formulas);
  const cells: CellData[] = [
    ...inputs.map((value, row) => ({ row, column: 0, value })),
    ...formulas.map((formula, row) => ({ row, column: 1, value: null, formula })),
  ];
  const book = { sheets: [sheetOf("Job", cells)] };
  const [office] = await recalculate([await writeXlsx(book)]);
  const ours = ourValues(book);
  const theirs = new Map(office.sheets[0].cells.filter(({ column }) => column === 1).map(({ row, value }) => [row, value]));
  const parted = formulas.flatMap((formula, row) => {
    const [a, b] = [ours("Job", row, 1), theirs.get(row) ?? null];
    return near(a, b) ? [] : [`${formula}: ${told(a)}, LibreOffice ${told(b)}`];
  });
  expect(parted).toEqual([]);
  expect(shown(office, "Job", 0, 0)).toBe(60);
  expect(new Set(formulas).size).toBeGreaterThan(1000);
}); // prettier-ignore
