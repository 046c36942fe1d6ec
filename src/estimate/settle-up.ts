import { Decimal } from "decimal.js";
import { depthOf } from "../ground/footing";

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
  /** True of sand, which tickets may count in tons or in cubic yards. */
  sand: boolean;
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

/** Sand: how much came and how deep it lies, loose. */
export interface SettledSand {
  cubicYards: number;
  depth: number;
}

const sameWord = (one: string, other: string) => one.toLowerCase() === other.toLowerCase();

/** A quantity of sand in the unit asked for; other units than ton and cu yd count as they are. */
function inUnit({ quantity, unit }: Ticket, wanted: string, tonsPerCy: number): number {
  if (sameWord(unit, wanted)) return quantity;
  if (sameWord(unit, "ton") && wanted === "cu yd") return quantity / tonsPerCy;
  if (sameWord(unit, "cu yd") && wanted === "ton") return quantity * tonsPerCy;
  return 0;
}

/** What came of each item by the tickets. Sand counts in either unit; all else as it was written. */
export function settle(
  items: readonly SettledItem[],
  tickets: readonly Ticket[],
  tonsPerCy: number,
): Settled[] {
  const money = (some: readonly Ticket[]) =>
    some.reduce((sum, { amount }) => sum.plus(amount), new Decimal(0));
  return items.map(({ name, unit, sand, bid }) => {
    const own = tickets.filter(({ item }) => sameWord(item, name));
    const delivered = own.reduce(
      (sum, ticket) => sum + (sand ? inUnit(ticket, unit, tonsPerCy) : ticket.quantity),
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

/** The sand that came, and the depth that it gives on the built area, sq ft. */
export function settledSand(
  items: readonly SettledItem[],
  settled: readonly Settled[],
  tonsPerCy: number,
  area: number,
): SettledSand {
  const cubicYards = items.reduce(
    (sum, { sand, unit }, k) => (sand ? sum + settled[k].delivered / (unit === "ton" ? tonsPerCy : 1) : sum),
    0,
  );
  return { cubicYards, depth: depthOf(cubicYards, area) };
}
