import { EPSILON } from "../units/rounding";
import { TooManyMixes } from "./mix-classes";
import { NOISE, type PartMixes } from "./part-mixes";

/** A stretch of a list in which these numbers ascend. */
export interface Run {
  lead: Float64Array;
  from: number;
  to: number;
}

/** All of a list, by its lead. */
export const wholeRun = ({ lead, length }: PartMixes): Run => ({ lead, from: 0, to: length });

/**
 * Calls with every pair whose sum is from `low` to `high`, and gives the sums next to that: the greatest under, the
 * least over. Throws where it would call more than `most` times in all.
 */
export function pairSums(most: number) {
  let left = most;
  return (a: Run, b: Run, low: number, high: number, call: (i: number, j: number) => void) => {
    let top = b.to - 1;
    let under = -Infinity;
    let over = Infinity;
    for (let i = a.from; i < a.to; i++) {
      for (; top >= b.from && a.lead[i] + b.lead[top] > high; top--)
        over = Math.min(over, a.lead[i] + b.lead[top]);
      if (top + 1 < b.to) over = Math.min(over, a.lead[i] + b.lead[top + 1]);
      let j = top;
      for (; j >= b.from && a.lead[i] + b.lead[j] >= low; j--) {
        if (left-- === 0) throw new TooManyMixes();
        call(i, j);
      }
      if (j >= b.from) under = Math.max(under, a.lead[i] + b.lead[j]);
    }
    return { under, over };
  };
}

/** The least cost of any pair that weighs from `least` to `most`. Both in order of weight. */
export function leastSum(a: PartMixes, b: PartMixes, least: number, most: number): number {
  // As a's mixes get heavier, the stretch of b that fits moves down. Of it, `cheap` holds those that are cheaper than
  // every lighter one, the heaviest and cheapest first.
  const cheap: number[] = [];
  let head = 0;
  let next = b.length - 1;
  let cost = Infinity;
  for (let i = 0; i < a.length; i++) {
    for (; next >= 0 && b.lead[next] >= least - a.lead[i]; next--) {
      while (cheap.length > head && b.follow[cheap[cheap.length - 1]] >= b.follow[next]) cheap.pop();
      cheap.push(next);
    }
    while (head < cheap.length && b.lead[cheap[head]] > most - a.lead[i]) head++;
    if (head < cheap.length) cost = Math.min(cost, a.follow[i] + b.follow[cheap[head]]);
  }
  return cost;
}

/** The stretches of one cost in a and in b that together cost just this. */
export function matchedRuns(a: PartMixes, b: PartMixes, cost: number): [Run, Run][] {
  const runsA = runsOf(a);
  const runsB = runsOf(b);
  const matched: [Run, Run][] = [];
  let j = runsB.length - 1;
  for (const runA of runsA) {
    const wanted = cost - a.lead[runA.from];
    while (j >= 0 && b.lead[runsB[j].from] > wanted + EPSILON) j--;
    if (j >= 0 && b.lead[runsB[j].from] >= wanted - EPSILON) matched.push([runA, runsB[j]]);
  }
  return matched;
}

function runsOf({ lead, follow, length }: PartMixes): Run[] {
  const runs: Run[] = [];
  for (let from = 0, to = 0; from < length; from = to) {
    while (to < length && lead[to] - lead[from] <= NOISE) to++;
    runs.push({ lead: follow, from, to });
  }
  return runs;
}
