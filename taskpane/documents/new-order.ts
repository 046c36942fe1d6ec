import { itemName } from "../../src/estimate/missing-prices";
import { type PriceRow } from "../../src/estimate/prices";
import { type FieldValue } from "../../src/estimate/fields";
import { HostError } from "../../src/hosts/host";
import {
  purchaseOrderPlan,
  orderDefaults,
  orderEntries,
  type OrderedLine,
} from "../../src/sheets/documents/purchase-order";
import { purchaseWords } from "../../src/sheets/documents/purchase-words";
import { type FilledLine } from "../../src/sheets/documents/read-request";
import { readDocument } from "../../src/sheets/documents/read";
import { type SheetPlan } from "../../src/sheets/plan";
import { type Cell } from "../../src/units/cell";
import { dayText } from "../day";
import { freeName } from "../names";
import { documentsIn, type Book } from "./book";
import { nextNumber } from "./new-request"; // prettier-ignore

type Answers = Record<string, FieldValue>;

/** What a new order starts with: the number, the day, the terms of the last order, and what its request said. */
export function orderStart(book: Book, requested: Readonly<Answers>, today = new Date()): Answers {
  const last = documentsIn(book, "purchase order").at(-1);
  const { terms, payment, tax, tax_status } = last ? readDocument(last, orderEntries).entries : orderDefaults;
  return {
    ...requested,
    terms, payment, tax, tax_status,
    number: nextNumber(book, "purchase order"),
    date: dayText(today),
  };
} // prettier-ignore

/** A filled-in request as a table of prices of its supplier, for those lines that have a price. */
export const priceTableOf = (lines: readonly FilledLine[], supplier: string): Cell[][] => [
  ["Item", "Unit", "Unit price", "Supplier"],
  ...lines
    .filter(({ price }) => price !== null)
    .map(({ item, unit, price }) => [item, unit, price, supplier]),
];

/** The lines to order: those with a price and a quantity, taxed as the prices say of their item, else taxed. */
export function orderedLines(lines: readonly FilledLine[], prices: readonly PriceRow[]): OrderedLine[] {
  const taxed = new Map(prices.map((row) => [itemName(row), row.taxed]));
  return lines
    .filter(({ price, quantity }) => price !== null && (quantity ?? 0) > 0)
    .map((line) => ({ ...line, taxed: taxed.get(line.item) ?? true }));
}

/** A new order under a free name. Refuses a request of which no line has a price. */
export function newOrder(book: Book, lines: readonly FilledLine[], answers: Readonly<Answers>): SheetPlan {
  const ordered = orderedLines(lines, book.prices);
  if (ordered.length === 0) throw new HostError(purchaseWords.nothingPriced);
  const name = freeName(`${purchaseWords.order} ${String(answers.number ?? "")}`.trim(), book.sheetNames);
  return purchaseOrderPlan(ordered, answers, name);
}
