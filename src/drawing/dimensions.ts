import { circleOf, isPosted, type RoundPen } from "../estimate/pen";
import { bearingOf, onCircle, type PlanColors, type PlanFrame, type Point } from "./frame";
import { label } from "./label";
import { type PlanWords } from "./messages";
import { middleOf, type PlacedPiece } from "./pieces";
import { shape, type Shape } from "./shape";

const tick = 5;
const belowPen = 16;

/** The circle and the sizes on the plan of a round pen: across the pins or posts below it, clear inside through the center stake. */
export function dimensions(
  pen: RoundPen,
  pieces: readonly PlacedPiece[],
  frame: PlanFrame,
  colors: PlanColors,
  words: PlanWords,
): Shape[] {
  const { center, radius } = frame;
  return [
    shape("circle", {
      cx: center.x, cy: center.y, r: radius, fill: "none", stroke: colors.faint, "stroke-width": 0.75, "stroke-dasharray": "2 4",
    }), // prettier-ignore
    ...acrossCircle(pen, frame, colors, words),
    ...clearInside(pen, pieces, frame, colors, words),
    ...centerStake(frame, colors, words),
  ];
}

const lineBetween = (from: Point, to: Point, color: string, width = 1): Shape =>
  shape("line", { x1: from.x, y1: from.y, x2: to.x, y2: to.y, stroke: color, "stroke-width": width });

/** The size of the circle that the pen stands on, in words. */
export const acrossWords = (pen: RoundPen, words: PlanWords) =>
  (isPosted(pen) ? words.acrossPosts : words.acrossPins)(circleOf(pen));

function acrossCircle(
  pen: RoundPen,
  { center, radius, outer }: PlanFrame,
  { faint, paper }: PlanColors,
  words: PlanWords,
): Shape[] {
  const y = center.y + outer + belowPen;
  const ends = [-1, 1].map((side) => ({ x: center.x + side * radius, y }));
  return [
    ...ends.map((end) => lineBetween({ x: end.x, y: center.y }, { x: end.x, y: y + tick }, faint, 0.5)),
    lineBetween(ends[0], ends[1], faint),
    ...ends.map((end) => slash(end, Math.PI / 2, faint)),
    label(acrossWords(pen, words), { x: center.x, y: y + 17 }, paper),
  ];
}

function clearInside(
  pen: RoundPen,
  pieces: readonly PlacedPiece[],
  { center, radius }: PlanFrame,
  { faint, paper }: PlanColors,
  words: PlanWords,
): Shape[] {
  const reach = (radius * pen.insideClear) / circleOf(pen);
  const along = clearOfGates(pieces, center);
  const ends = [along, along + Math.PI].map((angle) => onCircle(center, reach, angle));
  return [
    lineBetween(ends[0], ends[1], faint),
    ...ends.map((end) => slash(end, along + Math.PI / 2, faint)),
    label(words.size(pen.insideClear), { x: center.x, y: center.y + 26 }, paper),
    label(words.clearInside, { x: center.x, y: center.y + 43 }, paper),
  ];
}

/** The bar across a dimension line's end. */
function slash(end: Point, angle: number, color: string): Shape {
  return lineBetween(onCircle(end, -tick, angle), onCircle(end, tick, angle), color, 1.5);
}

/** The direction, level where it can be, in which a line across the pen stays farthest from the gates and their labels. */
function clearOfGates(pieces: readonly PlacedPiece[], center: Point): number {
  const gates = pieces.filter(({ kind }) => kind === "gate").map((gate) => bearingOf(middleOf(gate), center));
  const apart = (angle: number) => Math.min(...gates.map((gate) => Math.abs(Math.sin(angle - gate))), 0.45);
  const choices = [0, -15, 15, -30, 30, -45, 45].map((degrees) => (degrees * Math.PI) / 180);
  return choices.reduce((best, angle) => (apart(angle) > apart(best) + 1e-9 ? angle : best));
}

/** The center stake: what the whole work is measured from. */
export function centerStake({ center }: PlanFrame, { ink, paper }: PlanColors, words: PlanWords): Shape[] {
  const arm = 7;
  return [
    lineBetween({ x: center.x - arm, y: center.y }, { x: center.x + arm, y: center.y }, ink, 1.5),
    lineBetween({ x: center.x, y: center.y - arm }, { x: center.x, y: center.y + arm }, ink, 1.5),
    shape("circle", { cx: center.x, cy: center.y, r: 3.5, fill: paper, stroke: ink, "stroke-width": 1.5 }),
    label(words.centerStake, { x: center.x, y: center.y - 13 }, paper),
  ];
}
