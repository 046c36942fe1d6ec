import { html } from "lit/html.js";
import { tableOfText } from "../../src/estimate/price-text";
import { type SectionBody } from "../sections";
import { PricePreview } from "./preview";
import { tableOfFile } from "./table-of-file";

const say = {
  ask: "A list of prices with a line of headers: item and price at least; also size, unit, waste, taxed, supplier, date.",
  paste: "Paste it here",
  open: "or open a file (.csv, .tsv, .xlsx)",
  preview: "Show what it would do",
};

/** The section that brings prices in from a pasted or opened list, with a preview. */
export function pricesSection(): SectionBody {
  const preview = new PricePreview();
  let text = "";
  return {
    view: (context) => html`
      <p class="beside">${say.ask}</p>
      <label class="list-of-prices"
        >${say.paste}
        <textarea
          rows="5"
          .value=${text}
          @input=${(event: Event) => (text = (event.target as HTMLTextAreaElement).value)}
        ></textarea>
      </label>
      <section class="commands">
        <button
          type="button"
          @click=${() => void preview.tried(context, () => preview.read(context, tableOfText(text)))}
        >
          ${say.preview}
        </button>
        <label class="beside"
          >${say.open}
          <input
            type="file"
            accept=".csv,.tsv,.txt,.xlsx"
            @change=${(event: Event) => {
              const file = (event.target as HTMLInputElement).files?.[0];
              if (file)
                void preview.tried(context, async () => preview.read(context, await tableOfFile(file)));
            }}
          />
        </label>
      </section>
      ${preview.view(context, () => (text = ""))}
    `,
  };
}
