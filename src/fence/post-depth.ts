import { INCHES_PER_FOOT } from "../units/conversion";
import { noAnswer, notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";

/** The rules for how deep a post stands, by name. */
export const depthRules = ["third of length", "third of height", "ASTM F567", "building code"] as const;
export type DepthRule = (typeof depthRules)[number];

/** What the building code's formula is asked: a post alone, free at the ground, pushed sideways. Lengths in ft. */
export interface SidePush {
  /** Pounds, 0 or more. */
  push: number;
  /** Where it pushes, above the ground, 0 or more. */
  height: number;
  /** Diameter of a round post or of its concrete, or the diagonal of a square one; over 0. */
  width: number;
  /** What the soil bears sideways, pounds a square foot for each foot of depth (code table 1806.2: 100 to 400), over 0. */
  soil: number;
  /** True where half an inch of motion at the ground does no harm: the code then lets the soil bear twice as much. */
  isolated: boolean;
}

/** What a post's depth is figured from, ft. */
export interface PostDepth {
  rule: DepthRule;
  /** Of the post above the ground, over 0. */
  height: number;
  /** The depth is never less than this. */
  frost: number;
  /** Needed by the building code's rule. */
  sidePush?: SidePush;
}

/** A post's depth and length, ft, whether the frost decided, and what the user must be told. */
export interface SetPost {
  depth: number;
  length: number;
  frostGoverns: boolean;
  caution?: string;
}

/**
 * How deep a post stands and how long it is. A third of the length is half the height above ground. ASTM F567 (for
 * chain link): 24 in for a fence of 4 ft, and 3 in for each foot over that, parts of a foot in proportion. Refuses the
 * building code's rule without a side push.
 */
export function postDepth({ rule, height, frost, sidePush }: PostDepth): SetPost {
  const byRule = {
    "third of length": () => height / 2,
    "third of height": () => height / 3,
    "ASTM F567": () => (24 + 3 * Math.max(0, height - 4)) / INCHES_PER_FOOT,
    "building code": () => embedment(sidePush),
  }[rule]();
  const depth = Math.max(byRule, frost);
  const caution = rule === "building code" ? messages.screeningDepth : undefined;
  return { depth, length: height + depth, frostGoverns: frost > byRule * (1 + EPSILON), caution };
}

const DEEPEST_FOR_PRESSURE = 12;

/**
 * The embedment, ft, of an isolated post without a restraint at the ground: d = A/2 (1 + sqrt(1 + 4.36 h/A)) with
 * A = 2.34 P / (S1 b), International Building Code 1807.3.2.1. S1 is the soil's bearing at a third of the depth, of
 * which no more than 12 ft count; twice that for isolated poles, 1806.3.4. A deeper post needs less depth, so the
 * root is bracketed and halved down on.
 */
export function embedment(sidePush: SidePush | undefined): number {
  if (!sidePush) throw notAllowed(messages.sidePushNeeded);
  const { push, height, width, soil, isolated } = sidePush;
  const needed = (depth: number) => {
    const bearing = (soil * Math.min(depth, DEEPEST_FOR_PRESSURE) * (isolated ? 2 : 1)) / 3;
    const a = (2.34 * push) / (bearing * width);
    return (a / 2) * (1 + Math.sqrt(1 + (4.36 * height) / a));
  };
  if (push === 0) return 0;
  let [low, high] = [0, 1];
  while (needed(high) > high && high < Number.MAX_VALUE) [low, high] = [high, 2 * high];
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2)
    if (needed(middle) > middle) low = middle;
    else high = middle;
  return high;
}

/** Lengths that posts are sold in, ft (common practice, no source). */
export const POST_LENGTHS: readonly number[] = [6, 6.5, 7, 8, 9, 10, 12, 14, 16];

/** The shortest post of the list that is long enough, ft. Refuses (no answer) where none is. */
export function postToBuy(length: number, lengths: readonly number[] = POST_LENGTHS): number {
  const enough = lengths.filter((one) => one >= length - EPSILON * length);
  if (enough.length === 0) throw noAnswer(messages.noPostLength(length, Math.max(0, ...lengths)));
  return Math.min(...enough);
}
