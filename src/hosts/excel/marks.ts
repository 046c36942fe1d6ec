import { messages as sheetMessages } from "../../sheets/messages";
import { fixedInk, isInputFill } from "../../sheets/styles";
import { type RewrittenCell } from "../host";
import { once, session } from "./session";

/** How a cell looked and what it accepted before a mark was set on it or taken away. */
export interface Before {
  row: number;
  column: number;
  style: "fixed" | "live";
  fill: string;
  color: string;
  rule?: Excel.DataValidationRule;
  alert: Excel.DataValidationErrorAlert;
  prompt: Excel.DataValidationPrompt;
  ignoreBlanks: boolean;
}

const edges = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"] as const;

/** Reads what marking these cells will change. Cells without a mark to set or take away are left out. */
export function readMarked(sheet: string, cells: RewrittenCell[]): Promise<Before[]> {
  const marked = cells.flatMap(({ row, column, style }) => (style ? [{ row, column, style }] : []));
  if (marked.length === 0) return Promise.resolve([]);
  return session(async (context) => {
    const found = context.workbook.worksheets.getItem(sheet);
    const asked = marked.map((cell) => {
      const { format, dataValidation } = rangeOf(found, cell);
      format.fill.load({ color: true });
      format.font.load({ color: true });
      dataValidation.load({ rule: true, errorAlert: true, prompt: true, ignoreBlanks: true, type: true });
      return { ...cell, format, dataValidation };
    });
    await context.sync();
    return asked.map(({ row, column, style, format, dataValidation }) => ({
      row,
      column,
      style,
      fill: format.fill.color,
      color: format.font.color,
      ...(dataValidation.type !== "None" ? { rule: dataValidation.rule } : {}),
      alert: dataValidation.errorAlert,
      prompt: dataValidation.prompt,
      ignoreBlanks: dataValidation.ignoreBlanks,
    }));
  });
}

/** Asks for the marks with the next request: a message beside the cell, and no look of an input. */
export function mark(sheet: Excel.Worksheet, cells: Before[]): void {
  for (const cell of cells) {
    const { format, dataValidation } = rangeOf(sheet, cell);
    if (cell.style === "live") {
      if (cell.prompt.message === sheetMessages.fixedInCopy) dataValidation.clear();
      continue;
    }
    if (isInputFill(cell.fill)) {
      format.fill.clear();
      format.font.color = `#${fixedInk}`;
      for (const edge of edges) format.borders.getItem(edge).style = "None";
    }
    // A rule that takes anything: Excel shows the message of a rule only.
    dataValidation.clear();
    dataValidation.rule = { custom: { formula: "=TRUE" } };
    dataValidation.prompt = { title: "", message: sheetMessages.fixedInCopy, showPrompt: true };
  }
}

/** Asks for the looks and rules of before with the next request. */
export function unmark(sheet: Excel.Worksheet, cells: Before[]): void {
  for (const { fill, color, rule, alert, prompt, ignoreBlanks, ...cell } of cells) {
    const { format, dataValidation } = rangeOf(sheet, cell);
    if (cell.style === "fixed" && isInputFill(fill)) {
      format.fill.color = fill;
      format.font.color = color;
      for (const edge of edges) format.borders.getItem(edge).style = "Continuous";
    }
    dataValidation.clear();
    if (!rule) continue;
    dataValidation.rule = rule;
    if (alert.message) dataValidation.errorAlert = alert;
    if (prompt.message) dataValidation.prompt = prompt;
    if (!ignoreBlanks) dataValidation.ignoreBlanks = false;
  }
}

const rangeOf = (sheet: Excel.Worksheet, { row, column }: { row: number; column: number }): Excel.Range =>
  once(sheet.getRangeByIndexes(row, column, 1, 1));
