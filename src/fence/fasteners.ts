import { type Section } from "../geometry/section";
import { roundUp } from "../units/rounding";

/** What holds rails on posts. */
export const fasteners = ["screws", "nails", "bolts"] as const;
export type Fastener = (typeof fasteners)[number];

/** How far a screw or a nail goes into the post, and what a bolt needs past it for washer and nut, in: common practice, no source. */
const INTO_POST = 1.5;
const FOR_NUT = 1;

/**
 * The length of a fastener, in, for a rail so thick, in, up to the next half inch: screws and nails go through the rail
 * and well into the post, bolts through both. Common practice, no source.
 */
export function fastenerLength(kind: Fastener, thickness: number, post: Section): number {
  const least = thickness + (kind === "bolts" ? post.depth + FOR_NUT : INTO_POST);
  return roundUp(least * 2) / 2;
}
