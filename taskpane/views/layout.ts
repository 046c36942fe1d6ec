import { html, nothing, type TemplateResult } from "lit/html.js";
import { fieldsOf } from "../../src/estimate/fields";
import { structureOf } from "../../src/estimate/job";
import { arenas, belongs } from "../../src/estimate/structures";
import { layoutHindrance } from "../layout-hindrance";
import { siteOf } from "../layout-site";
import { lazySection, type LazySection } from "../sections";
import { unbroken } from "../shown";
import { type Context } from "./context";
import { questionView } from "./questions";

const squaring: LazySection = {
  id: "squaring",
  title: "Squaring check",
  hint: "What the tape says, and which corner to slide",
  load: () => import("../field/squaring-view"),
};

const aids: LazySection = {
  id: "field-aids",
  title: "Field aids",
  hint: "A stake off its place, tape on a slope, radius line",
  load: () => import("../field/aids-view"),
};

const say = {
  site: "Gate first, and fences nearby",
  hints: {
    gate_right: "Facing the pen from outside, from a mark of yours: 40; 100",
    gate_left: "The gate then sets the center and all stakes.",
    neighbor_1:
      "Round: east; north of its center; size across. Straight: its two ends. From this center: 80; 0; 60",
    turning_room: "Narrower wedges are found and said.",
  } as Record<string, string>,
};

/** What the layout sheet asks beside the job, what that leads to, and the button that writes it, or why it cannot be written yet. */
export function view(context: Context): TemplateResult {
  const { panel, layout } = context;
  const { good } = panel.state;
  const structure = structureOf(good);
  const site = siteOf(good, panel.figured.result?.made.pen);
  const why = layoutHindrance(panel.state, panel.figured) || site.refusal;
  const asked = (section: string) =>
    fieldsOf(structure)
      .filter((field) => field.section === section)
      .map((field) => questionView(context, field, { hint: say.hints[field.key] }));
  return html`
    ${asked("layout")}
    <fieldset>
      <legend>${say.site}</legend>
      ${asked("site")}
      <p class="beside" role="status">${site.gate || nothing}</p>
      ${site.byOther.map((one) => html`<p class="beside">${unbroken(one)}</p>`)}
      ${site.notes.map((note) => html`<p class="refusal">${unbroken(note)}</p>`)}
    </fieldset>
    <section class="commands">
      <button
        type="button"
        ?disabled=${why !== "" || panel.busy}
        aria-describedby="penstake-layout-why"
        @click=${() => void panel.run(layout.run)}
      >
        ${layout.label}
      </button>
      <p class="beside" id="penstake-layout-why" role="status">${why}</p>
    </section>
    ${lazySection(context, belongs({ structures: arenas }, structure) ? squaring : aids)}
  `;
}
