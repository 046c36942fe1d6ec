import { cell, call, pen, range, times, type Term } from "../../../src/sheets/expression";
import { type PlanCell, type SheetPlan } from "../../../src/sheets/plan";
import { expression } from "../../../src/sheets/expression";
import { type StyleName } from "../../../src/sheets/styles";

const at = (
  row: number,
  column: number,
  says: Term,
  style: StyleName,
  more: Partial<PlanCell> = {},
): PlanCell => ({
  row,
  column,
  says: expression(says),
  style,
  ...more,
});

const svg =
  '<svg xmlns="http://www.w3.org/2000/svg" width="90" height="90"><circle cx="45" cy="45" r="40" fill="none" stroke="black"/></svg>';

/**
 * A small invented document with one of everything: keys in a hidden column, an input, figures of this add-in, a sum,
 * a text that looks like a formula, a merged caution, a picture, and a note outside the print area.
 */
export const samplePlan = (name: string): SheetPlan => ({
  name,
  cells: [
    at(0, 0, "sample key row", "key"),
    at(1, 1, "Sample pen (invented)", "title", { across: 4 }),
    at(2, 1, "Item", "heading"),
    at(2, 2, "Quantity", "headingRight"),
    at(2, 3, "Unit", "heading"),
    at(2, 4, "Amount", "headingRight"),
    at(3, 0, "size", "key"),
    at(3, 1, "Size across", "label"),
    at(3, 2, 72, "inputNumber", {
      input: true,
      accepts: { kind: "number", least: 10, most: 400, message: "Write feet from 10 to 400." },
    }),
    at(3, 3, "ft", "unit"),
    at(4, 0, "fit", "key"),
    at(4, 1, "Fit", "label"),
    at(4, 2, "nearest", "inputText", {
      input: true,
      accepts: { kind: "list", options: ["nearest", "at least"], message: "Choose one of the list." },
    }),
    at(5, 0, "around", "key"),
    at(5, 1, "Distance around", "label"),
    at(5, 2, pen("CIRCUMFERENCE", cell({ row: 3, column: 2 })), "figure"),
    at(5, 4, times(cell({ row: 5, column: 2 }), 2), "money"),
    at(6, 1, "In feet and inches", "label"),
    at(6, 2, pen("FEET_INCHES", cell({ row: 3, column: 2 })), "feetInches"),
    at(7, 1, "Not a size", "label"),
    at(7, 2, pen("AREA", "wide"), "figure"),
    at(8, 1, "=1+1", "text"),
    at(9, 1, "Total", "totalLabel"),
    at(9, 4, call("SUM", range({ row: 4, column: 4 }, { row: 8, column: 4 })), "total"),
    at(10, 1, "Have buried lines located before you dig.", "caution", { across: 4 }),
    at(3, 6, "Outside the print area", "note"),
  ],
  columns: [
    { width: 12, hidden: true },
    { width: 24 },
    { width: 12 },
    { width: 9 },
    { width: 12 },
    { width: 3 },
    { width: 24 },
  ],
  hiddenRows: [0],
  heights: { 1: 24, 10: 20 },
  frozenRows: 3,
  print: {
    area: { top: 0, left: 1, bottom: 18, right: 4 },
    landscape: false,
    pages: { wide: 1, tall: 1 },
    repeatRows: 3,
    footer: "Sheet <b>&P</b>",
  },
  pictures: [{ row: 12, column: 1, width: 90, height: 90, svg, description: "Plan view of the sample pen" }],
});
