import { html, nothing, type TemplateResult } from "lit/html.js";
import { address } from "../../src/sheets/address";
import "../share/share.css";
import { carryOut, lookAhead, then, type Change, type Kind } from "../share/change";
import { makePlainCopy } from "../share/copy";
import { messages } from "../share/messages";
import { type Context } from "./context";

/** What this section remembers: the change that is shown, and what was ticked. */
interface Memory {
  change?: Change;
  ticks: Record<string, boolean>;
  keepKeys: boolean;
}

/** How many cells of a change are listed. */
const listed = 200;

const memories = new WeakMap<object, Memory>();

function memoryOf({ page }: Context): Memory {
  const found = memories.get(page) ?? { ticks: {}, keepKeys: true };
  memories.set(page, found);
  return found;
}

/** Freeze, repair and plain copies: what leaves the house, and what comes back from it. */
export function view(context: Context): TemplateResult {
  return html`${changeView(context, "freeze")} ${changeView(context, "repair")} ${copyView(context)}`;
}

function changeView(context: Context, kind: Kind): TemplateResult {
  const { panel, host, changed } = context;
  const memory = memoryOf(context);
  const look = (whole: boolean) =>
    void panel.run(async () => {
      memory.change = undefined;
      const change = await lookAhead(host, kind, whole);
      const unknown = change.unknown.length > 0 ? messages.unknown(change.unknown) : "";
      const none = kind === "freeze" ? messages.nothingToFreeze : messages.nothingToRepair;
      if (change.cells.length > 0) memory.change = change;
      changed();
      return [change.cells.length > 0 ? "" : none(change.where), unknown].filter(Boolean).join(" ");
    });
  const shown = memory.change?.kind === kind ? memory.change : undefined;
  return html`<section class="share">
    <h2>${messages[kind]}</h2>
    <p class="beside">${messages[`${kind}Hint`]}</p>
    <div class="row">
      <button type="button" ?disabled=${panel.busy} @click=${() => look(true)}>${messages.sheet}</button>
      <button type="button" ?disabled=${panel.busy} @click=${() => look(false)}>${messages.selection}</button>
    </div>
    ${shown ? shownChange(context, shown) : nothing}
  </section>`;
}

function shownChange(context: Context, change: Change): TemplateResult {
  const { panel, host, changed } = context;
  const { cells, kind } = change;
  const end = () => {
    memoryOf(context).change = undefined;
    changed();
  };
  const doIt = () =>
    void panel.run(async () => {
      memoryOf(context).change = undefined;
      return carryOut(host, change);
    });
  return html`<p>${messages.willChange(cells.length, Math.max(0, cells.length - listed))}</p>
    <div class="changes" tabindex="0">
      <table>
        <thead>
          <tr>
            ${messages.columns.map((name) => html`<th>${name}</th>`)}
          </tr>
        </thead>
        <tbody>
          ${cells.slice(0, listed).map(
            (cell) =>
              html`<tr>
                <td>
                  ${cell.sheet === change.area.sheet ? address({ row: cell.row, column: cell.column }) : address(cell)}
                </td>
                <td>${cell.now}</td>
                <td>${then(cell)}</td>
              </tr>`,
          )}
        </tbody>
      </table>
    </div>
    <div class="row">
      <button type="button" class="main" ?disabled=${panel.busy} @click=${doIt}>
        ${kind === "freeze" ? messages.freezeNow(cells.length) : messages.repairNow(cells.length)}
      </button>
      <button type="button" @click=${end}>${messages.leave}</button>
    </div>`;
}

function copyView(context: Context) {
  const { panel, host, changed } = context;
  if (!host.content) return nothing;
  const memory = memoryOf(context);
  const { view } = panel.state;
  const names = view?.sheetNames ?? [];
  const ticked = (name: string) => memory.ticks[name] ?? name === view?.active.name;
  const chosen = names.filter(ticked);
  const make = () => void panel.run(() => makePlainCopy(host, { sheets: chosen, keepKeys: memory.keepKeys }));
  return html`<section class="share">
    <h2>${messages.copy}</h2>
    <p class="beside">${messages.copyHint}</p>
    <fieldset>
      <legend class="beside">${messages.copyOf}</legend>
      ${names.map((name) =>
        tick(name, ticked(name), (on) => {
          memory.ticks[name] = on;
          changed();
        }),
      )}
    </fieldset>
    ${tick(messages.keepKeys, memory.keepKeys, (on) => {
      memory.keepKeys = on;
      changed();
    })}
    <p class="beside">${messages.keepKeysHint}</p>
    <div class="row">
      <button type="button" ?disabled=${panel.busy || chosen.length === 0} @click=${make}>
        ${host.openCopy ? messages.open : messages.download}
      </button>
    </div>
  </section>`;
}

const tick = (label: string, on: boolean, set: (on: boolean) => void) =>
  html`<label class="tick">
    <input
      type="checkbox"
      .checked=${on}
      @change=${(event: Event) => set((event.target as HTMLInputElement).checked)}
    />
    ${label}
  </label>`;
