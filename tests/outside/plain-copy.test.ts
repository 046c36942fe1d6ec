import fc from "fast-check";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { type PenFunction } from "../../src/sheets/evaluate";
import { call, operate, pen, type Expression, type Operator } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { plainForm } from "../../src/sheets/plain";
import { single, toNumber } from "../../src/sheets/value";
import { type CellData, type WorkbookContent } from "../../src/sheets/workbook-content";
import { isError } from "../../src/units/cell";
import { agree, ourValues, sheetOf, told } from "./books";
import { officeTest, recalculate, shown } from "./libreoffice";

const INPUTS = 8;
const FORMULAS = 5;

const numberOf = (value: Parameters<PenFunction>[0]) => {
  const read = toNumber(single(value ?? 0));
  return isError(read) ? 0 : read;
};

/** Stand-ins for functions of this add-in: one of a cell, one of a range, one that gives several values. */
const functions: Record<string, PenFunction> = {
  AREA: (diameter) => (numberOf(diameter) < 0 ? { error: "#VALUE!" } : (Math.PI / 4) * numberOf(diameter) ** 2),
  TOTAL: (range) => (Array.isArray(range) ? range.flat().reduce<number>((sum, one) => sum + numberOf(one), 0) : numberOf(range)),
  LOADS: (need) => [[Math.ceil(numberOf(need) / 16)], [Math.ceil(numberOf(need) / 10)], [7]],
}; // prettier-ignore
const table = (name: string) => functions[name];

/** Expressions of the row-th formula on a sheet: inputs, earlier formulas of both sheets, ranges, calls. */
function expressions(row: number, sheet: string): fc.Arbitrary<Expression> {
  const other = sheet === "Job" ? "Prices list" : "Job";
  const input = fc.integer({ min: 0, max: INPUTS - 1 });
  const place = fc.oneof(
    input.map((k) => ({ row: k, column: 0 })),
    input.map((k) => ({ sheet: other, row: k, column: 0 })),
    ...(row ? [fc.tuple(fc.integer({ min: 0, max: row - 1 }), fc.boolean()).map(([k, far]) => ({ ...(far ? { sheet: other } : {}), row: k, column: 1 }))] : []),
  ); // prettier-ignore
  const cellAt = place.map((at): Expression => ({ kind: "cell", place: at }));
  const range = fc.tuple(input, input, fc.boolean()).map(([a, b, far]): Expression => ({
    kind: "range",
    from: { ...(far ? { sheet: other } : {}), row: Math.min(a, b), column: 0 },
    to: { row: Math.min(Math.min(a, b) + 2, Math.max(a, b)), column: 0 },
  })); // prettier-ignore
  const constant = fc.constantFrom(2, 0.5, 12).map((value): Expression => ({ kind: "constant", value }));
  const asked = fc.oneof(
    cellAt.map((a) => pen("AREA", a)),
    cellAt.map((a) => call("IFERROR", pen("AREA", operate(a, "-", 3)), 0)),
    range.map((a) => pen("TOTAL", a)),
    fc.tuple(cellAt, fc.integer({ min: 1, max: 3 })).map(([a, k]) => call("INDEX", pen("LOADS", a), k)),
    fc.tuple(cellAt, constant).map(([a, b]) => call("SUM", pen("LOADS", a), b)),
  );
  return fc.letrec<{ tree: Expression }>((tie) => ({
    tree: fc.oneof(
      { depthSize: "small", maxDepth: 4 },
      { arbitrary: cellAt, weight: 5 },
      { arbitrary: constant, weight: 2 },
      { arbitrary: fc.tuple(tie("tree"), fc.constantFrom<Operator>("+", "-", "*"), tie("tree")).map(([a, op, b]) => operate(a, op, b)), weight: 4 },
      { arbitrary: fc.tuple(fc.constantFrom("SUM", "MAX"), range).map(([name, a]) => call(name, a)), weight: 4 },
      { arbitrary: fc.tuple(cellAt, tie("tree"), tie("tree")).map(([a, b, c]) => call("IF", operate(a, ">", 5), b, c)), weight: 3 },
      { arbitrary: asked, weight: 3 },
    ),
  })).tree;
} // prettier-ignore

const values = fc.array(fc.option(fc.integer({ min: -20, max: 80 }).map((x) => x / 4), { freq: 6 }), { minLength: INPUTS, maxLength: INPUTS }); // prettier-ignore

const sheet = (name: string) =>
  fc
    .tuple(values, fc.tuple(...Array.from({ length: FORMULAS }, (_, row) => expressions(row, name))))
    .map(([typed, says]) =>
      sheetOf(name, [
        ...typed.map((value, row): CellData => ({ row, column: 0, value, input: true })),
        ...says.map((one, row): CellData => ({ row, column: 1, value: null, formula: liveFormula(one) })),
      ]),
    );

const changed = (content: WorkbookContent, where: WorkbookContent): WorkbookContent => ({
  sheets: content.sheets.map((one, s) => ({
    ...one,
    cells: one.cells.map((cell) => {
      const mark = where.sheets[s].cells.find(
        ({ row, column }) => row === cell.row && column === cell.column,
      )!;
      return mark.input
        ? { ...cell, value: (typeof cell.value === "number" ? cell.value : 0) * 2 + 3 }
        : cell;
    }),
  })),
});

function worked(content: WorkbookContent): WorkbookContent {
  const valueAt = ourValues(content, table);
  return {
    sheets: content.sheets.map((one) => ({
      ...one,
      cells: one.cells.map((cell) => ({ ...cell, value: valueAt(one.name, cell.row, cell.column) })),
    })),
  };
}

officeTest(
  "whatever input of a plain copy is changed, no cell disagrees with the live workbook",
  async () => {
    const books = fc.sample(fc.tuple(sheet("Job"), sheet("Prices list")), { numRuns: 40, seed: 7 });
    const live = books.map((sheets) => worked({ sheets }));
    const plain = live.map((content) => plainForm(content, table).content);
    const copies = plain.map((content) => changed(content, content));
    const expected = live.map((content, k) => worked(changed(content, plain[k])));
    const office = await recalculate(await Promise.all(copies.map((copy) => writeXlsx(copy))));
    const counts = { compared: 0, moved: 0, open: 0, fixed: 0 };
    const parted: string[] = [];
    for (const [k, content] of expected.entries())
      for (const [s, { name, cells }] of content.sheets.entries())
        for (const [c, { row, column, value, formula }] of cells.entries()) {
          counts[plain[k].sheets[s].cells[c].input ? "open" : "fixed"] += formula ? 0 : 1;
          if (!formula) continue;
          counts.compared++;
          if (!agree(value, live[k].sheets[s].cells[c].value)) counts.moved++;
          const theirs = shown(office[k], name, row, column);
          if (!agree(value, theirs))
            parted.push(
              `book ${k} ${name} ${row}: ${formula} is ${told(value)}, in the copy ${told(theirs)}`,
            );
        }
    expect(parted).toEqual([]);
    expect(plain.some(({ sheets }) => sheets.some(({ cells }) => cells.some(({ formula }) => /PEN/.test(formula ?? ""))))).toBe(false); // prettier-ignore
    expect(counts.compared).toBe(40 * 2 * FORMULAS);
    for (const count of [counts.moved, counts.open, counts.fixed]) expect(count).toBeGreaterThan(50);
  },
);
