import { isError, type Cell } from "../units/cell";
import { equal } from "../units/rounding";
import { cellsByPlace } from "./cells-by-place";
import { evaluate, Unknown, type PenFunction, type Surroundings } from "./evaluate";
import { asksPen, type Content, type Expression } from "./expression";
import { plainForm } from "./plain";
import { type Area } from "./precedents";
import { isWithin, type Replaced } from "./replaced";
import { readFormula, type Located } from "./upstream";
import { toText, type Value } from "./value";
import { type CellData, type WorkbookContent } from "./workbook-content";

/**
 * The cells that freezing an area rewrites: each of its formulas that asks a function of this add-in, with every call
 * replaced by its value, and every cell without a formula, on whatever sheet, from which such a call can be reached,
 * marked as fixed. Formulas outside of the area stay as they are. A result that fills several cells becomes their
 * values.
 */
export function freezing(
  content: WorkbookContent,
  area: Area,
  pen: (name: string) => PenFunction,
): Replaced[] {
  const only = (cell: Located) => isWithin(cell, area);
  const plain = plainForm(content, pen, { only });
  const located = content.sheets.flatMap(({ name, cells }) =>
    cells.map((cell): Located => ({ ...cell, sheet: name })),
  );
  const book = cellsByPlace(located);
  const after = cellsByPlace(
    plain.content.sheets.flatMap(({ name, cells }) =>
      cells.map((cell): Located => ({ ...cell, sheet: name })),
    ),
  );
  const frozen = located.flatMap((cell): Replaced[] => {
    const then = after.at(cell.sheet, cell)!;
    if (cell.formula === undefined || !only(cell) || then.formula === cell.formula) return [];
    const around: Surroundings = {
      pen,
      cell: (place) => book.at(place.sheet ?? cell.sheet, place)?.value ?? null,
    };
    return [replaced(cell, contentOf(then)), ...spilled(cell, around, book.at)];
  });
  const rewritten = new Set(frozen.map(place));
  const fixed = plain.fixed
    .filter((cell) => !rewritten.has(place(cell)))
    .map((cell): Replaced => ({ ...replaced(cell, typed(cell.value)), style: "fixed" }));
  return [...frozen, ...fixed];
}

const place = ({ sheet, row, column }: { sheet: string; row: number; column: number }) => `${row},${column},${sheet}`; // prettier-ignore

const replaced = (cell: Located, says: Content): Replaced => ({
  sheet: cell.sheet,
  row: cell.row,
  column: cell.column,
  now: cell.formula ?? said(cell.value),
  says,
});

/** A value as a sheet writes it. */
export const said = (value: Cell): string => (isError(value) ? value.error : (toText(value) as string));

const contentOf = ({ formula, value }: CellData): Content =>
  (formula === undefined ? undefined : readFormula(formula)) ?? typed(value);

const typed = (value: Cell): Expression => ({ kind: "constant", value });

/** The other cells that a result fills, with what it gave them: those that show it now and say nothing themselves. */
function spilled(
  cell: Located,
  around: Surroundings,
  at: (sheet: string, place: { row: number; column: number }) => Located | undefined,
): Replaced[] {
  const says = readFormula(cell.formula!);
  const value: Value = says && asksPen(says) ? valueOf(says, around) : null;
  if (!Array.isArray(value)) return [];
  return value.flatMap((row, down) =>
    row.flatMap((filled, across) => {
      if (down + across === 0) return [];
      const found = at(cell.sheet, { row: cell.row + down, column: cell.column + across });
      const shows = found !== undefined && found.formula === undefined && alike(found.value, filled);
      return shows ? [replaced(found, typed(found.value))] : [];
    }),
  );
}

function valueOf(says: Expression, around: Surroundings): Value {
  try {
    return evaluate(says, around);
  } catch (reason) {
    if (reason instanceof Unknown) return null;
    throw reason;
  }
}

const alike = (one: Cell, other: Cell) =>
  typeof one === "number" && typeof other === "number" ? equal(one, other) : said(one) === said(other);
