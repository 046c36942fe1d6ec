/** A line that a circle is painted with. Lengths in ft, 0 or more. */
export interface RadiusLine {
  radius: number;
  /** Thickness of the center stake, which the loop at one end goes around. */
  centerStake: number;
  /** Diameter of the can, or the thickness of the marking stick, that the loop at the other end goes around. */
  can: number;
  /** Line that one loop with its knot takes. */
  loop: number;
}

/** What such a line is until a crew says its own, in inches (common practice, no source). */
export const usualLine = { centerStake: 1.5, can: 2.625, loop: 12 } as const;

/** How long to make it, ft. */
export interface RadiusLineLength {
  /** Pulled tight, from the inside of one loop's far end to that of the other: what the tape shows. */
  tight: number;
  /** Off the coil, with both loops and knots. */
  cut: number;
}

/**
 * The line with which the middle of the can runs on the circle. Pulled tight, a loop bears on the far side of what it
 * goes around, so the line is longer than the radius by half the center stake and half the can.
 */
export function radiusLine({ radius, centerStake, can, loop }: RadiusLine): RadiusLineLength {
  const tight = radius + (centerStake + can) / 2;
  return { tight, cut: tight + 2 * loop };
}
