import { isError, type Cell, type CellError, type Value } from "../src/units/cell";
import { calls } from "./calls";

/** A function's one result as the spreadsheet takes it; an error is thrown, as its runtime wants. */
export function oneResult(id: string, ...terms: unknown[]): unknown {
  const result = calls[id](...(terms as Value[]));
  const value = Array.isArray(result) ? result[0][0] : result;
  if (isError(value)) throw hostError(value);
  return value;
}

/** A function's rectangle of results; errors stand in their own cells, one that is the whole result is thrown. */
export function manyResults(id: string, ...terms: unknown[]): unknown[][] {
  const result = calls[id](...(terms as Value[]));
  if (isError(result)) throw hostError(result);
  const rows: Cell[][] = Array.isArray(result) ? result : [[result]];
  return rows.some((row) => row.some(isError)) ? rows.map((row) => row.map(hostCell)) : rows;
}

const hostCell = (cell: Cell): unknown => (isError(cell) ? hostError(cell) : cell);

/** The error as an object of the host's. Only #VALUE! and #N/A carry a message there. */
function hostError({ error, message }: CellError): CustomFunctions.Error {
  const code = error as CustomFunctions.ErrorCode;
  return error === "#VALUE!" || error === "#N/A"
    ? new CustomFunctions.Error(code, message)
    : new CustomFunctions.Error(code);
}
