import { type Value } from "../src/units/cell";
import { beside, numbers } from "./arguments";
import { quantities } from "./quantities";

/**
 * The prices of what the argument `name` lists, undefined where one is not offered. Nothing at all where every price
 * is blank or left out.
 */
export function pricesOf(
  term: Value | undefined,
  listed: readonly number[],
  name: string,
): (number | undefined)[] | undefined {
  if (numbers(term, quantities.prices).every((price) => price === 0)) return undefined;
  return beside(listed, name, term, quantities.prices).map((price) => price || undefined);
}
