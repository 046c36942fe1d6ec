import { html, nothing, type TemplateResult } from "lit/html.js";
import { fieldsOf } from "../../src/estimate/fields";
import { structureOf } from "../../src/estimate/job";
import { arenas, belongs } from "../../src/estimate/structures";
import { layoutHindrance } from "../layout-hindrance";
import { lazySection, type LazySection } from "../sections";
import { type Context } from "./context";
import { questionView } from "./questions";

const squaring: LazySection = {
  id: "squaring",
  title: "Squaring check",
  hint: "What the tape says, and which corner to slide",
  load: () => import("../field/squaring-view"),
};

/** What the layout sheet asks beside the job, and the button that writes it, or why it cannot be written yet. */
export function view(context: Context): TemplateResult {
  const { panel, layout } = context;
  const why = layoutHindrance(panel.state, panel.figured);
  const structure = structureOf(panel.state.good);
  const asked = fieldsOf(structure).filter(({ section }) => section === "layout");
  return html`
    ${asked.map((field) => questionView(context, field))}
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
    ${belongs({ structures: arenas }, structure) ? lazySection(context, squaring) : nothing}
  `;
}
