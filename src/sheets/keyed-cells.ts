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

/** A key, and the name of the column in which the cell stands that it names. */
export type KeyPair = [column: string, key: string];

/**
 * The keys of a row as its key cell lists them: `column=key` pairs, where columns that stand in the ends of their own keys
 * share one, so that `price=sand_price amount=sand_amount` is `price,amount=sand_*`.
 */
export function keyList(pairs: KeyPair[]): string {
  const columnsOf = new Map<string, string[]>();
  for (const [column, key] of pairs) {
    const shared = key.endsWith(`_${column}`) ? `${key.slice(0, -column.length)}*` : key;
    columnsOf.set(shared, [...(columnsOf.get(shared) ?? []), column]);
  }
  return [...columnsOf].map(([shared, columns]) => `${columns.join(",")}=${shared}`).join(" ");
}

/** The keys that a key cell lists. */
export const keyPairs = (list: string): KeyPair[] =>
  list.split(" ").flatMap((some) => {
    const [columns, shared = ""] = some.split("=");
    return columns.split(",").map((column): KeyPair => [column, shared.replace("*", column)]);
  });

/**
 * The keyed cells of a document by key, from what its sheet shows: column A lists its keys for each row (`keyList`), the
 * first row names the columns. Wherever rows or columns were inserted, a key is found; of two rows with one key the
 * upper counts. A sheet without keys has none.
 */
export function keyedCells(values: Cell[][]): Record<string, KeyedCell> {
  const columnOf = new Map((values[0] ?? []).map((name, column) => [name, column]));
  const cells: Record<string, KeyedCell> = {};
  values.forEach((row, at) => {
    if (at === 0 || typeof row[0] !== "string") return;
    for (const [name, key] of keyPairs(row[0])) {
      const column = columnOf.get(name);
      if (key && column !== undefined) cells[key] ??= { row: at, column, value: row[column] ?? null };
    }
  });
  return cells;
}
