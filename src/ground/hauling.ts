import { noAnswer } from "../units/refusal";
import { EPSILON, equal, roundUp } from "../units/rounding";
import { messages } from "./messages";

/** A size of truck, cubic yards, and its price a load. Size 0 or, beside others with a price, none: not offered. */
export interface Truck {
  size: number;
  price?: number;
}

/** An offered truck: where it was listed, what it costs over the best price a yard, and the least count never needed. */
interface Offer {
  place: number;
  size: number;
  price: number;
  extra: number;
  tooMany: number;
}

interface Plan {
  counts: number[];
  cost: number;
  loads: number;
  delivered: number;
}

const MOST_NODES = 1_000_000;
const LONGEST_PERIOD = 1000;
const LEAST_PART = 1e-4;

/**
 * Loads of each truck for a need in cubic yards, of which so many percent may fall short (0 to under 100). Exact best
 * in this order: cheapest (without prices every load costs the same), fewest loads, nearest to the need, the greater
 * volume, more of the larger truck, more of the earlier listed. Refuses (no answer) where no truck is offered, or
 * where more ways remain than can be tried.
 *
 * Every way costs the required volume at the best price a yard, and for each other truck its extra over that price. A
 * best way therefore holds few of the dear ones; it also never holds so many of a truck that whole loads of the best
 * one carry just as much. What is left to try is searched in depth, and the best one closes each way.
 */
export function loads(need: number, trucks: readonly Truck[], shortPercent = 0): number[] {
  const required = need * (1 - shortPercent / 100);
  if (equal(required, 0)) return trucks.map(() => 0);
  const [best, ...others] = offersOf(trucks);
  if (!best) throw noAnswer(messages.noTruck);
  const limit = leastVolume(required, [best, ...others]);
  const preferred = [best, ...others].sort((a, b) => b.size - a.size || a.place - b.place);
  const { size: largest } = preferred[0];
  const yardPrice = best.price / best.size;
  const counts = trucks.map(() => 0);
  let found: Plan | undefined;
  let nodes = 0;

  const visit = (k: number, cost: number, loads: number, delivered: number): void => {
    if (++nodes > MOST_NODES) throw noAnswer(messages.tooManyWays);
    const offer = others[k];
    if (!offer) {
      const count = Math.ceil(Math.max(0, limit - delivered) / best.size);
      counts[best.place] = count;
      const plan: Plan = {
        counts: counts.slice(),
        cost: cost + count * best.price,
        loads: loads + count,
        delivered: delivered + count * best.size,
      };
      if (!found || isBetter(plan, found, need, preferred)) found = plan;
      return;
    }
    for (let n = 0; n < offer.tooMany; n++) {
      const spent = cost + n * offer.price;
      const short = limit - delivered - n * offer.size;
      const least = spent + Math.max(0, short) * yardPrice;
      const fewest = loads + n + Math.max(0, short) / largest;
      if (found && isBeaten(least, fewest, found)) break;
      counts[offer.place] = n;
      visit(k + 1, spent, loads + n, delivered + n * offer.size);
      if (short <= 0) break;
    }
    counts[offer.place] = 0;
  };

  visit(0, 0, 0, 0);
  return found!.counts;
}

/** The trucks on offer, the one with the best price a yard in front, then the dearest first, which branch least. */
function offersOf(trucks: readonly Truck[]): Offer[] {
  const priced = trucks.some(({ size, price }) => size > 0 && price !== undefined);
  const offers: Offer[] = [];
  trucks.forEach(({ size, price }, place) => {
    const each = priced ? price : 1;
    if (size > 0 && each !== undefined)
      offers.push({ place, size, price: each, extra: 0, tooMany: Infinity });
  });
  if (offers.length === 0) return offers;
  const best = offers.reduce((one, other) => (isBetterBuy(other, one) ? other : one));
  const others = offers.filter((offer) => offer !== best);
  for (const offer of others) {
    offer.extra = offer.price - (best.price / best.size) * offer.size;
    offer.tooMany = period(offer.size / best.size);
  }
  return [best, ...others.sort((a, b) => b.extra - a.extra || a.size - b.size)];
}

function isBetterBuy(one: Offer, other: Offer): boolean {
  const [mine, its] = [one.price / one.size, other.price / other.size];
  return equal(mine, its) ? one.size > other.size : mine < its;
}

/** The least count of which the ratio makes a whole number; infinite where none up to a thousand does. */
function period(ratio: number): number {
  for (let k = 1; k <= LONGEST_PERIOD; k++) if (equal(k * ratio, Math.round(k * ratio))) return k;
  return Infinity;
}

/** The least volume that loads of these can make up, 1e-9 of it allowed for: what is required, in whole common parts. */
function leastVolume(required: number, offers: readonly Offer[]): number {
  const part = offers.map(({ size }) => size).reduce(commonPart);
  const volume = part > LEAST_PART ? part * roundUp(required / part) : required;
  return volume - EPSILON * Math.max(1, required);
}

/** The greatest length that goes into both a whole number of times, by Euclid's method; near 0 where none does. */
function commonPart(a: number, b: number): number {
  return b < EPSILON ? a : commonPart(b, Math.abs(a - b * Math.round(a / b)));
}

/** True where no way of at least this cost and this many loads comes up to the one found. */
function isBeaten(cost: number, loads: number, found: Plan): boolean {
  const tolerance = EPSILON * Math.max(1, found.cost);
  return cost > found.cost + tolerance || (cost >= found.cost - tolerance && loads > found.loads + EPSILON);
}

function isBetter(plan: Plan, other: Plan, need: number, preferred: readonly Offer[]): boolean {
  if (!equal(plan.cost, other.cost)) return plan.cost < other.cost;
  if (plan.loads !== other.loads) return plan.loads < other.loads;
  const [miss, itsMiss] = [Math.abs(plan.delivered - need), Math.abs(other.delivered - need)];
  if (!equal(miss, itsMiss)) return miss < itsMiss;
  if (!equal(plan.delivered, other.delivered)) return plan.delivered > other.delivered;
  const differing = preferred.find(({ place }) => plan.counts[place] !== other.counts[place]);
  return differing !== undefined && plan.counts[differing.place] > other.counts[differing.place];
}
