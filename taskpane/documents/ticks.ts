import { html, type TemplateResult } from "lit/html.js";

/** A box to tick, beside its label. */
export const tick = (label: string, on: boolean, ticked: (on: boolean) => void): TemplateResult =>
  html`<label class="tick">
    <input
      type="checkbox"
      .checked=${on}
      @change=${(event: Event) => ticked((event.target as HTMLInputElement).checked)}
    />
    ${label}
  </label>`;
