import { centralAngle } from "../geometry/cyclic-polygon";
import { noAnswer, notAllowed } from "../units/refusal";
import { EPSILON, roundUp } from "../units/rounding";
import { messages } from "./messages";

/** A pen of posts on a circle. Lengths in ft, over 0. */
export interface PostPen {
  /** Of the post circle. */
  diameter: number;
  /** The most from one post center to the next, along the chord. */
  spacing: number;
  /** Openings between gate-post faces, or center to center where the gate post is 0. */
  gates: readonly number[];
  /** Width of a gate post, 0 or more. */
  gatePost: number;
}

/** How the circle is shared out: equal bays and the gates, as central angles in radians. */
export interface PostCircle {
  bays: number;
  bayAngle: number;
  /** Center to center, ft. */
  gateChords: number[];
  gateAngles: number[];
}

/**
 * The equal bays that fill what the gates leave of the circle, none longer than the spacing. Every gate has two posts
 * of its own, so that there are no fewer bays than gates, and no pen has fewer than three posts. Refuses a spacing or
 * a gate longer than the diameter, and (no answer) gates that leave no room for a bay each.
 */
export function postCircle({ diameter, spacing, gates, gatePost }: PostPen): PostCircle {
  if (spacing > diameter * (1 + EPSILON)) throw notAllowed(messages.spacingTooLong(diameter));
  const gateChords = gates.map((gate) => gate + gatePost);
  if (gateChords.some((chord) => chord > diameter * (1 + EPSILON)))
    throw notAllowed(messages.gateTooLong(diameter));
  const gateAngles = gateChords.map((chord) => centralAngle(chord, diameter));
  const rest = 2 * Math.PI - gateAngles.reduce((sum, angle) => sum + angle, 0);
  if (rest <= EPSILON) throw noAnswer(messages.gatesFillCircle(diameter));
  const needed = Math.max(1, roundUp(rest / centralAngle(spacing, diameter)));
  if (needed < gates.length) throw noAnswer(messages.moreGatesThanBays(gates.length, needed));
  const bays = Math.max(needed, FEWEST_POSTS - gates.length);
  return { bays, bayAngle: rest / bays, gateChords, gateAngles };
}

const FEWEST_POSTS = 3;

/** The posts on the post circle: one at the start of every bay and gate. Refuses as postCircle does. */
export function postCount(pen: PostPen): number {
  return postCircle(pen).bays + pen.gates.length;
}

/** The equal bay, ft, center to center. Refuses as postCircle does. */
export function bayLength(pen: PostPen): number {
  return pen.diameter * Math.sin(postCircle(pen).bayAngle / 2);
}
