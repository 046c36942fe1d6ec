import { html, nothing, type TemplateResult } from "lit/html.js";
import { fieldOf } from "../../src/estimate/fields";
import { type Figure } from "../../src/estimate/figures";
import { type MissingPrice } from "../../src/estimate/missing-prices";
import { isError, type Cell } from "../../src/units/cell";
import { isOutOfDate, type OwnChange } from "../../src/sheets/keyed";
import { messages } from "../messages";
import { cellText, keyLabel, money, wholeDollars } from "../shown";
import { isOther, unwritten, type Source } from "../state";
import { type Controller } from "../controller";
import { type Context } from "./context";
import { sentence } from "./field";

const say = {
  total: "Total",
  notYet: "no total yet",
  perFoot: (amount: string) => `${amount}/ft`,
  perSquareFoot: (amount: string) => `${amount}/sq ft`,
  left: (amount: string) => `${amount} of budget left`,
  over: (amount: string) => `${amount} over budget`,
  onSheet: (amount: string) => `The sheet still says ${amount}.`,
  withoutOwn: "This total is without the sheet's own changes.",
  own: "This sheet has your own changes",
  typed: "Typed over or changed:",
  follows: "And so these differ too:",
  differ: "These differ:",
  close: "Close",
  change: ({ address, key, shown, figured }: OwnChange) =>
    `${address} ${keyLabel(key)}: ${cellText(shown)}, figured ${cellText(figured)}`,
  outOfDate: "The sheet is out of date: update it",
  errors: "Cells of this sheet show errors",
  missing: (count: number) => `${count} ${count === 1 ? "price" : "prices"} missing`,
  noRow: "no row in the prices",
  noPrice: "a row without a price",
  noneChosen: "prices, of which none is marked to use",
  add: (sheet: string) => `Add rows for them to ${sheet}`,
  withFirst: "Rows for them are added when the estimate is written.",
  examples: (lines: number) => `${lines === 1 ? "1 line stands" : `${lines} lines stand`} on example prices`,
  old: (lines: number) => `${lines === 1 ? "1 line stands" : `${lines} lines stand`} on old prices`,
  askAgain:
    "The note beside such a line says of which day its price is. How many days make it old stands at the head of the prices sheet.",
  ownPrices: "Type your own on the prices sheet; the example mark then goes.",
  allPriced: "On your own prices",
};

const whyMissing: Record<MissingPrice["why"], string> = {
  "no row": say.noRow,
  "no price": say.noPrice,
  "none chosen": say.noneChosen,
};

/** The bar at the foot: the total and what it comes to, what it stands on, and the one main button. */
export function totalsView(context: Context): TemplateResult {
  const { panel } = context;
  const { state, figured, notice } = panel;
  const written = state.source && unwritten(state).length === 0 ? state.source : undefined;
  const figure = (key: string): Cell | Figure =>
    written ? (written.sheet.cells[key]?.value ?? "") : (figured.result?.figures[key] ?? "");
  const amount = (key: string, words: (amount: string) => string) => {
    const value = figure(key);
    return typeof value === "number" ? [words(money(value))] : [];
  };
  const total = figure("total");
  const hindrance = hindranceTo(panel);
  const budget = figure("budget_left");
  const parts = [
    ...amount("per_foot", say.perFoot),
    ...amount("per_square_foot", say.perSquareFoot),
    ...(typeof budget === "number"
      ? [budget < 0 ? say.over(wholeDollars(-budget)) : say.left(wholeDollars(budget))]
      : []),
  ];
  return html`<footer class=${figured.old && !written ? "old" : ""}>
    ${
      notice
        ? html`<p class="notice ${notice.kind}" role="status">
            ${notice.text}
            <button type="button" class="plain" @click=${() => panel.dismiss()}>${say.close}</button>
          </p>`
        : nothing
    }
    <div class="total" role="status">
      <span>${say.total}</span>
      <strong class=${typeof total === "number" ? "" : "words"}
        >${typeof total === "number" ? money(total) : cellText(total || say.notYet)}</strong
      >
    </div>
    ${mainButton(context)}
    <p title=${hindrance || parts.join(" · ")} class="rates ${hindrance ? "why" : ""}">
      ${hindrance || parts.join(" · ")}
    </p>
    ${notesView(context, written)}
  </footer>`;
}

