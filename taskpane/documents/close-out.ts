import { html, nothing, type TemplateResult } from "lit/html.js";
import { type FieldValue } from "../../src/estimate/fields";
import { HostError, type SheetContent } from "../../src/hosts/host";
import { closeOutEntries, closeOutPlan } from "../../src/sheets/documents/close-out";
import { closeOutItems, type Order } from "../../src/sheets/documents/close-out-lines";
import { closeOutWords } from "../../src/sheets/documents/close-out-words";
import { addressEntries } from "../../src/sheets/documents/delivery-entries";
import { contractOf } from "../../src/sheets/documents/contract";
import { readDocument, shownNumber } from "../../src/sheets/documents/read";
import { readRequest } from "../../src/sheets/documents/read-request";
import { type EstimateSource } from "../../src/sheets/documents/source";
import { logOf, newLog, ticketsPlan } from "../../src/sheets/documents/tickets";
import { type SheetPlan } from "../../src/sheets/plan";
import { Refusal } from "../../src/units/refusal";
import { sheetName } from "../../src/sheets/address";
import { dayText } from "../day";
import { freeName } from "../names";
import { type Context } from "../views/context";
import { asked, documentsIn, type Book } from "./book";
import { type Desk } from "./desk";
import { Form } from "./form";
import { type DocumentBody } from "./list";

const say = {
  hint: "Settles the ticked estimates against every purchase order of this workbook. It shows costs: keep it in the house.",
  orders: (count: number) => (count === 1 ? "1 purchase order" : `${count} purchase orders`),
  write: "Write ticket log and close-out",
  onLog: (log: string) => `Write close-out on the tickets of ${log}`,
  noOrder: (sheet: string) =>
    `"${sheet}" has no line under its heads "Item" and "Unit price". Put them back, or delete that sheet.`,
  written: (sheet: string, log: string) => `Written on the new sheet "${sheet}". It follows the tickets on "${log}".`,
}; // prettier-ignore

/** The purchase orders of a workbook, as close-outs need them. */
export const ordersIn = (book: Book): Order[] =>
  documentsIn(book, "purchase order").map((sheet) => ({
    sheet: sheet.name,
    supplier: String(readDocument(sheet, [addressEntries.supplier]).entries.supplier ?? ""),
    filled: linesOf(sheet),
  }));

function linesOf(sheet: SheetContent) {
  try {
    return readRequest(sheet);
  } catch (refusal) {
    if (refusal instanceof Refusal) throw new HostError(say.noOrder(sheet.name));
    throw refusal;
  }
}

/** What a close-out starts with: the day, and of the bid issued last its price, its signed changes, and what is billed by now. */
export function closeOutStart(book: Book, today = new Date()): Record<string, FieldValue> {
  const day = { closed_on: dayText(today) };
  const issued = documentsIn(book, "issued").at(-1);
  if (!issued) return day;
  const { bid, changes } = asked(() => contractOf(issued, book.sheets));
  const signed = changes.reduce((sum, change) => sum + (shownNumber(change, "change_net") ?? 0), 0);
  const paid = billedOn(issued.name, book);
  return {
    ...day,
    contract: shownNumber(bid, "price") ?? null,
    changes: signed || null,
    ...(paid && { paid }),
  };
}

/** What the last invoice on an issued bid bills to date; nothing where there is none. */
function billedOn(bid: string, book: Book): number | undefined {
  const named = `${sheetName(bid)}!`;
  const last = documentsIn(book, "invoice").filter(({ formulas }) => formulas.flat().some((says) => String(says).includes(named))).at(-1);
  return last && shownNumber(readDocument(last, []), "invoice_billed");
} // prettier-ignore

/** A new close-out, on the last ticket log of the workbook or, where `fresh` or none can be read, with a new one. */
export function newCloseOut(
  book: Book,
  sources: readonly EstimateSource[],
  entries: Readonly<Record<string, FieldValue>>,
  fresh: boolean,
): { plans: SheetPlan[]; name: string; log: string } {
  const orders = ordersIn(book);
  const items = asked(() => closeOutItems(sources, orders));
  const standing = fresh ? undefined : lastLog(book);
  const name = freeName(closeOutWords.closeOut, book.sheetNames);
  const log = standing ?? newLog(freeName(closeOutWords.tickets, book.sheetNames));
  const suppliers = [...new Set(orders.map(({ supplier }) => supplier).filter(Boolean))];
  const tickets = standing ? [] : [ticketsPlan(items.map((one) => one.name), suppliers, log.sheet)];
  const plan = asked(() => closeOutPlan({ sources, items, log, entries }, name));
  return { plans: [...tickets, plan], name, log: log.sheet };
} // prettier-ignore

const lastLog = (book: Book) =>
  documentsIn(book, "tickets").flatMap((sheet) => logOf(sheet) ?? []).at(-1); // prettier-ignore

/** The same, with nothing of a bid whose sheet has lost its price or number. */
function startOr(book: Book): Record<string, FieldValue> {
  try {
    return closeOutStart(book);
  } catch (refusal) {
    if (refusal instanceof HostError) return { closed_on: dayText(new Date()) };
    throw refusal;
  }
}

/** The close-out's part of the panel: its entries, and the buttons that write it with a new ticket log or on the last one. */
export function closeOutBody(): DocumentBody {
  let form: Form | undefined;

  const write = (context: Context, desk: Desk, fresh: boolean) => async () => {
    const entries = form!.read();
    const { book, sources } = await desk.sources(context);
    const { plans, name, log } = newCloseOut(book, sources, entries, fresh);
    await context.host.write(plans);
    context.panel.see(await context.host.look());
    await desk.read(context);
    return say.written(name, log);
  };

  return {
    view(context, desk): TemplateResult {
      const { book } = desk;
      if (!book) return html`${nothing}`;
      form ??= new Form(closeOutEntries, startOr(book), "close-out");
      const { panel } = context;
      const log = lastLog(book);
      const button = (label: string, fresh: boolean) =>
        html`<button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(write(context, desk, fresh))}>
          ${label}
        </button>`;
      return html`<p class="beside">${say.hint}</p>
        <p role="status">${say.orders(documentsIn(book, "purchase order").length)}</p>
        ${form.view(context)}
        <section class="commands">
          ${log ? button(say.onLog(log.sheet), false) : nothing} ${button(say.write, true)}
        </section>`;
    },
  };
} // prettier-ignore
