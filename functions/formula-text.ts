import { isError, type Cell, type Value } from "../src/units/cell";

/** The formula of a call as a person enters it: ranges as array constants, arguments left out at the end dropped. */
export function formulaText(id: string, terms: readonly (Value | undefined)[]): string {
  return `=PEN.${id}(${terms.map(termText).join(", ")})`;
}

function termText(term: Value | undefined): string {
  if (!Array.isArray(term)) return cellText(term ?? null);
  const rows = term.map((row) => row.map(cellText).join(","));
  return rows.length === 1 && term[0].length === 1 ? rows[0] : `{${rows.join(";")}}`;
}

function cellText(cell: Cell): string {
  if (cell === null) return "";
  if (isError(cell)) return cell.error;
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "number" ? String(cell) : `"${cell.replaceAll('"', '""')}"`;
}

/** A result as a cell shows it: at most four decimals, an error by its code. */
export function shownResult(cell: Cell): string {
  if (isError(cell)) return cell.error;
  return typeof cell === "number" ? String(Number(cell.toFixed(4))) : String(cell ?? "");
}
