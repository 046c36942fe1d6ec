import { Decimal } from "decimal.js";
import { priceKinds, type PriceKind } from "./price-kinds";

export { priceKinds, type PriceKind };

/** One row of the user's prices. A price of null is not known yet; 0 is free. Waste is in percent. */
export interface PriceRow {
  /** What kind of thing: the key that lines look for. */
  item: string;
  name: string;
  /** Its size in the unit of its kind (ft for panels and gates, cu yd for loads); null where it has none. */
  size: number | null;
  unit: string;
  price: number | null;
  waste: number;
  taxed: boolean;
  /** Still the invented example and not yet the user's own. */
  example: boolean;
}

/** What a line looks for in the prices. */
export interface PricedItem {
  item: string;
  size: number | null;
}

/** What the prices say of one item. */
export interface FoundPrice {
  /** Null where no row, or more than one, has a price for it. */
  price: Decimal | null;
  /** How many rows it has, and how many of them have a price. */
  rows: number;
  priced: number;
  waste: number;
  taxed: boolean;
  example: boolean;
}

/**
 * What the user's prices say of an item. A price counts when exactly one row of that item and size has one of 0 or
 * more, so that two prices for one thing are never taken for one.
 */
export function findPrice(rows: readonly PriceRow[], { item, size }: PricedItem): FoundPrice {
  const found = rows.filter((row) => row.item === item && (size === null || row.size === size));
  const priced = found.filter((row) => row.price !== null && row.price >= 0);
  return {
    price: priced.length === 1 ? new Decimal(priced[0].price!) : null,
    rows: found.length,
    priced: priced.length,
    waste: found.reduce((sum, row) => sum + row.waste, 0),
    taxed: found.some((row) => row.taxed),
    example: found.some((row) => row.example),
  };
}

/** A row for an item that the prices lack: without a price, for the user to fill in. */
export function unpricedRow({ item, size }: PricedItem): PriceRow {
  const kind = priceKinds[item as PriceKind];
  return {
    item,
    name: kind.name,
    size,
    unit: kind.unit,
    price: null,
    waste: 0,
    taxed: kind.taxed,
    example: false,
  };
}

const example = (item: PriceKind, size: number | null, price: number, waste = 0): PriceRow => ({
  ...unpricedRow({ item, size }),
  price,
  waste,
  example: true,
});

/** Invented prices that a new workbook starts with, each marked as an example until the user types over it. */
export const examplePrices: readonly PriceRow[] = [
  example("panel", 8, 94),
  example("panel", 10, 108),
  example("panel", 12, 123),
  example("panel", 16, 158),
  example("gate", 6, 186),
  example("gate", 8, 214),
  example("gate", 10, 238),
  example("gate", 12, 265),
  example("post 4x4", 8, 11.4),
  example("post 6x6", 8, 27.5),
  example("post 8x8", 8, 52),
  example("post 4 in round", 8, 10.9),
  example("post 5 in round", 8, 15.2),
  example("post 6 in round", 8, 21.8),
  example("post 8 in round", 8, 38),
  example("post 10 in round", 8, 61),
  example("rail 2x6 board", 8, 7.6),
  example("rail 2x6 board", 10, 9.7),
  example("rail 2x6 board", 12, 11.9),
  example("rail 2x6 board", 16, 16.4),
  example("rail 2x8 board", 16, 22.3),
  example("rail 1x6 board", 16, 11.2),
  example("rail 5/4x6 board", 16, 15.8),
  example("rail 1 5/8 in pipe", 21, 31),
  example("rail 2 3/8 in pipe", 32, 66),
  example("fastener", null, 0.09, 5),
  example("hung_gate", 4, 98),
  example("hung_gate", 8, 142),
  example("hung_gate", 10, 161),
  example("hung_gate", 12, 183),
  example("hole", null, 9.5),
  example("drive", null, 7.25),
  example("bag", 60, 5.2),
  example("bag", 80, 6.1),
  example("stone", null, 39),
  example("sand_ton", null, 17.5),
  example("sand_yard", null, 23.75),
  example("haul", 8, 95),
  example("haul", 10, 110),
  example("haul", 14, 135),
  example("haul", 16, 150),
  example("haul", 20, 175),
  example("stake", null, 1.15, 10),
  example("line", null, 7.9),
  example("paint", null, 6.45),
];
