import { Decimal } from "decimal.js";
import { depthOf } from "../ground/footing";
import { type Material } from "./layers";

/** One ticket of the log. */
export interface Ticket {
  item: string;
  quantity: number;
  unit: string;
  amount: number;
  /** The number of the supplier's invoice that has it; empty while none has. */
  invoice: string;
}

/** One item to settle, and what the bid counted on. */
export interface SettledItem {
  /** What tickets call it. */
  name: string;
  unit: string;
  /** The layer it belongs to: base and sand are counted by tickets in tons or in cubic yards. */
  material?: Material;
  bid: { quantity: number; money: number };
}

/** What came of an item. Quantities in the item's own unit; money to the cent. */
export interface Settled {
  delivered: number;
  /** Of the tickets, and of those that an invoice has. */
  ticketed: Decimal;
  billed: Decimal;
  /** Delivered beyond the bid; below 0 where it is less. */
  moreThanBid: number;
  /** Ticketed beyond the bid. */
  moreMoney: Decimal;
}

/** What a cubic yard of each material weighs, short tons. */
export type TonsPerCy = Readonly<Record<Material, number>>;

/** A layer: how much came and how deep it lies, loose. */
export interface SettledLayer {
  cubicYards: number;
  depth: number;
}

const sameWord = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

/** A quantity of base or sand in the unit asked for; other units than ton and cu yd count as they are. */
function inUnit({ quantity, unit }: Ticket, wanted: string, tonsPerCy: number): number {
  if (sameWord(unit, wanted)) return quantity;
  if (sameWord(unit, "ton") && wanted === "cu yd") return quantity / tonsPerCy;
  if (sameWord(unit, "cu yd") && wanted === "ton") return quantity * tonsPerCy;
  return 0;
}

/** What came of each item by the tickets. Base and sand count in either unit; all else as it was written. */
export function settle(
  items: readonly SettledItem[],
  tickets: readonly Ticket[],
  tonsPerCy: TonsPerCy,
): Settled[] {
  const money = (some: readonly Ticket[]) =>
    some.reduce((sum, { amount }) => sum.plus(amount), new Decimal(0));
  return items.map(({ name, unit, material, bid }) => {
    const own = tickets.filter(({ item }) => sameWord(item, name));
    const delivered = own.reduce(
      (sum, ticket) => sum + (material ? inUnit(ticket, unit, tonsPerCy[material]) : ticket.quantity),
      0,
    );
    const ticketed = money(own);
    return {
      delivered,
      ticketed,
      billed: money(own.filter(({ invoice }) => invoice !== "")),
      moreThanBid: delivered - bid.quantity,
      moreMoney: ticketed.minus(bid.money),
    };
  });
}

/** What came of a layer, and the depth that it gives on the built area, sq ft. */
export function settledLayer(
  of: Material,
  items: readonly SettledItem[],
  settled: readonly Settled[],
  tonsPerCy: TonsPerCy,
  area: number,
): SettledLayer {
  const cubicYards = items.reduce(
    (sum, { material, unit }, k) =>
      material === of ? sum + settled[k].delivered / (unit === "ton" ? tonsPerCy[of] : 1) : sum,
    0,
  );
  return { cubicYards, depth: depthOf(cubicYards, area) };
}
