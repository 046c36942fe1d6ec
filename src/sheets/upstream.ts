import { type CellsByPlace } from "./cells-by-place";
import { type Expression } from "./expression";
import { parseFormula } from "./parse";
import { precedents } from "./precedents";
import { type CellData } from "./workbook-content";

/** A cell that knows its sheet. */
export type Located = CellData & { sheet: string };

/** An expression and the sheet it stands on; absent where the text of a formula could not be read. */
export interface Asked {
  says: Expression | undefined;
  sheet: string;
}

/** A formula as an expression, or undefined where it cannot be read. */
export function readFormula(formula: string): Expression | undefined {
  try {
    return parseFormula(formula);
  } catch {
    return undefined;
  }
}

/**
 * The cells without a formula from which the asked expressions can be reached, over formulas, ranges and sheets.
 * Where only a spreadsheet can tell what an expression looks at, every input and every typed number counts.
 */
export function upstream(asked: Asked[], cells: Located[], book: CellsByPlace<Located>): Set<Located> {
  const reached = new Set<Located>();
  const seen = new Set<Located>();
  for (const waiting = [...asked]; waiting.length;) {
    const { says, sheet } = waiting.pop()!;
    const areas = says ? precedents(says, sheet) : "anything";
    const found =
      areas === "anything"
        ? cells.filter(({ input, value, formula }) => input || formula || typeof value === "number")
        : areas.flatMap((area) => book.within(area));
    for (const cell of found) {
      if (seen.has(cell)) continue;
      seen.add(cell);
      if (cell.formula) waiting.push({ says: readFormula(cell.formula), sheet: cell.sheet });
      else reached.add(cell);
    }
  }
  return reached;
}
