import { type Expression } from "../../sheets/expression";
import { liveFormula } from "../../sheets/formula";
import { isError, type Cell } from "../../units/cell";

/** What Excel takes as the content of a cell: null leaves the cell, an empty text clears it. */
export type Entry = number | string | boolean | null;

/** A text that Excel can only read as text: a letter first, no digit (so no date or number), no truth value. */
const plainText = /^(?!(?:true|false)$)\p{L}\P{Nd}*$/iu;

/** A cell's content as Excel takes it. A text stays text, whatever it looks like: in doubt it gets Excel's own mark for that, an apostrophe. */
export function entryOf(value: Cell): Entry {
  if (isError(value)) return value.error;
  return typeof value === "string" && value !== "" && !plainText.test(value) ? `'${value}` : value;
}

/** What Excel is given for an expression: its content where it is a constant, else its live formula. */
export function entryFor(says: Expression): Entry {
  return says.kind === "constant" ? entryOf(says.value) : liveFormula(says);
}

/** What brings a cell back that Excel showed so. A formula differs from its value; a text that only looks like one does not. */
export function entryAgain(value: Entry, formula: Entry): Entry {
  return value === formula && typeof value === "string" ? entryOf(value) : formula;
}

const errorCodes = /^#(?:VALUE!|N\/A|DIV\/0!|REF!|NAME\?|NUM!|NULL!)$/;

/** A value that Excel reports, as a cell of ours: Excel writes a blank as an empty text and an error as its code. */
export function cellOf(value: Entry): Cell {
  if (value === "") return null;
  return typeof value === "string" && errorCodes.test(value) ? ({ error: value } as Cell) : value;
}
