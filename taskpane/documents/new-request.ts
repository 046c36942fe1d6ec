import { bySupplier } from "../../src/estimate/by-supplier";
import { type BoughtItem } from "../../src/estimate/bought-items";
import { type FieldValue } from "../../src/estimate/fields";
import { type PriceRow } from "../../src/estimate/prices";
import { addressEntries, deliveryDefaults } from "../../src/sheets/documents/delivery-entries";
import { type Kind } from "../../src/sheets/documents/marks";
import { priceRequestPlan, requestEntries, type Request } from "../../src/sheets/documents/price-request";
import { purchaseWords } from "../../src/sheets/documents/purchase-words";
import { readDocument, shownNumber } from "../../src/sheets/documents/read";
import { specDefaults } from "../../src/sheets/documents/request-specs";
import { type EstimateSource } from "../../src/sheets/documents/source";
import { type SheetPlan } from "../../src/sheets/plan";
import { dayText } from "../day";
import { freeName } from "../names";
import { asked, documentsIn, type Book } from "./book";

type Answers = Record<string, FieldValue>;

/** The next number that no document of this kind in the workbook has. */
export function nextNumber(book: Book, kind: Kind): number {
  const numbers = documentsIn(book, kind).map(
    (sheet) => shownNumber(readDocument(sheet, []), addressEntries.number.key) ?? 0,
  );
  return Math.max(0, ...numbers) + 1;
}

/** What a new request starts with: the number, the day, what the jobs know, and what the last request said of us and the site. */
export function requestStart(
  book: Book,
  sources: readonly EstimateSource[],
  items: readonly BoughtItem[],
  today = new Date(),
): Answers {
  const jobs = sources.map(({ job }) => job);
  const last = documentsIn(book, "price request").at(-1);
  const before = last ? readDocument(last, requestEntries(items)) : undefined;
  const said = Object.entries(before?.entries ?? {}).filter(([key]) => key in before!.cells);
  const known = Object.entries(deliveryDefaults(jobs)).filter(([, value]) => value !== null);
  return {
    ...specDefaults(items, jobs),
    ...Object.fromEntries(said),
    ...Object.fromEntries(known),
    supplier: null,
    answer_by: null,
    freight: null,
    holds_until: null,
    number: nextNumber(book, "price request"),
    date: dayText(today),
  };
}

/** One request to the supplier that its entries name. */
export function newRequest({ sheetNames }: Book, request: Request): SheetPlan {
  return asked(() => priceRequestPlan(request, freeName(purchaseWords.request, sheetNames)));
}

/** A request to each supplier that the prices name for one of the items, numbered on; and the items that none is named for. */
export function newRequests(
  { sheetNames }: Book,
  prices: readonly PriceRow[],
  request: Request,
): { plans: SheetPlan[]; without: BoughtItem[] } {
  const groups = bySupplier(request.items, prices);
  const taken = [...sheetNames];
  const plans = groups
    .filter(({ supplier }) => supplier !== "")
    .map(({ supplier, items }, k) => {
      const name = freeName(purchaseWords.request, taken);
      taken.push(name);
      const entries = { ...request.entries, supplier, number: Number(request.entries.number ?? 1) + k };
      return asked(() => priceRequestPlan({ ...request, items, entries }, name));
    });
  return { plans, without: groups.find(({ supplier }) => supplier === "")?.items ?? [] };
}
