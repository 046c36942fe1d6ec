import { nearestMixes } from "../fence/panel-mix";
import { beyondStock, slotKeys } from "./fields";
import { pricedWith, type Answers } from "./compare";
import { totalOf } from "./estimate";
import { type Job } from "./job";
import { type OwnLine } from "./own-lines";
import { inPlaces, mixOf, panelPen, type PanelPen } from "./panel-pen";
import { type PriceRow } from "./prices";
import { Refusal } from "../units/refusal";

/** A mix of panels in the place of the one that a job has, and the whole job with it. */
export interface PricedMix {
  /** The counts to use instead, by field; they make the job this one. */
  answers: Answers;
  pen: PanelPen;
  /** $, or in words how many prices are missing. */
  price: number | string;
  /** The job has this mix now. */
  isNow: boolean;
}

/** What a panel pen could be made of. */
export interface PanelMixes {
  /** The mixes nearest to the size asked for, the best first. */
  best: PricedMix[];
  /** The pen as it is now with one panel of the first length fewer and one more, where that closes. */
  fewer?: PricedMix;
  more?: PricedMix;
}

/** The answers that give the counts of a job's panels back to the best mix. */
export const noOwnMix: Answers = Object.fromEntries(slotKeys("panel").map((key) => [`${key}_use`, null]));

/**
 * The best mixes of a panel pen, at most `many`, and its neighbors, each priced as the whole job with it; counts of other
 * lines that the user set stay. Throws a Refusal where nothing closes.
 */
export function panelMixes(
  job: Job,
  prices: readonly PriceRow[],
  own: readonly OwnLine[] = [],
  many = 3,
): PanelMixes {
  const mix = mixOf(job);
  const now = penAsItIs(job);
  const priced = (counts: readonly (number | null)[]): PricedMix[] => {
    const answers: Answers = Object.fromEntries(slotKeys("panel").map((key, k) => [`${key}_use`, counts[k]]));
    const { made } = pricedWith(job, answers, prices, own);
    if (made?.pen.structure !== "panel pen") return [];
    return [
      {
        answers,
        pen: made.pen,
        price: totalOf(made),
        isNow: counts.every((count, k) => count === now?.counts[k]),
      },
    ];
  };
  const isLimited = job.beyond_stock === beyondStock[1];
  const neighbor = (change: number): PricedMix | undefined => {
    if (!now) return undefined;
    const first = now.lengths.findIndex((length) => length !== null);
    const count = now.counts[first]! + change;
    if (count < 0 || (isLimited && count > now.onHand[first])) return undefined;
    return priced(now.counts.map((other, k) => (k === first ? count : other)))[0];
  };
  return {
    best: nearestMixes(mix, many).flatMap((counts) => priced(inPlaces(job, counts))),
    fewer: neighbor(-1),
    more: neighbor(1),
  };
}

/** The pen of a job with its own counts; undefined where these close nothing. */
function penAsItIs(job: Job): PanelPen | undefined {
  try {
    return panelPen(job);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}
