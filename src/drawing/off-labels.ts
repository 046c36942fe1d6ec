import { type OffSize } from "../estimate/off-sizes";
import { type PlanFrame } from "./frame";
import { label } from "./label";
import { boxesOf, freestLines, type Box } from "./label-room";
import { type PlanWords } from "./messages";
import { type PlacedPiece } from "./pieces";
import { type Shape } from "./shape";

const size = 12.5;
const line = 16;

/** What of the sizes asked for will not close and by how much, in a corner of the plan or wherever there is room for it. */
export function offLabels(
  off: readonly OffSize[],
  pieces: readonly PlacedPiece[],
  { center, width, height }: PlanFrame,
  words: PlanWords,
  paper: string,
  beside: readonly Shape[],
): Shape[] {
  if (off.length === 0) return [];
  const lines = off.flatMap(({ asked, over }) => [words.wontClose(asked), words.built(over)]);
  const block = (x: number, y: number, anchor: string) =>
    lines.map((words, k) =>
      label(words, { x, y: y + k * line }, paper, {
        "text-anchor": anchor,
        "font-size": size,
        "data-off": k,
      }),
    );
  const rest = (lines.length - 1) * line;
  const places = [
    block(4, 14, "start"),
    block(4, height - 6 - rest, "start"),
    block(width - 4, height - 6 - rest, "end"),
    block(center.x, center.y + 62, "middle"),
    block(center.x, center.y - 34 - rest, "middle"),
  ];
  return freestLines(places, [...boxesOf(beside), ...pieces.flatMap(spots)], {
    left: 0,
    right: width,
    top: 0,
    bottom: height,
  });
}

/** Where a piece keeps labels off: along it, as small boxes. */
const spots = ({ from, to }: PlacedPiece): Box[] =>
  [0, 0.25, 0.5, 0.75].map((part) => {
    const [x, y] = [from.x + part * (to.x - from.x), from.y + part * (to.y - from.y)];
    return { left: x - 3, right: x + 3, top: y - 3, bottom: y + 3 };
  });
