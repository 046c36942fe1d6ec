import { type PlanCell, type SheetPlan } from "../../sheets/plan";
import { styleOf } from "../../sheets/styles";
import { areaAddress, groupBy, joinAddresses, rowLines, rectangles } from "./areas";
import { entryFor, type Entry } from "./entry";
import { covered, formatCells } from "./format";
import { once } from "./session";
import { setUpPage } from "./page";
import { validateCells } from "./validation";

/** Fills a new, empty sheet with everything of its plan but the pictures. Asks nothing back. */
export function fillSheet(sheet: Excel.Worksheet, plan: SheetPlan): void {
  setWidths(sheet, plan);
  writeBlock(sheet, plan.cells);
  formatCells(sheet, plan.cells);
  mergeCells(sheet, plan.cells);
  validateCells(sheet, plan.cells);
  setHeights(sheet, plan);
  if (plan.frozenRows > 0) sheet.freezePanes.freezeRows(plan.frozenRows);
  setUpPage(sheet, plan.print);
}

/** Formats first, so that no entry changes the format of its cell; then all content in one write. */
function writeBlock(sheet: Excel.Worksheet, cells: PlanCell[]): void {
  if (cells.length === 0) return;
  const rows = 1 + Math.max(...cells.map(({ row }) => row));
  const columns = 1 + Math.max(...cells.map(({ column }) => column));
  const block = () => Array.from({ length: rows }, () => new Array<Entry>(columns).fill(null));
  const formulas = block();
  const formats = block();
  for (const { row, column, says, style } of cells) {
    formulas[row][column] = entryFor(says);
    formats[row][column] = styleOf(style).format ?? null;
  }
  const range = once(sheet.getRangeByIndexes(0, 0, rows, columns));
  range.numberFormat = formats;
  range.formulas = formulas;
}

function mergeCells(sheet: Excel.Worksheet, cells: PlanCell[]): void {
  const wide = cells.filter(({ across = 1 }) => across > 1);
  const alike = groupBy(wide, ({ column, across }) => `${column} ${across}`);
  for (const merged of alike.values())
    for (const area of rectangles(merged.flatMap(covered)))
      once(sheet.getRange(areaAddress(area))).merge(true);
}

/** A width in characters of the standard font as Excel's points: 7 dots a character and 5 of margin, 96 dots an inch. */
const columnPoints = (characters: number) => ((characters * 7 + 5) * 72) / 96;

function setWidths(sheet: Excel.Worksheet, { columns }: SheetPlan): void {
  if (columns.length === 0) return;
  once(sheet.getRangeByIndexes(0, 0, 1, columns.length)).setColumnProperties(
    columns.map(({ width, hidden = false }) => ({
      columnHidden: hidden,
      format: { columnWidth: columnPoints(width) },
    })),
  );
}

function setHeights(sheet: Excel.Worksheet, { heights, hiddenRows }: SheetPlan): void {
  for (const [height, alike] of groupBy(Object.keys(heights).map(Number), (row) => heights[row]))
    for (const addresses of joinAddresses(rowLines(alike)))
      once(sheet.getRanges(addresses)).format.rowHeight = height;
  for (const run of rowLines(hiddenRows)) once(sheet.getRange(run)).rowHidden = true;
}
