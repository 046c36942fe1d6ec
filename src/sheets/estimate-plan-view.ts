import { planDrawing } from "../drawing/plan";
import { offSizes } from "../estimate/off-sizes";
import { planFrame } from "../drawing/frame";
import { sitedPlan } from "../drawing/plan-of-site";
import { circleOf, isArena, isPosted, penOf, type Pen } from "../estimate/pen";
import { penSentence } from "../estimate/sentences";
import { byOtherOf } from "../estimate/by-other";
import { type Job } from "../estimate/job";
import { Refusal } from "../units/refusal";
import { columns, rowHeight } from "./estimate-layout";
import { planRows } from "./estimate-sections";
import { call, cell, minus, operate, when, type Expression } from "./expression";
import { type Sheet } from "./formula-terms";
import { messages } from "./messages";
import { type PlanPicture } from "./plan";

/** How wide the plan is drawn, in pixels; on the sheet it is as tall as its rows. */
const drawn = 236;
const tall = planRows * rowHeight - 4;

/** The pen that the plan shows; none where the job has no answer. */
export function penToDraw(job: Job): Pen | undefined {
  try {
    const pen = penOf(job);
    byOtherOf(job, pen);
    return pen;
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

/** The plan of the pen beside its figures, from this row down. */
export function planPicture(job: Job, pen: Pen, row: number): PlanPicture {
  const { width, height } = planFrame(drawn);
  return {
    row,
    column: columns.amount,
    width: Math.round((tall * width) / height),
    height: tall,
    svg: planDrawing(pen, {
      width: drawn,
      still: true,
      byOther: byOtherOf(job, pen),
      off: offSizes(job, pen),
      ...sitedPlan(job, pen)?.options,
    }),
    description: penSentence(pen),
  };
}

/** Says that the plan was drawn for other figures, once the pen as built is not the one that it shows. */
export const planWarning = (sheet: Sheet, pen: Pen): Expression =>
  when(planMoved(sheet, pen), messages.planOutOfDate, "");

/** Whether the pen as built is no longer this one. */
export function planMoved({ places }: Sheet, pen: Pen): Expression {
  const parts = Object.entries({ ...drawnSize(pen), distance_around: pen.distanceAround }).map(
    ([key, shown]) => operate(call("ABS", minus(cell(places[key]), shown)), ">", 0.001),
  );
  return call("OR", ...parts);
}

/** What the drawing of a pen or an arena hangs on, by the key of its figure; inputs beside it make the sheet out of date. */
function drawnSize(pen: Pen): Record<string, number> {
  if (!isArena(pen)) return { [isPosted(pen) ? "post_circle" : "pin_circle"]: circleOf(pen) };
  const { length, width } = isPosted(pen) ? pen.line : pen;
  return { built_length: length, built_width: width };
}
