import { html, type TemplateResult } from "lit/html.js";
import { fieldsOf, type Field, type Section } from "../../src/estimate/fields";
import { structureOf, type Job } from "../../src/estimate/job";
import { type Context } from "./context";
import { questionView } from "./questions";

/** The sections that the layout sheet asks for. */
type AskedElsewhere = "layout" | "site";
const askedElsewhere: readonly Section[] = ["layout", "site"] satisfies AskedElsewhere[];

const say = {
  more: "More",
  hint: "Everything else, each with what is taken unless you change it",
  sections: {
    job: "Job",
    pen: "Size",
    fence: "Fence",
    holes: "Posts and holes",
    gates: "Gates",
    base: "Base",
    footing: "Footing",
    hauling: "Hauling",
    supplies: "Layout supplies",
    equipment: "Equipment",
    labor: "Labor",
    subcontract: "Subcontract",
    charges: "On top of the lines",
  } as Record<Exclude<Section, AskedElsewhere>, string>,
  hints: {
    gates_by_other: "Counted as above: 2 or 1; 3. They and their posts are not priced here.",
    fence_by_other: "Clockwise, by the layout sheet's stakes: 3; 7. The posts at both ends are theirs too.",
  } as Record<string, string>,
};

/** Every field that neither the questions nor the layout sheet ask, by section. */
export function moreView(context: Context): TemplateResult {
  const { answers, good } = context.panel.state;
  const others = fieldsOf(structureOf(good)).filter(
    (field) => !field.quick && !field.slot && field.ofGate === undefined && applies(field, answers),
  );
  const sections = [...new Set(others.map(({ section }) => section))].filter(
    (one) => !askedElsewhere.includes(one),
  );
  return html`<details class="more">
    <summary>${say.more} <span class="beside">${say.hint}</span></summary>
    ${sections.map(
      (section) =>
        html`<fieldset>
          <legend>${say.sections[section as keyof typeof say.sections]}</legend>
          ${others.filter((field) => field.section === section).map((field) => questionView(context, field, { hint: say.hints[field.key] }))}
        </fieldset>`,
    )}
  </details>`;
}

/** The count of a place in a list, or of a truck's base, is asked for when the place is in use, or a count was set for it. */
function applies({ key, insteadOf, onHandOf }: Field, answers: Job): boolean {
  const place = onHandOf ?? key.replace(/^base_|_use$/g, "");
  const isPlace = (onHandOf ?? insteadOf) !== undefined && place in answers && /_\d$/.test(place);
  return !isPlace || (answers[place] ?? "") !== "" || (answers[key] ?? "") !== "";
}
