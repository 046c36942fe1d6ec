import { type Place } from "./address";
import { type Expression } from "./expression";

/** The most characters that a spreadsheet takes as one formula. */
export const LONGEST_FORMULA = 8192;
/** Rows and columns of a sheet. */
export const ROWS = 1_048_576;
export const COLUMNS = 16_384;
/** How deep brackets may nest inside one another. */
export const DEEPEST = 100;

/** The signs of a formula's English notation, each read from where the last one ended. */
export const patterns = {
  blanks: /[ \t\r\n]*/y,
  number: /(?:\d+\.?\d*|\.\d+)(?:E[+-]?\d+)?/iy,
  text: /"((?:[^"]|"")*)"/y,
  error: /#(?:VALUE!|N\/A|DIV\/0!|REF!|NAME\?|NUM!|NULL!)/iy,
  operator: /<=|>=|<>|[-+*/^&=<>]/y,
  penCall: /(?:PEN\.|_xldudf_PEN[._])([A-Z][A-Z0-9_.]*)\(/iy,
  call: /(?:_xlfn\.|_xlws\.)*([\p{L}_\\][\p{L}\p{N}_.]*)\(/iuy,
  sheet: /(?:'((?:[^']|'')+)'|([\p{L}_][\p{L}\p{N}_.]*))!/uy,
  sheets: /(?:\[[^\]"]*\])?[\p{L}_][\p{L}\p{N}_.]*(?::[\p{L}_][\p{L}\p{N}_.]*)?!/uy,
  cell: /(\$?)([A-Z]{1,3})(\$?)(\d{1,7})(?![\p{L}\p{N}_.(!])/iuy,
  columnsOrRows: /\$?[A-Z]{1,3}:\$?[A-Z]{1,3}(?![\p{L}\p{N}_.(])|\$?\d+:\$?\d+/iuy,
  name: /[\p{L}_\\][\p{L}\p{N}_.?\\]*/uy,
};

/** A range whose first corner is the top left one, whichever two corners were written. */
export function rectangle(a: Place, b: Place, on: { sheet?: string }): Expression {
  const [top, bottom] = a.row <= b.row ? [a, b] : [b, a];
  const [left, right] = a.column <= b.column ? [a, b] : [b, a];
  const corner = (row: Place, column: Place): Place => ({
    row: row.row,
    column: column.column,
    ...(row.fixedRow ? { fixedRow: true } : {}),
    ...(column.fixedColumn ? { fixedColumn: true } : {}),
  });
  return { kind: "range", from: { ...on, ...corner(top, left) }, to: corner(bottom, right) };
}
