import { isPosted, type Arena } from "../estimate/pen";
import { distance, type Point as Ground, turned } from "../geometry/point";
import { equal } from "../units/rounding";
import { bearingOf, onCircle, onPlan, type PlanColors, type PlanFrame, type Point } from "./frame";
import { centerStake } from "./dimensions";
import { label } from "./label";
import { type PlanWords } from "./messages";
import { shape, type Shape } from "./shape";

/** How an arena lies on its plan: pixels to a foot, and the bearing of its left side, degrees. */
export interface ArenaFrame extends PlanFrame {
  scale: number;
  bearing: number;
}

const tick = 5;
/** Pixels between the sides below which labels of the usual size would cover them. */
const ROOM_FOR_LABELS = 110;
/** Pixels from the fence, or from the numbers of its stakes, to a dimension line. */
const beside = 13;

/** What an arena is laid out by: its line, corners, arc centers, both diagonals, and the length and width beside it. */
export function arenaMarks(
  arena: Arena,
  frame: ArenaFrame,
  rim: number,
  colors: PlanColors,
  words: PlanWords,
): Shape[] {
  const place = (point: Ground) => onPlan(frame, frame.scale, turned(point, frame.bearing));
  const corners = arena.layout.corners.map(place);
  const radius = isPosted(arena) ? arena.line.cornerRadius : 0;
  const off = rim + beside;
  const lengths = arena.layout.corners.map((corner, k, all) => distance(corner, all[(k + 1) % all.length]));
  return [
    outline(corners, radius * frame.scale, colors),
    ...diagonals(arena, corners, frame, colors, words),
    ...dimension(corners[0], corners[1], off, words.size(lengths[0]), colors),
    ...dimension(corners[3], corners[0], off, words.size(lengths[3]), colors),
    ...(radius > 0 && isPosted(arena)
      ? [
          ...corners.map((corner) => square(corner, colors)),
          ...arena.layout.arcCenters.flatMap((center, k) =>
            arcCenter(place(center), k === 0 ? words.radius(radius) : "", colors),
          ),
        ]
      : []),
    ...centerStake(frame, colors, words),
  ];
}

/** The length and width of an arena on its plan. */
export const arenaWords = ({ layout: { corners } }: Arena, words: PlanWords) =>
  [corners[1], corners[3]].map((corner) => words.size(distance(corners[0], corner))).join(" × ");

const line = (from: Point, to: Point, color: string, width: number, dashes?: string): Shape =>
  shape("line", {
    x1: from.x, y1: from.y, x2: to.x, y2: to.y, stroke: color, "stroke-width": width, ...(dashes ? { "stroke-dasharray": dashes } : {}),
  }); // prettier-ignore

/** The line through pins or post centers, arcs included. */
function outline(corners: readonly Point[], radius: number, { faint }: PlanColors): Shape {
  const path = corners.map((corner, k) => {
    const [before, after] = [corners.at(k - 1)!, corners[(k + 1) % corners.length]];
    const [from, to] = [before, after].map((other) => onCircle(corner, radius, bearingOf(other, corner)));
    const arc = radius > 0 ? ` A${round(radius)} ${round(radius)} 0 0 1 ${round(to.x)} ${round(to.y)}` : "";
    return `${k === 0 ? "M" : "L"}${round(from.x)} ${round(from.y)}${arc}`;
  });
  return shape("path", {
    d: `${path.join(" ")} Z`, fill: "none", stroke: faint, "stroke-width": 0.75, "stroke-dasharray": "2 4",
  }); // prettier-ignore
}

const round = (value: number) => Math.round(value * 100) / 100;

/** Both diagonals, and below the middle what the tape must show on them. */
function diagonals(
  { layout }: Arena,
  corners: readonly Point[],
  { center }: PlanFrame,
  { faint, paper }: PlanColors,
  words: PlanWords,
): Shape[] {
  const [first, second] = layout.diagonals;
  const room = Math.abs(corners[3].x - corners[0].x);
  const said = equal(first, second)
    ? [words.size(first), words.diagonals]
    : [words.size(first), words.and(words.size(second))];
  return [
    line(corners[0], corners[2], faint, 0.75, "8 5"),
    line(corners[1], corners[3], faint, 0.75, "8 5"),
    ...said.map((saying, k) =>
      label(
        saying,
        { x: center.x, y: center.y + 26 + 17 * k },
        paper,
        room < ROOM_FOR_LABELS ? { "font-size": 11 } : {},
      ),
    ),
  ];
}

/** A dimension line outside of a side that is walked clockwise, with its length along it. */
function dimension(
  from: Point,
  to: Point,
  off: number,
  words: string,
  { faint, paper }: PlanColors,
): Shape[] {
  const along = Math.atan2(to.y - from.y, to.x - from.x);
  const outward = along - Math.PI / 2;
  const ends = [from, to].map((end) => onCircle(end, off, outward));
  const middle = { x: (ends[0].x + ends[1].x) / 2, y: (ends[0].y + ends[1].y) / 2 };
  const turn = (along * 180) / Math.PI;
  // Read from the foot or the right of the page, never upside down.
  const upright = turn > 90 ? turn - 180 : turn < -90 - 1e-6 ? turn + 180 : turn;
  return [
    ...[from, to].map((end, k) => line(onCircle(end, 4, outward), ends[k], faint, 0.5)),
    line(ends[0], ends[1], faint, 1),
    ...ends.map((end) => line(onCircle(end, -tick, outward), onCircle(end, tick, outward), faint, 1.5)),
    label(words, { x: middle.x, y: middle.y + 5 }, paper, {
      transform: `rotate(${round(upright)} ${round(middle.x)} ${round(middle.y)})`,
    }),
  ];
}

/** A corner that is staked though no post stands there. */
const square = ({ x, y }: Point, { ink, paper }: PlanColors): Shape =>
  shape("rect", { x: x - 3.5, y: y - 3.5, width: 7, height: 7, fill: paper, stroke: ink, "stroke-width": 1.2, "data-corner": "" }); // prettier-ignore

/** The stake that an arc is swung from. */
const arcCenter = (at: Point, words: string, { ink, paper }: PlanColors): Shape[] => [
  line({ x: at.x - 5, y: at.y }, { x: at.x + 5, y: at.y }, ink, 1.2),
  line({ x: at.x, y: at.y - 5 }, { x: at.x, y: at.y + 5 }, ink, 1.2),
  shape("circle", { cx: at.x, cy: at.y, r: 2.5, fill: paper, stroke: ink, "stroke-width": 1.2, "data-arc-center": "" }),
  ...(words ? [label(words, { x: at.x - 5, y: at.y + 20 }, paper, { "font-size": 12.5, "text-anchor": "start" })] : []),
]; // prettier-ignore
