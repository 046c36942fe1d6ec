import { type Section } from "../geometry/section";
import { INCHES_PER_FOOT } from "../units/conversion";
import { notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";

/** A gate of one or two leaves hung on posts. Leaves in ft, the rest in inches. */
export interface HungGate {
  /** Width of one leaf, over 0. */
  leaf: number;
  leaves: 1 | 2;
  hung: "between posts" | "on the face";
  /** Between posts: room for the hinges of each leaf, 0 or more. */
  hingeRoom: number;
  /** Room at the latch: from leaf to post, or between two leaves, 0 or more. */
  latchRoom: number;
  /** On the face: how far a leaf laps each post, 0 or more. */
  lap: number;
}

/** Four inches for hinges and latch together, and three of lap: common practice, no source. The maker's sheet governs. */
export const GATE_ROOM = { hingeRoom: 2, latchRoom: 2, lap: 3 } as const;

/**
 * The clear opening, ft, between the faces of the gate posts. Between posts it is the leaves with the room of their
 * hinges and latch. On the face the leaves lap the posts, and only two leaves need room, where they meet. Refuses laps
 * that leave nothing.
 */
export function gateOpening(gate: HungGate): number {
  const opening = gate.leaves * gate.leaf + room(gate);
  if (!(opening > 0)) throw notAllowed(messages.nothingOfGate);
  return opening;
}

/** The width of one leaf, ft, that an opening between post faces takes: the other way around. Refuses too small a one. */
export function leafOf(opening: number, gate: Omit<HungGate, "leaf">): number {
  const leaf = (opening - room(gate)) / gate.leaves;
  if (!(leaf > 0)) throw notAllowed(messages.nothingOfGate);
  return leaf;
}

/** From gate-post center to gate-post center, ft, with posts so many inches wide. */
export const gateChord = (opening: number, postWidth: number) => opening + postWidth / INCHES_PER_FOOT;

/**
 * Where the leaves turn, ft: so far along the chord from the center of their post, and so far off it to the side that
 * they swing to. Between posts the pins are in line with the posts, on the face they are at the face, a lap back.
 */
export function hingePlace({ hung, hingeRoom, lap }: HungGate, post: Section): { inset: number; off: number } {
  const [inset, off] = hung === "between posts" ? [post.width / 2 + hingeRoom, 0] : [post.width / 2 - lap, post.depth / 2];
  return { inset: inset / INCHES_PER_FOOT, off: off / INCHES_PER_FOOT };
} // prettier-ignore

function room({ leaves, hung, hingeRoom, latchRoom, lap }: Omit<HungGate, "leaf">): number {
  const inches =
    hung === "between posts" ? leaves * hingeRoom + latchRoom : (leaves - 1) * latchRoom - 2 * lap;
  return inches / INCHES_PER_FOOT;
}

/** How a gate post stands up to a leaf. */
export type PostAdequacy = "too light" | "marginal" | "serves" | "more than needed";

/** Pounds a foot of an ordinary tube gate (common practice, no source). */
export const LEAF_POUNDS_PER_FOOT = 10;

/** A 6 in post serves a 10 ft gate, a 4 in one is marginal, a 10 in one is more than needed: common practice, no source. */
export const KNOWN_GATE = { leaf: 10, nominal: { marginal: 3.5, serves: 5.5, ample: 9.25 } };

/**
 * How a wood post of this width, in, serves a leaf of this width, ft, and weight, lb, and what to tell the user. A
 * leaf's weight pulls at its middle, and a post's strength in bending grows with the cube of its width: by these the
 * known sizes at a 10 ft gate of 100 lb are carried over to other leaves. They are taken as nominal, so that a dressed
 * 6x6 of 5 1/2 in serves as a 6 in post does.
 */
export function gatePostAdequacy(
  post: number,
  leaf: number,
  pounds = leaf * LEAF_POUNDS_PER_FOOT,
): { adequacy: PostAdequacy; sentence: string; caution: string } {
  const pull = pounds * (leaf / 2);
  const scale = Math.cbrt(pull / (KNOWN_GATE.leaf * LEAF_POUNDS_PER_FOOT * (KNOWN_GATE.leaf / 2)));
  const reaches = (known: number) => post >= known * scale * (1 - EPSILON);
  const { marginal, serves, ample } = KNOWN_GATE.nominal;
  const adequacy = reaches(ample) ? "more than needed" : reaches(serves) ? "serves" : reaches(marginal) ? "marginal" : "too light"; // prettier-ignore
  return {
    adequacy,
    sentence: messages.gatePost[adequacy](post, leaf, pounds, serves * scale),
    caution: messages.gatePostCaution,
  };
}
