import { centralAngle, apothem } from "../geometry/cyclic-polygon";
import { type Section } from "../geometry/section";
import { INCHES_PER_FOOT } from "../units/conversion";
import { notAllowed, Refusal } from "../units/refusal";
import { faces, type Side } from "./board-line";
import { messages } from "./messages";
import { bayLength, type PostPen, postCircle } from "./posts";

/** What the size of a fence with posts can mean. */
export const sizeMeanings = ["inside clear", "post circle", "outside"] as const;
export type SizeMeaning = (typeof sizeMeanings)[number];

/** The three sizes of one fence, ft: across the circle of a pen, or along one side of an arena. */
export type Sizes = Record<SizeMeaning, number>;

/** What stands on the post line, inches. */
export interface FenceBody {
  post: Section;
  /** Thickness of the boards, rails or pipe, 0 or more. */
  board: number;
  side: Side;
}

/**
 * The three sizes of a post pen by its post circle, ft. Inside clear is twice the least distance from the center to a
 * board at the middle of its bay, to a post or to a gate's center line; outside is twice the greatest, to where two
 * boards meet or to a post. Refuses as postCircle does, and (value) where nothing is left inside.
 */
export function penSizes(pen: PostPen, body: FenceBody): Sizes {
  const { post, board, side } = inFeet(body);
  const radius = pen.diameter / 2;
  const bay = { radius, halfAngle: centralAngle(bayLength(pen), pen.diameter) / 2, post, side };
  const { inner, outer } = faces(bay, board);
  const gates = postCircle(pen).gateChords.map((chord) => apothem(chord, pen.diameter));
  const least = Math.min(inner, radius - post.depth / 2, ...gates);
  if (!(least > 0)) throw notAllowed(messages.nothingInside);
  const corner = post.shape === "square" ? post.width / 2 : 0;
  const most = Math.max(outer / Math.cos(bay.halfAngle), Math.hypot(radius + post.depth / 2, corner));
  return { "inside clear": 2 * least, "post circle": pen.diameter, outside: 2 * most };
}

/** A pen that is so much wider than it is clear inside is none: what kept the asked size from standing is then said. */
const MOST_TIMES = 2;

/**
 * The post circle, ft, of the pen whose size has this meaning: of inside clear the least pen that leaves as much, of
 * outside a pen that takes no more where one a hair wider would. The bays follow the pen, so that a size between two
 * numbers of bays can only be kept so. Refuses as penSizes does.
 */
export function postCircleOf(size: number, meaning: SizeMeaning, pen: PostPen, body: FenceBody): number {
  if (meaning === "post circle") return size;
  const sizes = (diameter: number) => penSizes({ ...pen, diameter }, body);
  const isSmall = (diameter: number) => {
    try {
      const found = sizes(diameter)[meaning];
      return meaning === "inside clear" ? found < size : found <= size;
    } catch (error) {
      if (error instanceof Refusal) return true;
      throw error;
    }
  };
  const { post, board } = inFeet(body);
  const step = 2 * (post.depth + board) + size / 64;
  let [low, high] = [meaning === "outside" ? Math.max(0, size - step) : size, size];
  while (isSmall(high)) {
    if (meaning === "outside" || high > MOST_TIMES * size + 16 * step) sizes(size);
    high += step;
  }
  while (low > 0 && !isSmall(low)) low = Math.max(0, low - step);
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2)
    if (isSmall(middle)) low = middle;
    else high = middle;
  const found = meaning === "inside clear" ? high : low;
  sizes(found);
  return found;
}

/**
 * The three sizes of one side of an arena, ft, from the one that is given; the post line is that between post centers.
 * Rounded corners leave them as they are: their radii grow and shrink with the sides. Refuses what leaves nothing
 * inside.
 */
export function arenaSizes(size: number, meaning: SizeMeaning, body: FenceBody): Sizes {
  const { post, board, side } = inFeet(body);
  const [clear, outside] = side === "inside" ? [2 * board, 0] : [0, 2 * board];
  const offsets: Sizes = {
    "inside clear": -post.depth - clear,
    "post circle": 0,
    outside: post.depth + outside,
  };
  const line = size - offsets[meaning];
  if (!(line + offsets["inside clear"] > 0)) throw notAllowed(messages.nothingInside);
  const at = (one: SizeMeaning) => line + offsets[one];
  return { "inside clear": at("inside clear"), "post circle": line, outside: at("outside") };
}

function inFeet({ post, board, side }: FenceBody): FenceBody {
  const feet = (inches: number) => inches / INCHES_PER_FOOT;
  return { post: { ...post, width: feet(post.width), depth: feet(post.depth) }, board: feet(board), side };
}
