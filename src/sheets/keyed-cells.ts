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

/** One name for columns that mostly stand together, so that their keys take less to write. */
const together: Record<string, string[]> = {
  line: ["quantity", "price", "amount", "taxed", "count"],
  own: ["item", "quantity", "unit", "price", "amount", "taxed"],
};

/**
 * The keys of a row as its key cell lists them: `column=key` pairs, where columns with one key share it. A column with
 * a star stands in the end of its own key, so that `input=depth written=depth_written` is `input,written*=depth`; names
 * of several columns, such as `line`, stand for all of them.
 */
export function keyList(pairs: KeyPair[]): string {
  const columnsOf = new Map<string, string[]>();
  for (const [column, key] of pairs) {
    const ends = key.endsWith(`_${column}`);
    const shared = ends ? key.slice(0, -column.length - 1) : key;
    columnsOf.set(shared, [...(columnsOf.get(shared) ?? []), ends ? `${column}*` : column]);
  }
  return [...columnsOf].map(([shared, columns]) => `${named(columns).join(",")}=${shared}`).join(" ");
}

function named(columns: string[]): string[] {
  for (const [name, members] of Object.entries(together)) {
    const starred = members.map((column) => `${column}*`);
    if (starred.every((column) => columns.includes(column)))
      return [`${name}*`, ...named(columns.filter((column) => !starred.includes(column)))];
  }
  return columns;
}

/** The keys that a key cell lists; in an older sheet the star stands in the key. */
export const keyPairs = (list: string): KeyPair[] =>
  list.split(" ").flatMap((some) => {
    const [columns, shared = ""] = some.split("=");
    return columns.split(",").flatMap((name) => {
      const ends = name.endsWith("*");
      const column = ends ? name.slice(0, -1) : name;
      return (together[column] ?? [column]).map((one): KeyPair => [
        one,
        ends ? `${shared}_${one}` : shared.replace("*", one),
      ]);
    });
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
