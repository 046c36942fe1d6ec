import { EPSILON } from "../units/rounding";
import { type PanelClass } from "./mix-classes";
import { type Given, type Search, addNearest, allowedSize, bounds } from "./mix-search";
import { leastSum, matchedRuns, pairSums, wholeRun } from "./pair-sums";
import { type Order, type PartMixes, emptyList, partMixes } from "./part-mixes";

const MOST_HELD = 1_000_000;
/** Pairs of which the cost is compared, and pens of which the size is worked out, which takes far longer. */
const MOST_COSTS = 4_000_000;
const MOST_SIZES = 400_000;
/** Weights are compared this much wider than asked, and sizes then exactly. */
const MARGIN = 1e-8;

/**
 * Makes the cheapest mix within the search's tolerance the best, the nearest of those as cheap, if none is better yet.
 * The lengths are split in two halves, all mixes of each half are put in order, and the two lists are run against each
 * other from opposite ends: what is passed over is passed over because the sums prove it too heavy, too light or too
 * dear. First a few lengths alone are tried: what they cost shows early what is too dear.
 */
export function addCheapest(search: Search, tolerance: number): void {
  const { best } = search;
  const byRate = cheapestForWeight(search);
  let known = best.length > 0 ? best[0].cost : Infinity;
  for (let few = 2; few < byRate.length && known === Infinity; few++)
    known = Math.min(known, leastCost({ ...search, classes: byRate.slice(0, few) }, tolerance, known));
  const cost = leastCost(search, tolerance, known);
  if (cost === Infinity) return;
  if (best.length > 0 && cost < best[0].cost - EPSILON) best.length = 0;
  addOfCost(search, halves(search, "cost", cost), cost);
}

/** Adds the nearest mixes, whatever they cost, to the best. */
export const addNearestOfHalves = (search: Search): void =>
  addOfCost(search, halves(search, "cost", Infinity), search.given.cost);

/** Offers every mix of the wanted weight that costs `most` or less. */
export function offerCheap(search: Search, most: number, offer: (rank: number, count: number) => void): void {
  const [a, b] = halves(search, "weight", most);
  const window = bounds(search, 0, MARGIN);
  pairSums(MOST_COSTS)(wholeRun(a), wholeRun(b), window.least, window.most, (i, j) => {
    if (a.follow[i] + b.follow[j] <= most) offer(a.rank[i] + b.rank[j], a.count[i] + b.count[j]);
  });
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
  const needed = bounds(search, search.tolerance ?? 0, MARGIN).least;
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

/** The cost of the cheapest mix within the tolerance, Infinity where none costs `known` or less. */
function leastCost(search: Search, tolerance: number, known: number): number {
  const [a, b] = halves(search, "weight", known);
  const { least, sureLeast, sureMost, most } = bounds(search, tolerance, MARGIN);
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

/** Adds the nearest of the mixes of this cost. Both halves in order of cost, then weight. */
function addOfCost(search: Search, [a, b]: Halves, cost: number): void {
  const matched = matchedRuns(a, b, cost);
  const pairs = pairSums(MOST_SIZES);
  const start = bounds(search, EPSILON, MARGIN);
  addNearest(search, { cost, noise: MARGIN, start }, ({ least, most }, offer) => {
    const next = { under: -Infinity, over: Infinity };
    for (const [runA, runB] of matched) {
      const beside = pairs(runA, runB, least, most, (i, j) =>
        offer(a.rank[i] + b.rank[j], a.count[i] + b.count[j]),
      );
      next.under = Math.max(next.under, beside.under);
      next.over = Math.min(next.over, beside.over);
    }
    return next;
  });
}
