import { EPSILON } from "../units/rounding";
import { commonStep } from "./common-step";
import { addCheapest, offerCheap } from "./half-mixes";
import { type Mix, type Search, allowedSize, bounds, putAmong } from "./mix-search";
import { aroundYardstick } from "./yardstick";

/** After so many steps without a mix, stock binds: other ways are then quicker. */
const MOST_STEPS = 4;
/** Costs this near to the least, in the unit of weights, are looked at: sizes that count as equal are nearer. */
const TIE = 1e-9;

/**
 * Adds the nearest mix by a circle, where all lengths are multiples of one step and the circle asked for lies between
 * what mixes of one length around weigh and what those of a step more do. A chord takes a little more of the turn than
 * its length says, a long one the most, so that of one length around the mixes weigh nearly the same; which comes
 * nearest is then a question of the cheapest, at what each panel weighs short of the heaviest for its length (over the
 * lightest, where the circle may not be smaller). False where it is not so, where more mixes than one are wanted, or
 * where the nearest few lengths around have no mix.
 */
export function addExtremeInSteps(search: Search): boolean {
  const { given, classes, yardstick, wanted, side, best, many } = search;
  const step = commonStep(classes.map(({ chord }) => chord));
  if (many > 1 || yardstick === aroundYardstick || side === "either" || step === undefined) return false;
  const whole = yardstick.range(wanted).least - given.weight;
  const rates = classes.map(({ chord }) => yardstick.weigh(chord) / chord);
  const [lightest, heaviest] = [Math.min(...rates), Math.max(...rates)];
  const isBelow = side === "below";
  const [first, by] = isBelow
    ? [Math.floor(whole / lightest / step), -1]
    : [Math.ceil(whole / heaviest / step), 1];
  /** How far the mixes of so many steps are off at the least. */
  const leastOff = (steps: number) =>
    isBelow ? whole - steps * step * heaviest : steps * step * lightest - whole;
  if (leastOff(first) < TIE) return false;
  const priced = classes.map((panels, k) => ({
    ...panels,
    price: Math.abs((isBelow ? heaviest : lightest) - rates[k]) * panels.chord,
  }));
  for (let k = 0; k < MOST_STEPS; k++) {
    const steps = first + by * k;
    if (steps <= 0) return false;
    if (best.length > 0) {
      const reach = bounds(search, Math.abs(best[0].size - wanted) + EPSILON, TIE);
      if (leastOff(steps) > Math.max(reach.most - given.weight - whole, whole + given.weight - reach.least))
        return true;
    }
    const around = steps * step;
    const found: Mix[] = [];
    const ofLength: Search = {
      ...search,
      given: { ...given, weight: 0, cost: 0 },
      classes: priced,
      yardstick: aroundYardstick,
      side: "either",
      wanted: around / Math.PI,
      tolerance: 0,
      limit: around + step / 2,
      sizeOf: () => around / Math.PI,
      best: found,
    };
    addCheapest(ofLength, 0);
    if (found.length === 0) continue;
    const [{ cost }] = found;
    if (leastOff(steps) + cost + TIE > leastOff(steps + by)) return false;
    let isPen = false;
    offerCheap(ofLength, cost + TIE, (rank, count) => {
      const size = allowedSize(search, rank);
      if (Number.isNaN(size)) return;
      putAmong(best, { cost: given.cost, size, count, rank }, many, wanted);
      isPen = true;
    });
    return isPen;
  }
  return false;
}
