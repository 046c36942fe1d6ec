import { bearingOf, onCircle, type PlanFrame } from "./frame";
import { label } from "./label";
import { boxesOf, boxOf, freest } from "./label-room";
import { middleOf, type PlacedPiece } from "./pieces";
import { type Shape } from "./shape";

/** Pixels that stay free between a label and the fence, and between places that are tried. */
const free = 8;
const step = 4;

/** The labels of a plan's gates, each where it covers none of the others, nor any text of these shapes. */
export function gateLabels(
  gates: readonly PlacedPiece[],
  sayings: readonly string[],
  { frame, rim, isArena }: { frame: PlanFrame; rim: number; isArena: boolean },
  paper: string,
  beside: readonly Shape[],
): Shape[] {
  const taken = boxesOf(beside);
  const whole = { left: 0, right: frame.width, top: 0, bottom: frame.height };
  return gates.map((gate, k) => {
    const places = (isArena ? besideSide : besidePen)(sayings[k], gate, frame, rim, paper);
    const placed = freest(places, taken, whole);
    taken.push(boxOf(placed));
    return placed;
  });
}

/**
 * The places for a gate's label, the best first: inside the pen, whole, as near to the gate as it goes, then farther in
 * and to the sides, and last outside, beyond the numbers of the stakes.
 */
function besidePen(
  words: string,
  gate: PlacedPiece,
  { center, radius }: PlanFrame,
  rim: number,
  paper: string,
): Shape[] {
  const angle = bearingOf(middleOf(gate), center);
  const placed = (away: number, aside = 0) => {
    const { x, y } = onCircle(center, away, angle + (aside * Math.PI) / 180);
    return label(words, { x, y: y + 5 }, paper);
  };
  const isInside = (one: Shape) => {
    const { left, right, top, bottom } = boxOf(one);
    const corners = [left, right].flatMap((x) =>
      [top, bottom].map((y) => Math.hypot(x - center.x, y - center.y)),
    );
    return Math.max(...corners) <= radius - free;
  };
  const asides = [0, 10, -10, 20, -20, 30, -30, 45, -45];
  const inward = Array.from({ length: Math.floor(radius / step) }, (_, k) => radius - free - k * step);
  const inside = inward.flatMap((away) => asides.map((aside) => placed(away, aside))).filter(isInside);
  const gateAt = middleOf(gate);
  const far = ({ attributes: { x, y } }: Shape) => Math.hypot(Number(x) - gateAt.x, Number(y) - gateAt.y);
  inside.sort((a, b) => far(a) - far(b));
  const outside = [0, step, 2 * step, 4 * step, 8 * step, 12 * step].flatMap((more) =>
    asides.map((aside) => placed(radius + rim + 14 + more, aside)),
  );
  return [...inside, ...outside];
}

/** The places for the label of a gate on a side of an arena: beside it inside the fence, then along the side and farther in. */
function besideSide(
  words: string,
  gate: PlacedPiece,
  { center }: PlanFrame,
  rim: number,
  paper: string,
): Shape[] {
  const { x, y } = middleOf(gate);
  const along = Math.atan2(gate.to.y - gate.from.y, gate.to.x - gate.from.x);
  const [inX, inY] = [-Math.sin(along), Math.cos(along)];
  const upright = Math.abs(inX) > 0.7;
  // Along the side it moves toward the arena's middle first.
  const toMiddle = Math.sign((center.x - x) * Math.cos(along) + (center.y - y) * Math.sin(along)) || 1;
  const placed = (into: number, aside: number) => {
    const at = { x: x + inX * into + Math.cos(along) * aside, y: y + inY * into + Math.sin(along) * aside };
    const anchor = !upright ? "middle" : inX * into > 0 ? "start" : "end";
    return label(words, { x: at.x, y: at.y + 5 }, paper, { "text-anchor": anchor });
  };
  const depth = upright ? 12 : 17;
  const depths = [1, 2, 3, 5, 7, 9].map((times) => times * depth);
  const beyond = [4, 20, 36, 52, 68].map((more) => -rim - depth - more);
  const asides = Array.from({ length: 33 }, (_, k) => (k % 2 ? 3.5 * (k + 1) : -3.5 * k) * toMiddle);
  return [...depths, ...beyond].flatMap((into) => asides.map((aside) => placed(into, aside)));
}
