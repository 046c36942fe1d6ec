import { arenaLayout, type ArenaLayout } from "../fence/arena-layout";
import { arenaStretches } from "../fence/arena-stretches";
import { arenaSizes, type SizeMeaning } from "../fence/size-meaning";
import { type RoundedRectangle } from "../geometry/rounded-rectangle";
import { INCHES_PER_FOOT } from "../units/conversion";
import { notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { arenaGates } from "./arena-gates";
import { answerOf, choiceOf, type Job } from "./job";
import { messages } from "./messages";
import { fenceBody, gatePostWidth } from "./fence-body";
import { hungGates, type GateOnPosts } from "./hung-gates";

/** What the size of an arena of posts can mean. */
export type ArenaMeaning = "inside clear" | "post line" | "outside";

/** An arena of posts as it is built. Lengths in ft, area in sq ft. */
export interface ArenaOfPosts {
  structure: "post arena";
  /** Length and width in each meaning. */
  sizes: Record<ArenaMeaning, { length: number; width: number }>;
  /** The line through the post centers. */
  line: RoundedRectangle;
  /** Along that line. */
  distanceAround: number;
  area: number;
  posts: number;
  /** Those of them that a gate hangs on or latches to; two gates side by side share one. */
  gatePosts: number;
  /** The longest bay, center to center along the chord. */
  bay: number;
  /** The longest straight run between corners, tangent points and gates; without a straight one no bays. */
  longestRun: { bays: number; length: number };
  /** The gates, and their leaves. */
  hung: GateOnPosts[];
  gates: number[];
  /** With the left side to the north. */
  layout: ArenaLayout;
}

/** The line through the post centers of a job's arena, and its length and width in each meaning. */
function sizesOf(job: Job): Pick<ArenaOfPosts, "sizes" | "line"> {
  const meaning = choiceOf(job, "arena_size_means") as ArenaMeaning;
  const given: SizeMeaning = meaning === "post line" ? "post circle" : meaning;
  const [length, width] = ["arena_length", "arena_width"].map((key) =>
    arenaSizes(answerOf(job, key), given, fenceBody(job)),
  );
  const both = (of: SizeMeaning) => ({ length: length[of], width: width[of] });
  const line = both("post circle");
  const asked = Number(job.corner_radius ?? 0);
  const most = Math.min(answerOf(job, "arena_length"), answerOf(job, "arena_width")) / 2;
  if (asked > most * (1 + EPSILON)) throw notAllowed(messages.cornerRadiusOver(most));
  const moved = asked + (line.width - answerOf(job, "arena_width")) / 2;
  return {
    sizes: { "inside clear": both("inside clear"), "post line": line, outside: both("outside") },
    line: { ...line, cornerRadius: asked === 0 ? 0 : Math.max(0, moved) },
  };
}

/** The stakes of an arena's posts with its left side along the bearing, degrees. Refuses as arenaLayout does. */
export const postArenaLayout = (job: Job, line: RoundedRectangle, bearing: number): ArenaLayout =>
  arenaLayout(
    {
      ...line,
      spacing: answerOf(job, "spacing"),
      gates: arenaGates(
        job,
        "leaf",
        hungGates(job).map(({ opening }) => opening),
      ),
      gatePost: gatePostWidth(job) / INCHES_PER_FOOT,
    },
    bearing,
  );

/** The arena that a job's posts and gates make. Throws a Refusal where they make none. */
export function arenaOfPosts(job: Job): ArenaOfPosts {
  const { sizes, line } = sizesOf(job);
  const spacing = answerOf(job, "spacing");
  const shorter = Math.min(line.length, line.width);
  if (spacing > shorter * (1 + EPSILON)) throw notAllowed(messages.spacingOverSide(spacing, shorter));
  const layout = postArenaLayout(job, line, 0);
  const { stakes, around, area } = layout;
  const hung = hungGates(job);
  const stretches = arenaStretches(stakes);
  const straight = stretches
    .filter(({ side }) => side !== undefined)
    .map(({ bays, bay }) => ({ bays, length: bays * bay }));
  return {
    structure: "post arena",
    sizes,
    line,
    distanceAround: around,
    area,
    posts: stakes.length,
    gatePosts: stakes.filter(({ atGate }) => atGate).length,
    bay: Math.max(0, ...stretches.map(({ bay }) => bay)),
    longestRun: straight.reduce((most, run) => (run.length > most.length ? run : most), {
      bays: 0,
      length: 0,
    }),
    hung,
    gates: hung.map(({ leaf }) => leaf),
    layout,
  };
}
