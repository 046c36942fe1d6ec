import { isError } from "../units/cell";
import { address } from "./address";
import { marks } from "./documents/marks";
import { estimateMark } from "./estimate-layout";
import { type PenFunction } from "./evaluate";
import { messages } from "./messages";
import { plainForm } from "./plain";
import { type Area } from "./precedents";
import { pricesMark } from "./prices-layout";
import { type CellData, type SheetData, type WorkbookContent } from "./workbook-content";

/** What a plain copy holds of a workbook. */
export interface PlainCopyWish {
  /** The names of the sheets. */
  sheets: readonly string[];
  /** Estimates and prices keep their keys, so that they can be made live again. */
  keepKeys: boolean;
}

/** The mark in A1 of a sheet, where it is a document of this add-in's. */
export const markOf = ({ cells }: SheetData): string | undefined => {
  const mark = cells.find(({ row, column }) => row === 0 && column === 0)?.value;
  return typeof mark === "string" && mark.startsWith("penstake ") ? mark : undefined;
};

/**
 * A copy of chosen sheets for people without this add-in: no call of its functions and no look at a sheet that stays
 * behind; what such a formula shows takes its place, and what leads to it is fixed. A document loses its keys, all
 * that stands in hidden rows and columns, and every note but that a cell is fixed; one for a customer or a supplier also
 * what stands right of its pages. An estimate and the prices keep theirs where that is wished. A sheet of the user's own
 * keeps everything.
 */
export function plainCopy(
  content: WorkbookContent,
  pen: (name: string) => PenFunction,
  { sheets: chosen, keepKeys }: PlainCopyWish,
): WorkbookContent {
  const names = new Set(chosen.map((name) => name.toLowerCase()));
  const sheets = new Map(content.sheets.map((sheet) => [sheet.name.toLowerCase(), sheet]));
  const bared = new Set(content.sheets.filter((sheet) => isBared(sheet, keepKeys)));
  const gone = (area: Area) => {
    const sheet = sheets.get(area.sheet.toLowerCase());
    return !sheet || !names.has(sheet.name.toLowerCase()) || (bared.has(sheet) && looksAtHidden(sheet, area));
  };
  const plain = plainForm(content, pen, { gone });
  const kept = plain.content.sheets.flatMap((sheet, k) => {
    const before = content.sheets[k];
    if (!names.has(sheet.name.toLowerCase())) return [];
    return [bared.has(before) ? withoutHidden(sheet) : sheet];
  });
  const { activeSheet } = content;
  return {
    sheets: kept,
    activeSheet: kept.some(({ name }) => name === activeSheet) ? activeSheet : kept[0]?.name,
  };
}

/** The cells of a copy that show #NAME?, which nobody without this add-in should meet. */
export const nameErrors = ({ sheets }: WorkbookContent): string[] =>
  sheets.flatMap(({ name, cells }) =>
    cells
      .filter(({ value }) => isError(value) && value.error === "#NAME?")
      .map(({ row, column }) => address({ sheet: name, row, column })),
  );

function isBared(sheet: SheetData, keepKeys: boolean): boolean {
  const mark = markOf(sheet);
  return mark !== undefined && !(keepKeys && (mark === estimateMark || mark === pricesMark));
}

const letters = new Set<string | undefined>(Object.values(marks));

/** The last column that leaves with a document for a customer or a supplier: what stands right of its pages is the house's own. */
const lastColumn = (sheet: SheetData) =>
  letters.has(markOf(sheet)) && sheet.print ? sheet.print.area.right : Infinity;

const isHidden = (sheet: SheetData, { row, column }: { row: number; column: number }) =>
  sheet.columns[column]?.hidden === true || sheet.hiddenRows.includes(row) || column > lastColumn(sheet);

const looksAtHidden = (sheet: SheetData, { top, left, bottom, right }: Area) =>
  right > lastColumn(sheet) ||
  sheet.hiddenRows.some((row) => row >= top && row <= bottom) ||
  sheet.columns.some(({ hidden }, column) => hidden && column >= left && column <= right);

function withoutHidden(sheet: SheetData): SheetData {
  const cells = sheet.cells.flatMap((cell): CellData[] => {
    if (isHidden(sheet, cell)) return [];
    const { note, ...rest } = cell;
    return [note === messages.fixedInCopy ? cell : rest];
  });
  return { ...sheet, cells, columns: sheet.columns.slice(0, lastColumn(sheet) + 1) };
}
