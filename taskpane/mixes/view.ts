import { html, nothing, type TemplateResult } from "lit/html.js";
import { type Job } from "../../src/estimate/job";
import { noOwnMix, panelMixes, type PanelMixes, type PricedMix } from "../../src/estimate/panel-mixes";
import { onHandSentence, panelSizesSentence, piecesSentence } from "../../src/estimate/sentences";
import { Refusal } from "../../src/units/refusal";
import { type Controller } from "../controller";
import { type SectionBody } from "../sections";
import { capitalized, money, unbroken } from "../shown";
import { type Context } from "../views/context";
import { sentence } from "../views/field";
import "./mixes.css";

const say = {
  how: "Each with the price of the whole job.",
  nearest: "Nearest to the size you asked for",
  beside: "One panel fewer or more than now",
  use: "Use this",
  now: "In use now",
  back: "Back to the best",
  moment: "One moment …",
};

/** What the job of the panel could be made of, or why nothing closes. */
type Found = PanelMixes | { refusal: string };

/** How long, ms, after the last change the mixes are found: no keystroke waits for them. */
const PAUSE = 150;

/** The section that offers the best mixes of panels and the pens beside the present one. */
export function mixesSection(): SectionBody {
  const find = finder();
  return {
    view: ({ panel, page, changed }: Context) => {
      if (!page.open?.mixes) return html``;
      const { found, old } = find(panel, changed);
      if (!found) return html`<p class="beside" role="status">${say.moment}</p>`;
      return html`<div class=${old ? "old" : ""} aria-busy=${old}>${foundView(panel, found)}</div>`;
    },
  };
}

/**
 * Finds the mixes of the panel's answers, anew only where these, the prices or the user's own lines have changed, and
 * then once nothing has for a moment; until that is done what was found last is old.
 */
function finder() {
  let last = "";
  let found: Found | undefined;
  let waiting: { asked: string; timer: ReturnType<typeof setTimeout> } | undefined;
  return ({ state: { good, prices, source } }: Controller, changed: () => void) => {
    const own = source?.sheet.own ?? [];
    const asked = JSON.stringify([good, prices, own]);
    const old = asked !== last;
    if (waiting && (!old || waiting.asked !== asked)) {
      clearTimeout(waiting.timer);
      waiting = undefined;
    }
    if (old && !waiting) {
      const search = () => {
        found = foundOrRefused(() => panelMixes(good, prices, own));
        last = asked;
        waiting = undefined;
        changed();
      };
      waiting = { asked, timer: setTimeout(search, PAUSE) };
    }
    return { found, old };
  };
}

function foundOrRefused(find: () => PanelMixes): Found {
  try {
    return find();
  } catch (refusal) {
    if (refusal instanceof Refusal) return { refusal: refusal.message };
    throw refusal;
  }
}

function foundView(panel: Controller, found: Found): TemplateResult {
  const one = (mix: PricedMix, id: string) => mixView(mix, `penstake-mix-${id}`, (use) => panel.answer(use));
  const { good } = panel.state;
  const isOwn = Object.keys(noOwnMix).some((key) => (good[key] ?? null) !== null);
  const back = html`<button type="button" ?disabled=${!isOwn} @click=${() => panel.answer(noOwnMix)}>
    ${say.back}
  </button>`;
  if ("refusal" in found) return html`<p class="refusal" role="status">${sentence(found.refusal)}</p>${back}`;
  const { best, fewer, more } = found;
  return html`<p class="beside">${say.how}</p>
    <h3>${say.nearest}</h3>
    <ol class="mixes">
      ${best.map((mix, k) => one(mix, `${k + 1}`))}
    </ol>
    ${back}
    ${
      fewer || more
        ? html`<h3>${say.beside}</h3>
            <ul class="mixes">
              ${fewer ? one(fewer, "fewer") : nothing}${more ? one(more, "more") : nothing}
            </ul>`
        : nothing
    }`;
} // prettier-ignore

const mixView = ({ pen, price, answers, isNow }: PricedMix, id: string, use: (answers: Job) => void) => html`<li>
  <p id=${id}>
    <strong>${capitalized(unbroken(piecesSentence(pen)))}</strong>
    <span>${unbroken(panelSizesSentence(pen))}</span>
    <span>${unbroken(onHandSentence(pen))}</span>
  </p>
  <p class="price">
    <strong>${typeof price === "number" ? money(price) : price}</strong>
    <button type="button" aria-describedby=${id} ?disabled=${isNow} @click=${() => use(answers)}>
      ${isNow ? say.now : say.use}
    </button>
  </p>
</li>`; // prettier-ignore
