import { type ConvexOutline, contactOn, holds, lengthOf } from "../geometry/convex-outline";
import { type Point, ahead, bearingTo, distance, radians } from "../geometry/point";
import { alongAndAcross } from "../geometry/rounded-outline";
import { type Span, leastOf, spansUnder } from "../geometry/spans-under";
import { noAnswer, notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { type RoundFence, type StraightFence, isRound } from "./fence-line";
import { siteMessages } from "./site-messages";
import { TURNING_ROOM } from "./turning-room";
import { CLOSED_GAP, type Stretch, type Wedge } from "./wedges";

/** Pairs of places that a wedge is drawn by, besides its ends. */
const DRAWN = 18;

/**
 * The wedges between an outline that bends one way only, such as an arena's, and a fence beside it, by the ball that
 * rolls around it (see wedgesBetween): where a ball as wide as the turning room does not come by. A fence that runs along
 * at a distance leaves a passage; one that meets the outline leaves a dead end to either side, of which a square corner or
 * a wider one is none. Refuses a turning room no wider than the closed gap and (no answer) one that lies in the other.
 */
export function wedgesAlong(
  outline: ConvexOutline,
  fence: RoundFence | StraightFence,
  turningRoom = TURNING_ROOM,
  closedGap = CLOSED_GAP,
): Wedge[] {
  if (!(turningRoom > closedGap)) throw notAllowed(siteMessages.turningRoom(closedGap));
  refuseInside(outline, fence);
  const clear = clearOf(outline, fence);
  if (clear >= turningRoom * (1 - EPSILON)) return [];
  const ball = (at: number, width: number): Point => {
    const { place, outward } = contactAt(outline, at);
    return ahead(place, outward, width / 2);
  };
  const off = (at: number, width: number) => distance(ball(at, width), nearest(fence, ball(at, width)));
  const tight = (width: number) =>
    spansUnder((at) => off(at, width) - (width / 2) * (1 - EPSILON), outline.length);
  const touch = (at: number): [Point, Point] => {
    const width = widthAt((width) => off(at, width), turningRoom);
    return [contactAt(outline, at).place, nearest(fence, ball(at, width))];
  };
  const wedge = (from: number, to: number, narrowest: number, passage: boolean): Wedge => {
    const across = Array.from({ length: DRAWN + 1 }, (_, k) => touch(from + ((to - from) * k) / DRAWN));
    const [a, b] = [across[0], across[DRAWN]];
    const first = { from: a[0], to: b[0], length: lengthBetween(outline, from, to) };
    return { first, second: stretchOf(fence, a[1], b[1]), narrowest, passage, across };
  };
  const closed = tight(closedGap);
  return tight(turningRoom).flatMap(([from, to]) => {
    const shut = closed.flatMap(([a, b]): Span[] => {
      // What a narrow ball cannot pass a wide one cannot either, but for noise at the ends.
      const within = (turn: number) => from <= (a + b) / 2 + turn && (a + b) / 2 + turn <= to;
      const turn = [0, outline.length, -outline.length].find(within);
      return turn === undefined ? [] : [[Math.max(from, a + turn), Math.min(to, b + turn)]];
    });
    if (shut.length === 0) return [wedge(from, to, clear, true)];
    const ends = [wedge(shut[0][0], from, closedGap, false), wedge(shut.at(-1)![1], to, closedGap, false)];
    return ends.filter(({ first, second }) => isDeep(first, second, turningRoom - closedGap));
  });
}

/** In a square corner a ball stands half its width from the corner along both fences, and a horse gets out of it. */
const isDeep = (first: Stretch, second: Stretch, wider: number) =>
  Math.max(first.length, second.length) > (wider / 2) * (1 + 1e-6);

/** The place on an outline by how many pieces, and which share of the next one, it lies from the first one's beginning. */
function contactAt(outline: ConvexOutline, at: number) {
  const around = ((at % outline.length) + outline.length) % outline.length;
  const k = Math.min(outline.length - 1, Math.floor(around));
  return contactOn(outline[k], around - k);
}

/** Along the outline between two such places, ft. */
function lengthBetween(outline: ConvexOutline, a: number, b: number): number {
  const [from, to] = [Math.min(a, b), Math.max(a, b)];
  let length = 0;
  for (let k = Math.floor(from); k < to; k++) {
    const piece = outline[((k % outline.length) + outline.length) % outline.length];
    length += lengthOf(piece) * (Math.min(to, k + 1) - Math.max(from, k));
  }
  return length;
}

/** The place of a fence that is nearest; a round one is all that it encloses. */
function nearest(fence: RoundFence | StraightFence, place: Point): Point {
  if (isRound(fence)) {
    const off = distance(fence.center, place);
    return off <= fence.diameter / 2
      ? place
      : ahead(fence.center, bearingTo(fence.center, place), fence.diameter / 2);
  }
  const heading = bearingTo(fence.from, fence.to);
  const { along } = alongAndAcross(fence.from, place, heading);
  return ahead(fence.from, heading, Math.min(distance(fence.from, fence.to), Math.max(0, along)));
}

function stretchOf(fence: RoundFence | StraightFence, from: Point, to: Point): Stretch {
  if (!isRound(fence)) return { from, to, length: distance(from, to) };
  const turn = Math.abs(bearingTo(fence.center, to) - bearingTo(fence.center, from));
  return { from, to, length: (fence.diameter / 2) * radians(Math.min(turn, 360 - turn)) };
}

/** The width of the ball that touches the outline here and just touches the fence; at most `most`. */
function widthAt(off: (width: number) => number, most: number): number {
  let [low, high] = [0, most];
  if (off(high) >= high / 2) return high;
  for (let k = 0; k < 60; k++) {
    const middle = (low + high) / 2;
    if (off(middle) >= middle / 2) low = middle;
    else high = middle;
  }
  return low;
}

/** Between an outline and a fence where they are nearest, ft. */
function clearOf(outline: ConvexOutline, fence: RoundFence | StraightFence): number {
  const toOutline = (at: number) => {
    const { place } = contactAt(outline, at);
    return distance(place, nearest(fence, place));
  };
  return leastOf(toOutline, outline.length);
}

function refuseInside(outline: ConvexOutline, fence: RoundFence | StraightFence): void {
  const places = outline.map((piece) => contactOn(piece, 0).place);
  if (!isRound(fence)) {
    if (holds(outline, fence.from) && holds(outline, fence.to)) throw noAnswer(siteMessages.fenceInside);
    return;
  }
  const reach = fence.diameter / 2;
  const around = places.every((place) => distance(place, fence.center) <= reach);
  const inside =
    holds(outline, fence.center) &&
    leastOf((at) => distance(contactAt(outline, at).place, fence.center), outline.length) >= reach;
  if (around || inside) throw noAnswer(siteMessages.penInsidePen);
}
