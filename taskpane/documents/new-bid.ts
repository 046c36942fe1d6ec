import { type FieldValue } from "../../src/estimate/fields";
import { HostError } from "../../src/hosts/host";
import { bidPlan } from "../../src/sheets/documents/bid";
import { drawsOf } from "../../src/sheets/documents/bid-draws";
import { bidHead, businessEntries } from "../../src/sheets/documents/bid-entries";
import { type Alternate } from "../../src/sheets/documents/bid-price";
import { messages } from "../../src/sheets/documents/messages";
import { readDocument, shownNumber } from "../../src/sheets/documents/read";
import { cellOf, exampleLines, totalShown, type EstimateSource } from "../../src/sheets/documents/source";
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

/** A new bid under a free name. Refuses an estimate without a total, and example prices unless they are asked for. */
export function newBid(book: Book, sources: readonly EstimateSource[], choice: BidChoice): SheetPlan {
  const { answers, alternates, example } = choice;
  const lines = exampleLines(sources);
  asked(() => sources.forEach(totalShown));
  if (lines > 0 && !example) throw new HostError(messages.bid.onExamples(lines));
  const number = String(answers[bidHead.number.key] ?? nextBidNumber(book));
  const name = freeName(`${messages.bid.title} ${number}`, book.sheetNames);
  return asked(() =>
    bidPlan(
      {
        sources,
        price: cellOf(sources[0], "total"),
        answers: { ...answers, [bidHead.number.key]: Number(number) },
        alternates,
        draws: drawsOf(answers),
      },
      name,
    ),
  );
}
