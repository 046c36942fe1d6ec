import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { newJob, type Job } from "../../../src/estimate/job";
import { type FieldValue } from "../../../src/estimate/fields";
import { contentOfPlans } from "../../../src/sheets/calculate";
import { bidPlan } from "../../../src/sheets/documents/bid";
import { bidExtras, bidHead, bidWork, businessEntries } from "../../../src/sheets/documents/bid-entries";
import { drawsOf } from "../../../src/sheets/documents/bid-draws";
import { changeEntries } from "../../../src/sheets/documents/change-order";
import {
  addressEntries,
  deliveryEntries,
  supplierEntries,
} from "../../../src/sheets/documents/delivery-entries";
import { type Entry } from "../../../src/sheets/documents/entries";
import { invoiceEntries, invoicePlan } from "../../../src/sheets/documents/invoice";
import { orderEntries, purchaseOrderPlan, orderDefaults } from "../../../src/sheets/documents/purchase-order";
import { messages } from "../../../src/sheets/documents/messages";
import { readDocument } from "../../../src/sheets/documents/read";
import { requestAnswers } from "../../../src/sheets/documents/read-request";
import { cellOf } from "../../../src/sheets/documents/source";
import { type SheetPlan } from "../../../src/sheets/plan";
import { styles } from "../../../src/sheets/styles";
import { shownBy } from "../shown";
import { pen, sourcesOf } from "./books";
import { changeOrder, contractIn, issuedBid } from "./issued-bids";
import { requestOf } from "./requests";

type Answers = Record<string, FieldValue>;

const job: Job = { ...newJob(), customer: null, site: null, job_name: null };
const { plans, sources } = sourcesOf([job]);
const contract = contractIn([issuedBid({ customer: null })]);
const lines = [{ item: "Panel, 12 ft", words: "", quantity: 2, unit: "each", price: 10, taxed: true }];

/** What a document may be asked without being asked, and the sheet that it then is, the last of those given. */
interface Written {
  optional: readonly Entry[];
  write(answers: Answers): SheetPlan[];
}

const address = Object.values(addressEntries).filter(({ key }) => key !== "number");
const documents: Record<string, Written> = {
  bid: {
    optional: [...businessEntries.slice(2), bidHead.date, bidHead.valid, ...Object.values(bidWork), ...bidExtras],
    write: (answers) => [
      ...plans,
      bidPlan({ sources, price: cellOf(sources[0], "total"), answers: { bid_number: 1, ...answers }, draws: drawsOf({}), alternates: [] }, "Bid"),
    ],
  },
  "change order": {
    optional: [changeEntries.date, changeEntries.what, changeEntries.why],
    write: (answers) => [changeOrder(contract, 1, answers, "Change order")],
  },
  invoice: {
    optional: [invoiceEntries.date, invoiceEntries.due, invoiceEntries.paid, invoiceEntries.retainage, invoiceEntries.pay],
    write: (answers) => [invoicePlan(contract, answers, "Invoice")],
  },
  "price request": {
    optional: [...address, ...deliveryEntries],
    write: (answers) => {
      const all = Object.fromEntries([...address, ...deliveryEntries].map(({ key }) => [key, null]));
      const made = requestOf([job], { ...all, ...answers });
      return [...made.plans, made.request];
    },
  },
  "purchase order": {
    optional: [...address.filter(({ key }) => key !== "answer_by"), ...deliveryEntries, supplierEntries.freight],
    write: (answers) => [purchaseOrderPlan(lines, { ...orderDefaults, number: 1, ...answers }, "Purchase order")],
  },
}; // prettier-ignore

/** An answer that the entry allows. */
const answerTo = ({ kind, options, range }: Entry): FieldValue =>
  options ? options[0] : kind === "text" ? "invented" : (range?.[0] ?? 0) + 1;

/** A document's sheet with the answers to some of what it may be asked, and what it prints but for lines to sign on. */
function sheetWith({ write }: Written, some: readonly Entry[]) {
  const answers = Object.fromEntries(some.map((one) => [one.key, answerTo(one)]));
  const content = contentOfPlans(write(answers), pen).sheets.at(-1)!;
  const { right } = content.print!.area;
  const printed = content.cells.filter(
    ({ column, style }) => column > 0 && column <= right && !isDeepStrictEqual(style, styles.letterSigned),
  );
  return { answers, shown: shownBy(content), printed: printed.map(({ value }) => value) };
}

describe.each(Object.entries(documents))("a %s", (_name, document) => {
  it("prints the label of an entry only where that was answered, and gives its answers back", () => {
    fc.assert(
      fc.property(fc.subarray([...document.optional]), (some) => {
        const { answers, shown, printed } = sheetWith(document, some);
        for (const entry of document.optional)
          expect([entry.label.en, printed.includes(entry.label.en)]).toEqual([entry.label.en, some.includes(entry)]);
        expect(readDocument(shown, some)).toMatchObject({ entries: answers, problems: {} });
      }),
      { numRuns: 12, examples: [[[]], [[...document.optional]]] },
    );
  });
}); // prettier-ignore

it("leaves nothing to the supplier out: boxes for price, lead time, stock, delivery charge and how long prices hold", () => {
  const { shown } = sheetWith(documents["price request"], []);
  const words = shown.values.flat();
  for (const { label } of Object.values(supplierEntries)) expect(words).toContain(label.en);
  for (const head of ["Unit price", "Lead time", "Available"]) expect(words).toContain(head);
  expect(requestAnswers(shown, orderEntries)).toMatchObject({ supplier: null, dump_at: null, number: 3 });
});

it("leaves a line to sign on, and the day on which a change order was signed, to be filled in", () => {
  const words = sheetWith(documents["change order"], []).shown.values.flat();
  for (const word of [changeEntries.signed.label.en, messages.bid.customerSigns, messages.bid.day])
    expect(words).toContain(word);
});

it("says neither for whom nor where a bid is while its estimate says neither", () => {
  const words = sheetWith(documents.bid, []).shown.values.flat();
  for (const label of [messages.bid.for, messages.bid.site, messages.bid.job])
    expect(words).not.toContain(label);
});
