import {
  type Chord,
  apothem,
  centralAngle,
  circumcircle,
  fullTurn,
  longestChord,
  perimeter,
} from "../geometry/cyclic-polygon";
import { EPSILON } from "../units/rounding";

/** What a pen's size is measured by: distance around over pi, inside clear, or the pin circle's diameter. */
export type Measure = "around" | "inside" | "pin";

/**
 * A measure made linear: each panel and gate has a weight, and the sum of them says on which side of the wanted size a
 * pen lies, exactly, and how far off, within `range`.
 */
export interface Yardstick {
  weigh(chord: number): number;
  /**
   * What pens of this size weigh: no less than `least`, and what weighs `most` is no smaller. Both are exact at the
   * wanted size.
   */
  range(size: number): { least: number; most: number };
  /** The size of a pen, ft. NaN where the chords are under three or leave the center outside. */
  size(chords: readonly Chord[]): number;
}

/** Around this much of the longest chord, or more, any three or more chords have the center inside: it takes at most half a turn, and half a turn of others is longer than pi/2 of it. */
export const ROUND_ENOUGH = 1 + Math.PI / 2;

/** The yardstick of the distance around: a chord weighs its length. */
export const aroundYardstick: Yardstick = {
  weigh: (chord) => chord,
  range: (size) => ({ least: Math.PI * size, most: Math.PI * size }),
  size(chords) {
    const around = perimeter(chords);
    const round = around > 0 && around >= ROUND_ENOUGH * longestChord(chords);
    return round || isPen(chords) ? around / Math.PI : NaN;
  },
};

/**
 * The yardstick of the pin circle, and of the inside clear where the longest chord is known: inside clear is then the
 * wanted size exactly when the pin circle is hypot(size, longest). A chord weighs its central angle on that circle.
 * On the circle where the chords close the angles make one turn, so that between two circles the whole weight changes
 * by no less and no more than the weights of the single chords do.
 */
export function circleYardstick(wanted: number, chords: readonly number[], longest = 0): Yardstick {
  const circle = (size: number) => Math.hypot(Math.max(0, size), longest);
  const onWanted = circle(wanted);
  return {
    weigh: (chord) => centralAngle(chord, onWanted),
    range(size) {
      const ratios = chords.map((chord) => centralAngle(chord, onWanted) / centralAngle(chord, circle(size)));
      const tooSmall = circle(size) < Math.max(...chords);
      return {
        least: 2 * Math.PI * Math.min(...ratios),
        most: tooSmall ? Infinity : 2 * Math.PI * Math.max(...ratios),
      };
    },
    size(chords) {
      if (!isPen(chords)) return NaN;
      const { diameter } = circumcircle(chords);
      return longest === 0 ? diameter : 2 * apothem(longest, diameter);
    },
  };
}

/** Whether three or more chords close with the center inside or on the fence. */
function isPen(chords: readonly Chord[]): boolean {
  let count = 0;
  for (const chord of chords) count += chord.count;
  return count >= 3 && fullTurn(chords, longestChord(chords)) >= 2 * Math.PI - EPSILON;
}
