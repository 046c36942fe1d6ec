import { type Value } from "../src/units/cell";
import { INCHES_PER_FOOT } from "../src/units/conversion";
import { numbers, optional } from "./arguments";
import { quantities } from "./quantities";

type Term = Value | undefined;

/** The gates of a range, ft; blanks are skipped. */
export const gatesOf = (term: Term) => numbers(term, quantities.gates).filter((length) => length > 0);

/** The pin gap in ft, 0 where it is blank. */
export const pinGapFeet = (term: Term) => optional(term, quantities.pinGap, 0) / INCHES_PER_FOOT;
