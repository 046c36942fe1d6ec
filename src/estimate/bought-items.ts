import { type CostKind, costOf } from "./cost-kinds";
import { itemName } from "./missing-prices";
import { priceKinds, type PricedItem, type PriceKind } from "./prices";
import { type TakeoffLine } from "./takeoff-line";

/** One estimate as far as buying goes: its lines, and what its sheet shows as bought of each, waste included. */
export interface Bought {
  takeoff: readonly TakeoffLine[];
  /** The quantity of the line of that key; nothing where it shows none. */
  quantityOf(key: string): number | undefined;
}

/** An item to buy, over all estimates asked: how much of it, and which lines it is for. */
export interface BoughtItem extends PricedItem {
  item: PriceKind;
  name: string;
  unit: string;
  quantity: number;
  /** The lines that it adds up, each by its estimate's place among those given and its key. */
  from: readonly { estimate: number; key: string }[];
}

/** What suppliers deliver; labor, rental and work by others are asked for elsewhere. */
const delivered: readonly CostKind[] = ["material", "freight"];

/** Everything that some estimates buy, like items added up, in the order of their takeoffs. */
export function boughtItems(estimates: readonly Bought[]): BoughtItem[] {
  const found = new Map<string, BoughtItem>();
  estimates.forEach(({ takeoff, quantityOf }, estimate) => {
    for (const line of takeoff) {
      const { key, item, size } = line;
      if (key === "mobilization" || !delivered.includes(costOf(line))) continue;
      const quantity = quantityOf(key) ?? 0;
      if (!(quantity > 0)) continue;
      const kind = item as PriceKind;
      const name = itemName({ item, size });
      const before = found.get(name);
      found.set(name, {
        item: kind,
        size,
        name,
        unit: priceKinds[kind].unit,
        quantity: (before?.quantity ?? 0) + quantity,
        from: [...(before?.from ?? []), { estimate, key }],
      });
    }
  });
  return [...found.values()];
}
