import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { FormulaDataModel, type FWorksheet } from "@univerjs/preset-sheets-core";
import { type Cell, type CellError } from "../../units/cell";
import { type CellMessages } from "./cell-messages";

/** One cell as it stands. */
export interface UsedCell {
  value: Cell;
  /** With its equals sign; empty where the content was typed. */
  formula: string;
}

const errorText = /^#(VALUE!|N\/A|DIV\/0!|REF!|NAME\?|NUM!|NULL!)$/;

/** The cells of a sheet from A1 to the last one that holds something, results that spill over included. */
export function usedCells(worksheet: FWorksheet, messages: CellMessages): UsedCell[][] {
  const sheet = worksheet.getSheet();
  const formulas = worksheet.getInject().get(FormulaDataModel);
  const [unit, id] = [sheet.getUnitId(), sheet.getSheetId()];
  const spilled = formulas.getArrayFormulaCellData()?.[unit]?.[id];
  const cells: UsedCell[][] = [];
  let [bottom, right] = [-1, -1];
  const rows = Math.max(worksheet.getLastRow(), ...Object.keys(spilled ?? {}).map(Number));
  for (let row = 0; row <= rows; row++) {
    const across: UsedCell[] = [];
    const columns = Math.max(worksheet.getLastColumn(), ...Object.keys(spilled?.[row] ?? {}).map(Number));
    for (let column = 0; column <= columns; column++) {
      const formula = formulas.getFormulaStringByCell(row, column, id, unit) ?? "";
      const raw = sheet.getCellRaw(row, column);
      const found = cellValue(blank(raw) ? spilled?.[row]?.[column] : raw, formula !== "" || blank(raw));
      const value =
        found !== null && typeof found === "object"
          ? { ...found, message: messages.find({ sheet: id, row, column }, found.error) }
          : found;
      across.push({ value, formula });
      if (value !== null || formula !== "") [bottom, right] = [row, Math.max(right, column)];
    }
    cells.push(across);
  }
  return cells
    .slice(0, bottom + 1)
    .map((across) =>
      Array.from({ length: right + 1 }, (_, column) => across[column] ?? { value: null, formula: "" }),
    );
}

function blank(raw: Nullable<ICellData>): boolean {
  return !raw || ((raw.v === null || raw.v === undefined || raw.v === "") && !raw.p);
}

/** A text that is an error's code counts as the error only where a formula made it. */
function cellValue(raw: Nullable<ICellData>, computed: boolean): Cell {
  if (raw?.p?.body) return raw.p.body.dataStream.replace(/\r\n$/, "");
  const value = raw?.v;
  if (value === null || value === undefined) return null;
  if (computed && typeof value === "string" && errorText.test(value))
    return { error: value as CellError["error"] };
  if (raw?.t === CellValueType.BOOLEAN) return value === 1 || value === true || value === "TRUE";
  if (raw?.t === CellValueType.NUMBER && Number.isFinite(Number(value))) return Number(value);
  return computed || value !== "" ? (value as Cell) : null;
}
