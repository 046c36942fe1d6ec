import ExcelJS, { type Cell as FileCell, type CellErrorValue, type CellFormulaValue, type CellRichTextValue } from "exceljs"; // prettier-ignore
import { LONGEST_FORMULA } from "../../sheets/notation";
import { styles } from "../../sheets/styles";
import { type CellData } from "../../sheets/workbook-content";
import { type Cell, type CellError } from "../../units/cell";
import { styleFromFile } from "./cell-look";
import { ruleFromFile } from "./cell-rule";
import { type Lost } from "./losses";
import { enteredFormula } from "./stored-formula";

const { ValueType } = ExcelJS;

const DAY = 86_400_000;
/** The sheet's number of 1 January 1970, in both of its calendars' files (the reader has taken the older one out). */
const EPOCH = 25_569;

/** A cell of a file as plain data, or undefined where it is blank and plain. */
export function readCell(cell: FileCell, note: string | undefined, lost: Lost): CellData | undefined {
  if (cell.type === ValueType.Merge) return undefined;
  const data: CellData = {
    row: Number(cell.row) - 1,
    column: Number(cell.col) - 1,
    value: valueOf(cell, lost),
  };
  const formula = formulaOf(cell, lost);
  if (formula) data.formula = formula;
  const style = styleFromFile(cell.style);
  if (style) data.style = style;
  const rule = cell.dataValidation as typeof cell.dataValidation | undefined;
  const accepts = rule && ruleFromFile(rule);
  if (rule && !accepts) lost.add("validations");
  if (accepts) data.accepts = accepts;
  if (accepts || style?.fill === styles.inputText.fill) data.input = true;
  if (note) data.note = note;
  return data.value === null && !formula && !style && !accepts && !note ? undefined : data;
}

function valueOf(cell: FileCell, lost: Lost): Cell {
  if (cell.type === ValueType.RichText) {
    lost.add("richText");
    return (cell.value as CellRichTextValue).richText.map(({ text }) => text ?? "").join("");
  }
  const shown = cell.type === ValueType.Formula ? cell.result : cell.value;
  if (shown instanceof Date) return Math.round((shown.getTime() / DAY + EPOCH) * 1e9) / 1e9;
  if (typeof shown === "object" && shown !== null && "error" in shown)
    return errorOf((shown as CellErrorValue).error);
  if (typeof shown === "number") return Number.isFinite(shown) ? shown : null;
  return typeof shown === "string" || typeof shown === "boolean" ? shown : null;
}

const known: string[] = ["#VALUE!", "#N/A", "#DIV/0!", "#REF!", "#NAME?", "#NUM!", "#NULL!"];

/** An error of a file; one younger than the others is #VALUE!. */
const errorOf = (code: string): CellError => ({
  error: (known.includes(code) ? code : "#VALUE!") as CellError["error"],
});

function formulaOf(cell: FileCell, lost: Lost): string | undefined {
  if (cell.type !== ValueType.Formula) return undefined;
  const { shareType } = cell.value as CellFormulaValue & { shareType?: string };
  if (shareType === "array") return undefined;
  try {
    const formula = cell.formula;
    if (formula && formula.length < LONGEST_FORMULA) return enteredFormula(formula);
  } catch {
    // A shared formula whose first cell is missing has no text of its own.
  }
  lost.add("formulas");
  return undefined;
}
