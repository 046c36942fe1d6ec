import { type DepthRule, postDepth, postToBuy, type SetPost } from "../fence/post-depth";
import { bestStock, type RailLine, type RailTakeoff, railTakeoff } from "../fence/rails";
import { across, type Section } from "../geometry/section";
import { holeConcrete, holeDiameter, holeGravel } from "../ground/holes";
import { INCHES_PER_FOOT } from "../units/conversion";
import { byOtherOf } from "./by-other";
import { answerOf, choiceOf, type Job } from "./job";
import { board, postSizes, railStocks, type RailStock } from "./post-choices";
import { fenceBody } from "./fence-body";
import { type Posted } from "./pen";
import { railRuns } from "./rail-runs";

/** How the posts of a pen are set, and what one hole of each kind takes. Lengths in ft, holes in inches. */
export interface PostWork extends SetPost {
  /** The length that posts are bought in. */
  bought: number;
  /** Diameters and depth of the holes; null where posts are driven. */
  lineHole: number | null;
  gateHole: number | null;
  holeDepth: number | null;
  rails: RailTakeoff;
  /** The board at the foot; none unless the job has one. */
  kick?: RailTakeoff;
}

/** The hole of a post of the job, in; none where posts are driven. Refuses a post too wide for every auger. */
function holeOf(job: Job, post: Section): number | null {
  return choiceOf(job, "setting") === "driven" ? null : holeDiameter(post, answerOf(job, "room_round"));
}

/** How deep the posts of a job stand by its rule and this frost, in. Refuses the building code's rule without its push. */
export function depthOf(job: Job, frost: number): SetPost {
  const post = postSizes[choiceOf(job, "line_post")];
  const width = choiceOf(job, "setting") === "concrete" ? holeOf(job, post)! : across(post);
  const sidePush = job.side_push === null ? undefined : {
    push: job.side_push as number,
    height: answerOf(job, "push_height"),
    width: width / INCHES_PER_FOOT,
    soil: answerOf(job, "soil"),
    isolated: false,
  }; // prettier-ignore
  return postDepth({
    rule: choiceOf(job, "depth_rule") as DepthRule,
    height: answerOf(job, "post_height"),
    frost: frost / INCHES_PER_FOOT,
    sidePush,
  });
}

/** The stretches of a job's fence that a line of boards is cut for. */
const runsOf = (job: Job, pen: Posted, line: RailLine) =>
  railRuns(pen, line, postSizes[choiceOf(job, "gate_post")], byOtherOf(job, pen)?.pieces);

/** The rails of a pen from stock of the job's length, or of the length that wastes least. Waste is not on top yet. */
export function railsOf(job: Job, pen: Posted): RailTakeoff {
  const { post, side } = fenceBody(job);
  const { thickness, lengths } = railStocks[choiceOf(job, "rail_stock")];
  const line = { thickness, rows: answerOf(job, "rail_rows"), post, side, fastenersEach: 1, wastePercent: 0 };
  const runs = runsOf(job, pen, line);
  return job.rail_length === null
    ? bestStock(runs, line, lengths)
    : railTakeoff(runs, line, job.rail_length as number);
}

/** The stock of a job's board at the foot; none where it has no such board. */
export function kickOf(job: Job): RailStock | undefined {
  const size = choiceOf(job, "kick_board");
  return size === "none" ? undefined : board(size);
}

/** That board round a pen, on the inside, from the length of stock that wastes least; as `railsOf` does. */
export function kickBoardOf(job: Job, pen: Posted): RailTakeoff | undefined {
  const stock = kickOf(job);
  if (!stock) return undefined;
  const { post } = fenceBody(job);
  const line = { thickness: stock.thickness, rows: 1, post, side: "inside" as const, fastenersEach: 1, wastePercent: 0 };
  return bestStock(runsOf(job, pen, line), line, stock.lengths);
} // prettier-ignore

/** The work on the posts of a pen. Throws a Refusal where a hole, a post or the stock has no answer. */
export function postWork(job: Job, pen: Posted): PostWork {
  const lineHole = holeOf(job, postSizes[choiceOf(job, "line_post")]);
  const set = depthOf(job, Number(job.frost ?? 0));
  return {
    ...set,
    bought: postToBuy(set.length),
    lineHole,
    gateHole: holeOf(job, postSizes[choiceOf(job, "gate_post")]),
    holeDepth: lineHole === null ? null : set.depth * INCHES_PER_FOOT + Number(job.hole_gravel ?? 0),
    rails: railsOf(job, pen),
    kick: kickBoardOf(job, pen),
  };
}

/** Cubic feet in the holes of so many line and gate posts: what is packed or poured round the posts, and the gravel under them. */
export function holeVolumes(job: Job, work: PostWork, linePosts: number, gatePosts: number) {
  const { lineHole, gateHole, holeDepth } = work;
  const hole = (diameter: number, key: string) => ({
    diameter,
    depth: holeDepth!,
    post: postSizes[choiceOf(job, key)],
    gravel: Number(job.hole_gravel ?? 0),
  });
  if (lineHole === null || gateHole === null) return { around: 0, under: 0 };
  const [line, gate] = [hole(lineHole, "line_post"), hole(gateHole, "gate_post")];
  return {
    around: linePosts * holeConcrete(line) + gatePosts * holeConcrete(gate),
    under: linePosts * holeGravel(line) + gatePosts * holeGravel(gate),
  };
}
