import { html, nothing, type TemplateResult } from "lit/html.js";
import { aidQuestions, fieldAid, type Aid } from "../../src/estimate/field-aids";
import { isArena } from "../../src/estimate/pen";
import { unbroken } from "../shown";
import { type Context } from "../views/context";
import { fieldView } from "../views/field";

const say = {
  none: "The answers lead to no pen yet.",
  rule: "An inch or two on the radius does no harm; a foot or two out of round changes how horses work.",
  aids: { stake: "How far a stake is off", slope: "Tape on a slope", line: "Radius line" } satisfies Record<
    Aid,
    string
  >,
};

/** What was typed, kept for as long as the panel is open. */
const typed: Record<string, string> = {};

/** The aids of a round pen in the field, each with what it says at once. */
export function view({ panel, changed }: Context): TemplateResult {
  const pen = panel.figured.result?.made.pen;
  if (!pen || isArena(pen)) return html`<p class="beside">${say.none}</p>`;
  return html`${(Object.keys(aidQuestions) as Aid[]).map((aid) => {
    const { read, problems, sentences } = fieldAid(aid, typed, pen);
    return html`<fieldset>
      <legend>${say.aids[aid]}</legend>
      ${aidQuestions[aid].map((field) =>
        fieldView({
          field,
          answer: typed[field.key] ?? null,
          good: read[field.key],
          problem: problems[field.key],
          placeholder: field.default === null ? undefined : String(field.default),
          missing: false,
          answered: (value) => {
            typed[field.key] = value;
            changed();
          },
        }),
      )}
      <div class="answer" role="status">
        ${sentences.map((one) => html`<p class="said">${unbroken(one)}</p>`)}
        ${aid === "stake" ? html`<p class="beside">${say.rule}</p>` : nothing}
      </div>
    </fieldset>`;
  })}`;
}
