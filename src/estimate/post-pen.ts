import { type PostPen, bayLength, postCircle } from "../fence/posts";
import { penSizes, postCircleOf, type SizeMeaning } from "../fence/size-meaning";
import { apothem } from "../geometry/cyclic-polygon";
import { INCHES_PER_FOOT } from "../units/conversion";
import { choiceOf, answerOf, type Job } from "./job";
import { fenceBody, gatePostWidth } from "./fence-body";
import { hungGates, type GateOnPosts } from "./hung-gates";

/** A post pen as it is built. Lengths in ft, area in sq ft. */
export interface PostedPen {
  structure: "post pen";
  postCircle: number;
  insideClear: number;
  outside: number;
  distanceAround: number;
  /** Inside the straight lines from post center to post center. */
  area: number;
  posts: number;
  /** Those of them that a gate hangs on or latches to. */
  gatePosts: number;
  bays: number;
  /** From post center to post center, as `gateChords` are. */
  bay: number;
  /** The gates, their leaves, and for each the distance between the centers of its posts. */
  hung: GateOnPosts[];
  gates: number[];
  gateChords: number[];
  /** The bay with one post fewer and one more; null where so few posts make no pen. */
  oneFewer: number | null;
  oneMore: number;
}

/** The posts of a job on a circle of any size, its gates by their openings. */
const postsOf = (job: Job): Omit<PostPen, "diameter"> => ({
  spacing: answerOf(job, "spacing"),
  gates: hungGates(job).map(({ opening }) => opening),
  gatePost: gatePostWidth(job) / INCHES_PER_FOOT,
});

/** The post circle, ft, that the job's size leads to by what it means. Refuses as postCircleOf does. */
export function postCircleFor(job: Job): number {
  const size = job.size as number;
  const meaning = choiceOf(job, "post_size_means") as SizeMeaning;
  return postCircleOf(size, meaning, { ...postsOf(job), diameter: size }, fenceBody(job));
}

/** The pen that a job's posts and gates make. Throws a Refusal where they make none. */
export function postPen(job: Job): PostedPen {
  const diameter = postCircleFor(job);
  const pen = { ...postsOf(job), diameter };
  const { bays, bayAngle, gateChords } = postCircle(pen);
  const bay = bayLength(pen);
  const sizes = penSizes(pen, fenceBody(job));
  const hung = hungGates(job);
  const gateCount = hung.length;
  const triangle = (chord: number) => (chord * apothem(chord, diameter)) / 2;
  const total = (all: number[]) => all.reduce((sum, one) => sum + one, 0);
  const withBays = (count: number) => diameter * Math.sin((bays * bayAngle) / 2 / count);
  return {
    structure: "post pen",
    postCircle: diameter,
    insideClear: sizes["inside clear"],
    outside: sizes.outside,
    distanceAround: bays * bay + total(gateChords),
    area: bays * triangle(bay) + total(gateChords.map(triangle)),
    posts: bays + gateCount,
    gatePosts: 2 * gateCount,
    bays,
    bay,
    hung,
    gates: hung.map(({ leaf }) => leaf),
    gateChords,
    oneFewer: bays - 1 < Math.max(1, gateCount, 3 - gateCount) ? null : withBays(bays - 1),
    oneMore: withBays(bays + 1),
  };
}
