import { isError } from "../units/cell";
import { asksPen, parts } from "./expression";
import { type Area } from "./precedents";
import { isWithin, type Replaced } from "./replaced";
import { readFormula } from "./upstream";
import { type WorkbookContent } from "./workbook-content";

/** What repairing an area rewrites, and which functions its formulas ask for that this add-in does not have. */
export interface Repair {
  cells: Replaced[];
  unknown: string[];
}

/** Texts and quoted names stay; before the name of a function of ours goes what a host or a file put there. */
const tokens =
  /("(?:[^"]|"")*")|(?:'(?:[^']|'')*'|[\p{L}\p{N}_.[\]\\:-]+)!(?=(?:_xl\w+[._])*PEN[._][A-Z])|('(?:[^']|'')*')|(?<![\p{L}\p{N}_.])(?:_xlfn\.|_xlws\.|_xludf\.|_xldudf_|@)*PEN[._]([A-Z][A-Z0-9_.]*)(?=\()|_xlfn\.|_xlws\./giu;

/**
 * A formula with the functions of this add-in under their own names: without the prefixes of a stored file, of the
 * name of an add-in's file, or of another workbook. A name that is not `known` stays as it is written.
 */
export function ownNames(formula: string, known: (name: string) => boolean): string {
  return formula.replace(tokens, (whole: string, text?: string, quoted?: string, name?: string) => {
    if (text !== undefined || quoted !== undefined) return whole;
    if (name === undefined) return "";
    return known(name.toUpperCase()) ? `PEN.${name.toUpperCase()}` : whole;
  });
}

/**
 * The formulas of an area to be entered again: those that ask this add-in and show #NAME?, and those that hold a
 * prefix which hosts and files put before a function. Everything else stays.
 */
export function repairing(content: WorkbookContent, area: Area, known: (name: string) => boolean): Repair {
  const unknown = new Set<string>();
  const cells = content.sheets.flatMap(({ name: sheet, cells: all }) =>
    all.flatMap((cell): Replaced[] => {
      const { row, column, formula, value } = cell;
      if (formula === undefined || !isWithin({ sheet, row, column }, area)) return [];
      const own = ownNames(formula, known);
      const says = readFormula(own);
      if (!says) return [];
      const asked = [...parts(says)].flatMap((part) => (part.kind === "pen" ? [part.name] : []));
      for (const name of asked) if (!known(name)) unknown.add(name);
      const lost = isError(value) && value.error === "#NAME?" && asksPen(says) && asked.every(known);
      if (own === formula && !lost) return [];
      return [{ sheet, row, column, now: formula, says }];
    }),
  );
  return { cells, unknown: [...unknown] };
}
