import { html, nothing, type TemplateResult } from "lit/html.js";
import { readPriceTable, type ImportedLine, type PriceTable } from "../../src/estimate/price-import";
import { itemName } from "../../src/estimate/missing-prices";
import { HostError, type WorkbookHost } from "../../src/hosts/host";
import { priceChanges } from "../../src/sheets/price-changes";
import { readPrices } from "../../src/sheets/price-rows";
import { pricesLayoutOf } from "../../src/sheets/prices-layout";
import { type Cell } from "../../src/units/cell";
import { dayOf } from "../../src/units/day";
import { money } from "../shown";
import { type Context } from "../views/context";

const say = {
  take: (count: number) => `Put ${count === 1 ? "1 line" : `${count} lines`} into the prices`,
  none: "Tick the lines to take",
  all: "Tick all",
  noneOfThem: "Untick all",
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
  waste: (percent: number) => `, waste ${percent} %`,
  taxed: ", taxed",
  untaxed: ", not taxed",
};

/** What a table would do to the prices: read beside them as they stand, ticked line by line, then put into them. */
export class PricePreview {
  /** Why nothing is shown, in a sentence. */
  why = "";
  private table?: PriceTable;
  private source?: Cell[][];
  private ticked = new Set<number>();

  /** Reads a table beside the prices as they stand; new prices are ticked, changes are the user's to tick. */
  async read(context: Context, source: Cell[][]): Promise<void> {
    const { prices } = await context.host.look();
    this.table = prices && readPriceTable(source, readPrices(prices.values), dayOf(new Date()));
    const fresh = this.table?.lines.filter(({ kind }) => kind === "new") ?? [];
    this.source = source;
    this.why = prices ? "" : say.noSheet;
    this.ticked = new Set(fresh.map(({ line }) => line));
    context.changed();
  }

  /** Does the work; what it refuses is said in the place of the preview. */
  tried = (context: Context, work: () => Promise<void>): Promise<void> =>
    work().catch((error: unknown) => {
      this.table = undefined;
      this.why = error instanceof Error ? error.message : String(error);
      context.changed();
    });

  /** The preview; `taken` is called once its ticked lines are in the prices. */
  view(context: Context, taken: () => void = () => undefined): TemplateResult {
    return html`${this.why ? html`<p class="refusal" role="alert">${this.why}</p>` : nothing}
    ${this.table ? this.tableView(context, this.table, taken) : nothing}`;
  }

  private tableView(context: Context, table: PriceTable, taken: () => void): TemplateResult {
    const { panel } = context;
    const prices = panel.state.view?.prices;
    const old = prices && pricesLayoutOf(prices.name, prices.values).columns.supplier === undefined;
    const count = this.ticked.size;
    const take = async () => {
      const said = await this.take(context.host);
      taken();
      return said;
    };
    return html`<p role="status">${say.counts(table)}</p>
      ${table.passedOver.length ? html`<p class="beside">${say.passedOver(table.passedOver)}</p>` : nothing}
      ${old ? html`<p class="beside">${say.noColumns}</p>` : nothing}
      ${
        takeable(table).length > 1
          ? html`<section class="commands">
              <button type="button" @click=${() => this.tickAll(context, table, true)}>${say.all}</button>
              <button type="button" @click=${() => this.tickAll(context, table, false)}>
                ${say.noneOfThem}
              </button>
            </section>`
          : nothing
      }
      <ul class="put">
        ${table.lines.map((line) => lineView(context, this.ticked, line))}
      </ul>
      <button
        type="button"
        ?disabled=${count === 0 || panel.busy}
        @click=${() => void panel.run(take).then(() => panel.look())}
      >
        ${count === 0 ? say.none : say.take(count)}
      </button>`;
  }

  /** Leaves what was not taken in the preview, beside the prices as they stand now; nothing where all of it is there. */
  private async settle(host: WorkbookHost): Promise<void> {
    const { prices } = await host.look();
    const left = prices && readPriceTable(this.source!, readPrices(prices.values), dayOf(new Date()));
    this.ticked = new Set();
    this.table = left && left.lines.some(({ kind }) => kind !== "unchanged") ? left : undefined;
    if (!this.table) this.source = undefined;
  }

  private tickAll(context: Context, table: PriceTable, on: boolean): void {
    this.ticked = new Set(on ? takeable(table).map(({ line }) => line) : []);
    context.changed();
  }

  /** Puts the ticked lines into the sheet of prices as it stands now, where that is still what the preview showed. */
  private async take(host: WorkbookHost): Promise<string> {
    const { prices } = await host.look();
    if (!prices) throw new HostError(say.noSheet);
    const now = readPriceTable(this.source!, readPrices(prices.values), dayOf(new Date()));
    if (JSON.stringify(now.lines) !== JSON.stringify(this.table!.lines)) {
      this.table = now;
      throw new HostError(say.moved);
    }
    const lines = now.lines.filter(({ line }) => this.ticked.has(line));
    const layout = pricesLayoutOf(prices.name, prices.values);
    await host.update(prices.name, priceChanges(lines, layout, prices.values.length));
    await this.settle(host);
    return say.done(lines.length, prices.name);
  }
}

/** The lines that can be put into the prices: those that say something new. */
const takeable = ({ lines }: PriceTable) => lines.filter(({ kind }) => kind === "new" || kind === "changed");

/** What else than its price a line changes in a row that stands. */
function alsoSaid(line: ImportedLine): string {
  if (line.kind !== "changed") return "";
  const { waste, taxed } = line.also;
  return [
    ...(waste === undefined || waste === line.before.waste ? [] : [say.waste(waste)]),
    ...(taxed === undefined || taxed === line.before.taxed ? [] : [taxed ? say.taxed : say.untaxed]),
  ].join("");
}

function lineView({ changed }: Context, ticked: Set<number>, line: ImportedLine): TemplateResult {
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
  const said = html`${itemName(row)}${row.supplier ? `, ${row.supplier}` : ""}: ${price}${alsoSaid(line)}
    <span class="beside">${line.kind}</span>`;
  return html`<li class="price-line">
    ${line.kind === "unchanged" ? said : html`<label><input type="checkbox" .checked=${ticked.has(line.line)} @change=${tick} /> ${said}</label>`}
  </li>`;
}
