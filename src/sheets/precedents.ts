import { columnNumber } from "./address";
import { parts, type Expression } from "./expression";
import { COLUMNS, ROWS } from "./notation";

/** A rectangle of cells on a named sheet, counted from 0, the last row and column included. */
export interface Area {
  sheet: string;
  top: number;
  left: number;
  bottom: number;
  right: number;
}

const wholeColumnsOrRows =
  /^(?:(?:'((?:[^']|'')+)'|([^!':[]+))!)?\$?(?:([A-Z]{1,3}):\$?([A-Z]{1,3})|(\d+):\$?(\d+))$/i;

/**
 * The cells that an expression on `sheet` looks at, each area once, or "anything" where only a spreadsheet can tell (a name, a
 * table, a function that makes addresses).
 */
export function precedents(whole: Expression, sheet: string): Area[] | "anything" {
  const found = new Map<string, Area>();
  const add = (area: Area) =>
    found.set([area.sheet, area.top, area.left, area.bottom, area.right].join("!"), area);
  for (const part of parts(whole)) {
    if (part.kind === "cell" || part.kind === "range") {
      const [from, to] = part.kind === "cell" ? [part.place, part.place] : [part.from, part.to];
      const on = from.sheet ?? sheet;
      add({ sheet: on, top: from.row, left: from.column, bottom: to.row, right: to.column });
    } else if (part.kind === "verbatim") {
      if (part.text.startsWith("{")) continue;
      const area = stripe(part.text, sheet);
      if (!area) return "anything";
      add(area);
    } else if (part.kind === "call" && (part.name === "INDIRECT" || part.name === "OFFSET"))
      return "anything";
  }
  return [...found.values()];
}

/** Whole columns or whole rows, as they are written. */
function stripe(text: string, sheet: string): Area | undefined {
  const found = wholeColumnsOrRows.exec(text);
  if (!found) return undefined;
  const on = found[1]?.replace(/''/g, "'") ?? found[2] ?? sheet;
  const ends = found[3]
    ? [found[3], found[4]].map(columnNumber)
    : [found[5], found[6]].map((row) => Number(row) - 1);
  const [first, last] = ends.sort((a, b) => a - b);
  return found[3]
    ? { sheet: on, top: 0, left: first, bottom: ROWS - 1, right: last }
    : { sheet: on, top: first, left: 0, bottom: last, right: COLUMNS - 1 };
}
