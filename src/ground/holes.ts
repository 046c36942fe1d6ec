import { circleArea } from "../geometry/circle";
import { across, type Section, sectionArea } from "../geometry/section";
import { CUBIC_FEET_PER_CUBIC_YARD, INCHES_PER_FOOT } from "../units/conversion";
import { noAnswer, notAllowed } from "../units/refusal";
import { EPSILON, roundUp } from "../units/rounding";
import { messages } from "./messages";

/** The diameters of augers, in, that a rental yard has (common practice, no source). */
export const AUGERS: readonly number[] = [6, 8, 9, 10, 12, 14, 16, 18, 20, 24];

/** Concrete that a pound of dry mix makes, cubic feet: the bag labels' 0.60 for 80 lb (common practice). */
const CUBIC_FEET_PER_POUND = 0.0075;

const CUBIC_INCHES_PER_CUBIC_FOOT = INCHES_PER_FOOT ** 3;

/** A hole with a post in it that stands on gravel, all in inches; the concrete comes up to the ground. */
export interface Hole {
  diameter: number;
  depth: number;
  /** None: the whole hole is filled. */
  post?: Section;
  gravel: number;
}

/**
 * The hole, in, for a post with so much concrete or tamped earth all round: the next auger of the list. Refuses (no
 * answer) where none is wide enough.
 */
export function holeDiameter(post: Section, allRound: number, augers: readonly number[] = AUGERS): number {
  const least = across(post) + 2 * allRound;
  const wide = augers.filter((auger) => auger >= least - EPSILON * least);
  if (wide.length === 0) throw noAnswer(messages.noAuger(least, Math.max(0, ...augers)));
  return Math.min(...wide);
}

/** What is left between a post and the side of its hole, in, at the narrowest; under 0 where it does not fit. */
export const roomAllRound = (hole: number, post: Section) => (hole - across(post)) / 2;

/**
 * The cubic feet of concrete in one hole: its cylinder above the gravel less the post. Refuses a post that does not
 * fit the hole, a square one by its diagonal, and gravel deeper than the hole.
 */
export function holeConcrete({ diameter, depth, post, gravel }: Hole): number {
  if (post && roomAllRound(diameter, post) < -EPSILON * diameter)
    throw notAllowed(messages.postTooWide(post.shape, across(post), diameter));
  if (gravel > depth * (1 + EPSILON)) throw notAllowed(messages.gravelTooDeep(depth));
  const filled = Math.max(0, circleArea(diameter) - (post ? sectionArea(post) : 0));
  return (filled * Math.max(0, depth - gravel)) / CUBIC_INCHES_PER_CUBIC_FOOT;
}

/** The cubic feet of gravel under the post of one hole. */
export const holeGravel = ({ diameter, gravel }: Hole) =>
  (circleArea(diameter) * gravel) / CUBIC_INCHES_PER_CUBIC_FOOT;

/** The holes that a cubic yard of ready-mix fills, not rounded. */
export const holesPerYard = (hole: Hole) => CUBIC_FEET_PER_CUBIC_YARD / holeConcrete(hole);

/** Whole bags of dry mix of so many pounds for a volume in cubic feet, with so many percent of waste on top. */
export function bags(cubicFeet: number, pounds = 80, wastePercent = 0): number {
  return roundUp((cubicFeet * (1 + wastePercent / 100)) / (pounds * CUBIC_FEET_PER_POUND));
}
