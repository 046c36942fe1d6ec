import { fieldOf, fieldsOf, slotKeys, type Language } from "../estimate/fields";
import { figureField } from "../estimate/figure-list";
import { byOtherOf } from "../estimate/by-other";
import { answerOf, type Job } from "../estimate/job";
import { cutLists } from "../estimate/cut-list";
import { gatePostWidth } from "../estimate/fence-body";
import { type PostedPen } from "../estimate/post-pen";
import { openingFigures, postFigures } from "../estimate/post-figures";
import { railHeightsSentence, trapCaution } from "../estimate/post-sentences";
import { type PostWork } from "../estimate/post-work";
import { placed, type Placed } from "../estimate/site";
import { type Stake } from "../fence/layout";
import { postLayout } from "../fence/post-layout";
import { INCHES_PER_FOOT } from "../units/conversion";
import { cell, over, pen as ask, range } from "./expression";
import { type LaidStake, type LayoutData, type UsedInput } from "./layout-data";
import { askedOf, headOf, hungAlike, inputsOn, withSides, type LayoutIssue } from "./layout-parts";
import { usedPlace } from "./layout-places";

/** The layout of a job's post pen as its layout sheet shows it, one row a post with its hole. Refuses as postLayout does. */
export function postPenLayout(
  job: Job,
  pen: PostedPen,
  work: PostWork,
  { revision, date, estimate }: LayoutIssue,
): LayoutData {
  const gatePost = gatePostWidth(job) / INCHES_PER_FOOT;
  const spacing = answerOf(job, "spacing");
  const gates = pen.hung.map(({ opening }) => opening);
  const posts = { diameter: pen.postCircle, spacing, gates, gatePost };
  const laid = placed(job, pen, (bearing) => postLayout(posts, bearing));
  const pieces: LayoutData["pieces"] = [
    { what: "bay", length: pen.bay, count: pen.bays },
    ...hungAlike(pen.hung),
  ];
  const { used, terms, circle } = usedInputs(job, pen, work, laid, estimate);
  const sizeOf = (key: string) => ({ label: figureField(key).label });
  const head = headOf(job, pen, pen.postCircle / 2, laid, pieces);
  return {
    ...head,
    notes: [...head.notes, ...railNotes(job, head.language)],
    revision,
    date,
    measuredTo: "post center",
    pieces,
    sizes: [
      { ...sizeOf("post_circle"), feet: circle },
      { ...sizeOf("inside_clear"), feet: pen.insideClear },
      { ...sizeOf("distance_around"), feet: pen.distanceAround },
    ],
    bearing: terms[4],
    radius: over(circle, 2),
    stakes: withSides(laid.stakes, pen, askedOf(job).hand, "post", byOtherOf(job, pen)).map((stake) =>
      withHole(stake, work),
    ),
    cutLists: cutLists(job, work),
    asks: ask("POST_LAYOUT", ...terms),
    used,
  };
}

/** A stake with the hole that its post stands in; none where posts are driven, and of a post by other. */
export function withHole(stake: LaidStake, { lineHole, gateHole, holeDepth }: PostWork): LaidStake {
  const diameter = stake.kind === "gate post" ? gateHole : lineHole;
  return diameter === null || stake.byOther ? stake : { ...stake, hole: { diameter, depth: holeDepth! } };
}

/** How high the boards stand, and whether they leave an opening that can catch a hoof. */
export const railNotes = (job: Job, language: Language) =>
  [railHeightsSentence(job, language), trapCaution(job, language)].filter(Boolean);

/** What the heights and the cuts of boards rest on. */
const railKeys = fieldsOf("post pen").flatMap(({ key, section, decides }) =>
  section === "fence" && (decides || key === "rail_under") ? [key] : [],
);

/** What the openings of gates and the place of their hinges rest on beside their leaves. */
const gateKeys = fieldsOf("post pen").flatMap(({ key, section, decides, slot }) =>
  section === "gates" && decides && !slot ? [key] : [],
);

/** The inputs of POST_LAYOUT as they stand on the sheet with what the holes rest on, and the terms by which its formulas name them. */
function usedInputs(
  job: Job,
  pen: PostedPen,
  work: PostWork,
  laid: Placed<Stake>,
  estimate: LayoutIssue["estimate"],
) {
  const { now, input, bearing, around } = inputsOn(estimate);
  const figures = { ...postFigures(job, pen, work), ...openingFigures(job) };
  const figure = (key: string): UsedInput => ({
    label: figureField(key).label,
    value: figures[key],
    ...now(key),
  });
  const leaves = slotKeys("leaf");
  const opening = (key: string): UsedInput => {
    const label = { en: `${fieldOf(key).label.en}, opening`, es: `${fieldOf(key).label.es}, paso libre` };
    return { label, value: figures[`${key}_opening`], ...now(`${key}_opening`) };
  };
  const used = [
    figure("post_circle"),
    input("spacing", answerOf(job, "spacing")),
    ...leaves.map(opening),
    figure("gate_post_in"),
    bearing(laid),
    input("north", job.north ?? ""),
    ...[...leaves, ...gateKeys].map((key) => input(key, job[key] ?? "")),
    ...["line_hole", "gate_hole", "hole_depth"].map(figure),
    ...around(job),
    ...railKeys.map((key) => input(key, job[key] ?? "")),
  ];
  const at = (k: number) => cell(usedPlace(k));
  const after = 2 + leaves.length;
  const terms = [at(0), at(1), range(usedPlace(2), usedPlace(after - 1)), at(after), at(after + 1)];
  return { used, terms, circle: at(0) };
}
