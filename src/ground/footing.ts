import { cubicFeet, cubicYards, INCHES_PER_FOOT } from "../units/conversion";

/**
 * The loose cubic yards to buy for a layer over an area (sq ft) that is this deep (in) once settled: what is placed,
 * over what settling leaves of it, with the overrun on top. Percentages: overrun 0 and up, settle 0 to under 100.
 */
export function fill(area: number, depth: number, overrunPercent = 0, settlePercent = 0): number {
  const placed = cubicYards((area * depth) / INCHES_PER_FOOT);
  return (placed / (1 - settlePercent / 100)) * (1 + overrunPercent / 100);
}

/** The inches that so many cubic yards give over an area (sq ft), loose. */
export function depthOf(yards: number, area: number): number {
  return (cubicFeet(yards) / area) * INCHES_PER_FOOT;
}
