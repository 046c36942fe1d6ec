import { html, nothing, type TemplateResult } from "lit/html.js";
import { bidAsked } from "../../src/sheets/documents/bid-entries";
import { issuedCells } from "../../src/sheets/documents/issue";
import { dayText } from "../day";
import { freeName } from "../names";
import { type Context } from "../views/context";
import { asked, documentsIn } from "./book";
import { type Desk } from "./desk";
import { Form } from "./form";
import { type DocumentBody } from "./list";
import { bidStart, newBid } from "./new-bid";

const say = {
  write: "Write bid",
  example: "An example, on example prices",
  deposits: "Some states limit how much may be asked for before the work begins: look yours up.",
  written: (sheet: string) =>
    `Written on the new sheet "${sheet}". It follows the estimate until you issue it.`,
  issue: (sheet: string) => `Issue ${sheet}`,
  issuing: "Issuing makes a numbered, dated copy that nothing moves afterwards.",
  issued: (sheet: string) => `Issued as "${sheet}". What changes from here is a change order.`,
  name: (sheet: string) => `${sheet} issued`,
};

/** The bid's part of the panel: its entries, the button that writes it, and one for each draft that can be issued. */
export function bidBody(): DocumentBody {
  let form: Form | undefined;
  let example = false;

  const write = (context: Context, desk: Desk) => async () => {
    const answers = form!.read();
    const { book, sources } = await desk.sources(context);
    const plan = newBid(book, sources, { answers, alternates: [], example });
    await context.host.write([plan]);
    context.panel.see(await context.host.look());
    form!.set(bidStart(await desk.read(context)));
    return say.written(plan.name);
  };

  const issue = (context: Context, desk: Desk, draft: string) => async () => {
    const book = await desk.read(context);
    const sheet = book.sheets.find(({ name }) => name === draft)!;
    const cells = asked(() => issuedCells(sheet, dayText(new Date())));
    const name = freeName(say.name(draft), book.sheetNames);
    const lost = await context.host.fillCopy(draft, name, cells);
    context.panel.see(await context.host.look());
    await desk.read(context);
    return [say.issued(name), ...lost].join(" ");
  };

  return {
    view(context, desk): TemplateResult {
      const { book } = desk;
      if (!book) return html``;
      form ??= new Form(bidAsked, bidStart(book));
      const { panel } = context;
      const drafts = documentsIn(book, "bid");
      return html`${form.view(context)}
        <p class="beside">${say.deposits}</p>
        <label class="tick">
          <input
            type="checkbox"
            .checked=${example}
            @change=${(event: Event) => (example = (event.target as HTMLInputElement).checked)}
          />
          ${say.example}
        </label>
        <section class="commands">
          <button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(write(context, desk))}>
            ${say.write}
          </button>
          ${drafts.length > 0 ? html`<p class="beside">${say.issuing}</p>` : nothing}
          ${drafts.map(
            ({ name }) =>
              html`<button
                type="button"
                ?disabled=${panel.busy}
                @click=${() => void panel.run(issue(context, desk, name))}
              >
                ${say.issue(name)}
              </button>`,
          )}
        </section>`;
    },
  };
}
