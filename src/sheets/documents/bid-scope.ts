import { fieldsOf } from "../../estimate/fields";
import { figureFields } from "../../estimate/figure-list";
import { answerOf, choiceOf, type Job } from "../../estimate/job";
import { settingSentence } from "../../estimate/post-sentences";
import { type PostWork } from "../../estimate/post-work";
import { countInWords, penSentence } from "../../estimate/sentences";
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

/**
 * The sand in yards and how deep it lies loose, to the quarter inch, live; a pen without sand says so. Where the loads
 * are shared with other pens, `share` is what is delivered for each yard needed, and the pen has that of its own need.
 */
export function sandOf(source: EstimateSource, share?: Expression): Expression {
  const alone = cellOf(source, "sand_delivered");
  const delivered = share ? times(cellOf(source, "sand_need"), share) : alone;
  const loose = cellOf(source, "depth_loose");
  const lies = share ? over(times(loose, delivered), alone) : loose;
  const yards = call("ROUND", delivered, 0);
  const depth = over(call("ROUND", times(lies, 4), 0), 4);
  return when(
    operate(alone, ">", 0),
    text("about ", yards, " cubic yards, about ", depth, " in loose"),
    "none",
  );
}

/** The work in words, as the job leads to it: what is built, how posts and rails are set, what is done besides. */
export function scopeOf({ job, made, sheet }: EstimateSource): string[] {
  const asked = fieldsOf(sheet.structure).some(({ key }) => key === "purpose");
  const what = `${capital(sheet.structure)}${asked ? ` for ${choiceOf(job, "purpose")}` : ""}`;
  const built = `${what}. ${capital(penSentence(made.pen))}.`;
  return [built, ...(made.work ? postWords(job, made.work) : []), words.done];
}

const words = { done: "Laid out from a center stake, gates hung and working, the site left clean." };

function postWords(job: Job, work: PostWork): string[] {
  const rows = countInWords(answerOf(job, "rail_rows"));
  const rails = `${rows} rows of ${choiceOf(job, "rail_stock")} rails on the ${choiceOf(job, "rail_side")}`;
  const setting = choiceOf(job, "setting");
  const set = setting === "driven" ? setting : `set in ${setting}`;
  const posts = `Line posts ${choiceOf(job, "line_post")}, gate posts ${choiceOf(job, "gate_post")}, ${set}.`;
  return [`${posts} ${settingSentence(job, work)} ${capital(rails)}.`];
}

const capital = (sentence: string) => sentence.charAt(0).toUpperCase() + sentence.slice(1);
