import { fabricPlaces, fieldsOf } from "../../estimate/fields";
import { figureFields } from "../../estimate/figure-list";
import { answerOf, choiceOf, type Job } from "../../estimate/job";
import { baseLayer, type Material } from "../../estimate/layers";
import { settingSentence } from "../../estimate/post-sentences";
import { isArena } from "../../estimate/pen";
import { type PostWork } from "../../estimate/post-work";
import { countInWords, penSentence } from "../../estimate/sentences";
import { byOtherSentences } from "../../estimate/site-sentences";
import { inchesAlone } from "../../units/feet-inches";
import { call, operate, over, pen, text, times, when, type Expression } from "../expression";
import { cellOf, type EstimateSource } from "./source";

/** The sizes that a customer is told, of whichever the estimate has. */
const sizes = new Set([
  "pin_circle", "post_circle", "built_length", "built_width", "inside_clear", "clear_length", "clear_width",
  "distance_around",
]); // prettier-ignore

/** The sizes as built, each a label and its feet and inches, live. */
export const sizesOf = (source: EstimateSource): { label: string; says: Expression }[] =>
  figureFields
    .filter(({ key }) => sizes.has(key) && key in source.sheet.cells)
    .map(({ key, label }) => ({
      label: label.en.replace(/ \(.*\)$/, ""),
      says: pen("FEET_INCHES", cellOf(source, key)),
    }));

/** The figure of a layer's depth, and how it then lies. */
const lying: Record<Material, [depth: string, word: string]> = {
  base: ["base_depth_settled", "compacted"],
  sand: ["depth_loose", "loose"],
};

/**
 * A layer in yards and how deep it lies, to the quarter inch, live; of sand, where full loads give less than the depth
 * asked for, that and the least that they give. A pen without the layer says so. Where the loads are shared with other
 * pens, `share` is what is delivered for each yard needed, and the pen has that of its own need.
 */
export function layerOf(source: EstimateSource, material: Material, share?: Expression): Expression {
  const [depth, word] = lying[material];
  const alone = cellOf(source, `${material}_delivered`);
  const delivered = share ? times(cellOf(source, `${material}_need`), share) : alone;
  const deep = cellOf(source, depth);
  const lies = share ? over(times(deep, delivered), alone) : deep;
  const yards = call("ROUND", delivered, 0);
  const quarter = (rounding: string) => over(call(rounding, times(lies, 4), 0), 4);
  const as = text("about ", yards, " cubic yards, about ", quarter("ROUND"), ` in ${word}`);
  if (material === "base") return when(operate(alone, ">", 0), as, "none");
  const asked = cellOf(source, "depth");
  const less = text("about ", yards, words.toLie, asked, words.fullLoads, quarter("ROUNDDOWN"), words.noLess);
  return when(operate(alone, ">", 0), when(operate(quarter("ROUND"), "<", asked), less, as), "none");
}

/** The base in words, to go on with: " 4 in compacted base on road fabric."; nothing where none was asked for. */
function baseWords(job: Job): string {
  const depth = Number(job[baseLayer.depth]);
  if (!(depth > 0)) return "";
  const fabric = choiceOf(job, "fabric") === fabricPlaces[1] ? " on road fabric" : "";
  return ` ${inchesAlone(depth, 8, "words")} compacted base${fabric}.`;
}

/** The work in words, as the job leads to it: what is built, how posts and rails are set, what is done besides. */
export function scopeOf({ job, made, sheet }: EstimateSource): string[] {
  const asked = fieldsOf(sheet.structure).some(({ key }) => key === "purpose");
  const what = `${capital(sheet.structure)}${asked ? ` for ${choiceOf(job, "purpose")}` : ""}`;
  const built = `${what}. ${capital(penSentence(made.pen))}.${baseWords(job)}`;
  return [
    built,
    ...(made.work ? postWords(job, made.work) : []),
    isArena(made.pen) ? words.arenaDone : words.done,
    ...byOtherSentences(job, made.pen),
  ];
}

const words = {
  done: "Laid out from a center stake, gates hung and working, the site left clean.",
  arenaDone: "Laid out square by its diagonals, gates hung and working, the site left clean.",
  toLie: " cubic yards, to lie ",
  fullLoads: " in deep. Sand comes in full loads: it may lie ",
  noLess: " in, and no less.",
};

function postWords(job: Job, work: PostWork): string[] {
  const rows = countInWords(answerOf(job, "rail_rows"));
  const kick = work.kick
    ? `, and a kick board of ${choiceOf(job, "kick_board")} at the ground on the inside`
    : "";
  const rails = `${rows} rows of ${choiceOf(job, "rail_stock")} rails on the ${choiceOf(job, "rail_side")}, held by ${choiceOf(job, "fastener")}${kick}`;
  const setting = choiceOf(job, "setting");
  const set = setting === "driven" ? setting : `set in ${setting}`;
  const posts = `Line posts ${choiceOf(job, "line_post")}, gate posts ${choiceOf(job, "gate_post")}, ${set}.`;
  return [`${posts} ${settingSentence(job, work)} ${capital(rails)}.`];
}

const capital = (sentence: string) => sentence.charAt(0).toUpperCase() + sentence.slice(1);
