import { HostError, type SelectedArea, type WorkbookHost } from "../host";
import { address } from "../../sheets/address";
import { look, readSheets } from "./look";
import { messages } from "./messages";
import { svgToPng, type Painter } from "../svg-to-png";
import { asOneStep, once, refusal, session } from "./session";
import { watchWorkbook } from "./watch";

/** Excel as a host: the common part, and what it can do beside it. */
export interface ExcelHost extends WorkbookHost {
  /** Opens a workbook file, given in base64, as a new workbook beside the present one. */
  openCopy(base64: string): Promise<void>;
}

/**
 * The workbook that Excel shows; what writes in it is fetched when it is first asked for. `paint` draws a picture of a
 * plan; the panel leaves it to the page's canvas.
 */
export function excelHost(paint: Painter = svgToPng): ExcelHost {
  return {
    can: { openCopy: Office.context.requirements.isSetSupported("ExcelApi", "1.8"), selfCheck: true },
    look,
    read: readSheets,
    write: async (plans) => (await import("./write")).writeSheets(plans, paint),
    update: async (...asked) => (await import("./update")).updateCells(...asked),
    fillCopy: async (...asked) => (await import("./copy")).fillCopy(...asked),
    insertSheets: async (file) => (await import("./insert")).insertSheets(file),
    content: async () => (await import("./content")).workbookContent(),
    selection,
    rewrite: async (...asked) => (await import("./update")).rewriteCells(...asked),
    append: async (...asked) => (await import("./update")).appendRows(...asked),
    putFormula,
    show: (sheet) =>
      session(async (context) => {
        context.workbook.worksheets.getItem(sheet).activate();
        await context.sync();
      }),
    watch: watchWorkbook,
    openCopy: (base64) =>
      Excel.createWorkbook(base64).catch((error: unknown) => {
        throw refusal(error);
      }),
  };
}

async function selection(): Promise<SelectedArea> {
  return session(async (context) => {
    const range = once(context.workbook.getSelectedRange());
    range.load({ rowIndex: true, columnIndex: true, rowCount: true, columnCount: true });
    const sheet = context.workbook.worksheets.getActiveWorksheet().load({ name: true });
    await context.sync();
    const { rowIndex: top, columnIndex: left, rowCount, columnCount } = range;
    return { sheet: sheet.name, top, left, bottom: top + rowCount - 1, right: left + columnCount - 1 };
  });
}

async function putFormula(formula: string): Promise<{ sheet: string; address: string }> {
  const target = await session(async (context) => {
    const cell = once(context.workbook.getActiveCell()).load({ values: true, formulas: true, rowIndex: true, columnIndex: true });
    const sheet = context.workbook.worksheets.getActiveWorksheet().load({ name: true });
    await context.sync();
    const place = { sheet: sheet.name, row: cell.rowIndex, column: cell.columnIndex };
    // A cell into which another's result spills has a value and no formula.
    if (cell.formulas[0][0] !== "" || cell.values[0][0] !== "") throw new HostError(messages.notEmpty(address(place)));
    return place;
  });
  try {
    await asOneStep(async (context) => {
      const sheet = context.workbook.worksheets.getItem(target.sheet);
      once(sheet.getRangeByIndexes(target.row, target.column, 1, 1)).formulas = [[formula]];
      await context.sync();
    });
  } catch (error) {
    throw refusal(error);
  }
  return { sheet: target.sheet, address: address({ row: target.row, column: target.column }) };
} // prettier-ignore
