import { type Point, ahead, bearingTo, compass, distance } from "../geometry/point";
import { twoDistances } from "../geometry/two-distances";
import { notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { siteMessages } from "./site-messages";

/** Where a reference stake is to stand, seen from the center: degrees, and ft. */
export interface Sighting {
  bearing: number;
  distance: number;
}

/** A center tied to two stakes outside the work. Lengths in ft. */
export interface ReferenceStakes {
  center: Point;
  stakes: [Point, Point];
  /** From each stake to the center. */
  distances: [number, number];
  /** From each stake to the center, degrees. */
  bearings: [number, number];
  /** From stake to stake: a check that neither has moved. */
  apart: number;
}

/** Degrees between which two tapes cross well enough to set a stake (common practice, no source). */
const CROSSING = { least: 30, most: 150 };

/**
 * Two stakes from which the center can be set again after grading, at the sightings given; the work reaches so far (ft)
 * from the center. Refuses a stake within the work, and stakes whose tapes would cross at under 30 or over 150 degrees.
 */
export function referenceStakes(
  center: Point,
  work: number,
  sightings: readonly [Sighting, Sighting],
): ReferenceStakes {
  if (!sightings.every(({ distance }) => distance >= work * (1 - EPSILON)))
    throw notAllowed(siteMessages.referenceInWork(work));
  const turn = compass(sightings[1].bearing - sightings[0].bearing);
  const crossing = Math.min(turn, 360 - turn);
  if (!(crossing >= CROSSING.least - EPSILON && crossing <= CROSSING.most + EPSILON))
    throw notAllowed(siteMessages.referenceAngle(CROSSING.least, CROSSING.most));
  const stake = ({ bearing, distance }: Sighting) => ahead(center, bearing, distance);
  const stakes: [Point, Point] = [stake(sightings[0]), stake(sightings[1])];
  return {
    center,
    stakes,
    distances: [sightings[0].distance, sightings[1].distance],
    bearings: [bearingTo(stakes[0], center), bearingTo(stakes[1], center)],
    apart: distance(...stakes),
  };
}

/** The plain choice: both as far outside the work as asked, at right angles, the first at the bearing. */
export function squareReferenceStakes(center: Point, work: number, outside: number, bearing: number) {
  const off = work + outside;
  return referenceStakes(center, work, [
    { bearing: compass(bearing), distance: off },
    { bearing: compass(bearing + 90), distance: off },
  ]);
}

/**
 * Where two tapes from the reference stakes cross on the side of the center, and how far that is from it, ft. Refuses
 * (no answer) distances that do not meet.
 */
export function centerAgain(
  { center, stakes: [first, second] }: ReferenceStakes,
  fromFirst: number,
  fromSecond: number,
): { center: Point; off: number } {
  const turn = compass(bearingTo(first, center) - bearingTo(first, second));
  const found = twoDistances(first, second, fromFirst, fromSecond, turn < 180 ? "right" : "left");
  return { center: found, off: distance(found, center) };
}
