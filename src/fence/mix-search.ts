import { EPSILON } from "../units/rounding";
import { type PanelClass } from "./mix-classes";
import { leastSum, matchedRuns, pairSums, wholeRun } from "./pair-sums";
import { type Order, type PartMixes, emptyList, partMixes } from "./part-mixes";
import { type Yardstick } from "./yardstick";

/** On which side of the wanted size a pen may lie. */
export type Side = "either" | "above" | "below";

/** The pieces every mix of a search has: the gates, and the panel that is to be the longest. */
export interface Given {
  weight: number;
  cost: number;
  count: number;
  rank: number;
}

export interface Search {
  given: Given;
  classes: readonly PanelClass[];
  yardstick: Yardstick;
  side: Side;
  /** The wanted size, ft. */
  wanted: number;
  /** Where panels have prices: how far off the size may be. Left out: as near as can be, whatever it costs. */
  tolerance?: number;
  /** The most that a mix may weigh. */
  limit: number;
  /** Whether all that is in bounds is a pen of three or more chords with the center inside. */
  surelyPens: boolean;
  /** How many of the mixes with one weight and one cost count, those with the fewest panels. */
  keep: number;
  /** The size of the pen of a mix, NaN where it is none. */
  sizeOf(rank: number): number;
}

/** A mix that was found, and the pen it makes. */
export interface Mix {
  cost: number;
  size: number;
  count: number;
  rank: number;
}

const MOST_HELD = 1_000_000;
/** Pairs of which the cost is compared, and pens of which the size is worked out, which takes far longer. */
const MOST_COSTS = 4_000_000;
const MOST_SIZES = 400_000;
/** Weights are compared this much wider than asked, and sizes then exactly. */
const MARGIN = 1e-8;

/** True when mix a is to be taken before b: cheaper, then nearer, then fewer panels, then more of the earlier listed. */
export function isBetter(a: Mix, b: Mix | null, wanted: number): boolean {
  if (!b) return true;
  if (Math.abs(a.cost - b.cost) > EPSILON) return a.cost < b.cost;
  const farther = Math.abs(a.size - wanted) - Math.abs(b.size - wanted);
  if (Math.abs(farther) > EPSILON) return farther < 0;
  return a.count !== b.count ? a.count < b.count : a.rank > b.rank;
}

/**
 * The best mix, or null where there is none. The lengths are split in two halves, all mixes of each half are put in
 * order, and the two lists are run against each other from opposite ends: what is passed over is passed over because
 * the sums prove it too heavy, too light or too dear.
 */
export function findMix(search: Search): Mix | null {
  const { tolerance } = search;
  if (tolerance === undefined) return findNearest(search, 1)[0] ?? null;
  const few = leastCost({ ...search, classes: cheapestForWeight(search).slice(0, 2) }, tolerance, Infinity);
  const cost = leastCost(search, tolerance, few);
  return cost === Infinity ? null : (nearestAt(search, halves(search, "cost", cost), cost, 1)[0] ?? null);
}

/** The nearest mixes whatever they cost, the best first: as many as asked for, fewer where there are no more. */
export const findNearest = (search: Search, many: number): Mix[] =>
  nearestAt(search, halves(search, "cost", Infinity), search.given.cost, many);

/** Puts a mix among the best `many`, the best first, where it belongs and is not there yet. */
export function putAmong(best: Mix[], mix: Mix, many: number, wanted: number): void {
  let at = best.length;
  while (at > 0 && isBetter(mix, best[at - 1], wanted)) at--;
  if (at >= many || best.some(({ rank }) => rank === mix.rank)) return;
  best.splice(at, 0, mix);
  if (best.length > many) best.pop();
}

const cheapestForWeight = ({ classes, yardstick }: Search) =>
  [...classes].sort((a, b) => a.price / yardstick.weigh(a.chord) - b.price / yardstick.weigh(b.chord));

const NOTHING: Given = { weight: 0, cost: 0, count: 0, rank: 0 };

type Halves = [PartMixes, PartMixes];

/** The mixes of each half of the lengths, but for those with which no mix in bounds would cost `most` or less. */
function halves(search: Search, order: Order, most: number): Halves {
  const { given, classes, yardstick, limit, keep } = search;
  const [best] = cheapestForWeight(search);
  const rate = best ? best.price / yardstick.weigh(best.chord) : 0;
  const needed = bounds(search, search.tolerance ?? 0).least;
  const split: [PanelClass[], PanelClass[]] = [[], []];
  const size = [1, 1];
  const room = (panels: PanelClass) =>
    Math.min(panels.ranks.length, limit / yardstick.weigh(panels.chord)) + 1;
  for (const panels of [...classes].sort((a, b) => room(b) - room(a))) {
    const to = size[0] <= size[1] ? 0 : 1;
    size[to] *= room(panels) / (split[to].length + 1);
    split[to].push(panels);
  }
  // The gates, and what else is given, go with the first half.
  const starts = [given, NOTHING].map((first) => startOf(first, order, limit));
  return split.map((half, i) => {
    const other = i === 0 ? NOTHING : given;
    const budget = { most: most - other.cost + EPSILON, rate, needed: needed - other.weight };
    return partMixes(starts[i], half, {
      order,
      weigh: yardstick.weigh,
      limit,
      room: MOST_HELD,
      keep,
      budget,
    });
  }) as Halves;
}

