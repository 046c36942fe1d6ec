import { isError, type Cell, type CellError, type Value } from "../src/units/cell";
import { notAllowed, Refusal, noAnswer } from "../src/units/refusal";
import { messages } from "./messages";

/** A worksheet function on plain data: what the cells hold in, what they show out. It throws nothing. */
export type Call = (...terms: (Value | undefined)[]) => Value;

/** An error in a cell that an argument points at: it becomes the result as it is. */
class Passed extends Error {
  constructor(readonly cell: CellError) {
    super(cell.message);
  }
}

const CODES: readonly string[] = ["#VALUE!", "#N/A", "#DIV/0!", "#REF!", "#NAME?", "#NUM!", "#NULL!"];

/** The call whose refusals are error values; so is a result that is no finite number. */
export function guarded(work: Call): Call {
  return (...terms) => {
    try {
      return finite(work(...terms));
    } catch (error) {
      return errorValue(error);
    }
  };
}

/**
 * What a cell holds, whichever way the host sends it: blank, "", null, left out and 0 are all 0. Throws an error value
 * on to the result, and refuses what is neither number nor text with the given message.
 */
export function content(cell: unknown, otherwise: string): number | string {
  if (typeof cell === "number" && Number.isFinite(cell)) return cell;
  if (cell === null || cell === undefined) return 0;
  if (typeof cell === "string") {
    const text = cell.trim();
    if (CODES.includes(text)) throw new Passed({ error: text as CellError["error"] });
    return text === "" ? 0 : text;
  }
  const passed = errorIn(cell);
  if (passed) throw new Passed(passed);
  throw notAllowed(otherwise);
}

/** The cells of an argument in reading order. */
export function cellsOf(term: unknown): unknown[] {
  return Array.isArray(term) ? term.flat() : [term];
}

/** The one cell of an argument. Refuses a range of more. */
export function onlyCell(term: unknown): unknown {
  const cells = cellsOf(term);
  if (cells.length > 1) throw notAllowed(messages.oneCell(cells.length));
  return cells[0];
}

/** The results, one for each cell of an argument in reading order, in the argument's shape. */
export function inShapeOf(term: unknown, results: readonly Cell[]): Value {
  if (!Array.isArray(term)) return results[0];
  let next = 0;
  return term.map((row) => (Array.isArray(row) ? row : [row]).map(() => results[next++]));
}

/** One result for each cell of an argument, in its shape; a refusal or an error stays in its own cell. */
export function mapCells(term: unknown, result: (cell: unknown) => Cell): Value {
  const one = (cell: unknown): Cell => {
    try {
      return finite(result(cell)) as Cell;
    } catch (error) {
      return errorValue(error);
    }
  };
  if (!Array.isArray(term)) return one(term);
  return term.map((row) => (Array.isArray(row) ? row.map(one) : [one(row)]));
}

function finite(value: Value): Value {
  if (typeof value === "number" && !Number.isFinite(value)) throw noAnswer(messages.noResult);
  return value;
}

function errorValue(error: unknown): CellError {
  if (error instanceof Passed) return error.cell;
  if (error instanceof Refusal)
    return { error: error.kind === "value" ? "#VALUE!" : "#N/A", message: error.message };
  return { error: "#N/A", message: messages.unexpected };
}

/** An error value as the host or this add-in sends it: its code, and its message where it has one. */
function errorIn(cell: unknown): CellError | undefined {
  const { code, error, message } = cell as { code?: unknown; error?: unknown; message?: unknown };
  const named = isError(cell) ? error : code;
  if (typeof named !== "string") return undefined;
  const known = (CODES.includes(named) ? named : "#VALUE!") as CellError["error"];
  return typeof message === "string" && message ? { error: known, message } : { error: known };
}
