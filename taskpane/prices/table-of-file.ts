import { tableOfText } from "../../src/estimate/price-text";
import { type Cell } from "../../src/units/cell";

/** Larger files are refused: a list of prices is not that long. */
const MOST_BYTES = 5_000_000;

/** A file of the user's as a table: the first sheet of an .xlsx that holds something, else text parted by tabs, commas or semicolons. */
export async function tableOfFile(file: File): Promise<Cell[][]> {
  if (file.size > MOST_BYTES)
    throw new Error(`${file.name} is larger than 5 MB: save the list of prices by itself.`);
  if (!/\.xlsx$/i.test(file.name)) return tableOfText(await file.text());
  const { readXlsx } = await import("../../src/hosts/xlsx/xlsx");
  const { content } = await readXlsx(new Uint8Array(await file.arrayBuffer()));
  const cells = content.sheets.find((sheet) => sheet.cells.some(({ value }) => value !== null))?.cells ?? [];
  const table: Cell[][] = [];
  for (const { row, column, value } of cells) (table[row] ??= [])[column] = value;
  return Array.from(table, (row) => Array.from(row ?? [], (value) => value ?? null));
}
