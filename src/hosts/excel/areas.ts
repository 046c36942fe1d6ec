import { address } from "../../sheets/address";

/** One cell's place, counted from 0. */
export interface Spot {
  row: number;
  column: number;
}

/** A rectangle of cells; the last row and column are included. */
export interface Area {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** A place as one text, to look it up by. */
export const placeOf = ({ row, column }: Spot): string => `${row} ${column}`;

/** Every cell of a rectangle, in reading order. */
export const spotsIn = ({ top, left, bottom, right }: Area): Spot[] =>
  Array.from({ length: Math.max(0, bottom - top + 1) }, (_, k) => top + k).flatMap((row) =>
    Array.from({ length: Math.max(0, right - left + 1) }, (_, k) => ({ row, column: left + k })),
  );

/** The cells as runs along their rows, in reading order. */
export function rowRuns(spots: Spot[]): Area[] {
  const runs: Area[] = [];
  for (const { row, column } of [...spots].sort((a, b) => a.row - b.row || a.column - b.column)) {
    const last = runs.at(-1);
    if (last?.top === row && last.right >= column - 1) last.right = column;
    else runs.push({ top: row, left: column, bottom: row, right: column });
  }
  return runs;
}

/** The cells as few rectangles: runs along the rows, and equal runs on rows that follow each other joined. */
export function rectangles(spots: Spot[]): Area[] {
  const open = new Map<string, Area>();
  const all: Area[] = [];
  for (const run of rowRuns(spots)) {
    const key = `${run.left}:${run.right}`;
    const above = open.get(key);
    if (above?.bottom === run.top - 1) above.bottom = run.bottom;
    else {
      open.set(key, run);
      all.push(run);
    }
  }
  return all;
}

/** Every cell as a rectangle of its own, so that a border goes around each. */
export const singles = (spots: Spot[]): Area[] =>
  spots.map(({ row, column }) => ({ top: row, left: column, bottom: row, right: column }));

/** A rectangle's address, such as B4 or B4:D9. */
export function areaAddress({ top, left, bottom, right }: Area): string {
  const from = address({ row: top, column: left });
  return top === bottom && left === right ? from : `${from}:${address({ row: bottom, column: right })}`;
}

/** Rows, counted from 0, as runs of whole rows such as 2:4. */
export const rowLines = (rows: number[]): string[] =>
  rowRuns(rows.map((column) => ({ row: 0, column }))).map(({ left, right }) => `${left + 1}:${right + 1}`);

/** Excel takes at most 255 characters as the address of several areas. */
const longest = 255;

/** Addresses joined with commas into as few texts as Excel takes. */
export function joinAddresses(addresses: string[]): string[] {
  const joined: string[] = [];
  for (const one of addresses) {
    const last = joined.at(-1);
    if (last !== undefined && last.length + 1 + one.length <= longest)
      joined[joined.length - 1] = `${last},${one}`;
    else joined.push(one);
  }
  return joined;
}

/** Things grouped by a key, in the order in which the keys first come; a thing without a key is left out. */
export function groupBy<Thing, Key>(
  things: Thing[],
  keyOf: (thing: Thing) => Key | undefined,
): Map<Key, Thing[]> {
  const groups = new Map<Key, Thing[]>();
  for (const thing of things) {
    const key = keyOf(thing);
    if (key === undefined) continue;
    const group = groups.get(key);
    if (group) group.push(thing);
    else groups.set(key, [thing]);
  }
  return groups;
}
