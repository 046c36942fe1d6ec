import { isError, type Cell } from "../units/cell";
import { address } from "./address";
import { type Expression, type Operator } from "./expression";

/** How tightly an operator binds, by the spreadsheet's own order. */
export const strength: Record<Operator, number> = {
  "^": 5, "*": 4, "/": 4, "+": 3, "-": 3, "&": 2, "=": 1, "<>": 1, "<": 1, "<=": 1, ">": 1, ">=": 1,
}; // prettier-ignore

/** The longest text that Excel takes in one pair of quotes inside a formula. */
const longestText = 255;

/** A cell's content as a formula writes it: a text in quotes, a truth value in capitals, nothing as an empty text. */
export function literal(value: Cell): string {
  if (value === null) return '""';
  // The open grid drops a quote at the end of a text that is a function's argument: 226' needs its sign by number.
  if (typeof value === "string" && value.endsWith("'")) return `(${literal(value.slice(0, -1))}&CHAR(39))`;
  if (typeof value === "string" && value.length > longestText)
    return `(${literal(value.slice(0, longestText - 1))}&${literal(value.slice(longestText - 1))})`;
  if (typeof value === "string") return `"${value.replace(/"/g, '""')}"`;
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  if (isError(value)) return value.error;
  return String(value).toUpperCase();
}

/** The text of an expression inside a formula, in the spreadsheet's English notation. */
export function formulaText(whole: Expression): string {
  return write(whole, 0);
}

/** The live formula of an expression that is no constant, with its leading equals sign. */
export function liveFormula(whole: Expression): string {
  return `=${formulaText(whole)}`;
}

function write(whole: Expression, bond: number): string {
  switch (whole.kind) {
    case "constant":
      return typeof whole.value === "number" && whole.value < 0 && bond > 0
        ? `(${literal(whole.value)})`
        : literal(whole.value);
    case "cell":
      return address(whole.place);
    case "range":
      return `${address(whole.from)}:${address({ ...whole.to, sheet: undefined })}`;
    case "operation": {
      const own = strength[whole.operator];
      // Subtracting and dividing bind to the left, so an equal bond on the right keeps its brackets.
      const inner = write(whole.left, own) + whole.operator + write(whole.right, own + 0.5);
      return own < bond ? `(${inner})` : inner;
    }
    case "negative":
      if (whole.of.kind === "constant" && typeof whole.of.value === "number" && whole.of.value > 0)
        return write({ kind: "constant", value: -whole.of.value }, bond);
      return `-${write(whole.of, 6)}`;
    case "percent":
      return `${write(whole.of, 6)}%`;
    case "call":
      return `${whole.name}(${list(whole.arguments)})`;
    case "pen":
      return `PEN.${whole.name}(${list(whole.arguments)})`;
    case "verbatim":
      return whole.text;
  }
}

function list(terms: (Expression | undefined)[]): string {
  return terms.map((term) => (term ? write(term, 0) : "")).join(",");
}
