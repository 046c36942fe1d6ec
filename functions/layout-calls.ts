import { type Stake } from "../src/fence/layout";
import { panelLayout } from "../src/fence/panel-layout";
import { postLayout } from "../src/fence/post-layout";
import { type PostPen, bayLength, postCount } from "../src/fence/posts";
import { type Cell, type Value } from "../src/units/cell";
import { INCHES_PER_FOOT } from "../src/units/conversion";
import { optional, required, shaped } from "./arguments";
import { guarded, type Call } from "./cells";
import { gatesOf, panelsOf, pinGapFeet } from "./fence-terms";
import { quantities } from "./quantities";

type Term = Value | undefined;

const HEADER = ["stake", "kind", "chord", "tie 1", "tie 2", "bearing", "east", "north"];

/** One row a stake under a header; `piece` is what stands there, with "gate" before it at the end of a gate. */
const table = (stakes: readonly Stake[], piece: string): Cell[][] => [
  HEADER,
  ...stakes.map(({ stake, atGate, chord, tie1, tie2, bearing, east, north }) => [
    stake,
    atGate ? `gate ${piece}` : piece,
    chord,
    tie1,
    tie2,
    bearing,
    east,
    north,
  ]),
];

const bearingOf = (term: Term) => optional(term, quantities.bearing, 0);

const postsOf = (spacing: Term, gates: Term, gatePost: Term): Omit<PostPen, "diameter"> => ({
  spacing: required(spacing, quantities.spacing),
  gates: gatesOf(gates),
  gatePost: optional(gatePost, quantities.gatePost, 0) / INCHES_PER_FOOT,
});

/** A question about a post pen of each of these sizes. */
const ofPosts = (answer: (pen: PostPen) => number): Call =>
  guarded((diameters, spacing, gates, gatePost) => {
    const pen = postsOf(spacing, gates, gatePost);
    return shaped(diameters, quantities.diameter, (diameter) => answer({ diameter, ...pen }));
  });

/** What answers with a table: a header and one row a stake. */
export const tableCalls: Record<string, Call> = {
  POST_LAYOUT: guarded((diameter, spacing, gates, gatePost, bearing) => {
    const pen = { diameter: required(diameter, quantities.diameter), ...postsOf(spacing, gates, gatePost) };
    return table(postLayout(pen, bearingOf(bearing)), "post");
  }),
  PANEL_LAYOUT: guarded((panels, counts, gates, pinGap, bearing) => {
    const pen = { panels: panelsOf(panels, counts), gates: gatesOf(gates), pinGap: pinGapFeet(pinGap) };
    return table(panelLayout(pen, bearingOf(bearing)), "pin");
  }),
};

/** Posts, bays and stakes. */
export const layoutCalls: Record<string, Call> = {
  POSTS: ofPosts(postCount),
  BAY: ofPosts(bayLength),
  ...tableCalls,
};
