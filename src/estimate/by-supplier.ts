import { type BoughtItem } from "./bought-items";
import { type PricedItem, type PriceRow } from "./prices";

/** The suppliers that the prices name for an item, each once, in their order. */
export const suppliersOf = (rows: readonly PriceRow[], { item, size }: PricedItem): string[] => [
  ...new Set(
    rows
      .filter((row) => row.item === item && (size === null || row.size === size))
      .map(({ supplier }) => supplier.trim())
      .filter((supplier) => supplier !== ""),
  ),
];

/** Items by supplier: to each supplier those that the prices name it for; last, under "", those without one. */
export function bySupplier(
  items: readonly BoughtItem[],
  rows: readonly PriceRow[],
): { supplier: string; items: BoughtItem[] }[] {
  const groups = new Map<string, BoughtItem[]>();
  const without: BoughtItem[] = [];
  for (const item of items) {
    const suppliers = suppliersOf(rows, item);
    if (suppliers.length === 0) without.push(item);
    for (const supplier of suppliers) groups.set(supplier, [...(groups.get(supplier) ?? []), item]);
  }
  const named = [...groups].map(([supplier, some]) => ({ supplier, items: some }));
  return without.length > 0 ? [...named, { supplier: "", items: without }] : named;
}
