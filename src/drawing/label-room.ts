import { type Point } from "./frame";
import { type Shape } from "./shape";

/** What a label or mark covers, in pixels. */
export interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Widths of a letter and heights above and below the line, as parts of the letters' size; fonts differ, so a little wide. */
const letter = { across: 0.56, above: 0.8, below: 0.25 };
const usualSize = 14;

/** What a text covers, turned ones too. */
export function boxOf({ attributes, children }: Shape): Box {
  const [x, y] = [Number(attributes.x), Number(attributes.y)];
  const size = Number(attributes["font-size"] ?? usualSize);
  const across = letter.across * size * children.join("").length;
  const anchor = attributes["text-anchor"];
  const left = x - (anchor === "end" ? across : anchor === "start" ? 0 : across / 2);
  const box = { left, right: left + across, top: y - letter.above * size, bottom: y + letter.below * size };
  const turn = /^rotate\(([-\d.]+) ([-\d.]+) ([-\d.]+)\)$/.exec(String(attributes.transform ?? ""));
  return turn ? turnedBox(box, { x: Number(turn[2]), y: Number(turn[3]) }, Number(turn[1])) : box;
}

/** The upright box around a box that is turned by so many degrees about a point. */
function turnedBox({ left, right, top, bottom }: Box, { x, y }: Point, degrees: number): Box {
  const [sine, cosine] = [Math.sin, Math.cos].map((of) => of((degrees * Math.PI) / 180));
  const corners = [left, right].flatMap((a) =>
    [top, bottom].map((b) => ({
      x: x + (a - x) * cosine - (b - y) * sine,
      y: y + (a - x) * sine + (b - y) * cosine,
    })),
  );
  const [xs, ys] = [corners.map((corner) => corner.x), corners.map((corner) => corner.y)];
  return { left: Math.min(...xs), right: Math.max(...xs), top: Math.min(...ys), bottom: Math.max(...ys) };
}

/** How much of each other two boxes cover, in square pixels. */
export function overlap(a: Box, b: Box): number {
  const across = Math.min(a.right, b.right) - Math.max(a.left, b.left);
  const down = Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top);
  return across > 0 && down > 0 ? across * down : 0;
}

/** The texts of a drawing with what they cover. */
export const boxesOf = (shapes: readonly Shape[]): Box[] =>
  shapes.flatMap((one) =>
    one.tag === "text" ? [boxOf(one)] : boxesOf(one.children.filter((child) => typeof child !== "string")),
  );

/** The first of these labels that covers nothing and stays on the paper, else the one that covers the least. */
export const freest = (choices: readonly Shape[], taken: readonly Box[], paper: Box): Shape =>
  freestLines(
    choices.map((choice) => [choice]),
    taken,
    paper,
  )[0];

/** The same of labels of several lines: the first of these that covers nothing and stays on the paper, else the one that covers the least. */
export function freestLines(choices: readonly Shape[][], taken: readonly Box[], paper: Box): Shape[] {
  const covered = (choice: Shape) => {
    const box = boxOf(choice);
    const own = (box.right - box.left) * (box.bottom - box.top);
    return taken.reduce((sum, other) => sum + overlap(box, other), own - overlap(box, paper));
  };
  let best = choices[0];
  let least = Infinity;
  for (const choice of choices) {
    const covers = choice.reduce((sum, one) => sum + covered(one), 0);
    if (covers < 1e-9) return choice;
    if (covers < least) [best, least] = [choice, covers];
  }
  return best;
}
