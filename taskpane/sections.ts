import { html, nothing, type TemplateResult } from "lit/html.js";
import { type OfStructures } from "../src/estimate/structures";
import { type Context } from "./views/context";

/** What a section of the panel shows once its script is there. */
export interface SectionBody {
  view(context: Context): TemplateResult;
}

/** A part of the panel whose script is fetched when it is first shown. */
export interface LazyPart {
  /** Names the part in the page; no other may bear it. */
  id: string;
  load: () => Promise<SectionBody>;
}

/** A section of the panel, fetched when it is first opened. */
export interface LazySection extends LazyPart, OfStructures {
  title: string;
  hint: string;
}

/** How far a section has come: being fetched, not to be had, or there. */
export type SectionState = "loading" | "failed" | SectionBody;

const say = {
  loading: "One moment …",
  failed: "This part of the panel could not be loaded. Nothing else is touched.",
  again: "Try again",
};

/** A section that opens under its title, and fetches what it shows when it is opened. */
export function lazySection(context: Context, section: LazySection): TemplateResult {
  const toggled = ({ target }: Event) => toggleSection(context, section, (target as HTMLDetailsElement).open);
  return html`<details
    class="more"
    id="penstake-${section.id}"
    ?open=${context.page.open?.[section.id] ?? false}
    @toggle=${toggled}
  >
    <summary>${section.title} <span class="beside">${section.hint}</span></summary>
    ${bodyOf(context, section)}
  </details>`;
}

/** A part that stands open: it is fetched after what stands around it has been shown. */
export function lazyPart(context: Context, part: LazyPart): TemplateResult {
  if (context.page.sections[part.id] === undefined) setTimeout(() => void openSection(context, part));
  return html`${bodyOf(context, part)}`;
}

function bodyOf(context: Context, section: LazyPart) {
  const state = context.page.sections[section.id];
  if (state === undefined) return nothing;
  if (state === "loading") return html`<p class="beside" role="status">${say.loading}</p>`;
  if (state !== "failed") return state.view(context);
  return html`<p class="refusal" role="alert">${say.failed}</p>
    <button type="button" @click=${() => void openSection(context, section)}>${say.again}</button>`;
}

/** Keeps whether a section stands open. When it opens it is fetched, or shown anew where it is there already. */
export function toggleSection(context: Context, section: LazySection, open: boolean): void {
  const { page, changed } = context;
  page.open = { ...page.open, [section.id]: open };
  if (!open) return;
  if (typeof page.sections[section.id] === "object") changed();
  else void openSection(context, section);
}

/** Fetches a section unless it is there or on its way; after a failure it is fetched again. */
export async function openSection({ page, changed }: Context, { id, load }: LazyPart): Promise<void> {
  const state = page.sections[id];
  if (state !== undefined && state !== "failed") return;
  page.sections[id] = "loading";
  changed();
  page.sections[id] = await load().catch((): SectionState => "failed");
  changed();
}
