import { boughtItems, type BoughtItem } from "../../src/estimate/bought-items";
import { fieldOf } from "../../src/estimate/fields";
import { figuresOf } from "../../src/estimate/figures";
import { baseLayer, footingLayer, type Material } from "../../src/estimate/layers";
import { orderTotal } from "../../src/estimate/order-total";
import {
  settle,
  settledLayer,
  type SettledItem,
  type Ticket,
  type TonsPerCy,
} from "../../src/estimate/settle-up";
import { depthOf } from "../../src/ground/footing";
import { closeOutColumns, closeOutPlan } from "../../src/sheets/documents/close-out";
import { closeOutItems } from "../../src/sheets/documents/close-out-lines";
import { deliveryDefaults } from "../../src/sheets/documents/delivery-entries";
import { priceRequestPlan } from "../../src/sheets/documents/price-request";
import { orderDefaults, purchaseOrderPlan } from "../../src/sheets/documents/purchase-order";
import { readRequest } from "../../src/sheets/documents/read-request";
import { specDefaults } from "../../src/sheets/documents/request-specs";
import { boughtOf } from "../../src/sheets/documents/source";
import {
  newLog,
  ticketColumns,
  ticketName,
  ticketRows,
  ticketsPlan,
} from "../../src/sheets/documents/tickets";
import { withTickets } from "../sheets/documents/ticket-books";
import { shownBy } from "../sheets/shown";
import { work, type Priced, type Trail } from "./trail";

const charges = { freight: 120.25, tax: 8.25, tax_status: "taxed" };
/** What a cubic yard weighs in the first of the jobs, blank as usual. */
const tonsPerCy = ({ sources }: Priced): TonsPerCy =>
  Object.fromEntries(
    [footingLayer, baseLayer].map((layer) => [layer.material, Number(sources[0].job[layer.tonsPerCy] ?? fieldOf(layer.tonsPerCy).default)]),
  ) as TonsPerCy; // prettier-ignore

/** A part of an item's lines in the estimates as src has it, added up. */
const inSrc = ({ sources, made }: Priced, { from }: BoughtItem, part: "quantity" | "amount") =>
  from.reduce(
    (sum, { estimate, key }) =>
      sum + Number(figuresOf(sources[estimate].job, made[estimate])[`${key}_${part}`]),
    0,
  );

/** Tickets of every item, some billed, sand in either unit, and one for what is on no list. */
const ticketsFor = (items: readonly SettledItem[], k: number): Ticket[] => [
  ...items.flatMap(({ name, unit, material }, n): Ticket[] => {
    const one = {
      item: name,
      quantity: 3.25 + n,
      unit,
      amount: (4135 * (n + 1) + 7 * k) / 100,
      invoice: n % 2 ? "A-1" : "",
    };
    return material
      ? [one, { ...one, quantity: 7.5, unit: unit === "ton" ? "cu yd" : "ton", amount: 210.1, invoice: "" }]
      : [one];
  }),
  { item: "other", quantity: 1, unit: "each", amount: 33.33, invoice: "B-2" },
];

/** What the close-out says of a layer, by src. */
function layerFigures(material: Material, priced: Priced, bids: readonly SettledItem[], came: ReturnType<typeof settle>): Record<string, number> {
  const weight = tonsPerCy(priced);
  const having = priced.made.filter((one) => one[material].delivered > 0);
  const over = having.length > 0 ? having : priced.made;
  const area = over.reduce((sum, { pen }) => sum + pen.area, 0);
  const { cubicYards, depth } = settledLayer(material, bids, came, weight, area);
  const figures = {
    tons_per_cy: weight[material], built_area: area, came_yards: cubicYards, came_tons: cubicYards * weight[material],
    depth_bid: depthOf(over.reduce((sum, one) => sum + one[material].delivered, 0), area), depth_came: depth,
  };
  return Object.fromEntries(Object.entries(figures).map(([key, value]) => [material === "sand" ? key : `${material}_${key}`, value]));
} // prettier-ignore

