import { type FieldValue } from "../../estimate/fields";
import { taxStatuses } from "../../estimate/order-total";
import { put } from "../estimate-cells";
import { call, number, operate, over, plus, range, text, times, when, type Expression } from "../expression";
import { messages } from "../messages";
import { type PlanCell, type SheetPlan } from "../plan";
import { addressEntries, deliveryEntries, supplierEntries } from "./delivery-entries";
import { documentPlan } from "./document";
import { answered, entry, textEntry, type Entry } from "./entries";
import { marks } from "./marks";
import { deliveryRows, headRow, LETTERS, purchaseWidths, quantityStyle, wide } from "./purchase-rows";
import { purchaseWords as say } from "./purchase-words";
import { type FilledLine } from "./read-request";
import {
  columns, entryRow, gap, headingRow, LINE, linesOf, moneyEntryRow, moneyRow, numberedRow, paragraphRow,
  saidRow, signatureRows, type At, type Row,
} from "./rows"; // prettier-ignore

/** A line to order: what the supplier offered, and whether sales tax falls on it. */
export interface OrderedLine extends Pick<FilledLine, "item" | "words" | "quantity" | "unit" | "price"> {
  taxed: boolean;
}

const taxEntries = {
  status: entry("Sales tax", "Impuesto", { key: "tax_status", kind: "choice", options: taxStatuses, default: taxStatuses[0] }),
  tax: entry("Sales tax, %", "Impuesto, %", { key: "tax", kind: "number", unit: "%", range: [0, 30], default: 0 }),
} as const; // prettier-ignore

const terms = textEntry("terms", "Terms", "Condiciones", say.usualTerms);
const payment = textEntry("payment", "Payment", "Pago", "30 days from invoice");
const { number: ownNumber, supplier, business, contact, date, jobNumber } = addressEntries;
const { freight } = supplierEntries;
const addresses = [supplier, business, contact, date, jobNumber];

/** The entries of a purchase order, in their order. */
export const orderEntries: readonly Entry[] = [
  ownNumber,
  ...addresses,
  ...deliveryEntries,
  ...Object.values(taxEntries),
  freight,
  payment,
  terms,
];

/**
 * The order to one supplier: agreed quantities and prices, which may be typed over, with line amounts and total as
 * formulas; where it goes, the job number for every ticket, the terms. It holds no price to a customer and no markup.
 */
export function purchaseOrderPlan(
  lines: readonly OrderedLine[],
  entries: Readonly<Record<string, FieldValue>>,
  name: string,
): SheetPlan {
  const row = (one: Entry) => wide(entryRow(one, entries[one.key] ?? null));
  const last = lines.length;
  const column = (at: At, part: string) => range(placeOf(at(`line_1_${part}`)), placeOf(at(`line_${last}_${part}`)));
  const amounts = (at: At) => call("SUM", column(at, "amount"));
  const taxed = (at: At) => call("SUMIFS", column(at, "amount"), column(at, "taxed"), "yes");
  const isTaxed = (at: At) => operate(at(taxEntries.status.key), "=", taxStatuses[0]);
  const cents = (money: Expression) => call("ROUND", money, 2);
  const rows: Row[] = [
    wide(numberedRow(say.order, ownNumber, entries[ownNumber.key] ?? null)),
    ...answered(addresses, entries).map(row),
    ...answered([jobNumber], entries).map(({ key }) =>
      wide(saidRow((at) => when(operate(call("LEN", at(key)), ">", 0), text(say.onTickets, at(key)), ""), "letterStrong"))),
    gap(),
    wide(headingRow(say.items)),
    headRow(["item", "words", "quantity", "unit", "price", "amount", "taxed"]),
    ...lines.map(lineRow),
    moneyRow(say.lines, (at) => cents(amounts(at)), { key: "lines_total" }),
    ...answered([freight], entries).map((one) => moneyEntryRow(one, entries[one.key])),
    moneyRow(
      { kind: "constant", value: say.salesTax },
      (at) => when(isTaxed(at), cents(over(times(taxed(at), number(at(taxEntries.tax.key))), 100)), 0),
      { key: "tax_amount" },
    ),
    moneyRow(say.total, (at) => cents(plus(at("lines_total"), ...answered([freight], entries).map(({ key }) => number(at(key))), at("tax_amount"))), {
      key: "total",
      total: true,
    }),
    ...deliveryRows(entries),
    gap(),
    wide(headingRow(say.terms)),
    ...[...Object.values(taxEntries), ...answered([payment], entries)].map(row),
    ...answered([terms], entries).map((one) => wide(paragraphRow(one, entries[one.key]))),
    ...signatureRows(say.signers, say.day),
  ];
  return documentPlan({ mark: marks["purchase order"], name, rows, footer: say.orderFooter, widths: purchaseWidths });
} // prettier-ignore

function placeOf(of: Expression) {
  if (of.kind !== "cell") throw new Error("A key stands in a cell.");
  return of.place;
}

function lineRow(line: OrderedLine, k: number): Row {
  const keyOf = (part: string) => `line_${k + 1}_${part}`;
  const input = (row: number, column: number, value: FieldValue, style: PlanCell["style"], most: number): PlanCell => ({
    row, column, says: { kind: "constant", value }, style, input: true,
    accepts: { kind: "number", least: 0, most, message: messages.between(0, most) },
  });
  return {
    keys: {
      item: keyOf("item"), words: keyOf("spec"), quantity: keyOf("quantity"), unit: keyOf("unit"),
      price: keyOf("price"), amount: keyOf("amount"), more: keyOf("taxed"),
    },
    height: 4 + LINE * Math.max(linesOf(line.item, LETTERS.item), linesOf(line.words, LETTERS.words)),
    cells: (row, at) => [
      put(row, columns.item, line.item, "letterWords"),
      put(row, columns.words, line.words, "letterWords"),
      input(row, columns.quantity, line.quantity, quantityStyle(line.quantity), 1_000_000),
      put(row, columns.unit, line.unit, "itemUnit"),
      input(row, columns.price, line.price, "itemMoney", 1_000_000),
      put(row, columns.amount, call("ROUND", times(number(at(keyOf("quantity"))), number(at(keyOf("price")))), 2), "itemMoney"),
      {
        ...put(row, columns.more, line.taxed ? "yes" : "no", "itemMark"), input: true,
        accepts: { kind: "list", options: ["yes", "no"], message: messages.yesOrNo },
      },
    ],
  };
} // prettier-ignore

/** What a new order says until the user says otherwise, beside what its request said. */
export const orderDefaults: Readonly<Record<string, FieldValue>> = Object.fromEntries(
  [...Object.values(taxEntries), payment, terms].map((one) => [one.key, one.default]),
);
