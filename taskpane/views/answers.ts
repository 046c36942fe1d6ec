import { html, nothing, type TemplateResult } from "lit/html.js";
import { type Estimate } from "../../src/estimate/estimate";
import { gateCautions } from "../../src/estimate/gate-cautions";
import {
  groundSentences,
  onHandSentence,
  openingsSentence,
  otherSizesSentence,
  penSentence,
  sandWarnings,
} from "../../src/estimate/sentences";
import { lazyPart, type LazyPart, type SectionBody } from "../sections";
import { unbroken } from "../shown";
import { type Context } from "./context";

/** What is said of posts is fetched once a fence has some. */
const postsPart: LazyPart = { id: "posts", load: () => import("./posts") };

const say = { none: "No answer yet." };

/** What the questions of a size and its fence lead to. */
export const fenceAnswer: SectionBody = {
  view(context) {
    const { result } = context.panel.figured;
    if (!result) return html`<p class="said">${say.none}</p>`;
    const { pen } = result.made;
    return html`<p class="said">${unbroken(penSentence(pen))}</p>
      <p class="beside">${unbroken(otherSizesSentence(pen))}</p>
      ${besideFence(context, result.made)}`;
  },
};

/** What the questions of base, footing and trucks lead to. */
export const groundAnswer: SectionBody = {
  view({ panel }) {
    const { result } = panel.figured;
    if (!result) return html`<p class="said">${say.none}</p>`;
    const { base, sand } = result.made;
    const { base_depth, depth } = panel.state.good;
    return html`${groundSentences(base, sand, Number(base_depth)).map((said) => html`<p class="said">${unbroken(said)}</p>`)}
      <p class="refusal">${sandWarnings(sand, Number(depth)).join(" · ")}</p>`;
  },
}; // prettier-ignore

/** What more is to be said of a fence: its panels on hand and its gates, or how its posts are set. */
function besideFence(
  context: Context,
  { pen, base, sand, work, takeoff }: Estimate,
): TemplateResult | typeof nothing {
  if (work) return lazyPart(context, postsPart);
  if (pen.structure !== "panel pen") return nothing;
  const byOther = takeoff.filter(({ key }) => key.startsWith("panel_")).map((line) => line.byOther ?? 0);
  const said = [onHandSentence(pen, byOther), openingsSentence(pen)].filter(Boolean);
  return html`${said.map((one) => html`<p class="beside">${unbroken(one)}</p>`)}
  ${gateCautions(pen, base.delivered + sand.delivered).map((caution) => html`<p class="refusal">${unbroken(caution)}</p>`)}`;
}
