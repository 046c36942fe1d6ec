import { pointsWithin } from "../geometry/lattice";
import { EPSILON } from "../units/rounding";
import { type PanelClass } from "./mix-classes";
import { type Search, addNearest, bounds } from "./mix-search";

/** Fewer choices of counts than this are soon run against each other in halves, of which each has the root of that. */
const MANY_CHOICES = 4e9;
/** How many mixes the first window is to hold, and in how many places to look before giving up. */
const FIRST_WINDOW = 4;
const MOST_PLACES = 200_000;
/** How many mixes of one window to offer: with so many, the best of them makes the next window far narrower. */
const MOST_OFFERS = 1000;
/** How much wider the next window is than one that holds none. */
const WIDER = 2;
/** Up to this part of the whole, a window is so thin that its rims are no wider than its middle. */
const THIN = 1e-4;
/** What regions are taken larger by, in parts of their radius. */
const SLACK = 1e-3;
/** Sums of weights are this exact, as parts of the wanted weight. */
const EXACT = 1e-13;

/**
 * Adds what `addNearestOfHalves` does, where there are very many mixes: as few of those have one weight, only the mixes
 * in a narrow window of weights are ever made. False where there are not so many mixes, or where a window holds too
 * many (weights that are multiples of one step).
 *
 * The counts of a mix are a point of a lattice. Those that weigh the whole lie on the flat simplex between the mixes of
 * one length each, which a ball round the mix of equal parts holds; with the thickness of the window it becomes an
 * ellipsoid, of which `pointsWithin` gives the points.
 */
export function addNearestOnLattice(search: Search): boolean {
  const { given, classes, yardstick, wanted, side, many } = search;
  const target = yardstick.range(wanted).least;
  const whole = target - given.weight;
  const weights = classes.map(({ chord }) => yardstick.weigh(chord));
  const dimensions = classes.length;
  const mosts = weights.map((weight, k) => Math.min(classes[k].ranks.length, whole / weight));
  const choices = mosts.reduce((product, most) => product * (most + 1), 1);
  if (dimensions < 2 || whole <= 0 || choices < MANY_CHOICES) return false;
  // So many mixes weigh no more than the whole: the simplex is a corner of a box, and each takes a unit of room.
  const mixes = weights.reduce((product, weight, k) => (product * whole) / weight / (k + 1), 1);
  const width = (FIRST_WINDOW * many * whole) / dimensions / mixes;
  const noise = yardstick.range(wanted + EPSILON).most - yardstick.range(wanted).most + EXACT * target;
  const start = bounds(search, EPSILON, noise);
  if (side !== "above") start.least -= width;
  if (side !== "below") start.most += width;
  const ranks = classes.map(summedRanks);
  // Places are parts of the whole as parts of the ball's radius, and last the weight. The ellipsoid of least volume
  // round ball and window counts half the window's thickness so flat.
  const radius = Math.sqrt(1 - 1 / dimensions);
  const parts = weights.map((weight) => weight / whole / radius);
  const flat = Math.sqrt(1 / (dimensions - 1));
  return addNearest(search, { cost: given.cost, noise, start }, ({ least, most }, offer) => {
    if (most - least > THIN * whole) return undefined;
    const steep = (2 * flat) / (most - least);
    const middle = (least + most) / 2 - given.weight;
    const basis = weights.map((weight, k) => [
      ...parts.map((part, i) => (i === k ? part : 0)),
      weight * steep,
    ]);
    const region = {
      center: [...parts.map(() => 1 / dimensions / radius), middle * steep],
      distance: Math.sqrt(1 + flat ** 2) + SLACK,
      least: [...parts.map(() => -SLACK), middle * steep - flat - SLACK],
      most: [...parts.map((part, k) => mosts[k] * part + SLACK), middle * steep + flat + SLACK],
    };
    let left = MOST_OFFERS;
    const isWhole = pointsWithin(basis, region, MOST_PLACES, (counts) => {
      let { weight, count, rank } = given;
      for (let k = 0; k < dimensions; k++) {
        if (counts[k] < 0 || counts[k] >= ranks[k].length) return true;
        weight += counts[k] * weights[k];
        count += counts[k];
        rank += ranks[k][counts[k]];
      }
      if (weight < least || weight > most) return true;
      offer(rank, count);
      return --left > 0;
    });
    const next = WIDER * (most - least);
    return isWhole ? { under: target - next, over: target + next } : undefined;
  });
}

/** What the first none, one, two … of these panels add to the rank of a mix. */
function summedRanks({ ranks }: PanelClass): number[] {
  const sums = [0];
  for (const rank of ranks) sums.push(sums[sums.length - 1] + rank);
  return sums;
}
