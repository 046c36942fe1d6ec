import { arenaOfPanels, type ArenaOfPanels } from "./panel-arena";
import { arenaOfPosts, type ArenaOfPosts } from "./post-arena";
import { structureOf, type Job } from "./job";
import { panelPen, type PanelPen } from "./panel-pen";
import { postPen, type PostedPen } from "./post-pen";
import { arenas, postFences, type Structure } from "./structures";

/** A round pen as it is built. */
export type RoundPen = PanelPen | PostedPen;

/** An arena as it is built. */
export type Arena = ArenaOfPanels | ArenaOfPosts;

/**
 * A pen or an arena as it is built. Of whatever structure, it has its gates, the distance around and the area inside,
 * which is what sand lies on.
 */
export type Pen = RoundPen | Arena;

/** One of posts, with its posts and those at gates. */
export type Posted = PostedPen | ArenaOfPosts;

const isOneOf = (some: readonly Structure[], { structure }: Pen) => some.includes(structure);

/** True for a pen or an arena of posts. */
export const isPosted = (pen: Pen): pen is Posted => isOneOf(postFences, pen);

/** True for an arena. */
export const isArena = (pen: Pen): pen is Arena => isOneOf(arenas, pen);

const built: Record<Structure, (job: Job) => Pen> = {
  "panel pen": panelPen,
  "post pen": postPen,
  "panel arena": arenaOfPanels,
  "post arena": arenaOfPosts,
};

/** The pen or arena of a job. Throws a Refusal where its pieces make none. */
export const penOf = (job: Job): Pen => built[structureOf(job)](job);

/** The diameter, ft, of the circle that is painted on the ground: through the pins or the post centers. */
export const circleOf = (pen: RoundPen) => (isPosted(pen) ? pen.postCircle : pen.pinCircle);

/** Stakes on the fence: one a joint or a post. */
export function stakesOf(pen: Pen): number {
  if (isPosted(pen)) return pen.posts;
  if (isArena(pen)) return pen.layout.stakes.length;
  return pen.counts.reduce<number>((sum, count) => sum + (count ?? 0), pen.gates.length);
}
