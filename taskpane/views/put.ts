import { html, nothing, type TemplateResult } from "lit/html.js";
import { address } from "../../src/sheets/address";
import { type SheetAnswer } from "../../src/sheets/answer-terms";
import { answersOf } from "../../src/sheets/answers";
import { liveFormula } from "../../src/sheets/formula";
import { feetInches } from "../../src/units/feet-inches";
import { number } from "../shown";
import { unwritten } from "../state";
import { type Context } from "./context";

const say = {
  into: (where: string) => `Selected: ${where}. The cell must be empty. Each answer goes in as a formula that works by itself.`,
  noAnswer: "The answers above lead to no pen yet.",
  putOne: (label: string) => `Put into the cell: ${label}`,
  go: "Put",
}; // prettier-ignore

/** The answers that can stand alone in a cell, each with the button that puts its formula into the selected one. */
export function view({ panel }: Context): TemplateResult {
  const ready = !panel.figured.old && panel.figured.result !== undefined && !panel.busy;
  const { figured, state } = panel;
  if (figured.old || !figured.result) return html`<p>${say.noAnswer}</p>`;
  const { source, good, view } = state;
  const written = source && unwritten(state).length === 0 ? source.sheet : undefined;
  return html`<p class="beside">${view ? say.into(address(view.selected)) : nothing}</p>
    <ul class="put">
      ${answersOf(good, figured.result.made, written).map(
        (answer) =>
          html`<li>
            <span>${answer.label}</span>
            <strong>${valueText(answer)}</strong>
            <button
              type="button"
              aria-label=${say.putOne(answer.label)}
              ?disabled=${!ready}
              @click=${() => void panel.put(liveFormula(answer.says))}
            >
              ${say.go}
            </button>
          </li>`,
      )}
    </ul>`;
}

function valueText({ kind, value, unit }: SheetAnswer): string {
  if (kind === "feet") return feetInches(value);
  return unit ? `${number(value)} ${unit}` : number(value);
}
