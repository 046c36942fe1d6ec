import { type Cell } from "../units/cell";
import { type Place } from "./address";
import { messages } from "./messages";

/** What A1 of the prices says, by which a host finds the sheet whatever its name. */
export const pricesMark = "penstake prices 1";

/** The name that the sheet of prices starts with. */
export const pricesName = "Prices";

/** The columns of a new sheet of prices; the first, hidden, holds the key of each row's item. */
const newColumns = {
  item: 0, name: 1, size: 2, unit: 3, price: 4, waste: 5, taxed: 6, example: 7, supplier: 8, date: 9, use: 10,
} as const; // prettier-ignore

/** A column of the sheet of prices, by what it holds. */
export type PriceColumn = keyof typeof newColumns;

/** The columns that came later: a sheet written before has none of them. */
const laterColumns: readonly PriceColumn[] = ["supplier", "date", "use"];

const headerRow = 2;
/** Lookups reach this far down, so that rows added below are found. */
export const lastPriceRow = 499;

/** Where a sheet of prices holds what. */
export interface PricesLayout {
  sheet: string;
  columns: Record<Exclude<PriceColumn, "supplier" | "date" | "use">, number> &
    Partial<Record<PriceColumn, number>>;
  /** The row of the column headers; the prices stand below it, the settings above. */
  headers: number;
}

/** Where a new sheet of prices holds what. */
export const newPricesLayout = (sheet: string): PricesLayout => ({
  sheet,
  columns: newColumns,
  headers: headerRow,
});

const header = (column: PriceColumn) => messages.pricesHeaders[newColumns[column] - 1];

/**
 * Where a sheet of prices that stands holds what, found by its headers, so that rows and columns that the user put in
 * do no harm. A column of the first such sheets whose header was changed stands where it was; one that came later and is
 * not there has no place.
 */
export function pricesLayoutOf(sheet: string, values: Cell[][]): PricesLayout {
  const at = values.findIndex((row) => row.includes(header("name")) && row.includes(header("price")));
  const headers = at < 0 ? headerRow : at;
  const columns = Object.entries(newColumns).flatMap(([name, usual]) => {
    if (name === "item") return [[name, usual]];
    const found = values[headers]?.indexOf(header(name as PriceColumn)) ?? -1;
    if (found >= 0) return [[name, found]];
    return laterColumns.includes(name as PriceColumn) ? [] : [[name, usual]];
  });
  return { sheet, headers, columns: Object.fromEntries(columns) as PricesLayout["columns"] };
}

/** Where the day stands before which a price is old, and in the row under it how many days that is; none on a sheet without dates. */
export const oldBefore = ({ columns, headers }: PricesLayout): Place | undefined =>
  columns.date === undefined || headers < 2 ? undefined : { row: headers - 2, column: columns.date };

/** Where the mark stands of the rows that count while none is chosen; in the row under it what the user set. */
export const usableMark = ({ columns, headers }: PricesLayout): Place | undefined =>
  columns.use === undefined || headers < 2 ? undefined : { row: headers - 2, column: columns.use };
