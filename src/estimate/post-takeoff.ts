import { bags } from "../ground/holes";
import { cubicYards } from "../units/conversion";
import { roundUp } from "../units/rounding";
import { byOtherOf, ownPosts } from "./by-other";
import { answerOf, choiceOf, type Job } from "./job";
import { type Fastener } from "../fence/fasteners";
import { type RailTakeoff } from "../fence/rails";
import { leavesOf } from "./hung-gates";
import { type Posted } from "./pen";
import { kickBoards } from "./post-choices";
import { fastenerItems, type PriceKind } from "./price-kinds";
import { holeVolumes, type PostWork } from "./post-work";
import { orOwn, slotLines, takeoffLine, type TakeoffLine } from "./takeoff-line";

/** The lines of a pen of posts: posts, rails, holes, what goes into them, and gates to hang. */
export function postLines(job: Job, pen: Posted, work: PostWork): TakeoffLine[] {
  const { bought, rails, kick } = work;
  const own = (key: string, count: number) => orOwn(job, key, count);
  const posts = ownPosts(pen, byOtherOf(job, pen));
  const gatePosts = own("gate_posts", posts.gate);
  const linePosts = own("line_posts", posts.line);
  const { around, under } = holeVolumes(job, work, linePosts, gatePosts);
  const setting = choiceOf(job, "setting");
  const stone = cubicYards(under) + (setting === "crushed stone" ? cubicYards(around) : 0);
  const withWaste = ({ cut }: RailTakeoff) => roundUp(cut * (1 + Number(job.rail_waste ?? 0) / 100));
  const fasteners = (rails.fasteners + (kick?.fasteners ?? 0)) * Number(job.fasteners_each ?? 0);
  const kickBoard = kick ? choiceOf(job, "kick_board") : kickBoards[0];
  const fastener = fastenerItems[choiceOf(job, "fastener") as Fastener];
  return [
    takeoffLine("line_posts", "fence", `post ${choiceOf(job, "line_post")}`, bought, linePosts),
    takeoffLine("gate_posts", "fence", `post ${choiceOf(job, "gate_post")}`, bought, gatePosts),
    takeoffLine("rails", "fence", `rail ${choiceOf(job, "rail_stock")}`, rails.stock, own("rails", withWaste(rails))),
    takeoffLine("kick", "fence", `kick ${kickBoard}`, kick?.stock ?? null, kick ? own("kick", withWaste(kick)) : null),
    takeoffLine("fasteners", "fence", fastener, null, own("fasteners", fasteners)),
    takeoffLine("holes", "holes", setting === "driven" ? "drive" : "hole", null, own("holes", linePosts + gatePosts)),
    takeoffLine("bags", "holes", "bag", answerOf(job, "bag_size"), setting === "concrete" ? own("bags", bags(around, answerOf(job, "bag_size"))) : null),
    takeoffLine("stone", "holes", "stone", null, setting === "driven" ? null : stone),
    ...gateLines(job),
  ];
} // prettier-ignore

/** The leaves, and what they hang on: hinges for each and a latch for each gate where those are bought apart, and for two leaves a drop rod. */
function gateLines(job: Job): TakeoffLine[] {
  const leaves = slotLines(job, "leaf", "hung_gate", (gate) => leavesOf(job, gate));
  const hung = leaves.flatMap(({ counted }) => counted || []);
  const apart = choiceOf(job, "gate_hardware") === "bought apart";
  const some = (key: string, item: PriceKind, count: number) =>
    takeoffLine(key, "gates", item, null, count || null);
  return [
    ...leaves,
    some("hinges", "hinge_set", apart ? hung.reduce((sum, count) => sum + count, 0) : 0),
    some("latches", "latch", apart ? hung.length : 0),
    some("drop_rods", "drop_rod", hung.filter((count) => count === 2).length),
  ];
}
