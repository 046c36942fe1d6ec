import { Refusal } from "../units/refusal";
import { baysOnSides, panelsOnSides } from "./arena-figures";
import { structureOf, type Job } from "./job";
import { byOtherOf, fenceByOther, ownPosts, panelsByOther } from "./by-other";
import { arenaOfPanels } from "./panel-arena";
import { panelPen } from "./panel-pen";
import { type Posted } from "./pen";
import { arenaOfPosts } from "./post-arena";
import { postPen } from "./post-pen";
import { depthOf, kickBoardOf, railsOf } from "./post-work";
import { type Structure } from "./structures";

/**
 * The depth by the job's rule without the frost, the stock and lengths cut of rails and kick board, how often one meets a
 * post, the gate posts that are not by other, and the posts that are none of the estimate's line posts.
 */
function ofPosts(job: Job, pen: Posted): Record<string, number> {
  const { stock, cut, fasteners } = railsOf(job, pen);
  const kick = kickBoardOf(job, pen);
  const { line, gate } = ownPosts(pen, byOtherOf(job, pen));
  return {
    post_depth: depthOf(job, 0).depth,
    rail_stock_length: stock,
    rails: cut,
    fasteners: fasteners + (kick?.fasteners ?? 0),
    ...(kick && { kick: kick.cut, kick_stock_length: kick.stock }),
    gate_posts: gate,
    line_posts: pen.posts - line,
  };
}

/** The panels of each length that are by other, and across what pins they were counted; 0 where none are. */
function ofPanels(job: Job): Record<string, number> {
  const pen = panelPen(job);
  const byOther = byOtherOf(job, pen);
  const panels = panelsByOther(pen, byOther);
  const shared = panels.some((count) => count > 0);
  return {
    pin_circle: shared ? pen.pinCircle : 0,
    ...Object.fromEntries(panels.map((count, k) => [`panel_${k + 1}`, count])),
  };
}

const worked: Record<Structure, (job: Job) => Record<string, number>> = {
  "panel pen": ofPanels,
  "post pen": (job) => {
    const pen = postPen(job);
    return { post_circle: pen.postCircle, ...ofPosts(job, pen) };
  },
  "panel arena": (job) => {
    const arena = arenaOfPanels(job);
    return { ...panelsOnSides(arena.layout), panel_1: fenceByOther(arena, byOtherOf(job, arena)) };
  },
  "post arena": (job) => {
    const arena = arenaOfPosts(job);
    const { posts, bay, layout } = arena;
    return { posts, bay_longest: bay, ...baysOnSides(layout), ...ofPosts(job, arena) };
  },
};

/**
 * What no formula of a sheet can work out, by the key of the figure or line that it stands behind, such as the post
 * circle of an inside clear, the panels of a side, or the rails' cut. It stands in the sheet as numbers of the time of
 * writing. Empty where there is no answer.
 */
export function fixedOf(job: Job): Record<string, number> {
  try {
    return worked[structureOf(job)](job);
  } catch (refusal) {
    if (refusal instanceof Refusal) return {};
    throw refusal;
  }
}
