import { type Point } from "./frame";
import { shape, type Shape } from "./shape";

/** A text with a rim of paper, so that lines under it do not make it hard to read. */
export const label = (
  words: string,
  { x, y }: Point,
  paper: string,
  attributes: Shape["attributes"] = {},
): Shape =>
  shape(
    "text",
    { x, y, "text-anchor": "middle", stroke: paper, "stroke-width": 4, "stroke-linejoin": "round", "paint-order": "stroke", ...attributes },
    words,
  ); // prettier-ignore
