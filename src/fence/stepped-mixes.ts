import { EPSILON } from "../units/rounding";
import { commonStep } from "./common-step";
import { addCheapest } from "./half-mixes";
import { type Mix, type Search } from "./mix-search";
import { aroundYardstick } from "./yardstick";

/** After so many steps without a mix, stock binds: other ways are then quicker. */
const MOST_STEPS = 4;

/**
 * Adds the nearest mix by distance around, where all lengths are multiples of one step, such as half an inch: the sums
 * are then so many steps off that of the gates, and on the nearest one that a mix comes to, the mix of fewest panels is
 * the cheapest at one price a panel. False where more mixes than one are wanted, where there is no such step, or where
 * the nearest few sums have no mix.
 */
export function addNearestInSteps(search: Search): boolean {
  const { given, classes, yardstick, wanted, side, best, many } = search;
  if (many > 1 || yardstick !== aroundYardstick || !search.surelyPens) return false;
  const step = commonStep(classes.map(({ chord }) => chord));
  if (step === undefined) return false;
  const onePrice = classes.map((panels) => ({ ...panels, price: 1 }));
  const rest = yardstick.range(wanted).least - given.weight;
  const under = rest - step * Math.floor(rest / step + EPSILON);
  const offs = [...Array(MOST_STEPS).keys()].flatMap((k) => [
    ...(side === "above" ? [] : [under + k * step]),
    ...(side === "below" ? [] : [step - under + k * step]),
  ]);
  for (const off of offs.sort((a, b) => a - b)) {
    const tolerance = off / Math.PI;
    const found: Mix[] = [];
    addCheapest({ ...search, classes: onePrice, tolerance, best: found }, tolerance);
    for (const mix of found) best.push({ ...mix, cost: given.cost });
    if (found.length > 0) return true;
  }
  return false;
}
