import { type Shown } from "../../src/sheets/keyed";
import { type SheetData } from "../../src/sheets/workbook-content";
import { type Cell } from "../../src/units/cell";

/** A sheet's cells as a host would read them: rows of what each shows, from A1. */
export function shownBy({ name, cells }: SheetData): Shown {
  const values: Cell[][] = [];
  for (const { row, column, value } of cells) (values[row] ??= [])[column] = value;
  for (let row = 0; row < values.length; row++)
    values[row] = Array.from(values[row] ?? [], (value) => value ?? null);
  return { name, values };
}
