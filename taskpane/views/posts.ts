import { html, type TemplateResult } from "lit/html.js";
import {
  kickSentence,
  postCautions,
  railHeightsSentence,
  railsSentence,
  settingSentence,
} from "../../src/estimate/post-sentences";
import { unbroken } from "../shown";
import { type Context } from "./context";

/** How the posts are set, what decides the rails and how high they stand, and what to think over. */
export function view({ panel }: Context): TemplateResult {
  const { good } = panel.state;
  const work = panel.figured.result?.made.work;
  if (!work) return html``;
  const said = [settingSentence(good, work), railsSentence(good, work), `${kickSentence(good, work)} ${railHeightsSentence(good)}`.trim()]; // prettier-ignore
  return html`${said.map((one) => html`<p class="beside">${unbroken(one)}</p>`)}
  ${postCautions(good, work).map((caution) => html`<p class="refusal">${unbroken(caution)}</p>`)}`;
}
