import { planDrawing } from "../drawing/plan";
import { planFrame } from "../drawing/frame";
import { circleOf, isPosted, penOf, type Pen } from "../estimate/pen";
import { penSentence } from "../estimate/sentences";
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
    return penOf(job);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

/** The plan of the pen beside its figures, from this row down. */
export function planPicture(pen: Pen, row: number): PlanPicture {
  const { width, height } = planFrame(drawn);
  return {
    row,
    column: columns.amount,
    width: Math.round((tall * width) / height),
    height: tall,
    svg: planDrawing(pen, { width: drawn }),
    description: penSentence(pen),
  };
}

/** Says that the plan was drawn for other figures, once the pen as built is not the one that it shows. */
export function planWarning({ places }: Sheet, pen: Pen): Expression {
  const drawnFor = {
    [isPosted(pen) ? "post_circle" : "pin_circle"]: circleOf(pen),
    distance_around: pen.distanceAround,
  };
  const parts = Object.entries(drawnFor).map(([key, shown]) =>
    operate(call("ABS", minus(cell(places[key]), shown)), ">", 0.001),
  );
  return when(call("OR", ...parts), messages.planOutOfDate, "");
}
