import { slotKeys } from "../estimate/fields";
import { figureField } from "../estimate/figure-list";
import { answerOf, type Job } from "../estimate/job";
import { besideLeaf } from "../estimate/fence-body";
import { type PostedPen } from "../estimate/post-pen";
import { postFigures } from "../estimate/post-figures";
import { railHeightsSentence } from "../estimate/post-sentences";
import { type PostWork } from "../estimate/post-work";
import { placed, type Placed } from "../estimate/site";
import { type Stake } from "../fence/layout";
import { postLayout } from "../fence/post-layout";
import { INCHES_PER_FOOT } from "../units/conversion";
import { cell, over, pen as ask, plus, range } from "./expression";
import { type LaidStake, type LayoutData, type UsedInput } from "./layout-data";
import { askedOf, gatesAlike, headOf, inputsOn, withSides, type LayoutIssue } from "./layout-parts";
import { usedPlace } from "./layout-places";

/** The layout of a job's post pen as its layout sheet shows it, one row a post with its hole. Refuses as postLayout does. */
export function postPenLayout(
  job: Job,
  pen: PostedPen,
  work: PostWork,
  { revision, date, estimate }: LayoutIssue,
): LayoutData {
  const gatePost = besideLeaf(job) / INCHES_PER_FOOT;
  const spacing = answerOf(job, "spacing");
  const posts = { diameter: pen.postCircle, spacing, gates: pen.gates, gatePost };
  const laid = placed(job, pen, (bearing) => postLayout(posts, bearing));
  const pieces: LayoutData["pieces"] = [
    { what: "bay", length: pen.bay, count: pen.bays },
    ...gatesAlike(pen.gates),
  ];
  const { used, terms, circle } = usedInputs(job, pen, work, laid, estimate);
  const sizeOf = (key: string) => ({ label: figureField(key).label });
  const head = headOf(job, pen, pen.postCircle / 2, laid, pieces);
  return {
    ...head,
    notes: [...head.notes, railHeightsSentence(job, head.language)],
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
    stakes: withSides(laid.stakes, pen, askedOf(job).hand, "post").map((stake) => withHole(stake, work)),
    asks: ask("POST_LAYOUT", ...terms),
    used,
  };
}

/** A stake with the hole that its post stands in; none where posts are driven. */
export function withHole(stake: LaidStake, { lineHole, gateHole, holeDepth }: PostWork): LaidStake {
  const diameter = stake.kind === "gate post" ? gateHole : lineHole;
  return diameter === null ? stake : { ...stake, hole: { diameter, depth: holeDepth! } };
}

/** What the heights of the rails rest on. */
const railKeys = ["rail_stock", "rail_rows", "rail_under", "post_height"];

/** The inputs of POST_LAYOUT as they stand on the sheet with what the holes rest on, and the terms by which its formulas name them. */
function usedInputs(
  job: Job,
  pen: PostedPen,
  work: PostWork,
  laid: Placed<Stake>,
  estimate: LayoutIssue["estimate"],
) {
  const { now, input, bearing, around } = inputsOn(estimate);
  const figures = postFigures(job, pen, work);
  const figure = (key: string): UsedInput => ({
    label: figureField(key).label,
    value: figures[key],
    ...now(key),
  });
  const leaves = slotKeys("leaf");
  const used = [
    figure("post_circle"),
    input("spacing", answerOf(job, "spacing")),
    ...leaves.map((key) => input(key, job[key])),
    input("gate_room", Number(job.gate_room ?? 0)),
    figure("gate_post_in"),
    bearing(laid),
    input("north", job.north ?? ""),
    ...["line_hole", "gate_hole", "hole_depth"].map(figure),
    ...around(job),
    ...railKeys.map((key) => input(key, job[key])),
  ];
  const at = (k: number) => cell(usedPlace(k));
  const after = 2 + leaves.length;
  const terms = [
    at(0),
    at(1),
    range(usedPlace(2), usedPlace(after - 1)),
    plus(at(after), at(after + 1)),
    at(after + 2),
  ];
  return { used, terms, circle: at(0) };
}
