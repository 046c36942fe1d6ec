import { type FieldValue } from "../../estimate/fields";
import { put } from "../estimate-cells";
import { deliveryEntries } from "./delivery-entries";
import { answered, type Entry } from "./entries";
import { itemHeads, purchaseWords } from "./purchase-words";
import { columns, entryCell, entryRow, gap, headingRow, type ColumnName, type Row } from "./rows";

/** Widths of a document with a seventh printed column, in characters. */
export const purchaseWidths = [14, 29, 36, 10, 8, 12, 16, 12];

/** How many letters an item and its specification have room for in one line, in every host. */
export const LETTERS = { item: 32, words: 42 } as const;

/** How a quantity looks at the top of its row: whole pieces without decimals. */
export const quantityStyle = (quantity: number | null) =>
  quantity === null || Number.isInteger(quantity) ? "itemCount" : "itemFigure";

/** The columns of a table of items, by head. */
const placeOfHead = {
  item: columns.item,
  words: columns.words,
  quantity: columns.quantity,
  unit: columns.unit,
  price: columns.price,
  lead: columns.amount,
  amount: columns.amount,
  available: columns.more,
  taxed: columns.more,
} as const;

/** A row that reaches over the seventh column too. */
export const wide = (row: Row): Row => ({
  ...row,
  cells: (at, cellOf) =>
    row.cells(at, cellOf).map((cell) => {
      const { across = 1, column } = cell;
      return across > 1 && column + across - 1 === columns.amount ? { ...cell, across: across + 1 } : cell;
    }),
});

/** What a driver has to know, under its heading, as far as it was answered. */
export function deliveryRows(entries: Readonly<Record<string, FieldValue>>): Row[] {
  const said = answered(deliveryEntries, entries);
  if (said.length === 0) return [];
  return [gap(), wide(headingRow(purchaseWords.delivery)), ...said.map((one) => wide(entryRow(one, entries[one.key])))];
} // prettier-ignore

/** A box for the supplier to write into, beside its label. */
export const boxRow = (entry: Entry): Row => ({
  keys: { words: entry.key },
  height: 17,
  cells: (row) => [
    put(row, columns.item, entry.label.en, "letterLabel"),
    { ...entryCell(row, columns.words, entry, null), style: "fillWords" },
  ],
});

const centered = ["unit", "lead", "available", "taxed"];

/** The heads of a table of items. */
export const headRow = (heads: readonly (keyof typeof placeOfHead)[]): Row => ({
  height: 16,
  cells: (row) =>
    heads.map((head) =>
      put(row, placeOfHead[head], itemHeads[head],
        centered.includes(head) ? "letterHeadCenter" : head === "item" || head === "words" ? "letterHead" : "letterHeadRight"),
    ),
}); // prettier-ignore

/** The same rows with entries beside the page, under a heading, one a row from the first row down. */
export function besidePage(
  rows: readonly Row[],
  heading: string,
  entries: readonly Entry[],
  values: Readonly<Record<string, FieldValue>>,
): Row[] {
  const blanks = Array.from({ length: Math.max(0, entries.length + 1 - rows.length) }, (): Row => ({ cells: () => [] }));
  return [...rows, ...blanks].map((row, k): Row => {
    const entry = entries[k - 1];
    const { key = "" } = entry ?? {};
    const keys: Partial<Record<ColumnName, string>> = entry ? { ...row.keys, beside: key } : { ...row.keys };
    return {
      ...row,
      keys,
      cells: (at, cellOf) => [
        ...row.cells(at, cellOf),
        ...(k === 0 ? [{ ...put(at, columns.beside - 1, heading, "heading"), across: 2 }] : []),
        ...(entry
          ? [
              put(at, columns.beside - 1, entry.label.en, "label"),
              { ...entryCell(at, columns.beside, entry, values[key] ?? null), style: "inputText" as const },
            ]
          : []),
      ],
    };
  });
} // prettier-ignore
