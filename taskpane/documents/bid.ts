import { html, nothing, type TemplateResult } from "lit/html.js";
import { bidAsked } from "../../src/sheets/documents/bid-entries";
import { issuedCells } from "../../src/sheets/documents/issue";
import { dayText } from "../day";
import { freeName } from "../names";
import { type Context } from "../views/context";
import { type Alternate } from "../../src/estimate/alternates";
import { HostError } from "../../src/hosts/host";
import { type EstimateSource } from "../../src/sheets/documents/source";
import { offered, pricedFor } from "./alternates";
import { asked, documentsIn, estimatesIn, sourcesIn, type Book } from "./book";
import { type Desk } from "./desk";
import { Form } from "./form";
import { type DocumentBody } from "./list";
import { bidStart, newBid } from "./new-bid";
import { tick } from "./ticks";

const say = {
  alternates: "Offer with a price plus or minus",
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
  const wanted = new Set<string>();

  const write = (context: Context, desk: Desk) => async () => {
    const answers = form!.read();
    const { book, sources } = await desk.sources(context);
    const [source] = sources;
    const chosen = alternatesIn(book, sources).filter(({ name }) => wanted.has(name));
    const alternates = sources.length > 1 ? [] : pricedFor(book, source, chosen);
    const plans = newBid(book, sources, { answers, alternates, example });
    await context.host.write(plans);
    context.panel.see(await context.host.look());
    form!.set(bidStart(await desk.read(context)));
    return say.written(plans[plans.length - 1].name);
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
        ${alternatesView(context, desk, wanted)} ${tick(say.example, example, (on) => (example = on))}
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

/** What can be offered with a bid over one estimate: changes of it, and the other estimates that can be read. */
function alternatesIn(book: Book, sources: readonly EstimateSource[]): Alternate[] {
  if (sources.length !== 1) return [];
  const others = estimatesIn(book).filter((name) => name !== sources[0].name);
  return offered(sources[0], others.flatMap((name) => readable(book, name)));
} // prettier-ignore

/** The estimate of that name, where it can be used. */
function readable(book: Book, name: string): EstimateSource[] {
  try {
    return sourcesIn(book, [name]);
  } catch (error) {
    if (error instanceof HostError) return [];
    throw error;
  }
}

function alternatesView(context: Context, desk: Desk, wanted: Set<string>) {
  const picked = desk.picked(context);
  if (picked.length !== 1) return nothing;
  return html`<fieldset class="ticks">
    <legend>${say.alternates}</legend>
    ${namesFor(desk.book!, picked[0]).map((name) =>
      tick(name, wanted.has(name), (on) => void (on ? wanted.add(name) : wanted.delete(name))),
    )}
  </fieldset>`;
}

const known = new WeakMap<Book, Map<string, string[]>>();

/** What can be offered with a bid over the estimate of that name, worked out once for a workbook as it was read. */
function namesFor(book: Book, estimate: string): string[] {
  const names = known.get(book) ?? new Map<string, string[]>();
  known.set(book, names);
  if (!names.has(estimate))
    names.set(estimate, alternatesIn(book, readable(book, estimate)).map(({ name }) => name)); // prettier-ignore
  return names.get(estimate)!;
}
