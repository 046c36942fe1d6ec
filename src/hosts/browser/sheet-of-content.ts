import {
  BooleanNumber,
  CellValueType,
  DataValidationErrorStyle,
  ImageSourceType,
  type ICellData,
  type IWorksheetData,
} from "@univerjs/core";
import { type FWorksheet } from "@univerjs/preset-sheets-core";
import { isError } from "../../units/cell";
import { type PlanPicture, type Validation } from "../../sheets/plan";
import { type CellData, type SheetData } from "../../sheets/workbook-content";
import { gridStyle } from "./cell-style";
import { type Grid } from "./grid";
import { pictureSource } from "./picture";
import { pixelsOfColumn, pixelsOfPoints } from "./screen-units";

const leastRows = 200;
const leastColumns = 26;
const rowHeight = 20;

/** A sheet as the grid keeps it, all but what `furnish` adds once the sheet stands. */
export function gridSheet(sheet: SheetData): Partial<IWorksheetData> {
  const cellData: Record<number, Record<number, ICellData>> = {};
  for (const cell of sheet.cells) (cellData[cell.row] ??= {})[cell.column] = gridCell(cell);
  const rowData: IWorksheetData["rowData"] = {};
  for (const [row, height] of Object.entries(sheet.heights))
    rowData[Number(row)] = { h: pixelsOfPoints(height), ia: BooleanNumber.FALSE };
  for (const row of sheet.hiddenRows) rowData[row] = { ...rowData[row], hd: BooleanNumber.TRUE };
  const columnData = Object.fromEntries(
    sheet.columns.map(({ width, hidden }, column) => [
      column,
      { w: pixelsOfColumn(width), hd: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE },
    ]),
  );
  const lastRow = Math.max(0, ...sheet.cells.map(({ row }) => row));
  const lastColumn = Math.max(sheet.columns.length, ...sheet.cells.map(({ column }) => column));
  return {
    name: sheet.name,
    rowCount: Math.max(leastRows, lastRow + 100),
    columnCount: Math.max(leastColumns, lastColumn + 6),
    defaultRowHeight: rowHeight,
    cellData,
    rowData,
    columnData,
    mergeData: sheet.merges.map(({ top, left, bottom, right }) => ({
      startRow: top,
      startColumn: left,
      endRow: bottom,
      endColumn: right,
    })),
    freeze: { xSplit: 0, ySplit: sheet.frozenRows, startRow: sheet.frozenRows || -1, startColumn: -1 },
    showGridlines: BooleanNumber.TRUE,
    custom: { print: sheet.print ?? null },
  };
}

/** A typed value as the grid keeps it: a text carries its type, so that it never becomes a formula. */
export function gridValue(value: CellData["value"]): ICellData {
  if (value === null) return { v: null, t: null };
  if (isError(value)) return { v: value.error, t: CellValueType.STRING };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: value, t: typeof value === "number" ? CellValueType.NUMBER : CellValueType.STRING };
}

function gridCell({ value, formula, style, input, note }: CellData): ICellData {
  const cell: ICellData = value === null ? {} : gridValue(value);
  if (formula) cell.f = formula;
  if (style) cell.s = gridStyle(style);
  if (input || note) cell.custom = { ...(input ? { input } : {}), ...(note ? { note } : {}) };
  return cell;
}

/** Adds what the grid keeps beside a sheet: what may be typed into inputs, and pictures. */
export async function furnish(grid: Grid, worksheet: FWorksheet, sheet: SheetData): Promise<void> {
  for (const { row, column, accepts } of sheet.cells)
    if (accepts) worksheet.getRange(row, column).setDataValidation(rule(grid, accepts));
  for (const picture of sheet.pictures) await addPicture(worksheet, picture);
}

function rule(grid: Grid, accepts: Validation) {
  const builder = grid.newDataValidation();
  if (accepts.kind === "list") builder.requireValueInList(accepts.options);
  else builder.requireNumberBetween(accepts.least, accepts.most, accepts.whole);
  return builder
    .setAllowBlank(true)
    .setOptions({
      showErrorMessage: true,
      error: accepts.message,
      errorStyle: DataValidationErrorStyle.STOP,
    })
    .build();
}

async function addPicture(worksheet: FWorksheet, picture: PlanPicture): Promise<void> {
  const image = await worksheet
    .newOverGridImage()
    .setSource(pictureSource(picture.svg), ImageSourceType.BASE64)
    .setRow(picture.row)
    .setColumn(picture.column)
    .setWidth(pixelsOfPoints(picture.width))
    .setHeight(pixelsOfPoints(picture.height))
    .buildAsync();
  worksheet.insertImages([Object.assign(image, { description: picture.description })]);
}

/** Selects the first cell of a sheet in view, so that no key of a hidden row or column meets the eye. */
export function selectFirst(worksheet: FWorksheet): void {
  const { rowData, columnData } = worksheet.getSheet().getConfig();
  const firstShown = (lines: typeof rowData | typeof columnData) => {
    let line = 0;
    while (lines[line]?.hd === BooleanNumber.TRUE) line++;
    return line;
  };
  worksheet.getRange(firstShown(rowData), firstShown(columnData)).activate();
}
