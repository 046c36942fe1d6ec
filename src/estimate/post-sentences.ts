import { gatePostAdequacy } from "../fence/hung-gate";
import { trapsHoof } from "../fence/hoof-traps";
import { railHeights } from "../fence/rail-heights";
import { INCHES_PER_FOOT } from "../units/conversion";
import { inchesAlone } from "../units/feet-inches";
import { Refusal } from "../units/refusal";
import { type Language } from "./fields";
import { answerOf, choiceOf, lengthsIn, type Job } from "./job";
import { messages } from "./messages";
import { postSizes, railStocks } from "./post-choices";
import { kickOf, type PostWork } from "./post-work";
import { countInWords, pieceInWords } from "./sentences";

const inInches = (inches: number) => inchesAlone(inches, 8, "words");

/** How the posts are set: "Posts of 8 ft, 2 ft 6 in deep, in 10 in holes, 12 in at the gates", and what comes first. */
export function settingSentence(job: Job, work: PostWork): string {
  const { bought, depth, lineHole, gateHole, frostGoverns } = work;
  const deep = `${pieceInWords(depth)} deep${frostGoverns ? " for the frost" : ""}`;
  const head = `Posts of ${pieceInWords(bought)}, ${deep}`;
  if (lineHole === null || gateHole === null) return `${head}, driven. ${messages.depthByCode}`;
  const atGates = gateHole === lineHole || lengthsIn(job, "leaf").length === 0 ? "" : `, ${inInches(gateHole)} at the gates`;
  return `${head}, in ${inInches(lineHole)} holes${atGates}. ${messages.depthByCode}`;
} // prettier-ignore

/** The board at the foot in words: "Kick board 2x10: 14 lengths of 16 ft."; "" where there is none. */
export function kickSentence(job: Job, { kick }: PostWork): string {
  if (!kick) return "";
  return `Kick board ${choiceOf(job, "kick_board")}: ${countInWords(kick.cut)} lengths of ${pieceInWords(kick.stock)}.`;
}

/** What is bought for the rails before waste, and what decides how long a piece may be. */
export function railsSentence(job: Job, { rails: { cut, stock, runs } }: PostWork): string {
  const decided = runs.flatMap(({ bend }) => bend?.sentence ?? []).slice(0, 1);
  const head = `Rails: ${countInWords(cut)} lengths of ${choiceOf(job, "rail_stock")}, ${pieceInWords(stock)}.`;
  const straight = runs.some(({ spans, bend }) => spans && bend === undefined);
  return [head, ...(straight ? [messages.straightRails] : []), ...decided].join(" ");
}

/** The rows of rails of a job as they stand on its posts. Refuses rows that do not fit. */
export const railHeightsOf = (job: Job) =>
  railHeights({
    rows: answerOf(job, "rail_rows"),
    width: railStocks[choiceOf(job, "rail_stock")].width,
    foot: kickOf(job)?.width ?? 0,
    under: Number(job.rail_under ?? 0),
    height: answerOf(job, "post_height") * INCHES_PER_FOOT,
  });

/** How high the board at the foot and the rails stand, in English or Spanish; where they do not fit, why. */
export function railHeightsSentence(job: Job, language: Language = "en"): string {
  try {
    const { middles, between } = railHeightsOf(job);
    const inches = (value: number) => inchesAlone(value, 8, language === "en" ? "words" : "signs");
    const kick = kickOf(job);
    const foot = kick
      ? `${messages.kickBoard[language](choiceOf(job, "kick_board"), inches(kick.width))} `
      : "";
    return foot + messages.railHeights[language](middles.map(inches), inches(between));
  } catch (refusal) {
    if (!(refusal instanceof Refusal)) throw refusal;
    return `${refusal.message[0].toUpperCase()}${refusal.message.slice(1)}.`;
  }
}

/** Openings under and between the rails that can catch a hoof, in; none where the rails do not fit. */
function trapsOf(job: Job): number[] {
  try {
    const { between } = railHeightsOf(job);
    return [...new Set([Number(job.rail_under ?? 0), between])].filter(trapsHoof);
  } catch (refusal) {
    if (refusal instanceof Refusal) return [];
    throw refusal;
  }
}

/** That an opening can catch a hoof, in English or Spanish; "" where none can. */
export function trapCaution(job: Job, language: Language = "en"): string {
  const traps = trapsOf(job).map((inches) => inchesAlone(inches, 8, language === "en" ? "words" : "signs"));
  return traps.length > 0 ? messages.trapsHoof[language](traps.join(", ")) : "";
}

/** What to think over about the posts: a gate post that is none too heavy for the widest leaf, openings that trap a hoof, and a depth that is for screening only. */
export function postCautions(job: Job, { caution }: PostWork): string[] {
  const widest = Math.max(0, ...lengthsIn(job, "leaf"));
  const gate = gatePostAdequacy(postSizes[choiceOf(job, "gate_post")].width, widest);
  const isLight = gate.adequacy === "marginal" || gate.adequacy === "too light";
  return [
    ...(widest > 0 && isLight ? [gate.sentence, gate.caution] : []),
    ...[trapCaution(job)].filter(Boolean),
    ...(caution === undefined ? [] : [caution]),
  ];
}
