import { centralAngle } from "../geometry/cyclic-polygon";
import { distance } from "../geometry/point";
import { INCHES_PER_FOOT } from "../units/conversion";
import { feetInches } from "../units/feet-inches";
import { noAnswer, notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { type Stake } from "./layout";
import { siteMessages } from "./site-messages";

/** What was taped at a stake on a circle, ft: from the stake before, and from the center. One may be left out. */
export interface Taped {
  chord?: number;
  radius?: number;
}

/** How far a stake is off its place, ft: away from the center, and along the circle away from the stake before. */
export interface StakeOff {
  outward: number;
  along: number;
}

/**
 * How far off a stake stands, the stake before it being right. A radius that was not taped counts as right, and so does
 * a chord that was not. Lengths over 0, the chord at most the diameter. Refuses nothing taped and (no answer) a chord
 * and a radius that do not meet.
 */
export function stakeOff(radius: number, chord: number, taped: Taped): StakeOff {
  if (taped.chord === undefined && taped.radius === undefined) throw notAllowed(siteMessages.nothingMeasured);
  const found = taped.radius ?? radius;
  if (taped.chord === undefined) return { outward: found - radius, along: 0 };
  const squaredSine =
    ((taped.chord - (found - radius)) * (taped.chord + (found - radius))) / (4 * radius * found);
  if (!(squaredSine >= -EPSILON && squaredSine <= 1 + EPSILON))
    throw noAnswer(siteMessages.chordMissesRadius(taped.chord, found));
  const turned = 2 * Math.asin(Math.sqrt(Math.min(1, Math.max(0, squaredSine))));
  return { outward: found - radius, along: radius * (turned - centralAngle(chord, 2 * radius)) };
}

/** How much it matters that a stake stands off its circle. */
export type OffCircle = "no harm" | "out of place" | "out of round";

/** An inch or two on the radius does no harm, a foot or two out of round changes how horses work: common practice, no source. */
const HARMLESS = 2 / INCHES_PER_FOOT;
const OUT_OF_ROUND = 1;

/** Whether a stake that is so far off its circle, ft, in or out, has to be set again, and what to tell the crew. */
export function offCircle(outward: number): { matter: OffCircle; sentence: string } {
  const off = Math.abs(outward);
  const matter: OffCircle =
    off <= HARMLESS + EPSILON ? "no harm" : off < OUT_OF_ROUND - EPSILON ? "out of place" : "out of round";
  return { matter, sentence: siteMessages.offCircle[matter](feetInches(off, 16, "words")) };
}

/** From stake 1 along the fence to each stake in turn, and last all round back to stake 1, ft. */
export function runningDistances(stakes: readonly Stake[]): number[] {
  const running = [0];
  for (const { chord } of [...stakes.slice(1), ...stakes.slice(0, 1)])
    running.push(running[running.length - 1] + chord);
  return running;
}

/** Straight from each of two stakes, such as the posts of any gate, to every stake, ft. The two are counted from 1. */
export function tiesFrom(stakes: readonly Stake[], first: number, second: number): [number, number][] {
  const [a, b] = [stakes[first - 1], stakes[second - 1]];
  return stakes.map((stake) => [distance(a, stake), distance(b, stake)]);
}
