import { html, type TemplateResult } from "lit/html.js";
import { type FieldValue } from "../../src/estimate/fields";
import { HostError } from "../../src/hosts/host";
import { contractOf, type Contract } from "../../src/sheets/documents/contract";
import { type Entry } from "../../src/sheets/documents/entries";
import { type SheetPlan } from "../../src/sheets/plan";
import { freeName } from "../names";
import { type Context } from "../views/context";
import { asked, documentsIn, type Book } from "./book";
import { type Desk } from "./desk";
import { Form } from "./form";
import { type DocumentBody } from "./list";

const say = {
  none: "No bid is issued in this workbook yet: write a bid and issue it first.",
  to: "To the issued bid",
  gone: "That bid is no longer in the workbook.",
  written: (sheet: string) => `Written on the new sheet "${sheet}".`,
};

type Answers = Record<string, FieldValue>;

/** A document over an issued bid: what it asks, what that starts with, and its sheet. */
export interface OverContract {
  /** What its sheets are called before their number, and its button. */
  title: string;
  write: string;
  hint?: string;
  numberKey: string;
  asks(contract: Contract): readonly Entry[];
  start(contract: Contract, book: Book): Answers;
  plan(contract: Contract, answers: Answers, name: string): SheetPlan;
}

/** Its part of the panel: which bid, its entries, and the button that writes it. */
export function contractBody(document: OverContract): DocumentBody {
  const { asks, start, plan, title, numberKey } = document;
  let bid: string | undefined;
  let open: { bid: string; form: Form } | undefined;

  const contractIn = (book: Book, name: string): Contract => {
    const issued = book.sheets.find((sheet) => sheet.name === name);
    if (!issued) throw new HostError(say.gone);
    return asked(() => contractOf(issued, book.sheets));
  };

  const write = (context: Context, desk: Desk, name: string, form: Form) => async () => {
    const answers = form.read();
    const book = await desk.read(context);
    const contract = contractIn(book, name);
    const sheet = freeName(`${title} ${String(answers[numberKey] ?? 1)}`, book.sheetNames);
    await context.host.write([asked(() => plan(contract, answers, sheet))]);
    context.panel.see(await context.host.look());
    await desk.read(context);
    open = undefined;
    return say.written(sheet);
  };

  /** The fields for a bid; an empty page where its sheet was spoiled. */
  const formFor = (book: Book, name: string): Form | string => {
    if (open?.bid === name) return open.form;
    try {
      const contract = contractIn(book, name);
      open = { bid: name, form: new Form(asks(contract), start(contract, book)) };
      return open.form;
    } catch (error) {
      return (error as Error).message;
    }
  };

  return {
    view(context, desk): TemplateResult {
      if (!desk.book) return html``;
      const bids = documentsIn(desk.book, "issued").map(({ name }) => name);
      if (bids.length === 0) return html`<p class="beside">${say.none}</p>`;
      const chosen = bid !== undefined && bids.includes(bid) ? bid : bids[bids.length - 1];
      const form = formFor(desk.book, chosen);
      const { panel } = context;
      return html`<div class="field wide">
          <label for="penstake-to-${numberKey}">${say.to}</label>
          <select
            id="penstake-to-${numberKey}"
            @change=${(event: Event) => {
              bid = (event.target as HTMLSelectElement).value;
              context.changed();
            }}
          >
            ${bids.map((name) => html`<option ?selected=${name === chosen}>${name}</option>`)}
          </select>
        </div>
        ${
          typeof form === "string"
            ? html`<p class="refusal">${form}</p>`
            : html`${form.view(context)}
                <p class="beside">${document.hint ?? ""}</p>
                <section class="commands">
                  <button
                    type="button"
                    ?disabled=${panel.busy}
                    @click=${() => void panel.run(write(context, desk, chosen, form))}
                  >
                    ${document.write}
                  </button>
                </section>`
        }`;
    },
  };
}
