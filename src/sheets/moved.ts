import { type Place } from "./address";
import { parts, type Expression } from "./expression";

/**
 * An expression as a spreadsheet copies it so many rows down: its cells and ranges move along, fixed rows stay. Undefined
 * where it holds what only a spreadsheet can read.
 */
export function movedDown(whole: Expression, rows: number): Expression | undefined {
  for (const part of parts(whole)) if (part.kind === "verbatim") return undefined;
  return moved(whole, (place) => (place.fixedRow ? place : { ...place, row: place.row + rows }));
}

/** An expression whose cells and ranges stay on their rows when it is copied. */
export const onFixedRows = (whole: Expression) => moved(whole, (place) => ({ ...place, fixedRow: true }));

function moved(whole: Expression, to: (place: Place) => Place): Expression {
  const inner = (part: Expression) => moved(part, to);
  switch (whole.kind) {
    case "cell":
      return { ...whole, place: to(whole.place) };
    case "range":
      return { ...whole, from: to(whole.from), to: to(whole.to) };
    case "operation":
      return { ...whole, left: inner(whole.left), right: inner(whole.right) };
    case "negative":
    case "percent":
      return { ...whole, of: inner(whole.of) };
    case "call":
    case "pen":
      return { ...whole, arguments: whole.arguments.map((term) => term && inner(term)) };
    default:
      return whole;
  }
}
