import { type PanelClass } from "./mix-classes";

/**
 * Many mixes of some of the lengths, column by column, in ascending order. `lead` sorts them, and `follow` those of one
 * lead; the two are a mix's weight (how much of the way around it takes) and its cost, either way round.
 */
export interface PartMixes {
  lead: number[];
  follow: number[];
  count: number[];
  rank: number[];
}

/** What the mixes are sorted by first. */
export type Order = "weight" | "cost";

/** Sums that differ by less are one sum: noise of the arithmetic is far smaller, and 1e-9 counts as equal. */
export const NOISE = 1e-10;

export interface PartMixesOptions {
  order: Order;
  weigh: (chord: number) => number;
  /** No mix weighs more than this. */
  limit: number;
  /** The most mixes to hold. */
  room: number;
  /** Whether, of mixes with one weight (and one cost, in the order of cost), only the best is kept. */
  thin: boolean;
}

/** No mix at all. */
export const noMixes = (): PartMixes => ({ lead: [], follow: [], count: [], rank: [] });

/**
 * All mixes of the classes on top of `start`, or `null` where they are more than there is room for. Adding the same
 * panel to two mixes leaves their order as it was, so each class is merged in, without sorting.
 */
export function partMixes(
  start: PartMixes,
  classes: readonly PanelClass[],
  options: PartMixesOptions,
): PartMixes | null {
  let mixes: PartMixes | null = start;
  for (const panels of classes) {
    mixes = withClass(mixes, panels, options);
    if (!mixes) return null;
  }
  return mixes;
}

/** Every mix of `base` with none, one, two … of these panels: the next is the least of the base's and of one more panel on a mix put out before. */
function withClass(base: PartMixes, panels: PanelClass, options: PartMixesOptions): PartMixes | null {
  const { order, limit, room, thin } = options;
  const weight = options.weigh(panels.chord);
  const [leadStep, followStep] = order === "cost" ? [panels.price, weight] : [weight, panels.price];
  const most = panels.ranks.length;
  // A mix that has used up the stock cannot stand in for one that has not: those are thinned when all are there.
  const stockBinds = most * weight <= limit;
  const thinNow = thin && !stockBinds;
  const out = noMixes();
  const weights = order === "cost" ? out.follow : out.lead;
  const used: number[] = [];
  let i = 0;
  let j = 0;
  for (;;) {
    while (j < used.length && (used[j] === most || weights[j] + weight > limit)) j++;
    const lead = j < used.length ? out.lead[j] + leadStep : Infinity;
    const follow = j < used.length ? out.follow[j] + followStep : Infinity;
    if (i < base.lead.length && !before(lead, follow, base.lead[i], base.follow[i])) {
      const at = put(out, base.lead[i], base.follow[i], base.count[i], base.rank[i], thinNow, order);
      if (at >= 0) used[at] = 0;
      i++;
    } else if (j < used.length) {
      const n = used[j] + 1;
      const at = put(out, lead, follow, out.count[j] + 1, out.rank[j] + panels.ranks[n - 1], thinNow, order);
      if (at >= 0) used[at] = n;
      j++;
    } else break;
    if (used.length > room) return null;
  }
  if (!thin || !stockBinds) return out;
  const kept = noMixes();
  for (let k = 0; k < out.lead.length; k++)
    put(kept, out.lead[k], out.follow[k], out.count[k], out.rank[k], true, order);
  return kept;
}

const before = (leadA: number, followA: number, leadB: number, followB: number) =>
  leadA < leadB - NOISE || (leadA <= leadB + NOISE && followA < followB);

/** Puts a mix behind the last, or in the last one's place where only the better of two stays. Gives the place, -1 where it is left out. */
function put(
  out: PartMixes,
  lead: number,
  follow: number,
  count: number,
  rank: number,
  thin: boolean,
  order: Order,
): number {
  let at = out.lead.length;
  if (thin && at > 0 && lead - out.lead[at - 1] <= NOISE) {
    if (order === "weight") return -1;
    if (Math.abs(follow - out.follow[at - 1]) <= NOISE) {
      at--;
      if (count > out.count[at] || (count === out.count[at] && rank < out.rank[at])) return -1;
    }
  }
  out.lead[at] = lead;
  out.follow[at] = follow;
  out.count[at] = count;
  out.rank[at] = rank;
  return at;
}
