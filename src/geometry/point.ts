/** A place on the ground, east and north of an origin, in any one unit of length. */
export interface Point {
  east: number;
  north: number;
}

/** The straight distance between two places. */
export const distance = (a: Point, b: Point) => Math.hypot(b.east - a.east, b.north - a.north);

/** Halfway between two places. */
export const midpoint = (a: Point, b: Point): Point => ({
  east: (a.east + b.east) / 2,
  north: (a.north + b.north) / 2,
});

/** A place moved as far east and north as another lies from the origin. */
export const moved = (point: Point, by: Point): Point => ({
  east: point.east + by.east,
  north: point.north + by.north,
});

/** From the first place to the second, as steps east and north. */
export const stepTo = (from: Point, to: Point): Point => ({
  east: to.east - from.east,
  north: to.north - from.north,
});

/** A place turned clockwise about the origin by so many degrees. */
export function turned({ east, north }: Point, degrees: number): Point {
  const [sine, cosine] = [Math.sin(radians(degrees)), Math.cos(radians(degrees))];
  return { east: east * cosine + north * sine, north: north * cosine - east * sine };
}

/** The place that lies so far off at a bearing, degrees clockwise from north. */
export const ahead = (from: Point, bearing: number, length: number): Point =>
  moved(from, turned({ east: 0, north: length }, bearing));

/** Where one place is seen from another: degrees clockwise from north, from 0 to under 360. */
export const bearingTo = (from: Point, to: Point) =>
  compass((Math.atan2(to.east - from.east, to.north - from.north) * 180) / Math.PI);

/** The area inside closed straight sides by the coordinates of their corners; clockwise corners give it positive. */
export function enclosedArea(corners: readonly Point[]): number {
  return corners.reduce((sum, a, i) => {
    const b = corners[(i + 1) % corners.length];
    return sum + (b.east * a.north - a.east * b.north) / 2;
  }, 0);
}

/** Degrees as radians. */
export const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Degrees. The rounding in a sum of angles is far smaller, and a mile out it moves no stake by 1e-9 ft. */
const BEARING_NOISE = 1e-11;

/** A bearing from 0 to under 360 degrees; a noise under 360 is 0. */
export function compass(degrees: number): number {
  const bearing = ((degrees % 360) + 360) % 360;
  return bearing > 360 - BEARING_NOISE ? 0 : bearing;
}
