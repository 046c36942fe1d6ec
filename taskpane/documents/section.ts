import { html, nothing, type TemplateResult } from "lit/html.js";
import { type SectionBody, lazySection } from "../sections";
import { type Context } from "../views/context";
import { estimatesIn } from "./book";
import { Desk } from "./desk";
import { documents } from "./list";
import { tick } from "./ticks";

const say = {
  over: "Written over",
  none: "No estimate in this workbook yet: write one first.",
  several: "Several estimates make one document with one price.",
};

/** The section of the documents: which estimates they are written over, and each document behind its own title. */
export function documentsSection(): SectionBody {
  const desk = new Desk();
  const parts = documents.map((document) => ({
    ...document,
    id: `document-${document.id}`,
    load: async (): Promise<SectionBody> => {
      const body = await document.load();
      return { view: (context) => body.view(context, desk) };
    },
  }));
  return {
    view(context) {
      desk.follow(context);
      return html`${estimatesView(context, desk)} ${parts.map((part) => lazySection(context, part))}`;
    },
  };
}

function estimatesView(context: Context, desk: Desk): TemplateResult {
  const names = desk.book ? estimatesIn(desk.book) : [];
  const picked = desk.picked(context);
  if (names.length === 0) return html`<p class="beside" role="status">${desk.book ? say.none : nothing}</p>`;
  return html`<fieldset class="ticks">
    <legend>${say.over}</legend>
    ${names.map((name) => tick(name, picked.includes(name), (on) => desk.tick(context, name, on)))}
    ${names.length > 1 ? html`<p class="beside">${say.several}</p>` : nothing}
  </fieldset>`;
}
