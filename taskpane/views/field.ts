import { html, nothing, type TemplateResult } from "lit/html.js";
import { live } from "lit/directives/live.js";
import { type FieldValue, type Question } from "../../src/estimate/fields";
import { inField, readBack } from "../shown";

/** A field as it is shown, and what to do with what is typed into it. */
export interface FieldProps {
  field: Question;
  answer: FieldValue;
  /** The last answer that could be read. */
  good: FieldValue;
  problem?: string;
  /** A count or word shown in an empty field. */
  placeholder?: string;
  hint?: string;
  /** The sheet has no cell for it, so it cannot be answered now. */
  missing: boolean;
  answered(value: string): void;
  /** Takes the field out of its list. */
  remove?(): void;
}

const say = {
  missing: "The sheet has no cell for this.",
  remove: "Remove",
  removes: (label: string) => `Remove: ${label}`,
  blank: "not set",
};

/** One field: label, entry, unit; below them its reading or its error, in room that is always kept. */
export function fieldView(props: FieldProps): TemplateResult {
  const { field, good, problem, hint, missing, remove } = props;
  const id = fieldId(field.key);
  const note = missing ? say.missing : problem && sentence(problem);
  const wide = ["text", "choice", "numbers"].includes(field.kind);
  return html`<div class="field ${wide ? "wide" : ""} ${note ? "wrong" : ""}">
    <label for=${id}>${field.label.en}</label>
    ${field.kind === "choice" ? choice(props, id) : entry(props, id)}
    <span class="unit" aria-hidden="true">${wide ? nothing : field.unit}</span>
    <span class="note" id="${id}-note" aria-live="polite">${note ?? hint ?? nothing}</span>
    ${
      remove
        ? html`<button type="button" class="plain" aria-label=${say.removes(field.label.en)} @click=${remove}>
            ${say.remove}
          </button>`
        : nothing
    }
    <output class="reading" for=${id}>${note ? nothing : readBack(field, good)}</output>
  </div>`;
}

/** The id of a field's control in the page. */
export const fieldId = (key: string) => `penstake-${key}`;

/** A refusal as a sentence by itself. */
export function sentence(refusal: string): string {
  const capital = refusal.charAt(0).toUpperCase() + refusal.slice(1);
  return /[.!?]$/.test(capital) ? capital : `${capital}.`;
}

const entry = ({ field, answer, problem, placeholder, missing, answered }: FieldProps, id: string) =>
  html`<input
    id=${id}
    type="text"
    inputmode=${field.kind === "count" ? "numeric" : "text"}
    autocomplete="off"
    spellcheck="false"
    .value=${live(inField(answer))}
    placeholder=${placeholder ?? ""}
    ?disabled=${missing}
    aria-invalid=${problem ? "true" : "false"}
    aria-describedby="${id}-note"
    aria-label=${field.unit ? `${field.label.en}, ${field.unit}` : nothing}
    @input=${(event: Event) => answered((event.target as HTMLInputElement).value)}
  />`;

const choice = ({ field, answer, missing, answered }: FieldProps, id: string) =>
  html`<select
    id=${id}
    ?disabled=${missing}
    aria-describedby="${id}-note"
    @change=${(event: Event) => answered((event.target as HTMLSelectElement).value)}
  >
    ${
      field.options!.includes(String(answer))
        ? nothing
        : html`<option value=${answer ?? ""} selected>${answer ?? say.blank}</option>`
    }
    ${field.options!.map(
      (option) => html`<option value=${option} ?selected=${live(option === answer)}>${option}</option>`,
    )}
  </select>`;
