import { Refusal } from "../units/refusal";
import { type Figure } from "./figure-list";
import { choiceOf, structureOf, type Job } from "./job";
import { postSizes } from "./post-choices";
import { postPen, type PostedPen } from "./post-pen";
import { depthOf, railsOf, type PostWork } from "./post-work";

/** The figures of a pen of posts that stand by themselves, by key. */
export function postFigures(job: Job, pen: PostedPen, work: PostWork): Record<string, Figure> {
  return {
    post_circle: pen.postCircle,
    outside_size: pen.outside,
    posts: pen.posts,
    bay: pen.bay,
    bay_fewer: pen.oneFewer ?? "",
    bay_more: pen.oneMore,
    rail_stock_length: work.rails.stock,
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

/**
 * What no formula of a sheet can work out, by the key of the figure or line that it stands behind: the post circle,
 * the depth by the job's rule without the frost, the rails' stock and lengths cut, and how often a rail meets a post.
 * It stands in the sheet as numbers of the time of writing. Empty for other structures and where there is no answer.
 */
export function fixedOf(job: Job): Record<string, number> {
  if (structureOf(job) !== "post pen") return {};
  try {
    const pen = postPen(job);
    const { stock, cut, fasteners } = railsOf(job, pen);
    const { depth } = depthOf(job, 0);
    return {
      post_circle: pen.postCircle,
      post_depth: depth,
      rail_stock_length: stock,
      rails: cut,
      fasteners,
    };
  } catch (refusal) {
    if (refusal instanceof Refusal) return {};
    throw refusal;
  }
}

/** The keys that stand there. */
export const fixedKeys = ["post_circle", "post_depth", "rail_stock_length", "rails", "fasteners"] as const;
