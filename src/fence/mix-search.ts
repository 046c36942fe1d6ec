import { EPSILON } from "../units/rounding";
import { type PanelClass } from "./mix-classes";
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
  /** The best mixes of the question so far, the best first; a search adds to them, at most up to `many`. */
  best: Mix[];
  many: number;
}

/** A mix that was found, and the pen it makes. */
export interface Mix {
  cost: number;
  size: number;
  count: number;
  rank: number;
}

/** True when mix a is to be taken before b: cheaper, then nearer, then fewer panels, then more of the earlier listed. */
export function isBetter(a: Mix, b: Mix | null, wanted: number): boolean {
  if (!b) return true;
  if (Math.abs(a.cost - b.cost) > EPSILON) return a.cost < b.cost;
  const farther = Math.abs(a.size - wanted) - Math.abs(b.size - wanted);
  if (Math.abs(farther) > EPSILON) return farther < 0;
  return a.count !== b.count ? a.count < b.count : a.rank > b.rank;
}

/** Puts a mix among the best `many`, the best first, where it belongs and is not there yet. */
export function putAmong(best: Mix[], mix: Mix, many: number, wanted: number): void {
  let at = best.length;
  while (at > 0 && isBetter(mix, best[at - 1], wanted)) at--;
  if (at >= many || best.some(({ rank }) => rank === mix.rank)) return;
  best.splice(at, 0, mix);
  if (best.length > many) best.pop();
}

/** The size of a pair's pen where it lies on the allowed side and within the tolerance, else NaN. */
export function allowedSize(search: Search, rank: number): number {
  const size = search.sizeOf(rank);
  const over = size - search.wanted;
  const within = Math.abs(over) <= (search.tolerance ?? Infinity) + EPSILON;
  const sideHolds =
    search.side === "either" || (search.side === "above" ? over >= -EPSILON : over <= EPSILON);
  return within && sideHolds ? size : NaN;
}

/** The weights that pens within `off` of the wanted size have, surely and at the utmost; sums of weights may be `noise` off. */
export function bounds({ yardstick, side, wanted }: Search, off: number, noise: number) {
  const exact = yardstick.range(wanted);
  const low = side === "above" ? { least: exact.least, most: exact.most } : yardstick.range(wanted - off);
  const high = side === "below" ? { least: exact.least, most: exact.most } : yardstick.range(wanted + off);
  return {
    least: low.least - noise,
    sureLeast: low.most + noise,
    sureMost: high.least - noise,
    most: high.most + noise,
  };
}

/** How much narrower a window has to be than one that held too many. */
const NARROWER = 0.7;

/** The weights between which mixes are looked at. */
export interface Window {
  least: number;
  most: number;
}

/**
 * Adds the nearest mixes of one cost to the best. `visit` offers every mix of a window and gives the weights next to it,
 * where it is worth looking on. Where a window holds too many it gives nothing: one that ends where the best of those met
 * does is then looked at. False where that is not much narrower.
 */
export function addNearest(
  search: Search,
  { cost, noise, start }: { cost: number; noise: number; start: Window },
  visit: (
    window: Window,
    offer: (rank: number, count: number) => void,
  ) => { under: number; over: number } | undefined,
): boolean {
  const { wanted, side, yardstick, best, many } = search;
  const target = yardstick.range(wanted).least;
  const offer = (rank: number, count: number) => {
    const size = allowedSize(search, rank);
    if (!Number.isNaN(size)) putAmong(best, { cost, size, count, rank }, many, wanted);
  };
  const reach = () =>
    best.length < many
      ? { least: -Infinity, most: Infinity }
      : bounds(search, Math.abs(best[many - 1].size - wanted) + EPSILON, noise);
  let { least, most } = start;
  for (;;) {
    const before = reach();
    least = Math.max(least, before.least);
    most = Math.min(most, before.most);
    const next = visit({ least, most }, offer);
    const after = reach();
    if (!next) {
      const isNarrower = after.most - after.least < NARROWER * (most - least);
      if (isNarrower) continue;
      return false;
    }
    if (after.least >= least && after.most <= most) return true;
    const under = side === "above" ? Infinity : target - next.under;
    const over = side === "below" ? Infinity : next.over - target;
    const off = Math.max(noise, Math.min(under, over));
    if (off === Infinity) return true;
    if (side !== "above") least = Math.min(target - off, 2 * least - target);
    if (side !== "below") most = Math.max(target + off, 2 * most - target);
  }
}
