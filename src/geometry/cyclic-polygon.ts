import { noAnswer } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";

/** Straight pieces of one length, pin to pin, in any one unit of length. The count is whole and may be 0. */
export interface Chord {
  length: number;
  count: number;
}

/** The circle through all corners of a closed polygon. `centerInside` holds also where the center lies on a side. */
export interface Circumcircle {
  diameter: number;
  centerInside: boolean;
}

/**
 * The circle on which these chords close. Their order does not matter. Refuses (no answer) chords of which the
 * longest is as long as all the others together.
 *
 * With t the half angle that the longest chord a takes and r the other chords as parts of a, the half angles make
 * half a turn: t + sum asin(r sin t) = pi. Where the center lies outside, the longest takes the turn less its own
 * angle, and with s = pi - t: sum asin(r sin s) = s. Both are concave, so Newton's method from the outer end of the
 * bracket runs to the root from one side and cannot leave it.
 */
export function circumcircle(chords: readonly Chord[]): Circumcircle {
  const longest = longestChord(chords);
  const around = perimeter(chords);
  if (around - 2 * longest <= EPSILON * Math.max(1, longest)) throw noAnswer(messages.closesNothing);
  const centerInside = othersHalfAngle(chords, longest, 1) >= Math.PI / 2 - EPSILON;
  const angle = centerInside ? innerRoot(chords, longest, around) : outerRoot(chords, longest);
  return { diameter: longest / Math.sin(angle), centerInside };
}

/** The longest of the chords that are there, 0 where none is. */
export function longestChord(chords: readonly Chord[]): number {
  let longest = 0;
  for (const { length, count } of chords) if (count > 0 && length > longest) longest = length;
  return longest;
}

/** The distance around: all chords added up. */
export function perimeter(chords: readonly Chord[]): number {
  let around = 0;
  for (const { length, count } of chords) around += length * count;
  return around;
}

/** The angle (radians) that a chord takes at the center of a circle; a chord longer than the diameter takes half a turn. */
export function centralAngle(length: number, diameter: number): number {
  return 2 * Math.asin(Math.min(1, length / diameter));
}

/**
 * The sum of the central angles of the chords on a circle of this diameter. Where the center lies inside, the
 * chords' own circle is at least that wide exactly when this is 2 pi or more.
 */
export function fullTurn(chords: readonly Chord[], diameter: number): number {
  let turn = 0;
  for (const { length, count } of chords) if (count > 0) turn += count * centralAngle(length, diameter);
  return turn;
}

/** The area that the closed chords enclose: the triangles to the center, the longest's taken off where it lies outside. */
export function inscribedArea(chords: readonly Chord[]): number {
  const { diameter, centerInside } = circumcircle(chords);
  let area = 0;
  for (const { length, count } of chords) if (count > 0) area += count * triangle(length, diameter);
  return centerInside ? area : area - 2 * triangle(longestChord(chords), diameter);
}

/** Twice the least distance from the center to a chord. Refuses (no answer) where the center lies outside. */
export function insideClear(chords: readonly Chord[]): number {
  const { diameter, centerInside } = circumcircle(chords);
  if (!centerInside) throw noAnswer(messages.centerOutside);
  return apothem(longestChord(chords), diameter) * 2;
}

/** The distance from the center of a circle to a chord. */
export function apothem(length: number, diameter: number): number {
  return Math.sqrt(Math.max(0, (diameter - length) * (diameter + length))) / 2;
}

const triangle = (length: number, diameter: number) => (length * apothem(length, diameter)) / 2;

/** The half angles of all chords but one longest, on the circle where the longest's half angle has this sine. */
function othersHalfAngle(chords: readonly Chord[], longest: number, sine: number): number {
  let sum = -Math.asin(sine);
  for (const { length, count } of chords) if (count > 0) sum += count * Math.asin((length / longest) * sine);
  return sum;
}

/** How that sum grows with the longest's half angle, of which this is the sine and the cosine. */
function othersGrowth(chords: readonly Chord[], longest: number, sine: number, cosine: number): number {
  let sum = -1;
  for (const { length, count } of chords) {
    if (count === 0) continue;
    const part = (length / longest) * sine;
    sum += length === longest ? count : (count * (length / longest) * cosine) / Math.sqrt(1 - part * part);
  }
  return sum;
}

const MOST_STEPS = 100;

/** The longest's half angle in (0, pi/2], from below: it is never under its share of half a turn. */
function innerRoot(chords: readonly Chord[], longest: number, around: number): number {
  let t = (Math.PI * longest) / around;
  for (let step = 0; step < MOST_STEPS; step++) {
    const sine = Math.sin(t);
    const short = Math.PI - t - othersHalfAngle(chords, longest, sine);
    const next = Math.min(Math.PI / 2, t + short / (1 + othersGrowth(chords, longest, sine, Math.cos(t))));
    if (next <= t) break;
    t = next;
  }
  return t;
}

/** Pi less the longest's half angle, in (0, pi/2), from above. */
function outerRoot(chords: readonly Chord[], longest: number): number {
  let s = Math.PI / 2;
  for (let step = 0; step < MOST_STEPS; step++) {
    const sine = Math.sin(s);
    const short = s - othersHalfAngle(chords, longest, sine);
    const next = s - short / (1 - othersGrowth(chords, longest, sine, Math.cos(s)));
    if (next >= s || !(next > 0)) break;
    s = next;
  }
  return s;
}
