import { blank, call, cell, expression, pen, times, type Expression } from "../../../src/sheets/expression";
import { type PlanCell, type SheetPlan } from "../../../src/sheets/plan";
import { type StyleName } from "../../../src/sheets/styles";

const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="200" height="200"><circle cx="100" cy="100" r="90"/></svg>`;

const pattern: StyleName[] = [
  "key", "label", "count", "unit", "figure", "money", "mark", "note", "text", "label", "inputNumber", "unit", "inputMoney", "feetInches",
]; // prettier-ignore

/** An invented sheet about as large as an estimate: 120 rows of 14 cells with everything that a plan can hold. */
export function samplePlan(name: string, rows = 120): SheetPlan {
  const cells: PlanCell[] = [{ row: 0, column: 0, says: expression("penstake sample 1"), style: "key" }];
  cells.push({ row: 0, column: 1, says: expression("Estimate for an invented pen"), style: "title", across: 6 });
  for (let row = 2; row < rows; row++)
    pattern.forEach((style, column) =>
      cells.push({
        row,
        column,
        style: row % 12 === 2 ? (column > 4 ? "headingRight" : "heading") : style,
        says: content(row, column),
        ...(column === 10 && { input: true, accepts: { kind: "number", least: 0, most: 5000, message: "0 to 5000 ft" } }),
        ...(column === 12 && { input: true, accepts: { kind: "list", options: ["yes", "no"], message: "yes or no" } }),
      }),
    );
  return {
    name,
    cells,
    columns: pattern.map((_, k) => ({ width: k === 1 ? 38 : 12, ...(k === 0 && { hidden: true }) })),
    hiddenRows: [5, 6],
    heights: { 0: 24 },
    frozenRows: 2,
    print: {
      area: { top: 0, left: 1, bottom: rows - 1, right: 7 },
      landscape: false,
      pages: { wide: 1, tall: 0 },
      repeatRows: 2,
      footer: "Posts & rails",
    },
    pictures: [{ row: 2, column: 15, width: 200, height: 200, svg, description: "The pen from above" }],
  };
} // prettier-ignore

function content(row: number, column: number): Expression {
  const left = cell({ row, column: column - 1 });
  if (column === 0) return expression(`fence.line.${row}`);
  if (column === 2)
    return call("INDEX", pen("LOADS", cell({ row, column: 10 }), cell({ row: 3, column: 10 })), 1);
  if (column === 4 || column === 5) return call("ROUND", times(left, 1.5), 2);
  if (column === 10) return expression(12 + row / 4);
  if (column === 12) return row % 3 ? expression("no") : blank;
  return expression(column === 1 ? `Panels of 12 ft, line ${row}` : "each");
}
