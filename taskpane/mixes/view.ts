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
};

/** What the job of the panel could be made of, or why nothing closes. */
type Found = PanelMixes | { refusal: string };

/** The section that offers the best mixes of panels and the pens beside the present one. */
export function mixesSection(): SectionBody {
  const find = finder();
  return {
    view: ({ panel, page }: Context) => (page.open?.mixes ? foundView(panel, find(panel)) : html``),
  };
}

/** Finds the mixes of the panel's answers, anew only where these, the prices or the user's own lines have changed. */
function finder() {
  let last = "";
  let found: Found = { refusal: "" };
  return ({ state: { good, prices, source } }: Controller): Found => {
    const own = source?.sheet.own ?? [];
    const asked = JSON.stringify([good, prices, own]);
    if (asked !== last) {
      found = foundOrRefused(() => panelMixes(good, prices, own));
      last = asked;
    }
    return found;
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
