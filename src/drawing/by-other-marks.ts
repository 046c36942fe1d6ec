import { onCircle, type PlanColors, type PlanFrame, type Point } from "./frame";
import { label } from "./label";
import { boxesOf, boxOf, freest } from "./label-room";
import { middleOf, type PlacedPiece } from "./pieces";
import { shape, type Shape } from "./shape";

/** Pixels into the pen from a fence to the words beside it, the best first; below 0 outside. */
const depths = [13, 26, 40, -16, -30];

/** The line of a piece by other: fence in dashes, a gate hatched across between its two lines, as it reads without color. */
export function byOtherLine({ kind, from, to }: PlacedPiece, { ink, paper }: PlanColors): Shape[] {
  const line = (stroke: string, width: number, dashes?: string) =>
    shape("line", {
      x1: from.x, y1: from.y, x2: to.x, y2: to.y, stroke, "stroke-width": width, ...(dashes && { "stroke-dasharray": dashes }),
    }); // prettier-ignore
  return kind === "gate"
    ? [line(ink, 9), line(paper, 6), line(ink, 6, "1.5 3")]
    : [line(paper, 4), line(ink, 3, "5 4")];
}

/** A stake that another estimate sets: a ring. */
export const byOtherStake = ({ x, y }: Point, radius: number, { ink, paper }: PlanColors): Shape =>
  shape("circle", { cx: x, cy: y, r: radius, fill: paper, stroke: ink, "stroke-width": 1.2 });

/** Says beside each stretch of fence by other whose it is: by its middle, inside, or where it covers none of the texts of these shapes. */
export function byOtherLabels(
  pieces: readonly PlacedPiece[],
  words: string,
  { width, height }: PlanFrame,
  paper: string,
  others: readonly Shape[],
): Shape[] {
  const taken = boxesOf(others);
  const whole = { left: 0, right: width, top: 0, bottom: height };
  return stretches(pieces).map((stretch) => {
    const middle = (stretch.length - 1) / 2;
    const off = (k: number) => Math.abs(k - middle);
    const fence = stretch
      .flatMap(({ kind }, k) => (kind === "gate" ? [] : [k]))
      .sort((a, b) => off(a) - off(b));
    const places = depths.flatMap((depth) => fence.map((k) => placed(stretch[k], words, depth, paper)));
    const one = freest(places, taken, whole);
    taken.push(boxOf(one));
    return one;
  });
}

function placed(piece: PlacedPiece, words: string, depth: number, paper: string): Shape {
  const inward = Math.atan2(piece.to.y - piece.from.y, piece.to.x - piece.from.x) + Math.PI / 2;
  const { x, y } = onCircle(middleOf(piece), depth, inward);
  const across = Math.cos(inward) * Math.sign(depth);
  return label(words, { x, y: y + 4 + 4 * Math.sin(inward) }, paper, {
    "font-size": 12.5,
    "text-anchor": across > 0.4 ? "start" : across < -0.4 ? "end" : "middle",
    "data-by-other": "",
  });
}

/** Pieces by other that follow one another, round past the first stake; gates alone say it themselves. */
function stretches(pieces: readonly PlacedPiece[]): PlacedPiece[][] {
  const first = Math.max(
    0,
    pieces.findIndex(({ byOther }) => !byOther),
  );
  const round = [...pieces.slice(first), ...pieces.slice(0, first)];
  const found: PlacedPiece[][] = [];
  round.forEach((piece, k) => {
    if (!piece.byOther) return;
    if (k > 0 && round[k - 1].byOther) found.at(-1)!.push(piece);
    else found.push([piece]);
  });
  return found.filter((stretch) => stretch.some(({ kind }) => kind !== "gate"));
}
