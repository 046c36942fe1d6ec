import { html, nothing, type TemplateResult } from "lit/html.js";
import { isArena, isPosted } from "../../src/estimate/pen";
import { measures, squaringCheck } from "../../src/estimate/squaring-check";
import { type Context } from "../views/context";
import { fieldView } from "../views/field";

const say = {
  hint: "Tape between the four corner stakes, then both diagonals. The near left stake and the left side stay.",
  none: "The answers lead to no arena yet.",
};

/** What was typed, kept for as long as the panel is open. */
const typed: Record<string, string> = {};

/** Six taped measures of an arena, and where its corner stakes go. */
export function view({ panel, changed }: Context): TemplateResult {
  const arena = panel.figured.result?.made.pen;
  if (!arena || !isArena(arena)) return html`<p class="beside">${say.none}</p>`;
  const { length, width } = isPosted(arena) ? arena.line : arena;
  const { read, problems, sentences } = squaringCheck(typed, length, width);
  return html`<p class="beside">${say.hint}</p>
    ${measures.map((field) =>
      fieldView({
        field,
        answer: typed[field.key] ?? null,
        good: read[field.key],
        problem: problems[field.key],
        missing: false,
        answered: (value) => {
          typed[field.key] = value;
          changed();
        },
      }),
    )}
    <div class="answer" role="status">
      ${sentences.length > 0 ? sentences.map((one) => html`<p class="said">${one}</p>`) : nothing}
    </div>`;
}
