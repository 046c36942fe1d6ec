import { sitedPlan } from "../drawing/plan-of-site";
import { fieldsOf } from "../estimate/fields";
import { answerOf, type Job } from "../estimate/job";
import { type Pen } from "../estimate/pen";
import { siteSentences } from "../estimate/site-sentences";
import { planMoved } from "./estimate-plan-view";
import { call, cell, expression, operate, when, type Expression } from "./expression";
import { type Sheet } from "./formula-terms";
import { columns } from "./estimate-layout";
import { messages } from "./messages";

/** The inputs that they rest on, beside the size of the pen. */
const isOfSite = (key: string, section: string) =>
  section === "site" ||
  /^(gate_bearing|length_bearing|gate_hand|gate_swing|gates_of_two|gates_on_face)$/.test(key);

/**
 * What was found on a job's site when its estimate was written, a sentence a row from this one down; once an input that
 * they rest on is another, the first says so and the others nothing. None where nothing was found.
 */
export function siteNotes(sheet: Sheet, job: Job, pen: Pen, row: number): Expression[] {
  const sited = sitedPlan(job, pen);
  if (!sited) return [];
  const [first, ...others] = siteSentences(sited.found, answerOf(job, "turning_room"));
  if (first === undefined) return [];
  const changed = fieldsOf(sheet.structure)
    .filter(({ key, section }) => isOfSite(key, section))
    .map(({ key }) => operate(cell(sheet.places[key]), "<>", job[key] ?? ""));
  const moved = call("OR", planMoved(sheet, pen), ...changed);
  const isOld = operate(cell({ row, column: columns.item }), "=", messages.siteOutOfDate);
  return [
    when(moved, messages.siteOutOfDate, expression(first)),
    ...others.map((sentence) => when(isOld, "", sentence)),
  ];
}
