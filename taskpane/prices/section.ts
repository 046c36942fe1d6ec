import { html, nothing, type TemplateResult } from "lit/html.js";
import { readPriceTable, type ImportedLine, type PriceTable } from "../../src/estimate/price-import";
import { tableOfText } from "../../src/estimate/price-text";
import { itemName } from "../../src/estimate/missing-prices";
import { HostError, type WorkbookHost } from "../../src/hosts/host";
import { priceChanges } from "../../src/sheets/price-changes";
import { readPrices } from "../../src/sheets/price-rows";
import { pricesLayoutOf } from "../../src/sheets/prices-layout";
import { type Cell } from "../../src/units/cell";
import { dayOf } from "../../src/units/day";
import { type SectionBody } from "../sections";
import { money } from "../shown";
import { type Context } from "../views/context";
import { tableOfFile } from "./table-of-file";

const say = {
  ask: "A list of prices with a line of headers: item and price at least; also size, unit, waste, taxed, supplier, date.",
  paste: "Paste it here",
  open: "or open a file (.csv, .tsv, .xlsx)",
  preview: "Show what it would do",
  take: (count: number) => `Put ${count === 1 ? "1 line" : `${count} lines`} into the prices`,
  none: "Tick the lines to take",
  noSheet: "The workbook has no sheet of prices yet: write the first estimate, then bring in a list.",
  noColumns:
    "This sheet of prices is of the time before suppliers: supplier and date will not be kept. To keep them, first head three free columns beside its headers with Supplier, Date and Use.",
  passedOver: (headers: string[]) => `Columns passed over: ${headers.join(", ")}.`,
  line: (line: number) => `Line ${line}`,
  counts: (table: PriceTable) =>
    (["new", "changed", "unchanged", "not understood"] as const)
      .map((kind) => `${table.lines.filter((line) => line.kind === kind).length} ${kind}`)
      .join(", "),
  done: (count: number, sheet: string) =>
    `${count === 1 ? "1 price is" : `${count} prices are`} on "${sheet}" now. Nothing else on it was touched.`,
  moved: "The sheet of prices has changed since the preview. Look at the preview again, then take the lines.",
  blank: "no price",
};

/** What was brought in, and what it would do. */
interface Shown {
  text: string;
  why: string;
  table?: PriceTable;
  source?: Cell[][];
  ticked: Set<number>;
}

/** The section that brings prices in from a pasted or opened list, with a preview. */
export function pricesSection(): SectionBody {
  const shown: Shown = { text: "", why: "", ticked: new Set() };

  /** Reads the list beside the prices as they stand; new prices are ticked, changes are the user's to tick. */
  async function preview(context: Context, source: Cell[][]): Promise<void> {
    const { prices } = await context.host.look();
    const table = prices && readPriceTable(source, readPrices(prices.values), dayOf(new Date()));
    const fresh = table?.lines.filter(({ kind }) => kind === "new") ?? [];
    Object.assign(shown, {
      table,
      source,
      why: prices ? "" : say.noSheet,
      ticked: new Set(fresh.map(({ line }) => line)),
    });
    context.changed();
  }

  const tried = (context: Context, work: () => Promise<void>) =>
    work().catch((error: unknown) => {
      Object.assign(shown, { table: undefined, why: error instanceof Error ? error.message : String(error) });
      context.changed();
    });

  return {
    view: (context) => html`
      <p class="beside">${say.ask}</p>
      <label class="list-of-prices"
        >${say.paste}
        <textarea
          rows="5"
          .value=${shown.text}
          @input=${(event: Event) => (shown.text = (event.target as HTMLTextAreaElement).value)}
        ></textarea>
      </label>
      <section class="commands">
        <button
          type="button"
          @click=${() => void tried(context, () => preview(context, tableOfText(shown.text)))}
        >
          ${say.preview}
        </button>
        <label class="beside"
          >${say.open}
          <input
            type="file"
            accept=".csv,.tsv,.txt,.xlsx"
            @change=${(event: Event) => {
              const file = (event.target as HTMLInputElement).files?.[0];
              if (file) void tried(context, async () => preview(context, await tableOfFile(file)));
            }}
          />
        </label>
      </section>
      ${shown.why ? html`<p class="refusal" role="alert">${shown.why}</p>` : nothing}
      ${shown.table ? tableView(context, shown, shown.table) : nothing}
    `,
  };
}

function tableView(context: Context, shown: Shown, table: PriceTable): TemplateResult {
  const { panel } = context;
  const prices = panel.state.view?.prices;
  const old = prices && pricesLayoutOf(prices.name, prices.values).columns.supplier === undefined;
  const count = shown.ticked.size;
  return html`<p role="status">${say.counts(table)}</p>
    ${table.passedOver.length ? html`<p class="beside">${say.passedOver(table.passedOver)}</p>` : nothing}
    ${old ? html`<p class="beside">${say.noColumns}</p>` : nothing}
    <ul class="put">
      ${table.lines.map((line) => lineView(context, shown, line))}
    </ul>
    <button
      type="button"
      ?disabled=${count === 0 || panel.busy}
      @click=${() => void panel.run(() => take(context.host, shown)).then(() => panel.look())}
    >
      ${count === 0 ? say.none : say.take(count)}
    </button>`;
}

function lineView({ changed }: Context, { ticked }: Shown, line: ImportedLine): TemplateResult {
  if (line.kind === "not understood")
    return html`<li class="price-line">
      <span>${say.line(line.line)}: ${line.text.slice(0, 60)}</span> <span class="refusal">${line.why}</span>
    </li>`;
  const { row } = line;
  const amount = (price: number | null) => (price === null ? say.blank : money(price));
  const price =
    line.kind === "changed" ? `${amount(line.before.price)} → ${amount(row.price)}` : amount(row.price);
  const tick = () => {
    if (!ticked.delete(line.line)) ticked.add(line.line);
    changed();
  };
  const said = html`${itemName(row)}${row.supplier ? `, ${row.supplier}` : ""}: ${price}
    <span class="beside">${line.kind}</span>`;
  return html`<li class="price-line">
    ${line.kind === "unchanged" ? said : html`<label><input type="checkbox" .checked=${ticked.has(line.line)} @change=${tick} /> ${said}</label>`}
  </li>`;
}

/** Puts the ticked lines into the sheet of prices as it stands now, where that is still what the preview showed. */
async function take(host: WorkbookHost, shown: Shown): Promise<string> {
  const { prices } = await host.look();
  if (!prices) throw new HostError(say.noSheet);
  const now = readPriceTable(shown.source!, readPrices(prices.values), dayOf(new Date()));
  if (JSON.stringify(now.lines) !== JSON.stringify(shown.table!.lines)) {
    shown.table = now;
    throw new HostError(say.moved);
  }
  const lines = now.lines.filter(({ line }) => shown.ticked.has(line));
  const layout = pricesLayoutOf(prices.name, prices.values);
  await host.update(prices.name, priceChanges(lines, layout, prices.values.length));
  Object.assign(shown, { text: "", table: undefined, source: undefined, ticked: new Set() });
  return say.done(lines.length, prices.name);
}
