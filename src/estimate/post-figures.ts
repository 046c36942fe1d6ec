import { type Figure } from "./figure-list";
import { slotKeys } from "./fields";
import { hungGates } from "./hung-gates";
import { choiceOf, type Job } from "./job";
import { postSizes } from "./post-choices";
import { type PostedPen } from "./post-pen";
import { type PostWork } from "./post-work";

/** The figures of a pen of posts that stand by themselves, by key. */
export function postFigures(job: Job, pen: PostedPen, work: PostWork): Record<string, Figure> {
  return {
    inside_clear: pen.insideClear,
    post_circle: pen.postCircle,
    outside_size: pen.outside,
    posts: pen.posts,
    bay: pen.bay,
    bay_fewer: pen.oneFewer ?? "",
    bay_more: pen.oneMore,
    ...workFigures(job, work),
  };
}

/** The clear opening of every gate, ft; nothing where there is none. */
export function openingFigures(job: Job): Record<string, Figure> {
  const openings = hungGates(job).map(({ opening }) => opening);
  return Object.fromEntries(
    slotKeys("leaf").map((key) => [`${key}_opening`, job[key] === null ? "" : openings.shift()!]),
  );
}

/** The figures of how posts are set, of a pen or an arena, by key. */
export function workFigures(job: Job, work: PostWork): Record<string, Figure> {
  return {
    rail_stock_length: work.rails.stock,
    kick_stock_length: work.kick?.stock ?? "",
    line_post_in: postSizes[choiceOf(job, "line_post")].width,
    gate_post_in: postSizes[choiceOf(job, "gate_post")].width,
    post_depth: work.depth,
    post_length: work.length,
    post_bought: work.bought,
    line_hole: work.lineHole ?? "",
    gate_hole: work.gateHole ?? "",
    hole_depth: work.holeDepth ?? "",
  };
}
