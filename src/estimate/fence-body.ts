import { type Side } from "../fence/board-line";
import { type FenceBody } from "../fence/size-meaning";
import { choiceOf, type Job } from "./job";
import { postSizes, railStocks } from "./post-choices";

/** What stands on the post line of a job, in inches. */
export const fenceBody = (job: Job): FenceBody => ({
  post: postSizes[choiceOf(job, "line_post")],
  board: railStocks[choiceOf(job, "rail_stock")].thickness,
  side: choiceOf(job, "rail_side") as Side,
});

/** What a gate's post centers are farther apart than its leaf is wide, in: room for the hardware, and half of each post. */
export const besideLeaf = (job: Job) =>
  Number(job.gate_room ?? 0) + postSizes[choiceOf(job, "gate_post")].width;
