import { type Cell } from "../units/cell";

/** What a sheet shows, cell by cell from A1. */
export interface Shown {
  name: string;
  values: Cell[][];
}

/** A keyed cell of a sheet, where it stands now, and what it shows. */
export interface KeyedCell {
  row: number;
  column: number;
  value: Cell;
}

/**
 * The keyed cells of a document by key, from what its sheet shows: column A lists `column=key` pairs for each row, the
 * first row names the columns. Wherever rows or columns were inserted, a key is found; of two rows with one key the
 * upper counts. A sheet without keys has none.
 */
export function keyedCells(values: Cell[][]): Record<string, KeyedCell> {
  const columnOf = new Map((values[0] ?? []).map((name, column) => [name, column]));
  const cells: Record<string, KeyedCell> = {};
  values.forEach((row, at) => {
    if (at === 0 || typeof row[0] !== "string") return;
    for (const pair of row[0].split(" ")) {
      const [name, key] = pair.split("=");
      const column = columnOf.get(name);
      if (key && column !== undefined) cells[key] ??= { row: at, column, value: row[column] ?? null };
    }
  });
  return cells;
}
