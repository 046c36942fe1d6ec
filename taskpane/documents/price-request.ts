import { html, nothing, type TemplateResult } from "lit/html.js";
import { boughtItems, type BoughtItem } from "../../src/estimate/bought-items";
import { bySupplier, suppliersOf } from "../../src/estimate/by-supplier";
import { HostError } from "../../src/hosts/host";
import { supplierEntries } from "../../src/sheets/documents/delivery-entries";
import { requestEntries, type Request } from "../../src/sheets/documents/price-request";
import { purchaseWords } from "../../src/sheets/documents/purchase-words";
import { boughtOf, type EstimateSource } from "../../src/sheets/documents/source";
import { number } from "../shown";
import { type Context } from "../views/context";
import { asked, sourcesIn, type Book } from "./book";
import { type Desk } from "./desk";
import { Form } from "./form";
import { type DocumentBody } from "./list";
import { newRequest, newRequests, requestStart } from "./new-request";

const say = {
  ask: "Ask for",
  write: "Write price request",
  each: (count: number) => `Write one for each of ${count} suppliers in the prices`,
  hint: "It shows no price, no total and nothing of the customer. Send it as a plain copy; read it again once it is filled in.",
  written: (sheet: string) => `Written on the new sheet "${sheet}".`,
  writtenAll: (count: number, without: string) =>
    `${count} price requests are written.${without ? ` No supplier is named for: ${without}.` : ""}`,
};

/** What is asked for at the moment: of which estimates, and which of their items are left out. */
interface Asked {
  of: string;
  book: Book;
  sources: EstimateSource[];
  items: BoughtItem[];
  form: Form;
}

const itemsOf = (sources: readonly EstimateSource[]) => asked(() => boughtItems(sources.map(boughtOf)));

/** The price request's part of the panel: the items to tick, its entries, and the buttons that write it. */
export function priceRequestBody(): DocumentBody {
  let present: Asked | undefined;
  const left = new Set<string>();

  /** The items of the ticked estimates; answers that were typed stay while other estimates are ticked. */
  function askedOf(book: Book, names: readonly string[]): Asked {
    if (present?.book === book && present.of === names.join("\n")) return present;
    const sources = sourcesIn(book, names);
    const items = itemsOf(sources);
    const filled = new Set(Object.values(supplierEntries).map(({ key }) => key));
    const entries = requestEntries(items).filter(({ key }) => !filled.has(key));
    const typed = present?.of === names.join("\n") ? present.form.typed() : {};
    const form = new Form(entries, { ...requestStart(book, sources, items), ...typed }, "request");
    return (present = { of: names.join("\n"), book, sources, items, form });
  }

  /** What the user asks for, from the workbook as it stands. */
  async function request(context: Context, desk: Desk): Promise<{ book: Book; request: Request }> {
    const entries = present!.form.read();
    const { book, sources } = await desk.sources(context);
    const items = itemsOf(sources).filter(({ name }) => !left.has(name));
    if (items.length === 0) throw new HostError(purchaseWords.nothingPicked);
    return { book, request: { sources, items, entries } };
  }

  async function settle(context: Context, desk: Desk): Promise<void> {
    context.panel.see(await context.host.look());
    const book = await desk.read(context);
    const { sources, items } = present!;
    const { number: next } = requestStart(book, sources, items);
    present!.form.set({ number: next });
  }

  const one = (context: Context, desk: Desk) => async () => {
    const { book, request: asks } = await request(context, desk);
    const plan = newRequest(book, asks);
    await context.host.write([plan]);
    await settle(context, desk);
    return say.written(plan.name);
  };

  const each = (context: Context, desk: Desk) => async () => {
    const { book, request: asks } = await request(context, desk);
    const { plans, without } = newRequests(book, book.prices, asks);
    await context.host.write(plans);
    await settle(context, desk);
    return say.writtenAll(plans.length, without.map(({ name }) => name).join("; "));
  };

  function view(context: Context, desk: Desk): TemplateResult {
    const names = desk.book ? desk.picked(context) : [];
    if (!desk.book || names.length === 0) return html`${nothing}`;
    let here: Asked;
    try {
      here = askedOf(desk.book, names);
    } catch (refusal) {
      if (!(refusal instanceof HostError)) throw refusal;
      return html`<p class="refusal" role="alert">${refusal.message}</p>`;
    }
    const { items, form, book } = here;
    if (items.length === 0) return html`<p class="beside" role="status">${purchaseWords.nothingToBuy}</p>`;
    const named = bySupplier(items, book.prices).filter(({ supplier }) => supplier !== "").length;
    const { panel } = context;
    return html`<fieldset class="ticks">
        <legend>${say.ask}</legend>
        ${items.map((item) => tickView(context, book, item))}
      </fieldset>
      ${form.view(context)}
      <p class="beside">${say.hint}</p>
      <section class="commands">
        <button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(one(context, desk))}>
          ${say.write}
        </button>
        ${
          named > 0
            ? html`<button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(each(context, desk))}>
                ${say.each(named)}
              </button>`
            : nothing
        }
      </section>`;
  }

  function tickView({ changed }: Context, { prices }: Book, item: BoughtItem): TemplateResult {
    const { name, quantity, unit } = item;
    const tick = () => {
      if (!left.delete(name)) left.add(name);
      changed();
    };
    return html`<label class="tick">
      <input type="checkbox" .checked=${!left.has(name)} @change=${tick} />
      <span>${name}: ${number(quantity)} ${unit}
        <span class="beside">${suppliersOf(prices, item).join(", ")}</span></span>
    </label>`;
  }

  return { view };
} // prettier-ignore
