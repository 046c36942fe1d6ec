import { type Point, bearingTo, distance, midpoint, moved, stepTo } from "../geometry/point";
import { INCHES_PER_FOOT } from "../units/conversion";
import { noAnswer, notAllowed } from "../units/refusal";
import { type Stake } from "./layout";
import { siteMessages } from "./site-messages";

/** Where the ends of the first gate's chord stand on the site, and on which side of the way from one to the other the pen lies. */
export interface GatePlace {
  from: Point;
  to: Point;
  pen: "left" | "right";
}

/** A layout on its site: the stakes' east and north are the site's, their bearings those from the center stake. */
export interface SitedLayout<S extends Stake> {
  center: Point;
  /** The bearing that the layout was made with, degrees from 0 to under 360. */
  bearing: number;
  /** Where the middle of the gate is seen from the center stake, degrees. */
  gateBearing: number;
  stakes: S[];
  /** How much farther apart the two places are than the gate is wide, ft; half of it is at each end. */
  over: number;
}

/** The most that the two places may be off the width of the gate, ft: an inch (common practice, no source). */
const CLOSE_ENOUGH = 1 / INCHES_PER_FOOT;

/**
 * A pen or arena set from where its first gate is to stand. The layout gives the stakes for a bearing (degrees), the
 * gate from stake 1 to 2 with the pen on the right; where the pen lies on the left, the gate is walked the other way.
 * Refuses (no answer) a layout without a gate, and places whose distance is over an inch off the gate's width.
 */
export function layOutFromGate<S extends Stake>(
  layout: (bearing: number) => S[],
  { from, to, pen }: GatePlace,
): SitedLayout<S> {
  const [post1, post2] = pen === "right" ? [from, to] : [to, from];
  const [first, second] = layout(0);
  if (!(first.atGate && second.atGate)) throw noAnswer(siteMessages.noGateToStartFrom);
  const over = distance(post1, post2) - second.chord;
  if (!(Math.abs(over) <= CLOSE_ENOUGH))
    throw notAllowed(siteMessages.gatePlacesApart(distance(post1, post2), second.chord));
  const bearing = (bearingTo(post1, post2) - bearingTo(first, second) + 360) % 360;
  const stakes = layout(bearing);
  const gate = midpoint(stakes[0], stakes[1]);
  const center = stepTo(gate, midpoint(post1, post2));
  return {
    center,
    bearing,
    gateBearing: bearingTo({ east: 0, north: 0 }, gate),
    stakes: stakes.map((stake) => ({ ...stake, ...moved(stake, center) })),
    over,
  };
}
