import { type Cell } from "../../units/cell";
import { feetInches } from "../../units/feet-inches";
import { address, type Place } from "../address";
import { evaluate } from "../evaluate";
import { call, cell, operate, pen, text, times, when, type Expression, type Term } from "../expression";
import { blankUnless, isNumber, sum } from "../formula-terms";
import { type KeyedCell } from "../keyed";
import { messages } from "../messages";
import { single } from "../value";
import { templateFields, type TemplateField } from "./field-names";
import { nearestField, templateCells, type Reference } from "./reading";

/** An estimate that a template can be filled from: its sheet's name, and where its keyed cells stand. */
export interface FilledFrom {
  name: string;
  cells: Readonly<Record<string, Place>>;
}

/** A cell of the filled copy, and what it then says. */
export interface FilledCell {
  row: number;
  column: number;
  says: Expression;
}

/** Something in a template that could not be filled, in a sentence that begins with its address. */
export interface Unfilled {
  address: string;
  sentence: string;
}

/** What filling a template comes to. Cells that name something unknown keep their text and are listed. */
export interface Filled {
  cells: FilledCell[];
  unfilled: Unfilled[];
}

/**
 * A field of an estimate as an expression that points at its sheet; nothing where that estimate has no such cell. A
 * blank input stays blank and does not turn into 0.
 */
export function fieldExpression(field: TemplateField, from: FilledFrom): Expression | undefined {
  if (field.from === "sheet name") return { kind: "constant", value: from.name };
  const found = field.keys.filter((key) => key in from.cells);
  const [first, second] = found.map((key) => {
    const { row, column } = from.cells[key];
    return cell({ sheet: from.name, row, column });
  });
  if (!first) return undefined;
  const all = () =>
    found.map((key) => cell({ sheet: from.name, row: from.cells[key].row, column: from.cells[key].column }));
  switch (field.from) {
    case "sum":
      return call("SUM", ...all());
    case "filled":
      return sum(all().map((one) => call("COUNT", one)));
    case "product":
      return second && times(first, second);
    case "feet and inches":
      return blankUnless(isNumber(first), pen("FEET_INCHES", first));
    case "cell":
      return when(operate(first, "=", ""), "", first);
  }
}

/** What a field shows, from the keyed cells of an estimate as they were last read; null where it has no such cell. */
export function fieldValue(
  field: TemplateField,
  from: FilledFrom & { cells: Readonly<Record<string, KeyedCell>> },
): Cell {
  const says = fieldExpression(field, from);
  if (!says) return null;
  const at = new Map(Object.values(from.cells).map((one) => [`${one.row},${one.column}`, one.value]));
  const value = evaluate(says, {
    cell: ({ row, column }) => at.get(`${row},${column}`) ?? null,
    pen: () => (feet) => feetInches(feet as number),
  });
  return single(value);
}

/** The same in the middle of a sentence: money with its cents, other measures to two places. No format of the host's language. */
function inSentence(says: Expression, { reading }: TemplateField): Expression {
  if (reading === "money") return when(isNumber(says), call("FIXED", says, 2), says);
  if (reading === "number") return when(isNumber(says), call("ROUND", says, 2), says);
  return says;
}

/** Fills the cells of a template from estimates; braces that name none mean `present`. */
export function fillTemplate(
  formulas: readonly (readonly Cell[])[],
  present: FilledFrom | undefined,
  estimates: readonly FilledFrom[],
): Filled {
  const filled: Filled = { cells: [], unfilled: [] };
  for (const { row, column, pieces } of templateCells(formulas)) {
    const at = address({ row, column });
    const terms = pieces.map((piece) => {
      if (typeof piece === "string") return piece;
      const found = lookUp(piece, present, estimates);
      if (typeof found === "string") {
        filled.unfilled.push({ address: at, sentence: `${at}: ${found}` });
        return undefined;
      }
      return pieces.length === 1 ? found.says : inSentence(found.says, found.field);
    });
    if (!terms.includes(undefined)) filled.cells.push({ row, column, says: joined(terms as Term[]) });
  }
  return filled;
} // prettier-ignore

const joined = ([first, ...others]: Term[]) => text(first, ...others);

function lookUp(
  { written, name, estimate }: Reference,
  present: FilledFrom | undefined,
  estimates: readonly FilledFrom[],
): { field: TemplateField; says: Expression } | string {
  const field = templateFields.get(name);
  if (!field) return messages.template.unknown(written, nearestField(name));
  const from =
    estimate === undefined
      ? present
      : estimates.find((one) => one.name.toLowerCase() === estimate.toLowerCase());
  if (!from)
    return estimate === undefined ? messages.template.noEstimate : messages.template.notThere(estimate);
  const says = fieldExpression(field, from);
  return says ? { field, says } : messages.template.lacks(from.name, written);
}
