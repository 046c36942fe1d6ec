import { boughtItems } from "../../estimate/bought-items";
import { type PriceKind } from "../../estimate/prices";
import { layers, type Material } from "../../estimate/layers";
import { type Place } from "../address";
import { call, cell, number, over, plus, text, times, type Expression } from "../expression";
import { type FilledRequest } from "./read-request";
import { boughtOf, cellOf, type EstimateSource } from "./source";
import { type TicketLog, ticketName, ticketRange } from "./tickets";

/** A purchase order as its sheet holds it. */
export interface Order {
  sheet: string;
  supplier: string;
  filled: FilledRequest;
}

/** One item to settle: where the bid and the orders hold it. */
export interface CloseOutItem {
  /** What tickets call it. */
  name: string;
  unit: string;
  /** The layer it belongs to: base and sand are counted by tickets in tons or in cubic yards. */
  material?: Material;
  /** Live sums over the estimates and over the orders; 0 where none has it. */
  bid: { quantity: Expression; money: Expression };
  ordered: { quantity: Expression; money: Expression };
}

/** The layer that an item of the prices belongs to. */
const materialOf = (item: PriceKind): Material | undefined =>
  layers.find(({ items }) => Object.values(items).includes(item))?.material;

const zero: Expression = { kind: "constant", value: 0 };
const total = (some: Expression[]) => (some.length > 0 ? plus(some[0], ...some.slice(1)) : zero);

/** Every item that the estimates buy or an order holds, like ones together, in that order. */
export function closeOutItems(sources: readonly EstimateSource[], orders: readonly Order[]): CloseOutItem[] {
  const bought = boughtItems(sources.map(boughtOf));
  const ordered = orders.flatMap(({ sheet, filled: { lines, columns } }) =>
    lines.map((line) => {
      const at = (column?: number): Place => ({ sheet, row: line.row, column: column! });
      return {
        name: ticketName(line.item),
        unit: line.unit,
        quantity: number(cell(at(columns.quantity))),
        money: call("ROUND", times(number(cell(at(columns.quantity))), number(cell(at(columns.price)))), 2),
      };
    }),
  );
  const known = new Map(bought.map((item) => [ticketName(item.name).toLowerCase(), item]));
  const others = ordered.filter(({ name }) => !known.has(name.toLowerCase()));
  const names = [
    ...bought.map(({ name, unit, item }) => ({
      name: ticketName(name),
      unit,
      material: materialOf(item),
    })),
    ...[...new Map(others.map((one) => [one.name.toLowerCase(), { ...one, material: undefined }])).values()],
  ];
  return names.map(({ name, unit, material }): CloseOutItem => {
    const from = known.get(name.toLowerCase())?.from ?? [];
    const own = ordered.filter((one) => one.name.toLowerCase() === name.toLowerCase());
    const inBid = (part: string) =>
      total(from.map(({ estimate, key }) => number(cellOf(sources[estimate], `${key}_${part}`))));
    return {
      name,
      unit,
      material,
      bid: { quantity: inBid("quantity"), money: inBid("amount") },
      ordered: {
        quantity: total(own.map(({ quantity }) => quantity)),
        money: total(own.map(({ money }) => money)),
      },
    };
  });
}

/** What tickets say of an item, live: `of` is its cell, `tonsPerCy` that of what a cubic yard of its layer weighs. */
export function ticketSums(
  log: TicketLog,
  { unit, material }: CloseOutItem,
  of: Expression,
  tonsPerCy: Expression,
): { delivered: Expression; money: Expression; billed: Expression } {
  const [items, quantities, units, amounts] = (["item", "quantity", "unit", "amount"] as const).map(
    (column) => ticketRange(log, column),
  );
  const is = text("=", of);
  const counted = (wanted: string) => call("SUMIFS", quantities, items, is, units, wanted);
  const delivered = !material
    ? call("SUMIFS", quantities, items, is)
    : unit === "ton"
      ? plus(counted("ton"), times(counted("cu yd"), tonsPerCy))
      : plus(counted("cu yd"), over(counted("ton"), tonsPerCy));
  return {
    delivered,
    money: call("SUMIFS", amounts, items, is),
    billed: call("SUMIFS", amounts, items, is, ticketRange(log, "invoice"), "<>"),
  };
}
