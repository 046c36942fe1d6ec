import { type Stake } from "../../src/fence/layout";

const apart = (a: Stake, b: Stake) => Math.hypot(a.east - b.east, a.north - b.north);

/** Holds every chord and tie of a layout to its coordinates, and walks it by chord and heading back to the first stake. */
export function expectWalkCloses(stakes: readonly Stake[]) {
  let [east, north] = [stakes[0].east, stakes[0].north];
  stakes.forEach((stake, i) => {
    const next = stakes[(i + 1) % stakes.length];
    expect(stake.stake).toBe(i + 1);
    expect(stake.bearing >= 0 && stake.bearing < 360).toBe(true);
    expect(stake.tie1).toBeCloseTo(apart(stake, stakes[0]), 9);
    expect(stake.tie2).toBeCloseTo(apart(stake, stakes[1]), 9);
    const heading = Math.atan2(next.east - stake.east, next.north - stake.north);
    east += next.chord * Math.sin(heading);
    north += next.chord * Math.cos(heading);
    expect(Math.hypot(east - next.east, north - next.north)).toBeLessThan(1e-9);
  });
}

/** Area by the coordinates of the corners alone (the surveyor's formula); clockwise is positive. */
export const surveyedArea = (stakes: readonly { east: number; north: number }[]) =>
  stakes.reduce((sum, a, i) => {
    const b = stakes[(i + 1) % stakes.length];
    return sum + (b.east - a.east) * ((a.north + b.north) / 2);
  }, 0);
