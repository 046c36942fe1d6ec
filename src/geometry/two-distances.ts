import { noAnswer, notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";
import { type Point, ahead, bearingTo, distance } from "./point";

/**
 * The place at these distances from two stakes, to the right or the left of the line from the first to the second, in
 * one unit of length. Refuses stakes in one place and (no answer) distances that do not meet.
 */
export function twoDistances(
  first: Point,
  second: Point,
  fromFirst: number,
  fromSecond: number,
  side: "left" | "right",
): Point {
  const apart = distance(first, second);
  if (!(apart > 0)) throw notAllowed(messages.stakesTogether);
  const along = (apart ** 2 + (fromFirst - fromSecond) * (fromFirst + fromSecond)) / (2 * apart);
  const across = (fromFirst - along) * (fromFirst + along);
  if (!(across >= -EPSILON * Math.max(1, fromFirst ** 2))) throw noAnswer(messages.tapesMiss(apart));
  const heading = bearingTo(first, second);
  const quarter = side === "right" ? 90 : -90;
  return ahead(ahead(first, heading, along), heading + quarter, Math.sqrt(Math.max(0, across)));
}
