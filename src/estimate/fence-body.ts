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

/** Width of a job's gate posts, in: from center to center a gate is its opening and a post. */
export const gatePostWidth = (job: Job) => postSizes[choiceOf(job, "gate_post")].width;
