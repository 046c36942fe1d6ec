import { isError, type Cell, type CellError, type Value } from "../units/cell";

export { type Value };

/** The one value of a value: a rectangle stands for its top left cell. */
export function single(value: Value): Cell {
  return Array.isArray(value) ? (value[0]?.[0] ?? null) : value;
}

/** A cell as a number, the way arithmetic reads it: blank is 0, a text that is no number is #VALUE!. */
export function toNumber(value: Cell): number | CellError {
  if (isError(value)) return value;
  if (typeof value === "string") {
    const read = value.trim() === "" ? NaN : Number(value);
    return Number.isFinite(read) ? read : { error: "#VALUE!" };
  }
  return Number(value);
}

/** A cell as a text, the way joining reads it: at most 15 significant digits. */
export function toText(value: Cell): string | CellError {
  if (isError(value)) return value;
  if (value === null) return "";
  if (typeof value === "boolean") return value ? "TRUE" : "FALSE";
  return typeof value === "number" ? String(Number(value.toPrecision(15))) : value;
}
