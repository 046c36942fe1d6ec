import { EPSILON } from "../units/rounding";

/** Finer steps than this, ft, tell mixes no better apart than their weights do. */
const LEAST_STEP = 1e-5;

/** The longest length of which all are multiples, to within what counts as equal once many are added up. */
export function commonStep(lengths: readonly number[]): number | undefined {
  let step = 0;
  for (const length of lengths) {
    let [a, b] = [length, step];
    while (b > LEAST_STEP) [a, b] = [b, a - b * Math.round(a / b)].map(Math.abs);
    step = a;
  }
  if (step < LEAST_STEP) return undefined;
  const longest = Math.max(...lengths);
  step = longest / Math.round(longest / step);
  const isMultiple = (length: number) =>
    Math.abs(length - step * Math.round(length / step)) <= EPSILON / 1000;
  return lengths.every(isMultiple) ? step : undefined;
}
