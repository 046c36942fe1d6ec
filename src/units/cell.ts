/** What a cell of a sheet can hold as an error: the spreadsheet's own code, and why. */
export interface CellError {
  error: "#VALUE!" | "#N/A" | "#DIV/0!" | "#REF!" | "#NAME?" | "#NUM!" | "#NULL!";
  message?: string;
}

/** What a cell of a sheet can hold. A blank cell is null. */
export type Cell = number | string | boolean | null | CellError;

/** True for an error value; an error is the only object that a cell holds. */
export function isError(cell: unknown): cell is CellError {
  return typeof cell === "object" && cell !== null && "error" in cell;
}

/** One value, or a rectangle of them where a range or an array result stands. */
export type Value = Cell | Cell[][];
