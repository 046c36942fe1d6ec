import { html, nothing, type TemplateResult } from "lit/html.js";
import { orderTotal } from "../../src/estimate/order-total";
import { HostError } from "../../src/hosts/host";
import { type Shown } from "../../src/sheets/keyed-cells";
import { orderEntries } from "../../src/sheets/documents/purchase-order";
import { readRequest, requestAnswers, type FilledRequest } from "../../src/sheets/documents/read-request";
import { PricePreview } from "../prices/preview";
import { tableOfFile } from "../prices/table-of-file";
import { money, number } from "../shown";
import { type Context } from "../views/context";
import { asked, documentsIn, type Book } from "./book";
import { type Desk } from "./desk";
import { Form } from "./form";
import { type DocumentBody } from "./list";
import { newOrder, orderedLines, orderStart, priceTableOf } from "./new-order";

const say = {
  none: "No price request in this workbook yet. Write one, or open one that a supplier sent back.",
  read: (sheet: string) => `Read ${sheet}`,
  open: "or open one that was sent back (.xlsx, .csv)",
  lines: (priced: number, all: number) => `${priced} of ${all} lines have a price.`,
  not: "Not understood or not priced:",
  toPrices: "What it would do to your prices:",
  comesTo: (total: string) => `This order comes to ${total}.`,
  write: "Write purchase order",
  written: (sheet: string) => `Written on the new sheet "${sheet}". Quantities and prices on it can be typed over.`,
  gone: (sheet: string) => `"${sheet}" is no longer in the workbook.`,
}; // prettier-ignore

/** A request that was read, and the order that is made from it. */
interface Read {
  from: string;
  filled: FilledRequest;
  form: Form;
}

/** The purchase order's part of the panel: which request to read, what it says, and the order made from it. */
export function purchaseOrderBody(): DocumentBody {
  const preview = new PricePreview();
  let read: Read | undefined;

  async function take(context: Context, book: Book, sheet: Shown): Promise<void> {
    const filled = asked(() => readRequest(sheet));
    const answers = requestAnswers(sheet, orderEntries);
    const form = new Form(orderEntries, orderStart(book, answers), "order");
    read = { from: sheet.name, filled, form };
    await preview.read(context, priceTableOf(filled.lines, String(answers.supplier ?? "")));
  }

  const fromSheet = (context: Context, desk: Desk, name: string) => async () => {
    const book = await desk.read(context);
    const sheet = book.sheets.find((one) => one.name === name);
    if (!sheet) throw new HostError(say.gone(name));
    await take(context, book, sheet);
    return "";
  };

  const fromFile = (context: Context, desk: Desk, file: File) => async () => {
    await take(context, await desk.read(context), { name: file.name, values: await tableOfFile(file) });
    return "";
  };

  const write = (context: Context, desk: Desk) => async () => {
    const answers = read!.form.read();
    const book = await desk.read(context);
    const plan = newOrder(book, read!.filled.lines, answers);
    await context.host.write([plan]);
    context.panel.see(await context.host.look());
    read!.form.set({ number: orderStart(await desk.read(context), {}).number });
    return say.written(plan.name);
  };

  function readView(context: Context, desk: Desk, { filled, form }: Read): TemplateResult {
    const { lines, notUnderstood } = filled;
    const { panel } = context;
    return html`<p role="status">${say.lines(lines.filter(({ price }) => price !== null).length, lines.length)}</p>
      <ul class="put">
        ${lines.map(({ item, quantity, unit, price, lead, available }) =>
          html`<li class="price-line">
            ${item}: ${quantity === null ? "" : number(quantity)} ${unit} ${price === null ? nothing : html`<strong>${money(price)}</strong>`}
            <span class="beside">${[lead, available].filter(Boolean).join(", ")}</span>
          </li>`)}
      </ul>
      ${notUnderstood.length > 0
        ? html`<p>${say.not}</p><ul>${notUnderstood.map((why) => html`<li>${why}</li>`)}</ul>`
        : nothing}
      <p>${say.toPrices}</p>
      ${preview.view(context)} ${form.view(context)} ${totalView(desk.book!, filled, form)}
      <section class="commands">
        <button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(write(context, desk))}>
          ${say.write}
        </button>
      </section>`;
  }

  return {
    view(context, desk) {
      const { book } = desk;
      if (!book) return html`${nothing}`;
      const { panel } = context;
      const requests = documentsIn(book, "price request");
      const picked = (event: Event) => {
        const file = (event.target as HTMLInputElement).files?.[0];
        if (file) void panel.run(fromFile(context, desk, file));
      };
      return html`${requests.length === 0 ? html`<p class="beside">${say.none}</p>` : nothing}
        <section class="commands">
          ${requests.map(({ name }) =>
            html`<button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(fromSheet(context, desk, name))}>
              ${say.read(name)}
            </button>`)}
          <label class="beside">${say.open} <input type="file" accept=".xlsx,.csv,.tsv,.txt" @change=${picked} /></label>
        </section>
        ${read ? readView(context, desk, read) : nothing}`;
    },
  };
} // prettier-ignore

/** What the order would come to; nothing while an entry cannot be read. */
function totalView({ prices }: Book, { lines }: FilledRequest, form: Form) {
  try {
    const { freight, tax, tax_status } = form.read();
    const total = orderTotal(orderedLines(lines, prices), {
      freight: Number(freight ?? 0), tax: Number(tax ?? 0), status: String(tax_status),
    }); // prettier-ignore
    return html`<p role="status">${say.comesTo(money(total.total.toNumber()))}</p>`;
  } catch (refusal) {
    if (refusal instanceof HostError) return nothing;
    throw refusal;
  }
}
