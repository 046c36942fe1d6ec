import { radians } from "./point";

/** A distance along the ground split into what lies level and what it rises, in its unit. */
export interface LevelAndRise {
  level: number;
  rise: number;
}

/** What a tape along ground that slopes by so many degrees (under 90) covers. */
export const levelAndRise = (taped: number, degrees: number): LevelAndRise => ({
  level: taped * Math.cos(radians(degrees)),
  rise: taped * Math.sin(radians(degrees)),
});

/**
 * What a tape along the ground shows over a level distance, in its unit, where the ground falls evenly by a percentage
 * of the level distance; the line is turned so many degrees from straight downhill.
 */
export const tapedDistance = (level: number, slopePercent: number, fromDownhill = 0) =>
  level * Math.hypot(1, (slopePercent / 100) * Math.cos(radians(fromDownhill)));
