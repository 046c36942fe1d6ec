import { figureField } from "../estimate/figure-list";
import { type Structure } from "../estimate/structures";
import { type Place } from "./address";
import { layoutOf, type Left, type Right, type SectionLayout } from "./estimate-sections";

/** What A1 of an estimate says, by which a host finds it. */
export const estimateMark = "penstake estimate 1";

/** The columns of an estimate sheet. Inputs stand to the right of the printed part. */
export const columns = {
  key: 0, item: 1, quantity: 2, unit: 3, price: 4, amount: 5, taxed: 6, note: 7, gap: 8,
  label: 9, input: 10, inputUnit: 11, feetInches: 12, use: 13, count: 14, hand: 15, left: 16, fewer: 17, more: 18, pick: 19, kind: 20, size: 21, limit: 22,
  written: 23, fixed: 24,
} as const; // prettier-ignore

/** The column of an estimate by its name: what key cells write before each key. */
export type ColumnName = keyof typeof columns;

/** Rows above the first section: the hidden row of column names, the title, the job, the headers. */
export const headRows = { names: 0, title: 1, job: 2, headers: 3 } as const;

/** The height of a row in points: as low as its text allows, so that the page prints large. */
export const rowHeight = 14.25;

/** One row of a laid-out section. */
export interface LaidRow {
  row: number;
  left?: Left;
  right?: Right;
}

/** A section with its place on the sheet: the heading's row, the rows under it, and an empty last row inside its sum. */
export interface LaidSection extends SectionLayout {
  heading: number;
  rows: LaidRow[];
  last: number;
}

/** The sections one under the other, and the first row after them. */
export function laidOut(structure: Structure): { sections: LaidSection[]; after: number } {
  let next = headRows.headers + 1;
  const sections = layoutOf(structure).map((section) => {
    const heading = next;
    const rows = Array.from(
      { length: Math.max(section.left.length, section.right.length, section.leastRows ?? 0) },
      (_, k) => ({
        row: heading + 1 + k,
        left: section.left[k],
        right: section.right[k],
      }),
    );
    const last = heading + 1 + rows.length;
    next = last + 1;
    return { ...section, heading, rows, last };
  });
  return { sections, after: next };
}

/** The columns that hold a keyed cell of each kind of left part, and the key each gives its cell. */
const keyed: Record<Left["kind"], (key: string) => Partial<Record<ColumnName, string>>> = {
  figure: (key) => ({ [figureField(key).kind === "money" ? "amount" : "quantity"]: key }),
  warning: (key) => ({ item: key }),
  line: (key) => ({
    quantity: `${key}_quantity`, price: `${key}_price`, amount: `${key}_amount`, taxed: `${key}_taxed`, count: `${key}_count`,
  }), // prettier-ignore
  own: (key) => ({
    item: `${key}_item`, quantity: `${key}_quantity`, unit: `${key}_unit`, price: `${key}_price`, amount: `${key}_amount`, taxed: `${key}_taxed`,
  }), // prettier-ignore
};

/** The keys of a row by the column they stand in. */
export function keysOf({ left, right }: LaidRow): Partial<Record<ColumnName, string>> {
  return {
    ...(left ? keyed[left.kind](left.key) : {}),
    ...(left?.kind === "line" && left.key.startsWith("leaf_") ? { limit: `${left.key}_opening` } : {}),
    ...(left?.fixed ? { fixed: `${left.key}_fixed` } : {}),
    ...(right?.field ? { input: right.field } : {}),
    ...(right?.written ? { written: `${right.field}_written` } : {}),
    ...(right?.use ? { use: `${right.use}_use`, count: `${right.use}_count` } : {}),
    ...(right?.hand ? { hand: `${right.hand}_stock`, left: `${right.hand}_left` } : {}),
  };
}

/** Where every key stands. */
export function placesOf(sections: LaidSection[]): Record<string, Place> {
  const places: Record<string, Place> = {};
  for (const section of sections) {
    if (section.section) places[`sum_${section.section}`] = { row: section.heading, column: columns.amount };
    for (const row of section.rows)
      for (const [name, key] of Object.entries(keysOf(row)))
        places[key] = { row: row.row, column: columns[name as ColumnName] };
  }
  return places;
}
