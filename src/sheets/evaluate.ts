import { isError, type Cell } from "../units/cell";
import { type Expression, type Operator } from "./expression";
import { type Place } from "./address";
import { sheetFunctions } from "./sheet-functions";
import { single, toNumber, toText, type Value } from "./value";

/** A worksheet function of this add-in as it sees cells: plain values in, plain values or errors out. */
export type PenFunction = (...terms: (Value | undefined)[]) => Value;

/** Where the walker finds the content of other cells and the functions of this add-in. */
export interface Surroundings {
  cell(place: Place): Cell;
  pen(name: string): PenFunction;
}

/** Said where an expression holds something that only a spreadsheet can work out. */
export class Unknown extends Error {}

/**
 * The value of an expression, as a spreadsheet would show it. Errors are values and pass through. Throws `Unknown`
 * at a function or notation that is not ours to compute.
 */
export function evaluate(whole: Expression, around: Surroundings): Value {
  switch (whole.kind) {
    case "constant":
      return whole.value;
    case "cell":
      return around.cell(whole.place);
    case "range":
      return rectangle(whole.from, whole.to, around);
    case "operation":
      return operation(
        whole.operator,
        single(evaluate(whole.left, around)),
        single(evaluate(whole.right, around)),
      );
    case "negative":
      return operation("-", 0, single(evaluate(whole.of, around)));
    case "percent":
      return operation("/", single(evaluate(whole.of, around)), 100);
    case "call": {
      const work = sheetFunctions[whole.name];
      if (!work) throw new Unknown(whole.name);
      return work(whole.arguments.map((term) => () => (term ? evaluate(term, around) : null)));
    }
    case "pen":
      return around.pen(whole.name)(...whole.arguments.map((term) => term && evaluate(term, around)));
    case "verbatim":
      throw new Unknown(whole.text);
  }
}

/** More cells than this in one range are left to the spreadsheet. */
const LARGEST_RANGE = 100_000;

function rectangle(from: Place, to: Place, around: Surroundings): Cell[][] {
  if ((to.row - from.row + 1) * (to.column - from.column + 1) > LARGEST_RANGE) throw new Unknown("range");
  const rows: Cell[][] = [];
  for (let row = from.row; row <= to.row; row++) {
    const cells: Cell[] = [];
    for (let column = from.column; column <= to.column; column++)
      cells.push(around.cell({ sheet: from.sheet, row, column }));
    rows.push(cells);
  }
  return rows;
}

function operation(operator: Operator, left: Cell, right: Cell): Cell {
  if (isError(left)) return left;
  if (isError(right)) return right;
  if (operator === "&") return `${toText(left) as string}${toText(right) as string}`;
  if (["=", "<>", "<", "<=", ">", ">="].includes(operator)) return compare(operator, left, right);
  const a = toNumber(left);
  const b = toNumber(right);
  if (isError(a)) return a;
  if (isError(b)) return b;
  if (operator === "/" && b === 0) return { error: "#DIV/0!" };
  const result = { "+": a + b, "-": a - b, "*": a * b, "/": a / b, "^": a ** b }[operator as "+"];
  return Number.isFinite(result) ? result : { error: "#NUM!" };
}

/** Comparing as spreadsheets do: numbers before texts before truth values, texts without regard to case. */
function compare(operator: Operator, left: Cell, right: Cell): boolean {
  const a = standIn(left, right);
  const b = standIn(right, left);
  const order = rank(a) - rank(b) || (a < b ? -1 : a > b ? 1 : 0);
  return {
    "=": order === 0,
    "<>": order !== 0,
    "<": order < 0,
    "<=": order <= 0,
    ">": order > 0,
    ">=": order >= 0,
  }[operator as "="];
}

type Plain = number | string | boolean;

function standIn(value: Cell, other: Cell): Plain {
  if (value === null) return typeof other === "string" ? "" : typeof other === "boolean" ? false : 0;
  return typeof value === "string" ? value.toLowerCase() : (value as Plain);
}

function rank(value: Plain): number {
  return typeof value === "number" ? 0 : typeof value === "string" ? 1 : 2;
}