/** Why the answers cannot be written, where that is for the user to mend; else nothing. */
function hindranceTo({ state, figured }: Controller): string {
  const [key] = Object.keys(state.problems);
  if (key) return messages.problem(fieldOf(key).label.en, sentence(state.problems[key]));
  return figured.refusal ? sentence(figured.refusal) : "";
}

function mainButton({ panel }: Context) {
  const { source } = panel.state;
  const idle = source !== undefined && unwritten(panel.state).length === 0 && !isOutOfDate(source.sheet);
  const updates = source !== undefined && !isOther(panel.state);
  const why = panel.busy ? messages.working : hindranceTo(panel) || (idle ? messages.nothingToWrite : "");
  return html`<button
      type="button"
      class="main"
      ?disabled=${why !== ""}
      aria-describedby="penstake-why"
      title=${why}
      @click=${() => void (updates ? panel.update() : panel.write())}
    >
      ${updates ? messages.update : messages.write}
    </button>
    <span id="penstake-why" hidden>${why}</span>`;
}

/** What the total stands on, in one line that opens. */
function notesView(context: Context, written: Source | undefined): TemplateResult {
  const { panel } = context;
  const { result, own } = panel.figured;
  const { source } = panel.state;
  const onSheet = source?.sheet.cells.total?.value;
  const missing = result?.missing ?? [];
  const troubled = own.some(({ shown }) => isError(shown));
  const heads = [
    ...(source && isOutOfDate(source.sheet) ? [say.outOfDate] : []),
    ...(own.length ? [troubled ? say.errors : say.own] : []),
    ...(missing.length ? [say.missing(missing.length)] : []),
    ...(result?.made.onExamples ? [say.examples(result.made.onExamples)] : []),
    ...(result?.made.onOldPrices ? [say.old(result.made.onOldPrices)] : []),
  ];
  if (heads.length === 0 && (written || !source)) return html`<p class="notes">${result ? say.allPriced : nothing}</p>`;
  return html`<details class="notes">
    <summary>${heads.join(" · ") || say.allPriced}</summary>
    <div class="list">
      ${
        written || onSheet === undefined
          ? nothing
          : html`<p>
              ${say.onSheet(typeof onSheet === "number" ? money(onSheet) : cellText(onSheet))}
              ${own.length ? say.withoutOwn : nothing}
            </p>`
      }
      ${source && own.length ? ownView(source, own) : nothing} ${missing.length ? missingView(context, missing) : nothing}
      ${result?.made.onExamples ? html`<p>${say.ownPrices}</p>` : nothing}
      ${result?.made.onOldPrices ? html`<p>${say.askAgain}</p>` : nothing}
    </div>
  </details>`;
} // prettier-ignore

/** The changed cells: first those that hold no formula any more, then those that follow from them. */
function ownView({ content, sheet }: Source, own: OwnChange[]) {
  const typed = own.filter(({ key }) => {
    const { row, column } = sheet.cells[key];
    return !String(content.formulas[row]?.[column] ?? "").startsWith("=");
  });
  const others = own.filter((change) => !typed.includes(change));
  const items = (changes: OwnChange[]) =>
    html`<ul>
      ${changes.map((change) => html`<li>${say.change(change)}</li>`)}
    </ul>`;
  return html`${
    typed.length
      ? html`<p>${say.typed}</p>
          ${items(typed)}`
      : nothing
  }
  ${
    others.length
      ? html`<p>${typed.length ? say.follows : say.differ}</p>
          ${items(others)}`
      : nothing
  }`;
}

function missingView({ panel }: Context, missing: MissingPrice[]) {
  const { view } = panel.state;
  const toAdd = missing.some(({ why }) => why === "no row");
  return html`<ul>
      ${missing.map(({ name, why }) => html`<li>${name}: ${whyMissing[why]}</li>`)}
    </ul>
    ${
      !toAdd
        ? nothing
        : view?.prices
          ? html`<button type="button" ?disabled=${panel.busy} @click=${() => void panel.addPriceRows()}>
              ${say.add(view.prices.name)}
            </button>`
          : html`<p>${say.withFirst}</p>`
    }`;
}
