import { answerOf, type Job } from "./job";
import { isPosted, type Pen } from "./pen";

/** A size that was asked for, and how much larger what closes is, ft; under 0 where it is smaller. */
export interface OffSize {
  asked: number;
  over: number;
}

/** Less than this, ft, is no difference that a crew could measure: an eighth of an inch. */
const NONE = 1 / 96;

/** The sizes that whole panels do not close, of a pen across as its size is meant, of an arena its length and its width. Posts close any. */
export function offSizes(job: Job, pen: Pen): OffSize[] {
  return sizes(job, pen).filter(({ over }) => Math.abs(over) > NONE);
}

function sizes(job: Job, pen: Pen): OffSize[] {
  if (isPosted(pen)) return [];
  if (pen.structure === "panel arena") {
    const { asked, length, width } = pen;
    return [
      { asked: asked.length, over: length - asked.length },
      { asked: asked.width, over: width - asked.width },
    ];
  }
  const built = { "pin circle": pen.pinCircle, "inside clear": pen.insideClear, outside: pen.outside };
  const asked = answerOf(job, "size");
  return [{ asked, over: built[job.size_means as keyof typeof built] - asked }];
}
