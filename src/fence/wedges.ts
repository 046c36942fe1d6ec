import { type Point, ahead, bearingTo, distance, radians } from "../geometry/point";
import { alongAndAcross } from "../geometry/rounded-outline";
import { noAnswer, notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { type RoundFence, type StraightFence, isRound } from "./fence-line";
import { siteMessages } from "./site-messages";
import { TURNING_ROOM } from "./turning-room";

/** A gap that counts as closed, ft: 3 in (openings that trap no hoof: extension fence bulletins). */
export const CLOSED_GAP = 0.25;

/** A stretch of one of the two fences: where it begins and ends, and its length along the fence, ft. */
export interface Stretch {
  from: Point;
  to: Point;
  length: number;
}

/** Where two fences come too near one another: the stretch of each, from the narrow end to the wide one. */
export interface Wedge {
  first: Stretch;
  second: Stretch;
  /** The least gap in it, ft. */
  narrowest: number;
  /** True where it is open at both ends: a passage with a throat, not a dead end. */
  passage: boolean;
  /** Where balls between its ends touch the two fences, in order, where the straights between the ends do not show it. */
  across?: readonly (readonly [Point, Point])[];
}

/**
 * The wedges between a round fence and another beside it, that a horse may enter and cannot turn in. A gap is measured
 * by the largest ball that comes so far in between the fences: the stretches lie between the places where a ball as
 * wide as a closed gap and one as wide as the turning room touch. Fences whose gap closes have a wedge to either side;
 * fences that come near without closing have one passage. A straight run ends at its ends (within the round
 * fence it makes no wedge), and is taken from the side on which the round fence's center lies. Refuses a turning room no wider than the closed gap and (no answer) a pen inside
 * the other.
 */
export function wedgesBetween(
  first: RoundFence,
  second: RoundFence | StraightFence,
  turningRoom = TURNING_ROOM,
  closedGap = CLOSED_GAP,
): Wedge[] {
  if (!(turningRoom > closedGap)) throw notAllowed(siteMessages.turningRoom(closedGap));
  const { clear, touching } = isRound(second) ? besideRound(first, second) : besideStraight(first, second);
  if (clear >= turningRoom - EPSILON * turningRoom) return [];
  const passage = clear > closedGap;
  const [back, on] = [touching(turningRoom, -1), touching(turningRoom, 1)];
  const wedge = (from: Touch | undefined, to: Touch | undefined): Wedge[] =>
    from && to ? [{ ...between(from, to), narrowest: passage ? clear : closedGap, passage }] : [];
  return passage
    ? wedge(back, on)
    : [...wedge(touching(closedGap, -1), back), ...wedge(touching(closedGap, 1), on)];
}

/** Where a ball touches the two fences, with how far along each that is from where they are nearest, clockwise positive. */
interface Touch {
  points: [Point, Point];
  along: [number, number];
}

interface Gap {
  /** Between the two fences at the nearest, ft; negative where they cross. */
  clear: number;
  /** How a ball of this width touches both, clockwise (1) or the other way (-1) around the first; not where a run ends within it. */
  touching(width: number, side: 1 | -1): Touch | undefined;
}

function between(from: Touch, to: Touch): Pick<Wedge, "first" | "second"> {
  const stretch = (i: 0 | 1): Stretch => ({
    from: from.points[i],
    to: to.points[i],
    length: Math.abs(to.along[i] - from.along[i]),
  });
  return { first: stretch(0), second: stretch(1) };
}

function besideRound(first: RoundFence, second: RoundFence): Gap {
  const [radius1, radius2] = [first.diameter / 2, second.diameter / 2];
  const apart = distance(first.center, second.center);
  if (apart <= Math.abs(radius1 - radius2)) throw noAnswer(siteMessages.penInsidePen);
  const heading = bearingTo(first.center, second.center);
  return {
    clear: apart - radius1 - radius2,
    touching(width, side) {
      const turn1 = side * seenTurn(apart, radius1 + width / 2, radius2 + width / 2);
      const turn2 = side * seenTurn(apart, radius2 + width / 2, radius1 + width / 2);
      return {
        points: [
          ahead(first.center, heading + turn1, radius1),
          ahead(second.center, heading + 180 - turn2, radius2),
        ],
        along: [radius1 * radians(turn1), radius2 * radians(turn2)],
      };
    },
  };
}

function besideStraight(first: RoundFence, { from, to }: StraightFence): Gap {
  const radius = first.diameter / 2;
  const heading = bearingTo(from, to);
  const length = distance(from, to);
  const { along: foot, across } = alongAndAcross(from, first.center, heading);
  const off = Math.abs(across);
  // With the center to the right of the run, clockwise around it goes with the run; to the left, against it.
  const way = across > 0 ? 1 : -1;
  const toRun = heading - 90 * way;
  const within = (at: number) => Math.min(length, Math.max(0, at));
  const touch = (at: number, turn: number): Touch => ({
    points: [ahead(first.center, toRun + turn, radius), ahead(from, heading, at)],
    along: [radius * radians(turn), way * (at - foot)],
  });
  return {
    clear: Math.hypot(within(foot) - foot, off) - radius,
    touching(width, side) {
      const ball = width / 2;
      const reach = Math.sqrt(Math.max(0, (radius + off) * (radius + width - off)));
      const at = foot + way * side * reach;
      const end = within(at);
      if (end === at) return touch(at, side * degrees(Math.atan2(reach, off - ball)));
      const [seen, apart] = [degrees(Math.atan2(way * (end - foot), off)), Math.hypot(end - foot, off)];
      return apart < radius ? undefined : touch(end, seen + side * seenTurn(apart, radius + ball, ball));
    },
  };
}

/** The angle, degrees, at which a ball's center is seen from the first center, off the line to the second. */
function seenTurn(apart: number, toFirst: number, toSecond: number): number {
  const cosine = (apart ** 2 + (toFirst - toSecond) * (toFirst + toSecond)) / (2 * apart * toFirst);
  return degrees(Math.acos(Math.min(1, Math.max(-1, cosine))));
}

const degrees = (angle: number) => (angle * 180) / Math.PI;
