import { roundUp } from "../units/rounding";

/** The most of a base, in, that is spread and compacted at once (common practice, no source: what a plate compactor reaches). */
export const LIFT = 4;

/** The lifts in which a base so deep, in, is spread and compacted, each as thick as the next. */
export const liftsOf = (depth: number) => roundUp(depth / LIFT);
