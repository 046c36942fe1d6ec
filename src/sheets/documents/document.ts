import { type Place } from "../address";
import { put } from "../estimate-cells";
import { expression, when } from "../expression";
import { keyList } from "../keyed-cells";
import { type PlanCell, type SheetPlan } from "../plan";
import { hasMovedOn, usedCells, type UsedInput, type UsedTable } from "../used-inputs";
import { messages } from "./messages";
import { across, cellAt, columns, widths, type ColumnName, type Row } from "./rows";

/** A document over estimates, before it is laid out. */
export interface Document {
  /** What its A1 says, by which it is found: one of `marks`. */
  mark: string;
  name: string;
  rows: readonly Row[];
  /** At the foot of every page. */
  footer: string;
  /** Pages that it prints on at most; 2 unless told, and one where it fits. */
  tall?: number;
  /** The inputs that parts of it were written from; its top then says OUT OF DATE once they part from them. */
  used?: readonly UsedInput[];
  /** Widths in characters where they are not the usual ones. */
  widths?: readonly number[];
}

/** Above the rows: the hidden row of column names, and the line that says OUT OF DATE. */
const head = { names: 0, warning: 1, first: 2 } as const;

/** Where the inputs that a document was written from are listed, right of what is printed. */
const usedTable = (right: number): UsedTable => ({
  top: head.warning,
  columns: { label: right + 2, used: right + 3, now: right + 4, changed: right + 5 },
  language: "en",
  labels: messages.used,
});

/** The place of every key of a document. */
export function placesOf(rows: readonly Row[]): Record<string, Place> {
  return Object.fromEntries(
    rows.flatMap(({ keys = {} }, k) =>
      Object.entries(keys).map(([name, key]) => [key, { row: head.first + k, column: columns[name as ColumnName] }]),
    ),
  );
} // prettier-ignore

/** The sheet of a document: its rows one under the other, keyed so that whatever is typed into it is found again. */
export function documentPlan(document: Document): SheetPlan {
  const { mark, name, rows, footer, tall = 2, used = [], widths: own = widths } = document;
  const places = placesOf(rows);
  const right = own.length - 1;
  const table = usedTable(right);
  const moved = used.length > 0 ? when(hasMovedOn(used, table), messages.outOfDate, "") : "";
  const named = [...new Set(rows.flatMap(({ keys = {} }) => Object.keys(keys)))] as ColumnName[];
  return {
    name,
    cells: [
      put(head.names, columns.key, mark, "key"),
      ...named.map((column) => put(head.names, columns[column], column, "key")),
      { ...put(head.warning, columns.item, expression(moved), "warning"), across },
      ...(used.length > 0 ? usedCells(used, table) : []),
      ...rows.flatMap((row, k) => rowCells(row, head.first + k, places)),
    ],
    columns: [
      ...own.map((width, k) => ({ width, ...(k === columns.key ? { hidden: true } : {}) })),
      ...(used.length > 0 ? [3, 30, 14, 14, 11].map((width) => ({ width })) : []),
    ],
    hiddenRows: [head.names],
    heights: Object.fromEntries(
      rows.flatMap(({ height }, k) => (height === undefined ? [] : [[head.first + k, height]])),
    ),
    frozenRows: 0,
    print: {
      area: { top: head.warning, left: columns.item, bottom: head.first + rows.length - 1, right },
      landscape: false,
      pages: { wide: 1, tall },
      repeatRows: 0,
      footer,
    },
    pictures: rows.flatMap(({ picture }, k) => (picture ? [{ ...picture, row: head.first + k }] : [])),
    charts: rows.flatMap(({ chart }, k) =>
      chart ? [{ ...chart(cellAt(places)), row: head.first + k }] : [],
    ),
  };
}

function rowCells({ keys = {}, cells }: Row, row: number, places: Record<string, Place>): PlanCell[] {
  const pairs = Object.entries(keys);
  return [
    ...(pairs.length > 0 ? [put(row, columns.key, keyList(pairs), "key")] : []),
    ...cells(row, cellAt(places)),
  ];
}
