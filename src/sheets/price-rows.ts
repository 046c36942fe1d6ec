import { priceKinds, type PriceRow } from "../estimate/prices";
import { isError, type Cell } from "../units/cell";
import { readDay } from "../units/day";
import {
  lastPriceRow,
  oldBefore,
  pricesLayoutOf,
  usableMark,
  type PriceColumn,
  type PricesLayout,
} from "./prices-layout";

/** A row of the prices, and where it stands on its sheet. */
export interface PlacedPrice extends PriceRow {
  at: number;
}

/** The cells of a row to add below the others, in the order of the sheet's columns. */
export function appendedRow(row: PriceRow, { columns }: PricesLayout): Cell[] {
  const cells: Partial<Record<PriceColumn, Cell>> = {
    item: row.item,
    name: row.name,
    size: row.size,
    unit: row.unit,
    price: row.price,
    waste: row.waste || null,
    taxed: row.taxed ? "yes" : "no",
    supplier: row.supplier || null,
    date: row.date,
  };
  const placed = new Map(Object.entries(cells).map(([name, value]) => [columns[name as PriceColumn], value]));
  const last = Math.max(...Object.values(columns));
  return Array.from({ length: last + 1 }, (_, column) => placed.get(column) ?? null);
}

/** The rows that a sheet of prices holds, read from what its cells show. */
export function readPrices(values: Cell[][], layout = pricesLayoutOf("", values)): PlacedPrice[] {
  const { columns, headers } = layout;
  const shown = (row: number, column?: number): Cell =>
    column === undefined ? null : (values[row]?.[column] ?? null);
  const limit = oldBefore(layout);
  const before = limit && shown(limit.row, limit.column);
  const mark = usableMark(layout);
  const onlyChosen = mark !== undefined && shown(mark.row, mark.column) === "yes";
  return values.slice(0, lastPriceRow + 1).flatMap((_, at): PlacedPrice[] => {
    const of = (name: PriceColumn) => shown(at, columns[name]);
    const item = of("item");
    if (at <= headers || typeof item !== "string" || !(item in priceKinds)) return [];
    const amount = (name: PriceColumn) => (typeof of(name) === "number" ? (of(name) as number) : null);
    const text = (name: PriceColumn) => (isError(of(name)) ? "" : String(of(name) ?? ""));
    const word = (name: PriceColumn) => text(name).toLowerCase();
    const date = readDay(of("date")) ?? null;
    const price: PriceRow = {
      item,
      name: text("name"),
      size: amount("size"),
      unit: text("unit"),
      price: amount("price"),
      waste: amount("waste") ?? 0,
      taxed: word("taxed") === "yes",
      example: word("example") === "example",
      supplier: text("supplier"),
      date,
      use: word("use") === "yes" ? true : word("use") === "no" || onlyChosen ? false : null,
      old: date !== null && typeof before === "number" && date < before,
    };
    return [{ ...price, at }];
  });
}
