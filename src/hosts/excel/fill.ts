import { type PlanCell, type SheetPlan } from "../../sheets/plan";
import { styleOf } from "../../sheets/styles";
import {
  areaAddress,
  groupBy,
  joinAddresses,
  placeOf,
  rowLines,
  rectangles,
  spotsIn,
  type Area,
  type Spot,
} from "./areas";
import { entryFor, type Entry } from "./entry";
import { covered, formatCells } from "./format";
import { sentBlocks } from "./sent-blocks";
import { once } from "./session";
import { spreads } from "./spreads";
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

/** What a place that says nothing takes in bytes: `null,` among formats, `"",` among formulas. */
const blankBytes = { format: 5, formula: 3 };

/** Formats first, so that no entry changes the format of its cell; then the formulas that spread, and all other content over them. */
function writeBlock(sheet: Excel.Worksheet, cells: PlanCell[]): void {
  const formatOf = ({ style }: PlanCell) => styleOf(style).format ?? null;
  const formatted = cells.filter((cell) => formatOf(cell) !== null);
  for (const { area, cells: here } of sentBlocks(formatted, blankBytes.format))
    rangeOf(sheet, area).numberFormat = filled(area, here, () => null, formatOf);
  const entries = new Map(cells.map(({ row, column, says }) => [placeOf({ row, column }), { row, column, entry: entryFor(says) ?? "" }]));
  const { chosen, done } = spreads(cells);
  for (const { from, area } of chosen) {
    rangeOf(sheet, from).formulas = [spotsIn(from).map((spot) => entries.get(placeOf(spot))!.entry)];
    rangeOf(sheet, area).copyFrom(areaAddress(from), "Formulas");
  }
  const written = new Map([...entries].filter(([place, { entry }]) => entry !== "" && !done.has(place)));
  // What was copied where nothing is to stand is cleared.
  for (const spot of chosen.flatMap(({ area }) => spotsIn(area)))
    if (!done.has(placeOf(spot)) && !written.has(placeOf(spot))) written.set(placeOf(spot), { ...spot, entry: "" });
  for (const { area, cells: here } of sentBlocks([...written.values()], blankBytes.formula))
    rangeOf(sheet, area).formulas = filled(area, here, (place) => (done.has(place) ? null : ""), ({ entry }) => entry);
} // prettier-ignore

const rangeOf = (sheet: Excel.Worksheet, { top, left, bottom, right }: Area) =>
  once(sheet.getRangeByIndexes(top, left, bottom - top + 1, right - left + 1));

/** What each cell of an area is given, and every other place in it; on a new sheet an empty text leaves a cell blank, as null does. */
function filled<Cell extends Spot>(
  { top, left, bottom, right }: Area,
  cells: Cell[],
  other: (place: string) => Entry,
  of: (cell: Cell) => Entry,
): Entry[][] {
  const block = Array.from({ length: bottom - top + 1 }, (_, down) =>
    Array.from({ length: right - left + 1 }, (_, across) =>
      other(placeOf({ row: top + down, column: left + across })),
    ),
  );
  for (const cell of cells) block[cell.row - top][cell.column - left] = of(cell);
  return block;
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
    columns.map(({ width, hidden }) => ({
      ...(hidden ? { columnHidden: true } : {}),
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
