import { type RowModel, type Worksheet, type WorksheetModel } from "exceljs";
import { columnNumber } from "../../sheets/address";
import { type PrintSetUp } from "../../sheets/plan";
import { type CellData, type Merge, type SheetData } from "../../sheets/workbook-content";
import { type Lost } from "./losses";
import { type SheetPart } from "./parts";
import { readCell } from "./read-cell";

const DEFAULT_WIDTH = 8.43;

/** One sheet of a file as plain data. */
export function readSheet(sheet: Worksheet, part: SheetPart, lost: Lost): SheetData {
  const cells: CellData[] = [];
  const hiddenRows: number[] = [];
  const heights: Record<number, number> = {};
  // The model has the cells that exist; a walk over rows and columns would pass over blank ones or make the rest.
  const model = sheet.model as WorksheetModel & { rows: RowModel[] };
  for (const { number, hidden, height, cells: inRow } of model.rows) {
    if (hidden) hiddenRows.push(number - 1);
    if (height) heights[number - 1] = height;
    for (const one of inRow) {
      const address = String(one.address);
      const data = readCell(sheet.getCell(address), part.notes.get(address), lost);
      if (data) cells.push(data);
    }
  }
  const width = cells.reduce((most, { column }) => Math.max(most, column + 1), 0);
  const view = (sheet.views as typeof sheet.views | null)?.[0];
  return {
    name: part.name,
    cells,
    columns: Array.from({ length: width }, (_, k) => {
      const column = sheet.getColumn(k + 1);
      return { width: column.width ?? DEFAULT_WIDTH, ...(column.hidden ? { hidden: true } : {}) };
    }),
    hiddenRows,
    heights,
    frozenRows: view?.state === "frozen" ? (view.ySplit ?? 0) : 0,
    merges: model.merges.map((area) => corners(String(area))!),
    ...printSetUp(sheet, part),
    pictures: [],
  };
}

/** The corners of an area such as $A$1:H40, counted from 0; undefined where it is none. */
function corners(area: string): Merge | undefined {
  const found = /\$?([A-Z]{1,3})\$?(\d+):\$?([A-Z]{1,3})\$?(\d+)$/.exec(area);
  if (!found) return undefined;
  const [, left, top, right, bottom] = found;
  return {
    top: Number(top) - 1,
    left: columnNumber(left),
    bottom: Number(bottom) - 1,
    right: columnNumber(right),
  };
}

function printSetUp({ pageSetup, headerFooter }: Worksheet, part: SheetPart): { print?: PrintSetUp } {
  const area = corners(part.printArea ?? "");
  if (!area) return {};
  const [, first = 1, last = 0] = (/\$(\d+):\$(\d+)$/.exec(part.printTitles ?? "") ?? []).map(Number);
  const { orientation, fitToPage, fitToWidth = 1, fitToHeight = 1 } = pageSetup;
  // The left part of a footer without its codes; the page's number is written anew.
  const [, footer = ""] =
    /^&L((?:&&|&[^LCR]|[^&])*)/.exec((headerFooter as typeof headerFooter | null)?.oddFooter ?? "") ?? [];
  return {
    print: {
      area,
      landscape: orientation === "landscape",
      pages: fitToPage ? { wide: fitToWidth, tall: fitToHeight } : { wide: 1, tall: 0 },
      repeatRows: Math.max(0, last - first + 1),
      ...(first > 1 ? { repeatFrom: first - 1 } : {}),
      footer: footer.replace(/&\d+ ?/g, "").replace(/&&/g, "&"),
    },
  };
}
