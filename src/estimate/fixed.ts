import { Refusal } from "../units/refusal";
import { baysOnSides, panelsOnSides } from "./arena-figures";
import { structureOf, type Job } from "./job";
import { panelArenaLayout } from "./panel-arena";
import { type Posted } from "./pen";
import { arenaOfPosts } from "./post-arena";
import { postPen } from "./post-pen";
import { depthOf, railsOf } from "./post-work";
import { type Structure } from "./structures";

/** The depth by the job's rule without the frost, the rails' stock and lengths cut, and how often a rail meets a post. */
function ofPosts(job: Job, pen: Posted): Record<string, number> {
  const { stock, cut, fasteners } = railsOf(job, pen);
  return { post_depth: depthOf(job, 0).depth, rail_stock_length: stock, rails: cut, fasteners };
}

const worked: Record<Structure, (job: Job) => Record<string, number>> = {
  "panel pen": () => ({}),
  "post pen": (job) => {
    const pen = postPen(job);
    return { post_circle: pen.postCircle, ...ofPosts(job, pen) };
  },
  "panel arena": (job) => panelsOnSides(panelArenaLayout(job, 0)),
  "post arena": (job) => {
    const arena = arenaOfPosts(job);
    const { posts, gatePosts, bay, layout } = arena;
    return { posts, gate_posts: gatePosts, bay_longest: bay, ...baysOnSides(layout), ...ofPosts(job, arena) };
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

const onSides = (word: string) => ["left", "far", "right", "near"].map((side) => `${word}_${side}`);
const ofWork = ["post_depth", "rail_stock_length", "rails", "fasteners"];

/** The keys that stand there, by structure. */
export const fixedKeys: Record<Structure, readonly string[]> = {
  "panel pen": [],
  "post pen": ["post_circle", ...ofWork],
  "panel arena": onSides("panels"),
  "post arena": ["posts", "gate_posts", "bay_longest", ...onSides("bays"), "bays_arcs", ...ofWork],
};
