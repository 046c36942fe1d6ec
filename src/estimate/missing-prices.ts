import { findPrice, priceKinds, unpricedRow, type PriceKind, type PricedItem, type PriceRow } from "./prices";

/** An item that a line needs and the prices do not settle: no row for it, no row with a price, or none that may be used. */
export interface MissingPrice {
  item: PricedItem;
  name: string;
  why: "no row" | "no price" | "none chosen";
}

/** What an item is called, with its size: "Panel, 12 ft". */
export function itemName({ item, size }: PricedItem): string {
  const { name, sized = "" } = priceKinds[item as PriceKind];
  return size === null ? name : `${name}, ${size} ${sized}`;
}

/** The items that still lack a price, each once, and why. */
export function missingPrices(missing: readonly PricedItem[], rows: readonly PriceRow[]): MissingPrice[] {
  const once = new Map(missing.map((item) => [itemName(item), item]));
  return [...once].map(([name, item]) => {
    const found = findPrice(rows, item);
    const why = found.rows === 0 ? "no row" : found.priced > 0 ? "none chosen" : "no price";
    return { item, name, why };
  });
}

/** Rows to add to the prices so that every missing item has one, each without a price. */
export const rowsToAdd = (missing: readonly MissingPrice[]): PriceRow[] =>
  missing.filter(({ why }) => why === "no row").map(({ item }) => unpricedRow(item));
