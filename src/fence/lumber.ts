import { type Section, square } from "../geometry/section";
import { notAllowed } from "../units/refusal";
import { messages } from "./messages";

/** Thinner pieces are boards, pieces from this thickness on are timbers, what lies between is dimension lumber. */
const DIMENSION = 2;
const TIMBER = 5;

/** What a nominal inch is short of, from this nominal size on. American Softwood Lumber Standard PS 20, dressed dry. */
const BOARD_THICKNESS = [{ from: 0, off: 0.25 }];
const DIMENSION_THICKNESS = [{ from: 0, off: 0.5 }];
const WIDTH = [{ from: 7.5, off: 0.75 }, { from: 0, off: 0.5 }]; // prettier-ignore
/** Timbers are dressed green; the standard's least size, which a mill may better by a quarter inch. */
const TIMBER_SIDE = [{ from: 16, off: 1 }, { from: 7, off: 0.75 }, { from: 0, off: 0.5 }]; // prettier-ignore

const NARROWEST = 2;
const LARGEST = 24;

/**
 * The actual thickness and width, in, of softwood lumber of a nominal size, in: a 2x6 is 1 1/2 by 5 1/2. Refuses what
 * is under 1 by 2 or over 24, and a width under the thickness. Source: American Softwood Lumber Standard PS 20.
 */
export function dressed(thickness: number, width: number): { thickness: number; width: number } {
  if (!(thickness >= 1 && width >= Math.max(NARROWEST, thickness) && width <= LARGEST)) throw notAllowed(messages.nominalRange(LARGEST)); // prettier-ignore
  if (thickness >= TIMBER)
    return { thickness: less(thickness, TIMBER_SIDE), width: less(width, TIMBER_SIDE) };
  const thin = thickness < DIMENSION ? BOARD_THICKNESS : DIMENSION_THICKNESS;
  return { thickness: less(thickness, thin), width: less(width, WIDTH) };
}

const less = (nominal: number, rules: readonly { from: number; off: number }[]) =>
  nominal - rules.find(({ from }) => nominal >= from)!.off;

const NOMINAL = /^(\d+|\d+\/4|\d*\.\d+)\s*[x×*]\s*(\d+)$/i;

/** The same of a nominal size as it is written: 2x6, 4 x 4 or 5/4x6. Refuses any other text with examples. */
export function lumber(size: string): { thickness: number; width: number } {
  const found = NOMINAL.exec(size.trim());
  if (!found) throw notAllowed(messages.nominalUnreadable(size.trim()));
  const [quarters, four] = found[1].split("/");
  return dressed(Number(quarters) / Number(four ?? 1), Number(found[2]));
}

/** The section of a square-cornered post of a nominal size, in; its thickness lies along the fence. */
export function squarePost(size: string): Section {
  const { thickness, width } = lumber(size);
  return square(thickness, width);
}
