import { type Cell } from "../units/cell";
import { type Place } from "./address";

/** The operators of a sheet's formulas. */
export type Operator = "+" | "-" | "*" | "/" | "^" | "&" | "=" | "<>" | "<" | "<=" | ">" | ">=";

/**
 * What one cell of a document says. Its value, its live formula and its plain formula are walked from it
 * (evaluate.ts, formula.ts, plain.ts), so the three cannot part.
 */
export type Expression =
  | { kind: "constant"; value: Cell }
  | { kind: "cell"; place: Place }
  | { kind: "range"; from: Place; to: Place }
  | { kind: "operation"; operator: Operator; left: Expression; right: Expression }
  | { kind: "negative"; of: Expression }
  | { kind: "percent"; of: Expression }
  | { kind: "call"; name: string; arguments: (Expression | undefined)[] }
  | { kind: "pen"; name: string; arguments: (Expression | undefined)[] }
  | { kind: "verbatim"; text: string };

/** What may stand where an expression is wanted: a number, text or truth value is itself. */
export type Term = Expression | number | string | boolean;

/** A term as an expression. */
export function expression(term: Term): Expression {
  return typeof term === "object" ? term : { kind: "constant", value: term };
}

/** What a cell may be given: a term, or null for a blank cell. */
export type Content = Term | null;

/** A cell's content as an expression. */
export const saying = (content: Content): Expression => (content === null ? blank : expression(content));

/** A blank cell. */
export const blank: Expression = { kind: "constant", value: null };

/** A cell of this sheet, or of another when the place names it. */
export const cell = (place: Place): Expression => ({ kind: "cell", place });

/** A rectangle of cells; both corners lie on the sheet that `from` names. */
export const range = (from: Place, to: Place): Expression => ({ kind: "range", from, to });

/** Two terms joined by an operator. */
export const operate = (left: Term, operator: Operator, right: Term): Expression => ({
  kind: "operation",
  operator,
  left: expression(left),
  right: expression(right),
});

const joined =
  (operator: Operator) =>
  (first: Term, ...others: Term[]) =>
    others.reduce<Expression>((left, right) => operate(left, operator, right), expression(first));

/** The sum of the terms. */
export const plus = joined("+");
/** The first term less the others. */
export const minus = joined("-");
/** The product of the terms. */
export const times = joined("*");
/** The first term divided by the others. */
export const over = joined("/");
/** The terms as one text. */
export const text = joined("&");

/** A function of the spreadsheet, by its English name. */
export const call = (name: string, ...terms: (Term | undefined)[]): Expression => ({
  kind: "call",
  name,
  arguments: terms.map((term) => (term === undefined ? undefined : expression(term))),
});

/** A worksheet function of this add-in, by its name without the namespace. */
export const pen = (name: string, ...terms: (Term | undefined)[]): Expression => ({
  kind: "pen",
  name,
  arguments: terms.map((term) => (term === undefined ? undefined : expression(term))),
});

/** IF, with its three terms. */
export const when = (test: Term, then: Term, otherwise: Term) => call("IF", test, then, otherwise);

/** A cell's number, where a blank cell or a text counts as 0 in every host. */
export const number = (term: Term) => call("N", term);

/** Every expression inside this one, itself first. */
export function* parts(whole: Expression): Generator<Expression> {
  yield whole;
  if (whole.kind === "operation") {
    yield* parts(whole.left);
    yield* parts(whole.right);
  } else if (whole.kind === "negative" || whole.kind === "percent") yield* parts(whole.of);
  else if (whole.kind === "call" || whole.kind === "pen")
    for (const argument of whole.arguments) if (argument) yield* parts(argument);
}

/** True where the expression asks a function of this add-in. */
export function asksPen(whole: Expression): boolean {
  for (const part of parts(whole)) if (part.kind === "pen") return true;
  return false;
}
