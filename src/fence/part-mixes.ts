import { type PanelClass, TooManyMixes } from "./mix-classes";

/**
 * Many mixes of some of the lengths, column by column, in ascending order. `lead` sorts them, and `follow` those of one
 * lead; the two are a mix's weight (how much of the way around it takes) and its cost, either way round.
 */
export interface PartMixes {
  lead: Float64Array;
  follow: Float64Array;
  rank: Float64Array;
  /** Panels. */
  count: Int32Array;
  length: number;
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
  /** Of mixes with one weight (and one cost, in the order of cost), how many of the best are kept; in the order of weight one. */
  keep: number;
  /** No part of a mix that even at the cheapest rate for the weight still needed must cost more than `most`. */
  budget: { most: number; rate: number; needed: number };
}

/** An empty list with room for so many mixes. */
export const emptyList = (room: number): PartMixes => ({
  lead: new Float64Array(room),
  follow: new Float64Array(room),
  rank: new Float64Array(room),
  count: new Int32Array(room),
  length: 0,
});

/**
 * All mixes of the classes on top of `start`. Throws where they are more than there is room for. Adding the same
 * panel to two mixes leaves their order as it was, so each class is merged in, without sorting.
 */
export function partMixes(
  start: PartMixes,
  classes: readonly PanelClass[],
  options: PartMixesOptions,
): PartMixes {
  return classes.reduce((mixes, panels) => withClass(mixes, panels, options), start);
}

/**
 * Every mix of `base` with none, one, two … of these panels. The next one is always the lesser of two: the base's next,
 * and one panel more on the first mix already out that has had none added.
 */
function withClass(base: PartMixes, panels: PanelClass, options: PartMixesOptions): PartMixes {
  const { order, limit, keep, budget } = options;
  const weight = options.weigh(panels.chord);
  const [leadStep, followStep] = order === "cost" ? [panels.price, weight] : [weight, panels.price];
  const most = panels.ranks.length;
  const room = roomFor(base, weight, most, options);
  if (room > options.room) throw new TooManyMixes();
  // A mix that has used up the stock cannot stand in for one that has not: those are thinned when all are there.
  const stockBinds = most * weight <= limit;
  const keepNow = stockBinds ? Infinity : keep;
  const out = emptyList(room);
  const { lead, follow, rank, count } = out;
  const weights = order === "cost" ? follow : lead;
  const used = new Int32Array(room);
  for (let i = 0, j = 0; ;) {
    while (j < out.length && (used[j] === most || weights[j] + weight > limit)) j++;
    const grows = j < out.length;
    const nextLead = grows ? lead[j] + leadStep : Infinity;
    const nextFollow = grows ? follow[j] + followStep : Infinity;
    if (i < base.length && !before(nextLead, nextFollow, base.lead[i], base.follow[i])) {
      const at = put(out, base.lead[i], base.follow[i], base.rank[i], base.count[i], keepNow, order);
      if (at >= 0) used[at] = 0;
      i++;
    } else if (grows) {
      const n = used[j];
      const cost = order === "cost" ? nextLead : nextFollow;
      const dear = cost + budget.rate * Math.max(0, budget.needed - weights[j] - weight) > budget.most;
      const at = dear
        ? -1
        : put(out, nextLead, nextFollow, rank[j] + panels.ranks[n], count[j] + 1, keepNow, order);
      if (at >= 0) used[at] = n + 1;
      j++;
    } else return keep < Infinity && stockBinds ? thinned(out, keep, order) : out;
  }
}

/** No fewer than the mixes that come of adding up to `most` panels of this weight to each of the base's. */
function roomFor(base: PartMixes, weight: number, most: number, { order, limit }: PartMixesOptions): number {
  const weights = order === "cost" ? base.follow : base.lead;
  let room = base.length;
  for (let i = 0; i < base.length; i++)
    room += Math.min(most, Math.floor((limit - weights[i]) / weight + NOISE));
  return room;
}

function thinned(mixes: PartMixes, keep: number, order: Order): PartMixes {
  const out = emptyList(mixes.length);
  for (let i = 0; i < mixes.length; i++)
    put(out, mixes.lead[i], mixes.follow[i], mixes.rank[i], mixes.count[i], keep, order);
  return out;
}

const before = (leadA: number, followA: number, leadB: number, followB: number) =>
  leadA < leadB - NOISE || (leadA <= leadB + NOISE && followA < followB);

/**
 * Puts a mix behind the last, or in the place of the worst of those alike where no more are kept. Gives its place, -1
 * where it is left out.
 */
function put(
  out: PartMixes,
  lead: number,
  follow: number,
  rank: number,
  count: number,
  keep: number,
  order: Order,
): number {
  let at = out.length;
  if (keep < Infinity && at > 0 && lead - out.lead[at - 1] <= NOISE) {
    if (order === "weight") return -1;
    const worst = worstAlike(out, follow, keep);
    if (worst >= 0) {
      at = worst;
      if (count > out.count[at] || (count === out.count[at] && rank < out.rank[at])) return -1;
    }
  }
  out.lead[at] = lead;
  out.follow[at] = follow;
  out.rank[at] = rank;
  out.count[at] = count;
  out.length = Math.max(out.length, at + 1);
  return at;
}

/** Of the last mixes with the last one's lead and this follow, the one with the most panels; -1 where fewer than `keep` are there. */
function worstAlike(
  { lead, follow: follows, rank, count, length }: PartMixes,
  follow: number,
  keep: number,
): number {
  let worst = length - 1;
  for (let k = length - 1; k >= length - keep; k--) {
    const isAlike = k >= 0 && lead[length - 1] - lead[k] <= NOISE && Math.abs(follow - follows[k]) <= NOISE;
    if (!isAlike) return -1;
    if (count[k] > count[worst] || (count[k] === count[worst] && rank[k] < rank[worst])) worst = k;
  }
  return worst;
}
