import { together } from "../../src/estimate/together";
import { type FieldValue } from "../../src/estimate/fields";
import { HostError } from "../../src/hosts/host";
import { bidPlan } from "../../src/sheets/documents/bid";
import { drawsOf } from "../../src/sheets/documents/bid-draws";
import { bidHead, businessEntries } from "../../src/sheets/documents/bid-entries";
import { type Alternate } from "../../src/sheets/documents/bid-price";
import { messages } from "../../src/sheets/documents/messages";
import { readDocument, shownNumber } from "../../src/sheets/documents/read";
import { cellOf, exampleLines, totalShown, type EstimateSource } from "../../src/sheets/documents/source";
import { sharesIn, togetherPlan, totalIn } from "../../src/sheets/documents/together";
import { type SheetPlan } from "../../src/sheets/plan";
import { dayText } from "../day";
import { freeName } from "../names";
import { asked, documentsIn, type Book } from "./book";

/** Days that a bid is good for, unless the user says otherwise (common practice, no source). */
const DAYS = 30;

/** The next number that no bid of the workbook has, issued or not. */
export function nextBidNumber(book: Book): number {
  const bids = [...documentsIn(book, "bid"), ...documentsIn(book, "issued")];
  const numbers = bids.map((sheet) => shownNumber(readDocument(sheet, []), bidHead.number.key) ?? 0);
  return Math.max(0, ...numbers) + 1;
}

/** What a new bid starts with: the next number, the day, and who the last bid of the workbook was from. */
export function bidStart(book: Book, today = new Date()): Record<string, FieldValue> {
  const last = documentsIn(book, "bid").at(-1);
  const until = new Date(today.getFullYear(), today.getMonth(), today.getDate() + DAYS);
  return {
    ...(last ? readDocument(last, businessEntries).entries : {}),
    [bidHead.number.key]: nextBidNumber(book),
    [bidHead.date.key]: dayText(today),
    [bidHead.valid.key]: dayText(until),
  };
}

/** What the user chose for a bid beside its entries. */
export interface BidChoice {
  answers: Record<string, FieldValue>;
  alternates: readonly Alternate[];
  /** It may stand on example prices, and then says so. */
  example: boolean;
}

/**
 * A new bid under a free name; over several estimates the sheet that prices them as one comes before it. Refuses an
 * estimate without a total, estimates that name different customers or cannot be priced as one, and example prices unless
 * they are asked for.
 */
export function newBid(book: Book, sources: readonly EstimateSource[], choice: BidChoice): SheetPlan[] {
  const { answers, alternates, example } = choice;
  const lines = exampleLines(sources);
  const customers = new Set(sources.map(({ job }) => job.customer).filter(Boolean));
  if (customers.size > 1) throw new HostError(messages.bid.customers([...customers].join(", ")));
  asked(() => sources.forEach(totalShown));
  if (lines > 0 && !example) throw new HostError(messages.bid.onExamples(lines));
  const shared = sources.length > 1 ? [asked(() => pricedAsOne(book, sources))] : [];
  const number = String(answers[bidHead.number.key] ?? nextBidNumber(book));
  const name = freeName(`${messages.bid.title} ${number}`, book.sheetNames);
  const price =
    shared.length > 0 ? totalIn(sources, shared[0].name) : asked(() => cellOf(sources[0], "total"));
  const bid = asked(() =>
    bidPlan(
      {
        sources,
        price,
        ...(shared.length > 0 ? { shares: sharesIn(sources, shared[0].name) } : {}),
        answers: { ...answers, [bidHead.number.key]: Number(number) },
        alternates,
        draws: drawsOf(answers),
      },
      name,
    ),
  );
  return [...shared, bid];
}

/** The sheet that prices these estimates as one, under a free name. */
function pricedAsOne(
  { sheetNames, prices, pricesLayout }: Book,
  sources: readonly EstimateSource[],
): SheetPlan {
  together(
    sources.map(({ job, sheet }) => ({ job, own: sheet.own })),
    prices,
  );
  return togetherPlan(sources, pricesLayout, freeName(messages.together.title, sheetNames));
}
