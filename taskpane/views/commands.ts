import { html, nothing, type TemplateResult } from "lit/html.js";
import { type Context } from "./context";

const say = { writeNew: "Write as a new estimate" };

/** The commands at the foot: whatever this host can do beside the common part. */
export function commandsView({ panel, commands }: Context): TemplateResult {
  const ready = !panel.figured.old && panel.figured.result !== undefined && !panel.busy;
  return html`<section class="commands">
    ${
      panel.state.source
        ? html`<button type="button" ?disabled=${!ready} @click=${() => void panel.write()}>
            ${say.writeNew}
          </button>`
        : nothing
    }
    ${commands.map(
      ({ label, run }) =>
        html`<button type="button" ?disabled=${panel.busy} @click=${() => void panel.run(run)}>
          ${label}
        </button>`,
    )}
  </section>`;
}
