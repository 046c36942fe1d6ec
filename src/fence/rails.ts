import { type Section } from "../geometry/section";
import { INCHES_PER_FOOT } from "../units/conversion";
import { notAllowed, Refusal } from "../units/refusal";
import { EPSILON, roundUp } from "../units/rounding";
import { type Bend, bend, LEAST_BEND_RATIO } from "./bend";
import { beveledPiece, faces, type Side } from "./board-line";
import { cutRun, type StockCut } from "./cut-plan";
import { messages } from "./messages";

/** Like stretches of bays between gates, corners or tangent points: straight, or on a curve. Lengths in ft. */
export interface FenceRun {
  bays: number;
  /** From post center to post center along the chord. */
  bay: number;
  /** Of the circle through the post centers; left out on a straight. */
  radius?: number;
  /** How far the boards go past the center of the first and of the last post; under 0 they stop short. */
  reach: readonly [number, number];
  /** How many such runs there are. */
  runs: number;
}

/** Boards, rails, pipe or a kick board: stock of one size in so many rows. Inches where nothing else is said. */
export interface RailLine {
  /** Of a board its thickness, of pipe its diameter. */
  thickness: number;
  rows: number;
  post: Section;
  side: Side;
  /** Screws, nails or bolts where a piece crosses or ends on a post. */
  fastenersEach: number;
  wastePercent: number;
  leastBendRatio?: number;
}

/** What one bay takes, ft; on a curve of one bay a piece the ends are cut so many degrees off square to the short face. */
export interface BayPiece {
  length: number;
  shortFace: number;
  bevel: number;
  spans: boolean;
  /** What decided whether a piece spans several bays; none on a straight. */
  bend?: Bend;
}

/** The cuts of one run, as listed, with what decided them. */
export interface RunCuts extends BayPiece {
  cuts: StockCut[];
}

/** What a line of boards takes of one length of stock, ft. */
export interface RailTakeoff {
  stock: number;
  runs: RunCuts[];
  /** Lengths of stock that are cut, and those to buy with the waste on top. */
  cut: number;
  buy: number;
  pieces: number;
  fasteners: number;
}

/** Lengths of lumber stock, ft. */
export const STOCK_LENGTHS: readonly number[] = [8, 10, 12, 14, 16, 18, 20];

/** How far boards go past the center of a gate post to end flush with its face, ft. */
export const flushReach = (post: Section) => post.width / 2 / INCHES_PER_FOOT;

/**
 * How far boards go past the center of a square corner's post, ft. Outside they reach the post's far face, and the
 * side that covers the other's end reaches over its boards too; inside they stop at the other side's post face, and
 * the side that is covered a board's thickness before it.
 */
export function cornerReach({ post, side, thickness }: RailLine, covers: boolean): number {
  const inches = side === "outside" ? post.depth / 2 + (covers ? thickness : 0) : -post.depth / 2 - (covers ? 0 : thickness); // prettier-ignore
  return inches / INCHES_PER_FOOT;
}

/**
 * What one bay of a run takes: its length on a straight; on a curve that the stock does not follow, the chord at the
 * longer face; on one that it does, the arc along its middle.
 */
export function bayPiece(run: FenceRun, line: RailLine): BayPiece {
  const { thickness, side, leastBendRatio = LEAST_BEND_RATIO } = line;
  if (run.radius === undefined) return { length: run.bay, shortFace: run.bay, bevel: 0, spans: true };
  const halfAngle = Math.asin(Math.min(1, run.bay / 2 / run.radius));
  const curved = { radius: run.radius * INCHES_PER_FOOT, halfAngle, post: line.post, side };
  const { inner, outer } = faces({ ...curved, halfAngle: 0 }, thickness);
  const middle = (inner + outer) / 2 / INCHES_PER_FOOT;
  const found = bend(thickness, middle, leastBendRatio);
  const arc = 2 * halfAngle * middle;
  if (found.bends) return { length: arc, shortFace: arc, bevel: 0, spans: true, bend: found };
  const { longFace, shortFace, bevel } = beveledPiece(curved, thickness);
  return {
    length: longFace / INCHES_PER_FOOT,
    shortFace: shortFace / INCHES_PER_FOOT,
    bevel,
    spans: false,
    bend: found,
  };
}

/**
 * The cut list of a line of boards from stock of one length, ft: the fewest lengths for each run, waste on top of all.
 * A piece takes fasteners at every post that it crosses or ends on. Refuses stock that does not reach over a bay.
 */
export function railTakeoff(fence: readonly FenceRun[], line: RailLine, stock: number): RailTakeoff {
  const runs = fence.map((run): RunCuts => {
    const piece = bayPiece(run, line);
    const { bays, reach, runs: many } = run;
    const cuts = cutRun({ bays, bay: piece.length, reach, rows: line.rows * many }, stock, piece.spans);
    return { ...piece, cuts };
  });
  const all = runs.flatMap(({ cuts }) => cuts);
  const cut = all.reduce((sum, { count }) => sum + count, 0);
  const inPieces = (of: (bays: number) => number) =>
    all.reduce((sum, { count, pieces }) => sum + count * pieces.reduce((part, { bays }) => part + of(bays), 0), 0); // prettier-ignore
  return {
    stock,
    runs,
    cut,
    buy: roundUp(cut * (1 + line.wastePercent / 100)),
    pieces: inPieces(() => 1),
    fasteners: line.fastenersEach * inPieces((bays) => bays + 1),
  };
}

/**
 * The takeoff from that of the stock lengths of which the fewest feet are bought, then with the fewest pieces. Refuses
 * where none reaches over a bay.
 */
export function bestStock(
  fence: readonly FenceRun[],
  line: RailLine,
  stocks: readonly number[] = STOCK_LENGTHS,
): RailTakeoff {
  let best: RailTakeoff | undefined;
  let refused: unknown = notAllowed(messages.noStock);
  for (const stock of [...stocks].sort((a, b) => a - b))
    try {
      const one = railTakeoff(fence, line, stock);
      const less = best ? one.buy * stock - best.buy * best.stock : -1;
      if (less < -EPSILON || (less < EPSILON && one.pieces < best!.pieces)) best = one;
    } catch (error) {
      if (!(error instanceof Refusal)) throw error;
      refused = error;
    }
  if (!best) throw refused;
  return best;
}

/** A row of boards or pipe, in: its top above the ground and its height, of pipe the diameter. */
export interface Row {
  top: number;
  height: number;
}

/** The clear openings from the ground up, in, under and between the rows in any order. Refuses rows that overlap. */
export function rowOpenings(rows: readonly Row[]): number[] {
  let below = 0;
  return [...rows]
    .sort((a, b) => a.top - b.top)
    .map(({ top, height }) => {
      const opening = top - height - below;
      if (opening < -EPSILON) throw notAllowed(messages.rowsOverlap(top, below));
      below = top;
      return Math.max(0, opening);
    });
}
