import { slotKeys } from "../estimate/fields";
import { ownLineKeys, type LineSection } from "../estimate/own-lines";
import { type Place } from "./address";

/** The columns of an estimate sheet. Inputs stand to the right of the printed part. */
export const columns = {
  key: 0, item: 1, quantity: 2, unit: 3, price: 4, amount: 5, taxed: 6, note: 7, gap: 8,
  label: 9, input: 10, inputUnit: 11, feetInches: 12, use: 13, count: 14, fewer: 15, more: 16,
} as const; // prettier-ignore

/** The column of an estimate by its name: what key cells write before each key. */
export type ColumnName = keyof typeof columns;

/** Rows above the first section: the hidden row of column names, the title, the job, the headers. */
export const headRows = { names: 0, title: 1, job: 2, headers: 3 } as const;

/** What stands in the printed part of a row. */
export type Left =
  | { kind: "figure"; key: string }
  | { kind: "line"; key: string }
  | { kind: "own"; key: string }
  | { kind: "warning"; key: string };

/** What stands beside it: an input, a line's "use instead", or both. */
export interface Right {
  field?: string;
  use?: string;
}

/** One section: its heading and the rows under it, printed part and inputs side by side. */
export interface SectionLayout {
  title: string;
  section?: LineSection;
  left: Left[];
  right: Right[];
}

const figures = (...keys: string[]): Left[] => keys.map((key) => ({ kind: "figure", key }));
const warning = (key: string): Left => ({ kind: "warning", key });
const lines = (...keys: string[]): Left[] => keys.map((key) => ({ kind: "line", key }));
const own = (section: LineSection): Left[] => ownLineKeys(section).map((key) => ({ kind: "own", key }));
const inputs = (...keys: string[]): Right[] => keys.map((field) => ({ field }));
const slotInputs = (list: "panel" | "truck"): Right[] =>
  slotKeys(list).map((key) => ({ field: key, use: key }));

/** The sections of an estimate for a panel pen, in order. */
export const layout: SectionLayout[] = [
  {
    title: "The pen as built",
    left: figures("pin_circle", "inside_clear", "distance_around", "area", "one_under", "one_over"),
    right: inputs("job_name", "customer", "site", "purpose", "size", "size_means", "pin_gap", "budget"),
  },
  {
    title: "Fence",
    section: "fence",
    left: [...lines(...slotKeys("panel")), ...own("fence")],
    right: slotInputs("panel"),
  },
  {
    title: "Gates",
    section: "gates",
    left: [...lines(...slotKeys("gate")), ...own("gates")],
    right: inputs(...slotKeys("gate")),
  },
  {
    title: "Footing",
    section: "footing",
    left: [
      ...figures("sand_need", "sand_delivered", "sand_over", "depth_loose", "depth_settled"),
      ...lines("sand"),
      ...own("footing"),
      warning("footing_warning"),
    ],
    right: inputs("depth", "overrun", "settle", "sand_unit", "tons_per_cy"),
  },
  {
    title: "Hauling",
    section: "hauling",
    left: [...lines(...slotKeys("truck")), ...own("hauling")],
    right: [...slotInputs("truck"), ...inputs("short")],
  },
  {
    title: "Layout supplies",
    section: "supplies",
    left: [...lines("stakes", "line", "paint"), ...own("supplies")],
    right: [{ use: "stakes" }, { field: "line_roll", use: "line" }, { field: "paint_reach", use: "paint" }],
  },
  {
    title: "Total",
    left: [
      ...figures("direct", "tax_amount", "contingency_amount", "overhead_amount", "profit_amount"),
      ...figures("total", "per_foot", "per_square_foot", "budget_left"),
      warning("example_warning"),
    ],
    right: inputs("tax", "contingency", "overhead", "profit", "profit_kind"),
  },
];

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
export function laidOut(): { sections: LaidSection[]; after: number } {
  let next = headRows.headers + 1;
  const sections = layout.map((section) => {
    const heading = next;
    const rows = Array.from({ length: Math.max(section.left.length, section.right.length) }, (_, k) => ({
      row: heading + 1 + k,
      left: section.left[k],
      right: section.right[k],
    }));
    const last = heading + 1 + rows.length;
    next = last + 1;
    return { ...section, heading, rows, last };
  });
  return { sections, after: next };
}

/** The columns that hold a keyed cell of each kind of left part, and the key each gives its cell. */
const keyed: Record<Left["kind"], (key: string) => Partial<Record<ColumnName, string>>> = {
  figure: (key) => ({ [isMoney(key) ? "amount" : "quantity"]: key }),
  warning: (key) => ({ item: key }),
  line: (key) => ({
    quantity: `${key}_quantity`, price: `${key}_price`, amount: `${key}_amount`, taxed: `${key}_taxed`, count: `${key}_count`,
  }), // prettier-ignore
  own: (key) => ({
    item: `${key}_item`, quantity: `${key}_quantity`, unit: `${key}_unit`, price: `${key}_price`, amount: `${key}_amount`, taxed: `${key}_taxed`,
  }), // prettier-ignore
};

/** True for the figures of the Total section, which stand in the column of amounts. */
export const isMoney = (key: string) => layout.at(-1)!.left.some((left) => left.key === key);

/** The keys of a row by the column they stand in. */
export function keysOf({ left, right }: LaidRow): Partial<Record<ColumnName, string>> {
  return {
    ...(left ? keyed[left.kind](left.key) : {}),
    ...(right?.field ? { input: right.field } : {}),
    ...(right?.use ? { use: `${right.use}_use` } : {}),
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
