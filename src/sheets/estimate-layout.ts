import { fields, slotKeys, type Section } from "../estimate/fields";
import { ownLineKeys, type LineSection } from "../estimate/own-lines";
import { type Place } from "./address";
import { messages } from "./messages";

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
  | { kind: "warning"; key: string; across: number };

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
  /** Rows that the section takes at least, for a picture beside them. */
  leastRows?: number;
}

const figures = (...keys: string[]): Left[] => keys.map((key) => ({ kind: "figure", key }));
const warning = (key: string, across = 7): Left => ({ kind: "warning", key, across });
const lines = (...keys: string[]): Left[] => keys.map((key) => ({ kind: "line", key }));
const own = (section: LineSection): Left[] => ownLineKeys(section).map((key) => ({ kind: "own", key }));

/** The inputs of a section's fields: those of a line beside it, the others below or beside what has none. */
function inputsBeside(left: Left[], sections: Section[]): Right[] {
  const here = fields.filter(({ section }) => sections.includes(section));
  const withLine = left.map(({ kind, key }): Right | undefined => {
    if (kind !== "line") return undefined;
    const field = here.find((one) => one.key === key || one.beside === key)?.key;
    const use = here.some((one) => one.insteadOf === `${key}_count`) ? key : undefined;
    return field || use ? { ...(field && { field }), ...(use && { use }) } : undefined;
  });
  const placed = new Set(withLine.flatMap((right) => [right?.field, right?.use && `${right.use}_use`]));
  const others = here.filter(({ key }) => !placed.has(key)).map(({ key }): Right => ({ field: key }));
  return [...withLine.map((right) => right ?? others.shift() ?? {}), ...others];
}

function sectionOf(title: string, left: Left[], of: Section[], section?: LineSection): SectionLayout {
  return { title, section, left, right: inputsBeside(left, of) };
}

const ofLines = (title: string, section: LineSection, ...left: Left[]) =>
  sectionOf(title, left, [section], section);

const { sections: titles } = messages;

/** Rows beside the plan of the pen. */
export const planRows = 12;

/** The height of a row in points: as low as its text allows, so that the page prints large. */
export const rowHeight = 14.25;

/** The sections of an estimate for a panel pen, in order. */
export const layout: SectionLayout[] = [
  {
    ...sectionOf(
      titles.pen,
      [
        ...figures("pin_circle", "inside_clear", "distance_around", "area", "one_under", "one_over"),
        warning("plan_warning", 4),
      ],
      ["job", "pen", "layout"],
    ),
    leastRows: planRows,
  },
  ofLines(titles.fence, "fence", ...lines(...slotKeys("panel")), ...own("fence")),
  ofLines(titles.gates, "gates", ...lines(...slotKeys("gate")), ...own("gates")),
  ofLines(
    titles.footing,
    "footing",
    ...figures("sand_need", "sand_delivered", "sand_over", "depth_loose", "depth_settled"),
    ...lines("sand"),
    ...own("footing"),
    warning("footing_warning"),
  ),
  ofLines(titles.hauling, "hauling", ...lines(...slotKeys("truck")), ...own("hauling")),
  ofLines(titles.supplies, "supplies", ...lines("stakes", "line", "paint"), ...own("supplies")),
  sectionOf(
    titles.total,
    [
      ...figures("direct", "tax_amount", "contingency_amount", "overhead_amount", "profit_amount"),
      ...figures("total", "per_foot", "per_square_foot", "budget_left"),
      warning("example_warning"),
    ],
    ["charges"],
  ),
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
