import { onCircle, type PlanColors, type Point } from "./frame";
import { label } from "./label";
import { middleOf, type PlacedPiece } from "./pieces";
import { shape, type Shape } from "./shape";

/** Pixels from a fence to the words beside it. */
const beside = 13;

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

/** Says inside of each stretch of fence by other whose it is, at its middle. */
export function byOtherLabels(pieces: readonly PlacedPiece[], words: string, paper: string): Shape[] {
  return stretches(pieces).map((stretch) => {
    const piece = stretch[Math.floor(stretch.length / 2)];
    const inward = Math.atan2(piece.to.y - piece.from.y, piece.to.x - piece.from.x) + Math.PI / 2;
    const { x, y } = onCircle(middleOf(piece), beside, inward);
    const across = Math.cos(inward);
    return label(words, { x, y: y + 4 + 4 * Math.sin(inward) }, paper, {
      "font-size": 12.5,
      "text-anchor": across > 0.4 ? "start" : across < -0.4 ? "end" : "middle",
      "data-by-other": "",
    });
  });
}

/** Pieces by other that follow one another and are no gates, round past the first stake. */
function stretches(pieces: readonly PlacedPiece[]): PlacedPiece[][] {
  const isOne = ({ byOther, kind }: PlacedPiece) => byOther === true && kind !== "gate";
  const first = Math.max(
    0,
    pieces.findIndex((piece) => !isOne(piece)),
  );
  const round = [...pieces.slice(first), ...pieces.slice(0, first)];
  const found: PlacedPiece[][] = [];
  round.forEach((piece, k) => {
    if (!isOne(piece)) return;
    if (k > 0 && isOne(round[k - 1])) found.at(-1)!.push(piece);
    else found.push([piece]);
  });
  return found;
}
