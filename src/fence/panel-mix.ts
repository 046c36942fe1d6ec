import { circumcircle } from "../geometry/cyclic-polygon";
import { noAnswer } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";
import { type Question, mixFinder } from "./mix-finder";
import { TooManyMixes } from "./mix-classes";
import { type Mix, type Side } from "./mix-search";
import { type Fit, fenceChords } from "./panels";
import { type Measure } from "./yardstick";

/** A panel length that may be used: ft, over 0. A price over 0, left out where not offered; stock, left out where unlimited. */
export interface MixPanel {
  length: number;
  price?: number;
  stock?: number;
}

export interface PanelMixJob {
  /** ft, over 0. */
  diameter: number;
  panels: readonly MixPanel[];
  /** Gates pin to pin, ft, over 0. */
  gates: readonly number[];
  /** What a joint adds to a panel or gate, ft; under 0 where loops overlap. */
  pinGap: number;
  /** With prices: how far off the size may be, ft. */
  tolerance: number;
  fit: Fit;
  /** Whether the cheapest mix within the tolerance is wanted; panels without a price are then not used. */
  priced: boolean;
}

/** What a fit measures, and on which side of the size asked for a pen may lie. */
const FITS: Record<Fit, { measure: Measure; side: Side }> = {
  nearest: { measure: "around", side: "either" },
  "at least": { measure: "inside", side: "above" },
  "at most": { measure: "pin", side: "below" },
};

/**
 * How many panels of each length, in the order listed, make the pen that comes nearest to a diameter (then with the
 * fewest panels), or with prices the cheapest within the tolerance (then the nearest, then the fewest). Of equal ones
 * that with more of the earlier listed. Proven: no mix of three or more panels and gates with the center inside or on
 * the fence is better. Refuses (no answer) where nothing fits, and where there are too many mixes to prove it.
 */
export function panelMix(job: PanelMixJob): number[] {
  const { diameter, tolerance, fit, priced } = job;
  const { listed, gates, largest } = searched(job);
  try {
    const { find, counts } = mixFinder(listed, gates, largest);
    const smallest = (mix: Mix) => {
      const chords = counts(mix).map((count, i) => ({ length: listed[i].chord, count }));
      const closed = [...chords, ...gates.map((length) => ({ length, count: 1 }))];
      return messages.smallestPen(circumcircle(closed).diameter, gates.length > 0);
    };
    const asked = { ...FITS[fit], wanted: diameter };
    const [best] = find(priced ? { ...asked, tolerance } : asked);
    const nearest = best ?? find(asked)[0];
    if (!nearest) throw noAnswer(beyondReach(fit, find(FARTHER[fit](diameter))[0], smallest));
    const tooLarge =
      nearest.size > largest + EPSILON && !find({ ...asked, side: "below", wanted: largest })[0];
    if (tooLarge) throw noAnswer(smallest(nearest));
    if (!best) throw noAnswer(messages.nothingWithin(diameter, tolerance, nearest.size));
    return counts(best);
  } catch (error) {
    throw error instanceof TooManyMixes ? noAnswer(messages.tooManyMixes) : error;
  }
}

/**
 * The nearest mixes to a diameter, the first the one that panelMix takes without prices, then those that it would take
 * if the ones before could not be had: at most `many`, fewer where there are no more pens. Refuses as panelMix does.
 */
export function nearestMixes(job: Omit<PanelMixJob, "priced" | "tolerance">, many: number): number[][] {
  const plain: PanelMixJob = { ...job, priced: false, tolerance: Infinity };
  const first = panelMix(plain);
  if (many <= 1) return [first];
  const { listed, gates, largest } = searched(plain);
  try {
    const { find, counts } = mixFinder(listed, gates, largest, many);
    return find({ ...FITS[job.fit], wanted: job.diameter }).map(counts);
  } catch (error) {
    throw error instanceof TooManyMixes ? noAnswer(messages.tooManyMixes) : error;
  }
}

/** The panels and gates of a job as they are searched, and the largest pen that answers it. */
function searched({ diameter, panels, gates, pinGap, priced }: PanelMixJob) {
  const listed = panels.map(({ length, price, stock = Infinity }) => ({
    chord: fenceChords([{ length, count: 1 }], [], pinGap)[0].length,
    price: price ?? 0,
    stock: priced && price === undefined ? 0 : Math.floor(stock),
  }));
  return {
    listed,
    gates: fenceChords([], gates, pinGap).map(({ length }) => length),
    largest: diameter + Math.min(...listed.map(({ chord }) => chord)) / 2 / Math.PI,
  };
}

/** What to look for instead where the allowed side holds nothing. */
const FARTHER: Record<Fit, (wanted: number) => Question> = {
  nearest: (wanted) => ({ measure: "around", side: "either", wanted }),
  "at least": (wanted) => ({ measure: "inside", side: "below", wanted }),
  "at most": (wanted) => ({ measure: "around", side: "either", wanted }),
};

function beyondReach(fit: Fit, other: Mix | undefined, smallest: (mix: Mix) => string): string {
  if (!other) return messages.nothingCloses;
  return fit === "at least" ? messages.largestPen(other.size) : smallest(other);
}
