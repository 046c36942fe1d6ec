import { feetInches } from "../src/units/feet-inches";
import { optional, shaped } from "./arguments";
import { guarded, type Call } from "./cells";
import { quantities } from "./quantities";

const FINEST_USUAL = 16;

/** Lengths: reading them and writing them. */
export const lengthCalls: Record<string, Call> = {
  FEET: guarded((length) => shaped(length, quantities.anyLength, (feet) => feet)),
  FEET_INCHES: guarded((feet, denominator) => {
    const parts = optional(denominator, quantities.denominator, FINEST_USUAL);
    return shaped(feet, quantities.feet, (length) => feetInches(length, parts));
  }),
};
