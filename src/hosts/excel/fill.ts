import { type PlanCell, type SheetPlan } from "../../sheets/plan";
import { styleOf } from "../../sheets/styles";
import { areaAddress, groupBy, joinAddresses, rowLines, rowRuns, rectangles, type Area } from "./areas";
import { entryFor, type Entry } from "./entry";
import { covered, formatCells } from "./format";
import { likeRows } from "./like-rows";
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

/** Formats first, so that no entry changes the format of its cell; then all content in one write, and its like rows as copies. */
function writeBlock(sheet: Excel.Worksheet, cells: PlanCell[]): void {
  if (cells.length === 0) return;
  for (const block of formatBlocks(cells))
    rangeOf(sheet, block.area).numberFormat = filled(
      block.area,
      block.cells,
      null,
      ({ style }) => styleOf(style).format ?? null,
    );
  const copies = likeRows(cells);
  const copied = new Set(copies.flatMap(({ area }) => placesIn(area)));
  const content = ({ row, column, says }: PlanCell) =>
    copied.has(`${row} ${column}`) ? "" : (entryFor(says) ?? "");
  const all = around(cells);
  rangeOf(sheet, all).formulas = filled(all, cells, "", content);
  for (const { area, from } of copies) rangeOf(sheet, area).copyFrom(areaAddress(from), "Formulas");
}

/** The cells with a number format, in blocks of columns side by side. */
function formatBlocks(cells: PlanCell[]): { area: Area; cells: PlanCell[] }[] {
  const formatted = cells.filter(({ style }) => styleOf(style).format !== undefined);
  const columns = rowRuns(formatted.map(({ column }) => ({ row: 0, column })));
  return columns.map(({ left, right }) => {
    const here = formatted.filter(({ column }) => column >= left && column <= right);
    const rows = here.map(({ row }) => row);
    return { area: { top: Math.min(...rows), left, bottom: Math.max(...rows), right }, cells: here };
  });
}

/** The block from A1 around some cells. */
const around = (cells: PlanCell[]): Area => ({
  top: 0,
  left: 0,
  bottom: Math.max(...cells.map(({ row }) => row)),
  right: Math.max(...cells.map(({ column }) => column)),
});

const rangeOf = (sheet: Excel.Worksheet, { top, left, bottom, right }: Area) =>
  once(sheet.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1));

/** What each cell of an area is given, and every other place in it; on a new sheet an empty text leaves a cell blank, as null does. */
function filled(
  { top, left, bottom, right }: Area,
  cells: PlanCell[],
  other: Entry,
  of: (cell: PlanCell) => Entry,
): Entry[][] {
  const block = Array.from({ length: bottom - top + 1 }, () =>
    new Array<Entry>(right - left + 1).fill(other),
  );
  for (const cell of cells) block[cell.row - top][cell.column - left] = of(cell);
  return block;
}

const placesIn = ({ top, left, bottom, right }: Area) =>
  Array.from({ length: bottom - top + 1 }, (_, k) => top + k).flatMap((row) =>
    Array.from({ length: right - left + 1 }, (_, k) => `${row} ${left + k}`),
  );

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
