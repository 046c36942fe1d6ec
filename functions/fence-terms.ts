import { type Chord } from "../src/geometry/cyclic-polygon";
import { type Value } from "../src/units/cell";
import { INCHES_PER_FOOT } from "../src/units/conversion";
import { notAllowed } from "../src/units/refusal";
import { beside, numbers, optional } from "./arguments";
import { messages } from "./messages";
import { quantities } from "./quantities";

type Term = Value | undefined;

/** The gates of a range, ft; blanks are skipped. */
export const gatesOf = (term: Term) => numbers(term, quantities.gates).filter((length) => length > 0);

/** The pin gap in ft, 0 where it is blank. */
export const pinGapFeet = (term: Term) => optional(term, quantities.pinGap, 0) / INCHES_PER_FOOT;

/** Panels with so many of each, those that are there. Refuses a count beside a blank panel. */
export function panelsOf(panels: Term, counts: Term): Chord[] {
  const lengths = numbers(panels, quantities.panels);
  const many = beside(lengths, quantities.panels.name, counts, quantities.counts);
  if (lengths.some((length, k) => length === 0 && many[k] > 0))
    throw notAllowed(messages.about(quantities.counts.name, messages.countWithoutLength));
  return lengths.map((length, k) => ({ length, count: many[k] })).filter(({ count }) => count > 0);
}
