import { cellsByPlace } from "./cells-by-place";
import { evaluate, Unknown, type PenFunction, type Surroundings } from "./evaluate";
import { asksPen, parts, type Expression } from "./expression";
import { literal, liveFormula } from "./formula";
import { markFixed } from "./fixed-cells";
import { sheetFunctions } from "./sheet-functions";
import { precedents, type Area } from "./precedents";
import { readFormula, upstream, type Asked, type Located } from "./upstream";
import { single, type Value } from "./value";
import { type CellData, type WorkbookContent } from "./workbook-content";

/** A workbook without functions of this add-in, and the cells that are fixed in it. */
export interface PlainForm {
  content: WorkbookContent;
  /** In the order of the workbook. */
  fixed: Located[];
}

/** What of a workbook is made plain beside the rule. */
export interface PlainScope {
  /** Whether a formula may be touched; without it, each may. */
  only?: (cell: Located) => boolean;
  /**
   * Whether cells will be gone from the copy. A formula that looks at one of them becomes what it shows, as does one
   * of which only a spreadsheet can tell what it looks at.
   */
  gone?: (area: Area) => boolean;
}

/**
 * The same expression with every function of this add-in replaced by what it gives now; everything else stays live.
 * Throws `Unknown` where an argument holds what only a spreadsheet can work out.
 */
export function plainExpression(whole: Expression, around: Surroundings): Expression {
  const plain = (part: Expression): Expression => plainExpression(part, around);
  switch (whole.kind) {
    case "pen":
      return written(evaluate(whole, around));
    case "operation":
      return { ...whole, left: plain(whole.left), right: plain(whole.right) };
    case "negative":
    case "percent":
      return { ...whole, of: plain(whole.of) };
    case "call":
      return picksResult(whole)
        ? written(evaluate(whole, around))
        : { ...whole, arguments: whole.arguments.map((term) => term && plain(term)) };
    default:
      return whole;
  }
}

/** True of a call such as INDEX(PEN.LOADS(…),2): one count of several, which needs no list in the formula. */
function picksResult(whole: Expression & { kind: "call" }): boolean {
  const settled = whole.arguments.every(
    (term) => term && (/^(?:pen|constant)$/.test(term.kind) || countsRows(term)),
  );
  return settled && asksPen(whole) && whole.name in sheetFunctions;
}

/** True of a count of rows, which says the same whatever stands in them. */
const countsRows = (term: Expression) =>
  term.kind === "call" && term.name === "ROWS" && term.arguments.every((rows) => rows?.kind === "range");

/** A value as a formula can hold it: several as an array constant. */
function written(value: Value): Expression {
  if (!Array.isArray(value)) return { kind: "constant", value };
  if (value.length === 1 && value[0].length === 1) return { kind: "constant", value: value[0][0] };
  return { kind: "verbatim", text: `{${value.map((row) => row.map(literal).join(",")).join(";")}}` };
}

/**
 * A copy of a workbook for people without this add-in. Every call of its functions becomes its value, worked out
 * from what the cells show; where that cannot be done the whole cell becomes what it shows. Each cell without a
 * formula from which such a value can be reached, over any number of formulas and sheets, is fixed: it loses its
 * input look and what it accepts, and carries a note. What stays live is consistent with what is fixed. Keys of
 * fields and of the sheet stay, so the copy can be made live again. A result that fills several cells keeps what
 * its other cells show.
 */
export function plainForm(
  content: WorkbookContent,
  pen: (name: string) => PenFunction,
  { only = () => true, gone }: PlainScope = {},
): PlainForm {
  const located = content.sheets.flatMap(({ name, cells }) =>
    cells.map((cell): Located => ({ ...cell, sheet: name })),
  );
  const book = cellsByPlace(located);
  const asked: Asked[] = [];

  function plainCell(cell: CellData, sheet: string): CellData {
    const asks = cell.formula !== undefined && /pen[._]/i.test(cell.formula);
    if (!cell.formula || !(asks || gone) || !only({ ...cell, sheet })) return cell;
    const says = readFormula(cell.formula);
    const cut = gone !== undefined && looksAt(says, sheet, gone);
    if (says && !cut && !asksPen(says)) return cell;
    const around: Surroundings = {
      pen,
      cell: (place) => book.at(place.sheet ?? sheet, place)?.value ?? null,
    };
    const plain = says && !cut ? attempt(says, around) : undefined;
    const frozen = says && plain ? [...parts(says)].filter(({ kind }) => kind === "pen") : [says];
    asked.push(...frozen.map((part) => ({ says: part, sheet })));
    const shown = { ...cell };
    delete shown.formula;
    if (plain?.kind === "constant") return { ...shown, value: plain.value };
    return plain ? { ...cell, formula: liveFormula(plain) } : shown;
  }

  const sheets = content.sheets.map((sheet) => ({
    ...sheet,
    cells: sheet.cells.map((cell) => plainCell(cell, sheet.name)),
  }));
  const reached = upstream(asked, located, book);
  const fixed = located.filter((cell) => reached.has(cell));
  return { content: { ...content, sheets: sheets.map((sheet) => markFixed(sheet, fixed)) }, fixed };
}

/** True where an expression looks at cells that are gone, or where nobody can tell what it looks at. */
function looksAt(says: Expression | undefined, sheet: string, gone: (area: Area) => boolean): boolean {
  const areas = says ? precedents(says, sheet) : "anything";
  return areas === "anything" || areas.some(gone);
}

/** The plain expression, with one value for a result of several; undefined where only a spreadsheet can tell. */
function attempt(says: Expression, around: Surroundings): Expression | undefined {
  try {
    if (says.kind === "pen") return { kind: "constant", value: single(evaluate(says, around)) };
    return plainExpression(says, around);
  } catch (reason) {
    if (reason instanceof Unknown) return undefined;
    throw reason;
  }
}
