import { type CutList } from "../estimate/cut-list";
import { type Label, type Language, type North } from "../estimate/fields";
import { type Stake } from "../fence/layout";
import { type Point } from "../geometry/point";
import { type Expression, type Term } from "./expression";
import { type PlanPicture } from "./plan";
import { type UsedInput } from "./used-inputs";

export { type UsedInput };

/** What stands at a stake. */
export type StakeKind = "pin" | "gate pin" | "post" | "gate post" | "corner" | "tangent point" | "arc center";

/** Which side of a gate a stake is; between two gates it is one of each. */
export type GateSide = "hinge" | "latch";

/** One row of a layout sheet. Lengths in ft, bearing in degrees, a hole in inches. The center is at 0, 0. */
export interface LaidStake extends Omit<Stake, "atGate"> {
  kind: StakeKind;
  sides: readonly GateSide[];
  hole?: { diameter: number; depth: number };
  /** Another estimate sets it. */
  byOther?: boolean;
}

/** A stake outside the work, seen from the center: degrees and ft. */
export interface LaidReference {
  name: string;
  /** Clockwise from the middle of the first gate, without a gate from stake 1, degrees. */
  turn: number;
  bearing: number;
  distance: number;
}

/**
 * Like pieces of a fence; lengths in ft. Of a gate also what passes through it and under its bow if it has one; a gate
 * of two leaves says the length of one.
 */
export interface LaidPieces {
  what: "panel" | "gate" | "bay";
  length: number;
  count: number;
  leaves?: 1 | 2;
  opening?: number;
  bow?: number;
}

/** All that a layout sheet shows, as plain data: of a pen or an arena, of panels or of posts. */
export interface LayoutData {
  language: Language;
  /** The job and its site, as the user wrote them. */
  title: string;
  revision: number;
  date: string;
  measuredTo: "pin center" | "post center" | "post face";
  /** What closes the fence, like pieces together; lengths in ft. */
  pieces: readonly LaidPieces[];
  /** The sizes as laid out, ft. */
  sizes: readonly { label: Label; feet: Term }[];
  /** The bearing, degrees, that the fence was laid out with: of the first gate's middle, without a gate of stake 1. */
  bearing: Term;
  north: North;
  hasGate: boolean;
  /** The radius that is painted, ft; an arena has none. */
  radius?: Term;
  references: readonly [LaidReference, LaidReference];
  /** The center stake's place from the crew's mark, ft, where the first gate's posts were placed from there. */
  center?: Point;
  /** How much farther apart those places are than the gate is wide, ft. */
  over?: number;
  /** What was found on the site and what to do about it. */
  notes: readonly string[];
  stakes: readonly LaidStake[];
  /** What stock is cut to; of a fence of boards only. */
  cutLists: readonly CutList[];
  /**
   * A function of this add-in that gives the stakes as a table under a header, with the columns stake, kind, chord, tie
   * 1, tie 2, bearing, east, north. Where it is given the figures ask it, else they are what was computed at writing.
   */
  asks?: Expression;
  used: readonly UsedInput[];
  plan: Omit<PlanPicture, "row" | "column">;
}
