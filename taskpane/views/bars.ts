import { html, nothing, type TemplateResult } from "lit/html.js";
import { fieldOf } from "../../src/estimate/fields";
import { listed } from "../../src/estimate/listed";
import { isPlainCopy, restoredKeys } from "../../src/sheets/keyed";
import { keyPairs } from "../../src/sheets/keyed-cells";
import { messages } from "../messages";
import { offered, type Source } from "../state";
import { stateLine } from "../state-line";
import { type Context } from "./context";

const say = {
  newJob: "New job",
  selected: (sheet: string) => `${sheet} is selected.`,
  show: "Show it",
  keep: "Keep these answers",
  dropFirst: "The answers that are not written go. Start a new job?",
  startNew: "Start a new job",
  stay: "Stay here",
  aside: (what: string) => `${what} are kept.`,
  asideOf: (sheet?: string) => (sheet ? `Changes to ${sheet} that are not written` : "Answers to a new job"),
  goBack: "Go back to them",
  drop: "Drop them",
  plainCopy: (sheet: string) => `${sheet} is a plain copy: its figures are fixed.`,
  makeLive: "Make it live again",
  missing: (labels: string) => `The key is missing from the sheet for: ${labels}.`,
  putBack: "Put it back",
  rowGone: (labels: string) => `The row is gone from the sheet for: ${labels}. Write a new estimate to have it again.`,
  writeNew: "Write a new estimate",
}; // prettier-ignore

/** The head of the panel: state line, and what the user has to decide on. */
export function headView(context: Context): TemplateResult {
  const { panel } = context;
  return html`<header>
    <p class="state" role="status">${stateLine(panel.state)}</p>
    <button type="button" class="plain" ?disabled=${panel.busy} @click=${() => panel.newJob()}>
      ${say.newJob}
    </button>
    ${panel.asking ? askingBar(context) : nothing} ${offerBar(context)} ${asideBar(context)}
    ${lostBar(context)} ${panel.state.source ? sheetBars(context, panel.state.source) : nothing}
  </header>`;
}

type Choice = [label: string, run: () => unknown];

const bar = ({ panel }: Context, text: string, choices: Choice[]) =>
  html`<div class="ask" role="alert">
    <p>${text}</p>
    ${choices.map(
      ([label, run]) =>
        html`<button type="button" ?disabled=${panel.busy} @click=${() => void run()}>${label}</button>`,
    )}
  </div>`;

const askingBar = (context: Context) =>
  bar(context, say.dropFirst, [
    [say.startNew, () => context.panel.newJob(true)],
    [say.stay, () => context.panel.stay()],
  ]);

function offerBar(context: Context) {
  const { panel } = context;
  const sheet = offered(panel.state);
  if (sheet === undefined) return nothing;
  return bar(context, say.selected(sheet), [
    [say.show, () => panel.showSelected()],
    [say.keep, () => panel.keep()],
  ]);
}

function asideBar(context: Context) {
  const { panel } = context;
  const last = panel.state.aside.at(-1);
  if (!last) return nothing;
  return bar(context, say.aside(say.asideOf(last.source)), [
    [say.goBack, panel.takeBack],
    [say.drop, panel.dropAside],
  ]);
}

function lostBar(context: Context) {
  const { lost } = context.panel.state;
  return lost === undefined ? nothing : bar(context, messages.gone(lost), []);
}

/** What is to say of the sheet shown: that its figures are fixed, else which keys it lacks. */
const sheetBars = (context: Context, source: Source) =>
  isPlainCopy(source.sheet, source.content.formulas)
    ? bar(context, say.plainCopy(source.name), [[say.makeLive, context.panel.makeLive]])
    : missingBars(context, source);

function missingBars(context: Context, { sheet, content }: Source) {
  const { panel } = context;
  if (sheet.missing.length === 0) return nothing;
  const found = restoredKeys(sheet, content.values)
    .flatMap(({ value }) => keyPairs(value))
    .map(([, key]) => key);
  const labels = (keys: string[]) => listed(keys.map((key) => fieldOf(key).label.en));
  const back = sheet.missing.filter((key) => found.includes(key));
  const gone = sheet.missing.filter((key) => !found.includes(key));
  return html`${back.length ? bar(context, say.missing(labels(back)), [[say.putBack, panel.putBack]]) : nothing}
  ${gone.length ? bar(context, say.rowGone(labels(gone)), [[say.writeNew, panel.write]]) : nothing}`;
}
