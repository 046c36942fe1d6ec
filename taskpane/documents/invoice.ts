import { invoiceAsked, invoiceEntries, invoicePlan } from "../../src/sheets/documents/invoice";
import { readDocument, shownNumber } from "../../src/sheets/documents/read";
import { dayText } from "../day";
import { documentsIn } from "./book";
import { contractBody } from "./contract-body";

/** The invoice's part of the panel. Its number is the next one of the workbook. */
export const invoiceBody = () =>
  contractBody({
    title: "Invoice",
    write: "Write invoice",
    hint: "Signed change orders are billed with it.",
    numberKey: invoiceEntries.number.key,
    asks: invoiceAsked,
    start: (_, book) => {
      const numbers = documentsIn(book, "invoice").map(
        (sheet) => shownNumber(readDocument(sheet, []), invoiceEntries.number.key) ?? 0,
      );
      return {
        [invoiceEntries.number.key]: Math.max(0, ...numbers) + 1,
        [invoiceEntries.date.key]: dayText(new Date()),
      };
    },
    plan: invoicePlan,
  });