/** The list of one mix that all others of a half are built on; of none where it is too heavy itself. */
function startOf({ weight, cost, count, rank }: Given, order: Order, limit: number): PartMixes {
  const start = emptyList(1);
  start.lead[0] = order === "cost" ? cost : weight;
  start.follow[0] = order === "cost" ? weight : cost;
  start.count[0] = count;
  start.rank[0] = rank;
  return { ...start, length: weight > limit ? 0 : 1 };
}

/** The size of a pair's pen where it lies on the allowed side and within the tolerance, else NaN. */
function allowedSize(search: Search, rank: number): number {
  const size = search.sizeOf(rank);
  const over = size - search.wanted;
  const within = Math.abs(over) <= (search.tolerance ?? Infinity) + EPSILON;
  const sideHolds =
    search.side === "either" || (search.side === "above" ? over >= -EPSILON : over <= EPSILON);
  return within && sideHolds ? size : NaN;
}

/** The weights that pens within `off` of the wanted size have: surely, and at the utmost. */
function bounds({ yardstick, side, wanted }: Search, off: number) {
  const exact = yardstick.range(wanted);
  const low = side === "above" ? { least: exact.least, most: exact.most } : yardstick.range(wanted - off);
  const high = side === "below" ? { least: exact.least, most: exact.most } : yardstick.range(wanted + off);
  return {
    least: low.least - MARGIN,
    sureLeast: low.most + MARGIN,
    sureMost: high.least - MARGIN,
    most: high.most + MARGIN,
  };
}

/** The cost of the cheapest mix within the tolerance, Infinity where none costs `known` or less. */
function leastCost(search: Search, tolerance: number, known: number): number {
  const [a, b] = halves(search, "weight", known);
  const { least, sureLeast, sureMost, most } = bounds(search, tolerance);
  const sure = search.surelyPens && sureLeast <= sureMost;
  let cost = sure ? leastSum(a, b, sureLeast, sureMost) : Infinity;
  const lookAt = (i: number, j: number) => {
    const sum = a.follow[i] + b.follow[j];
    if (sum < cost - EPSILON && !Number.isNaN(allowedSize(search, a.rank[i] + b.rank[j]))) cost = sum;
  };
  const pairs = pairSums(MOST_COSTS);
  pairs(wholeRun(a), wholeRun(b), least, sure ? sureLeast : most, lookAt);
  if (sure) pairs(wholeRun(a), wholeRun(b), sureMost, most, lookAt);
  return cost;
}

/** Of the mixes of this cost, the nearest allowed to the wanted size. Both halves in order of cost, then weight. */
function nearestAt(search: Search, [a, b]: Halves, cost: number, many: number): Mix[] {
  const matched = matchedRuns(a, b, cost);
  const pairs = pairSums(MOST_SIZES);
  const best: Mix[] = [];
  let { least, most } = bounds(search, EPSILON);
  for (;;) {
    let under = -Infinity;
    let over = Infinity;
    for (const [runA, runB] of matched) {
      const next = pairs(runA, runB, least, most, (i, j) => {
        const rank = a.rank[i] + b.rank[j];
        const size = allowedSize(search, rank);
        if (Number.isNaN(size)) return;
        putAmong(best, { cost, size, count: a.count[i] + b.count[j], rank }, many, search.wanted);
      });
      under = Math.max(under, next.under);
      over = Math.min(over, next.over);
    }
    if (best.length === many) {
      const reach = bounds(search, Math.abs(best[many - 1].size - search.wanted) + EPSILON);
      if (reach.least >= least && reach.most <= most) return best;
      least = Math.min(least, reach.least);
      most = Math.max(most, reach.most);
    } else {
      const target = search.yardstick.range(search.wanted).least;
      const off = Math.max(
        MARGIN,
        Math.min(
          search.side === "above" ? Infinity : target - under,
          search.side === "below" ? Infinity : over - target,
        ),
      );
      if (off === Infinity) return best;
      if (search.side !== "above") least = Math.min(target - off, 2 * least - target);
      if (search.side !== "below") most = Math.max(target + off, 2 * most - target);
    }
  }
}
