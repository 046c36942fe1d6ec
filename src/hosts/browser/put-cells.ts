import { type ICellData, type IStyleData, type Nullable } from "@univerjs/core";
import { type FWorksheet } from "@univerjs/preset-sheets-core";
import { saying, type Content } from "../../sheets/expression";
import { liveFormula } from "../../sheets/formula";
import { messages } from "../../sheets/messages";
import { fixedInk, isInputFill } from "../../sheets/styles";
import { type RewrittenCell } from "../host";
import { type GridWorkbook } from "./grid-workbook";
import { writeFailed } from "./messages";
import { gridValue } from "./sheet-of-content";

/** What the grid is given for content: a typed value, or a live formula. Nothing of what the cell said before stays. */
function gridContent(content: Content): ICellData {
  const says = saying(content);
  const typed: ICellData =
    says.kind === "constant" ? { f: null, ...gridValue(says.value) } : { f: liveFormula(says), v: null, t: null };
  return { ...typed, si: null, p: null };
} // prettier-ignore

/** Puts content into the cells of a sheet, and sets or takes away their marks. */
export function putCells(worksheet: FWorksheet, cells: RewrittenCell[]): void {
  const sheet = worksheet.getSheet();
  for (const { row, column, says, style } of cells) {
    const range = worksheet.getRange(row, column);
    const look = sheet.getComposedCellStyle(row, column) as Nullable<IStyleData>;
    const cell = gridContent(says);
    // A cell formatted as text would show the formula itself.
    const general = cell.f && look?.n?.pattern === "@" ? { n: { pattern: "General" } } : {};
    const plain =
      style === "fixed" && isInputFill(look?.bg?.rgb ?? undefined)
        ? { bg: null, bd: null, cl: { rgb: `#${fixedInk}` } }
        : {};
    if (Object.keys({ ...general, ...plain }).length > 0) cell.s = { ...general, ...plain } as IStyleData;
    const note = sheet.getCellRaw(row, column)?.custom?.note as unknown;
    if (style === "fixed") cell.custom = { note: messages.fixedInCopy };
    if (style === "live" && note === messages.fixedInCopy) cell.custom = {};
    range.setValue(cell);
    if (style === "fixed" && range.getDataValidation()) range.setDataValidation(null);
  }
}

/** Rewrites cells, each on its sheet, in one step; where one of them cannot be, those before it are as they were. */
export async function rewriteCells(
  workbook: GridWorkbook,
  cells: RewrittenCell[],
  sheetOf: (cell: RewrittenCell) => FWorksheet,
): Promise<void> {
  let put = 0;
  try {
    await workbook.asOneStep(async () => {
      for (const cell of cells) {
        putCells(sheetOf(cell), [cell]);
        put++;
      }
    });
  } catch {
    if (put > 0) await workbook.grid.undo();
    throw writeFailed(sheetOf(cells[put]).getSheetName());
  }
}
