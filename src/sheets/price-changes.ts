import { type ImportedLine } from "../estimate/price-import";
import { type Cell } from "../units/cell";
import { appendedRow } from "./price-rows";
import { type PricesLayout } from "./prices-layout";
import { styleOf } from "./styles";

/** New content of one cell of the prices; a date comes with its format. */
export interface PriceChange {
  row: number;
  column: number;
  value: Exclude<Cell, object> | null;
  format?: string;
}

const dateFormat = (styleOf("inputDate") as { format: string }).format;

/**
 * The cells of a sheet of prices that change where these lines of a table are taken: the price and its date of a row that
 * stands (its waste and tax where the table says them, and of an example the mark and the supplier), and whole rows below the last of its `used` rows. No other cell is
 * touched.
 */
export function priceChanges(
  lines: readonly ImportedLine[],
  layout: PricesLayout,
  used: number,
): PriceChange[] {
  const { columns } = layout;
  let next = used;
  return lines.flatMap((line): PriceChange[] => {
    if (line.kind === "not understood" || line.kind === "unchanged") return [];
    const dated = (column: number) => (column === columns.date ? { format: dateFormat } : {});
    if (line.kind === "new") {
      const row = next++;
      return appendedRow(line.row, layout).flatMap((value, column) =>
        value === null ? [] : [{ row, column, value: value as string, ...dated(column) }],
      );
    }
    const { row, before, also } = line;
    const cells: [number | undefined, PriceChange["value"]][] = [
      [columns.price, row.price],
      [columns.date, row.date],
      ...(also.waste === undefined ? [] : [[columns.waste, also.waste || null] as [number, number | null]]),
      ...(also.taxed === undefined ? [] : [[columns.taxed, also.taxed ? "yes" : "no"] as [number, string]]),
      ...(before.example
        ? ([
            [columns.example, null],
            [columns.supplier, row.supplier || null],
          ] as [number | undefined, null][])
        : []),
    ];
    return cells.flatMap(([column, value]) =>
      column === undefined ? [] : [{ row: before.at, column, value, ...dated(column) }],
    );
  });
}
