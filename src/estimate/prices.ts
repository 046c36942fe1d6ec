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
  /** Who sells it at this price; empty where that was not said. */
  supplier: string;
  /** The day of the price as a sheet counts days; null where that was not said. */
  date: number | null;
  /** True: this row is the one to use. False: never. Null: where it is the cheapest and no row is chosen. */
  use: boolean | null;
  /** Older than the days that the sheet of prices allows. */
  old: boolean;
}

/** What a line looks for in the prices. */
export interface PricedItem {
  item: string;
  size: number | null;
}

/** What the prices say of one item. */
export interface FoundPrice {
  /** Null where no row that may be used has a price. */
  price: Decimal | null;
  /** How many rows it has, and how many of them have a price, whether they may be used or not. */
  rows: number;
  priced: number;
  waste: number;
  taxed: boolean;
  example: boolean;
  /** The day of the price where it is old, else null. */
  oldSince: number | null;
}

const hasPrice = ({ price }: PriceRow) => price !== null && price >= 0;

/**
 * What the user's prices say of an item: the chosen row where one is marked, else the cheapest that may be used; of
 * several chosen ones the cheapest. Rows that tie count together: the greater waste, taxed, an example or old where one
 * of them is. Where no row has a price, the waste of those that may be used counts.
 */
export function findPrice(rows: readonly PriceRow[], { item, size }: PricedItem): FoundPrice {
  const found = rows.filter((row) => row.item === item && (size === null || row.size === size));
  const chosen = found.filter(({ use }) => use === true);
  const usable = chosen.length > 0 ? chosen : found.filter(({ use }) => use === null);
  const priced = usable.filter(hasPrice);
  const least = priced.length > 0 ? Math.min(...priced.map(({ price }) => price!)) : null;
  const used = priced.filter(({ price }) => price === least);
  const oldDays = used.filter(({ old }) => old).map(({ date }) => date!);
  return {
    price: least === null ? null : new Decimal(least),
    rows: found.length,
    priced: found.filter(hasPrice).length,
    waste: Math.max(0, ...(least === null ? usable : used).map(({ waste }) => waste)),
    taxed: used.some((row) => row.taxed),
    example: used.some((row) => row.example),
    oldSince: oldDays.length > 0 ? Math.max(...oldDays) : null,
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
    supplier: "",
    date: null,
    use: null,
    old: false,
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
  example("post 4x6", 8, 18.2),
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
  example("kick 2x6", 8, 8.7),
  example("kick 2x6", 16, 18.1),
  example("kick 2x8", 8, 11.6),
  example("kick 2x8", 16, 24.4),
  example("kick 2x10", 8, 15.1),
  example("kick 2x10", 16, 31.5),
  example("kick 2x12", 8, 19.6),
  example("kick 2x12", 16, 40.8),
  example("fastener", null, 0.09, 5),
  example("nail", null, 0.05, 5),
  example("bolt", null, 1.35, 2),
  example("hung_gate", 4, 98),
  example("hung_gate", 8, 142),
  example("hung_gate", 10, 161),
  example("hung_gate", 12, 183),
  example("hinge_set", null, 24),
  example("latch", null, 17),
  example("drop_rod", null, 21),
  example("hole", null, 9.5),
  example("drive", null, 7.25),
  example("bag", 60, 5.2),
  example("bag", 80, 6.1),
  example("stone", null, 39),
  example("sand_ton", null, 17.5),
  example("sand_yard", null, 23.75),
  example("base_ton", null, 21.5),
  example("base_yard", null, 30.25),
  example("fabric", null, 0.11, 10),
  example("haul", 8, 95),
  example("haul", 10, 110),
  example("haul", 14, 135),
  example("haul", 16, 150),
  example("haul", 20, 175),
  example("stake", null, 1.15, 10),
  example("line", null, 7.9),
  example("paint", null, 6.45),
  example("mobilization", null, 160),
  example("auger_day", null, 135),
  example("loader_day", null, 270),
  example("compactor_day", null, 115),
  example("labor_hour", null, 36),
];
