import { html, nothing } from "lit/html.js";
import { structureOf } from "../../src/estimate/job";
import { type Structure } from "../../src/estimate/structures";
import { address } from "../../src/sheets/address";
import { templateFields, type TemplateField } from "../../src/sheets/template/field-names";
import { fieldValue, type Filled } from "../../src/sheets/template/filling";
import { templateCells } from "../../src/sheets/template/reading";
import { type Cell } from "../../src/units/cell";
import { cellText, money } from "../shown";
import { type SectionBody } from "../sections";
import { type Context } from "../views/context";
import { addFromFile, fillCopy, filledNow, insertField } from "./template-command";

const say = {
  how: (example: string) => `Write fields in single braces into any sheet of yours, such as {total} or ${example}. A filled copy points each of them at the estimate.`,
  search: "Find a field",
  none: "No field has all of these words.",
  needsEstimate: "Write or select an estimate to see what each field holds.",
  named: (sheet: string) => `Name the estimate too: {${sheet}: …}`,
  into: (where: string) => `Put goes into the selected cell, ${where}, when it is empty.`,
  put: "Put",
  putOne: (name: string) => `Put {${name}} into the selected cell`,
  fill: (sheet: string) => `Fill a copy of ${sheet}`,
  noFields: (sheet: string) => `${sheet} has no field in braces.`,
  cells: (count: number, sheet: string) => `${sheet} has fields in ${count === 1 ? "1 cell" : `${count} cells`}.`,
  check: "Check its fields",
  allKnown: "Every field is known.",
  fromFile: "Add a template from a file",
  more: (count: number) => `${count} more: search to see them.`,
}; // prettier-ignore

/** Fields that an estimate of each structure has, in a text. */
const examples: Record<Structure, string> = {
  "panel pen": "Pen of {size} with {panels} panels",
  "post pen": "Pen of {size} with {posts} posts",
  "panel arena": "Arena of {arena length} by {arena width}",
  "post arena": "Arena of {arena length} by {arena width}",
};

/** How many fields the list shows at once. */
const most = 40;

/** What the section remembers: words sought, whether braces name the estimate, and the last check of a sheet. */
interface Remembered {
  sought: string;
  named: boolean;
  checked?: { formulas: readonly (readonly Cell[])[]; filled: Filled };
}

/** The section of own templates: the fields that one can name, what each holds now, and the filled copy of the selected sheet. */
export function templatesSection(): SectionBody {
  const kept: Remembered = { sought: "", named: false };
  return {
    view: (context) =>
      html`<p class="beside">${say.how(examples[structureOf(context.panel.state.good)])}</p>
        ${fillView(context, kept)} ${fileView(context)} ${searchView(context, kept)}
        ${listView(context, kept)}`,
  };
}

function fillView({ panel, host, changed }: Context, kept: Remembered) {
  const active = panel.state.view?.active;
  if (!active) return nothing;
  const count = templateCells(active.formulas).length;
  if (count === 0) return html`<p role="status">${say.noFields(active.name)}</p>`;
  const known = kept.checked?.formulas === active.formulas ? kept.checked.filled : undefined;
  const check = async () => {
    kept.checked = { formulas: active.formulas, filled: await filledNow(panel, host) };
    changed();
    return "";
  };
  return html`<p role="status">${say.cells(count, active.name)}</p>
    <section class="commands">
      <button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(check)}>${say.check}</button>
      <button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(() => fillCopy(panel, host))}>
        ${say.fill(active.name)}
      </button>
    </section>
    ${known ? unfilledView(known) : nothing}`;
} // prettier-ignore

/** A file of the user's choice, as a button; the choice is let go of at once, so that the same file can be chosen again. */
const fileView = ({ panel, host }: Context) =>
  html`<label class="from-file">
    ${say.fromFile}
    <input
      type="file"
      accept=".xlsx"
      ?disabled=${panel.busy}
      @change=${({ target }: Event) => {
        const input = target as HTMLInputElement;
        const file = input.files?.[0];
        if (file) void panel.run(() => addFromFile(panel, host, file)).finally(() => (input.value = ""));
      }}
    />
  </label>`;

const unfilledView = ({ unfilled }: Filled) =>
  unfilled.length === 0
    ? html`<p role="status">${say.allKnown}</p>`
    : html`<ul class="refusal" role="alert">
        ${unfilled.map(({ sentence }) => html`<li>${sentence}</li>`)}
      </ul>`;

function searchView({ panel, changed }: Context, kept: Remembered) {
  const { source, view: seen } = panel.state;
  return html`<label class="search">
      ${say.search}
      <input
        type="search"
        .value=${kept.sought}
        @input=${({ target }: Event) => {
          kept.sought = (target as HTMLInputElement).value;
          changed();
        }}
      />
    </label>
    ${
      source
        ? html`<label class="tick">
            <input
              type="checkbox"
              .checked=${kept.named}
              @change=${({ target }: Event) => {
                kept.named = (target as HTMLInputElement).checked;
                changed();
              }}
            />
            ${say.named(source.name)}
          </label>`
        : html`<p class="beside">${say.needsEstimate}</p>`
    }
    ${seen ? html`<p class="beside">${say.into(address(seen.selected))}</p>` : nothing}`;
}

/** Fields whose name or label holds every word that is sought; of an estimate only those that it has. */
function found(context: Context, { sought }: Remembered): TemplateField[] {
  const words = sought.toLowerCase().split(/\s+/).filter(Boolean);
  const cells = context.panel.state.source?.sheet.cells;
  return [...templateFields.values()].filter(({ name, label, keys }) => {
    const has = !cells || keys.length === 0 || keys.some((key) => key in cells);
    return has && words.every((word) => name.includes(word) || label.toLowerCase().includes(word));
  });
}

function listView(context: Context, kept: Remembered) {
  const { panel, host } = context;
  const all = found(context, kept);
  if (all.length === 0) return html`<p>${say.none}</p>`;
  const source = panel.state.source;
  return html`<ul class="put">
      ${all.slice(0, most).map((field) => {
        const braces = kept.named && source ? `{${source.name}: ${field.name}}` : `{${field.name}}`;
        return html`<li>
          <span title=${field.label}>{${field.name}}<br /><span class="beside">${field.label}</span></span>
          <strong>${source ? shownValue(field, fieldValue(field, source.sheet)) : nothing}</strong>
          <button
            type="button"
            aria-label=${say.putOne(field.name)}
            ?disabled=${panel.busy}
            @click=${() => void panel.run(() => insertField(panel, host, braces))}
          >
            ${say.put}
          </button>
        </li>`;
      })}
    </ul>
    ${all.length > most ? html`<p class="beside">${say.more(all.length - most)}</p>` : nothing}`;
}

function shownValue({ reading }: TemplateField, value: Cell): string {
  if (value === null || value === "") return "";
  return reading === "money" && typeof value === "number" ? money(value) : cellText(value);
}
