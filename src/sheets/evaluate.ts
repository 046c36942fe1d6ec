import { isError, type Cell } from "../units/cell";
import { type Expression, type Operator } from "./expression";
import { type Place } from "./address";
import { leastTerms, sheetFunctions } from "./sheet-functions";
import { single, toNumber, toText, type Value } from "./value";

/** A worksheet function of this add-in as it sees cells: plain values in, plain values or errors out. */
export type PenFunction = (...terms: (Value | undefined)[]) => Value;

/** Where the walker finds the content of other cells and the functions of this add-in. */
export interface Surroundings {
  cell(place: Place): Cell;
  /** A rectangle that was read before; `read` reads it. */
  range?(from: Place, to: Place, read: () => Cell[][]): Cell[][];
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
      if (!work || whole.arguments.length < (leastTerms[whole.name] ?? 1)) throw new Unknown(whole.name);
      const value = work(whole.arguments.map((term) => () => (term ? asTerm(term, around) : null)));
      return isOne(value) ? value[0][0] : value;
    }
    case "pen":
      return around.pen(whole.name)(...whole.arguments.map((term) => term && evaluate(term, around)));
    case "verbatim":
      throw new Unknown(whole.text);
  }
}

/** More cells than this in one range are left to the spreadsheet. */
const LARGEST_RANGE = 100_000;

/** A cell named as a term is a range of one to a function: SUM passes over the text in it. */
function asTerm(term: Expression, around: Surroundings): Value {
  const value = evaluate(term, around);
  return term.kind === "cell" ? [[single(value)]] : value;
}

const isOne = (value: Value): value is Cell[][] =>
  Array.isArray(value) && value.length === 1 && value[0].length === 1;

function rectangle(from: Place, to: Place, around: Surroundings): Cell[][] {
  if ((to.row - from.row + 1) * (to.column - from.column + 1) > LARGEST_RANGE) throw new Unknown("range");
  const read = () => {
    const rows: Cell[][] = [];
    for (let row = from.row; row <= to.row; row++) {
      const cells: Cell[] = [];
      for (let column = from.column; column <= to.column; column++)
        cells.push(around.cell({ sheet: from.sheet, row, column }));
      rows.push(cells);
    }
    return rows;
  };
  return around.range ? around.range(from, to, read) : read();
}

function operation(operator: Operator, left: Cell, right: Cell): Cell {
  if (!isError(left) && !isError(right)) {
    if (operator === "&") return `${toText(left) as string}${toText(right) as string}`;
    if (["=", "<>", "<", "<=", ">", ">="].includes(operator)) return compare(operator, left, right);
  } else if (/[&=<>]/.test(operator)) return isError(left) ? left : right;
  const a = toNumber(left);
  if (isError(a)) return a;
  const b = toNumber(right);
  if (isError(b)) return b;
  if (operator === "/" && b === 0) return { error: "#DIV/0!" };
  if (operator === "+" || operator === "-") return sum(a, operator === "+" ? b : -b);
  const result = { "*": a * b, "/": a / b, "^": a ** b }[operator as "*"];
  return Number.isFinite(result) ? result : { error: "#NUM!" };
}

/** Spreadsheets show 15 digits and take a rest beyond them for nothing, so that 0.1 + 0.2 - 0.3 is 0. */
const NOISE = 2 ** -48;

function sum(a: number, b: number): Cell {
  const whole = a + b;
  if (!Number.isFinite(whole)) return { error: "#NUM!" };
  return Math.abs(whole) < NOISE * Math.max(Math.abs(a), Math.abs(b)) ? 0 : whole;
}

/** Comparing as spreadsheets do: numbers before texts before truth values, texts without regard to case. */
function compare(operator: Operator, left: Cell, right: Cell): boolean {
  const a = standIn(left, right);
  const b = standIn(right, left);
  const same = typeof a === "number" && typeof b === "number" && sum(a, -b) === 0;
  const order = rank(a) - rank(b) || (same ? 0 : a < b ? -1 : a > b ? 1 : 0);
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
