import { html, type TemplateResult } from "lit/html.js";
import { fieldsOf } from "../../src/estimate/fields";
import { structureOf } from "../../src/estimate/job";
import { layoutHindrance } from "../layout-hindrance";
import { type Context } from "./context";
import { questionView } from "./questions";

/** What the layout sheet asks beside the job, and the button that writes it, or why it cannot be written yet. */
export function view(context: Context): TemplateResult {
  const { panel, layout } = context;
  const why = layoutHindrance(panel.state, panel.figured);
  const asked = fieldsOf(structureOf(panel.state.good)).filter(({ section }) => section === "layout");
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
  `;
}
