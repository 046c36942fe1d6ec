/** A point of a drawing: x to the right, y down, in pixels. */
export interface Point {
  x: number;
  y: number;
}

/** What a plan is drawn by: its size, and the center and radius of the pin circle, in pixels. */
export interface PlanFrame {
  width: number;
  height: number;
  center: Point;
  radius: number;
}

/** The colors of a drawing: ink on paper, and a fainter ink for construction lines. */
export interface PlanColors {
  ink: string;
  faint: string;
  paper: string;
}

const room = { above: 10, below: 40 };

/** The frame of a plan that wide. Its height depends on nothing else, so a page around it stays where it is. */
export function planFrame(width: number): PlanFrame {
  const radius = width * 0.43;
  const center = { x: width / 2, y: radius + room.above };
  return { width, height: Math.round(2 * radius + room.above + room.below), center, radius };
}

/** The point at an angle on a circle; 0 is to the right, and angles run clockwise. */
export const onCircle = ({ x, y }: Point, radius: number, angle: number): Point => ({
  x: x + radius * Math.cos(angle),
  y: y + radius * Math.sin(angle),
});

/** The angle at which a point lies, as seen from the center. */
export const bearingOf = ({ x, y }: Point, center: Point) => Math.atan2(y - center.y, x - center.x);
