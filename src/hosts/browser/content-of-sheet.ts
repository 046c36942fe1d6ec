import {
  BooleanNumber,
  DataValidationType,
  type ISheetDataValidationRule,
  type IStyleData,
} from "@univerjs/core";
import { deserializeListOptions, type FWorksheet } from "@univerjs/preset-sheets-core";
import { ISheetDrawingService, type ISheetImage } from "@univerjs/preset-sheets-drawing";
import { type PlanPicture, type Validation } from "../../sheets/plan";
import { type CellData, type SheetData } from "../../sheets/workbook-content";
import { type CellMessages } from "./cell-messages";
import { plainStyle } from "./cell-style";
import { isOwnPicture, pictureSvg } from "./picture";
import { printSetUp } from "./print-set-up";
import { columnOfPixels, pointsOfPixels } from "./screen-units";
import { usedCells } from "./used-cells";

/** A sheet of the grid as plain data, with everything that another host can carry. */
export function sheetContent(worksheet: FWorksheet, messages: CellMessages): SheetData {
  const sheet = worksheet.getSheet();
  const used = usedCells(worksheet, messages);
  const accepted = validations(worksheet);
  const cells: CellData[] = [];
  const [rows, columns] = [worksheet.getLastRow() + 1, worksheet.getLastColumn() + 1];
  for (let row = 0; row < Math.max(rows, used.length); row++)
    for (let column = 0; column < Math.max(columns, used[row]?.length ?? 0); column++) {
      const { value = null, formula = "" } = used[row]?.[column] ?? {};
      const look = plainStyle((sheet.getComposedCellStyle(row, column) ?? {}) as IStyleData);
      const accepts = accepted.get(`${row} ${column}`);
      const { input, note } = (sheet.getCellRaw(row, column)?.custom ?? {}) as {
        input?: boolean;
        note?: string;
      };
      if (value === null && !formula && Object.keys(look).length === 0 && !accepts && !input && !note)
        continue;
      const cell: CellData = { row, column, value, style: look };
      if (formula) cell.formula = formula;
      if (accepts) cell.accepts = accepts;
      if (input || accepts) cell.input = true;
      if (note) cell.note = note;
      cells.push(cell);
    }
  const config = sheet.getConfig();
  const rowData = Object.entries(config.rowData);
  return {
    name: sheet.getName(),
    cells,
    columns: Array.from({ length: columns }, (_, column) => ({
      width: columnOfPixels(config.columnData[column]?.w ?? config.defaultColumnWidth),
      ...(config.columnData[column]?.hd === BooleanNumber.TRUE ? { hidden: true } : {}),
    })),
    hiddenRows: rowData.filter(([, row]) => row.hd === BooleanNumber.TRUE).map(([row]) => Number(row)),
    heights: Object.fromEntries(
      rowData
        .filter(([, row]) => row.h !== undefined)
        .map(([row, { h, ah, ia }]) => [row, pointsOfPixels(ia !== BooleanNumber.FALSE && ah ? ah : h!)]),
    ),
    frozenRows: Math.max(0, config.freeze.ySplit),
    merges: config.mergeData.map(({ startRow, startColumn, endRow, endColumn }) => ({
      top: startRow,
      left: startColumn,
      bottom: endRow,
      right: endColumn,
    })),
    print: printSetUp(worksheet),
    pictures: pictures(worksheet),
  };
}

function validations(worksheet: FWorksheet): Map<string, Validation> {
  const found = new Map<string, Validation>();
  for (const { rule } of worksheet.getDataValidations()) {
    const validation = plainRule(rule as ISheetDataValidationRule);
    if (!validation) continue;
    for (const { startRow, endRow, startColumn, endColumn } of rule.ranges)
      for (let row = startRow; row <= endRow; row++)
        for (let column = startColumn; column <= endColumn; column++)
          found.set(`${row} ${column}`, validation);
  }
  return found;
}

/** A rule of the kinds that documents use; any other stays with the grid alone. */
function plainRule({
  type,
  formula1,
  formula2,
  error = "",
}: ISheetDataValidationRule): Validation | undefined {
  if (type === DataValidationType.LIST)
    return { kind: "list", options: deserializeListOptions(formula1 ?? ""), message: error };
  const whole = type === DataValidationType.WHOLE;
  const [least, most] = [Number(formula1), Number(formula2)];
  if ((!whole && type !== DataValidationType.DECIMAL) || !Number.isFinite(least + most)) return undefined;
  return { kind: "number", least, most, ...(whole ? { whole } : {}), message: error };
}

function pictures(worksheet: FWorksheet): PlanPicture[] {
  const drawings = worksheet.getInject().get(ISheetDrawingService);
  const here = drawings.getDrawingData(worksheet.getSheet().getUnitId(), worksheet.getSheetId());
  return Object.values(here).flatMap((drawing) => {
    const {
      source,
      sheetTransform,
      transform,
      description = "",
    } = drawing as ISheetImage & { description?: string };
    if (!isOwnPicture(source)) return [];
    const { row, column } = sheetTransform.from;
    const [width, height] = [pointsOfPixels(transform?.width ?? 0), pointsOfPixels(transform?.height ?? 0)];
    return [{ row, column, width, height, svg: pictureSvg(source, width, height), description }];
  });
}