/** The price request, the order made from it, the ticket log of its delivery and the close-out over all of them. */
export function purchaseTrail(priced: Priced): Trail {
  const { sources, total, beside, k } = priced;
  const jobs = sources.map(({ job }) => job);
  const items = boughtItems(sources.map(boughtOf));
  const entries = { ...specDefaults(items, jobs), ...deliveryDefaults(jobs), number: k + 1, supplier: "Invented Supply" };
  const [request] = work([priceRequestPlan({ sources, items, entries }, `Price request ${k}`)], beside);
  const lines = readRequest(shownBy(request)).lines.map((line, n) => ({ ...line, price: Math.round((3.37 + n * 7.113) * 1000) / 1000, taxed: n % 3 > 0 }));
  const [order] = work([purchaseOrderPlan(lines, { ...entries, ...orderDefaults, ...charges }, `Purchase order ${k}`)], []);
  const filled = readRequest(shownBy(order));
  const settledItems = closeOutItems(sources, [{ sheet: order.name, supplier: "Invented Supply", filled }]);
  const log = newLog(`Tickets ${k}`);
  const itemOf = (name: string) => settledItems.find((one) => one.name === ticketName(name));
  const bids = items.map((item): SettledItem => ({
    name: ticketName(item.name), unit: item.unit, material: itemOf(item.name)?.material,
    bid: { quantity: inSrc(priced, item, "quantity"), money: inSrc(priced, item, "amount") },
  }));
  const tickets = ticketsFor(bids, k);
  const logged = withTickets(ticketsPlan(settledItems.map(({ name }) => name), ["Invented Supply"], log.sheet), tickets);
  const terms = { contract: total, changes: -45.5, extras: 210.25, paid: 4000 };
  const closeOut = closeOutPlan({ sources, items: settledItems, log, entries: terms }, `Close-out ${k}`);
  const [ticketLog, closed] = work([logged, closeOut], [...beside, order]);

  const due = orderTotal(lines, { ...charges, status: charges.tax_status });
  const weight = tonsPerCy(priced);
  const came = settle(bids, tickets, weight);
  const layers = (["sand", "base"] as const).filter((one) => one === "sand" || bids.some(({ material }) => material === one));
  const ofLayers = layers.map((one) => layerFigures(one, priced, bids, came));
  const cents = (some: number[]) => Math.round(some.reduce((sum, one) => sum + one, 0) * 100) / 100;
  const ticketed = cents(tickets.map(({ amount }) => amount));
  const billed = cents(tickets.filter(({ invoice }) => invoice !== "").map(({ amount }) => amount));
  const inBid = cents(bids.map(({ bid }) => bid.money));
  return {
    sheets: [request, order, ticketLog, closed],
    held: [
      { name: request.name, figures: Object.fromEntries(items.map((item, n) => [`line_${n + 1}_quantity`, inSrc(priced, item, "quantity")])) },
      {
        name: order.name,
        figures: {
          ...Object.fromEntries(due.amounts.map((amount, n) => [`line_${n + 1}_amount`, amount.toNumber()])),
          lines_total: due.lines.toNumber(), tax_amount: due.tax.toNumber(), total: due.total.toNumber(),
        },
      },
      { name: log.sheet, figures: {}, rows: { from: ticketRows.first, columns: [ticketColumns.running], values: tickets.map((_, n) => [cents(tickets.slice(0, n + 1).map(({ amount }) => amount))]) } },
      {
        name: closed.name,
        figures: {
          ...Object.assign({}, ...ofLayers), ...terms,
          left: cents([terms.contract, terms.changes, terms.extras, -terms.paid]),
          unbilled: cents([ticketed, -billed]), cost_more: cents([ticketed, -inBid]),
        },
        rows: {
          from: 5,
          columns: (["bid", "ordered", "delivered", "more", "bidMoney", "orderedMoney", "ticketMoney", "billedMoney", "moreMoney"] as const).map((one) => closeOutColumns[one]),
          values: bids.map(({ bid }, n) => [
            bid.quantity, bid.quantity, came[n].delivered, came[n].moreThanBid,
            bid.money, due.amounts[n].toNumber(), came[n].ticketed.toNumber(), came[n].billed.toNumber(), came[n].moreMoney.toNumber(),
          ]),
        },
      },
    ],
  };
} // prettier-ignore
