import { type Point as Ground } from "../geometry/point";

/** A point of a drawing: x to the right, y down, in pixels. */
export interface Point {
  x: number;
  y: number;
}

/**
 * What a plan is drawn by: its size, the center, and the radius of the pin circle, in pixels. An arena reaches as far
 * from the center as that radius where it reaches farthest.
 */
export interface PlanFrame {
  width: number;
  height: number;
  center: Point;
  radius: number;
  /** The radius of all that is drawn to scale, stakes outside the pen included. */
  outer: number;
}

/** What a plan has to leave room for outside the pen. */
export interface PlanRoom {
  /** How many times as far from the center as the pins the farthest stake stands; 1 or more. */
  reach?: number;
  /** Pixels around the pen for the numbers of its stakes. */
  rim?: number;
}

/** The colors of a drawing: ink on paper, and a fainter ink for construction lines. */
export interface PlanColors {
  ink: string;
  faint: string;
  paper: string;
}

const room = { above: 10, below: 40 };

/** The frame of a plan that wide. Its height depends on nothing else, so a page around it stays where it is. */
export function planFrame(width: number, { reach = 1, rim = 0 }: PlanRoom = {}): PlanFrame {
  const outer = width * 0.43;
  const center = { x: width / 2, y: outer + room.above };
  const radius = Math.min(outer / reach, outer - rim);
  return { width, height: Math.round(2 * outer + room.above + room.below), center, radius, outer };
}

/** The point at an angle on a circle; 0 is to the right, and angles run clockwise. */
export const onCircle = ({ x, y }: Point, radius: number, angle: number): Point => ({
  x: x + radius * Math.cos(angle),
  y: y + radius * Math.sin(angle),
});

/** Where a place on the ground is drawn, by the pixels that a foot takes; the top is north. */
export const onPlan = ({ center }: PlanFrame, scale: number, { east, north }: Ground): Point => ({
  x: center.x + scale * east,
  y: center.y - scale * north,
});

/** The angle of a direction on a plan whose top is north: degrees clockwise from there. */
export const angleOf = (bearing: number) => ((bearing - 90) * Math.PI) / 180;

/** The angle at which a point lies, as seen from the center. */
export const bearingOf = ({ x, y }: Point, center: Point) => Math.atan2(y - center.y, x - center.x);
