import { type MixPanel, panelMix } from "../src/fence/panel-mix";
import { fits } from "../src/fence/panels";
import { type Value } from "../src/units/cell";
import { allowed } from "../src/units/range";
import { notAllowed } from "../src/units/refusal";
import { beside, numbers, option, optional, required } from "./arguments";
import { cellsOf, guarded, inShapeOf, type Call } from "./cells";
import { gatesOf, pinGapFeet } from "./fence-terms";
import { messages } from "./messages";
import { pricesOf } from "./prices";
import { quantities } from "./quantities";

type Term = Value | undefined;

const { panels: panelsFt } = quantities;

/** How many there are of each panel: blank is no limit, and so is a 0, which hosts send for a blank; "none" is 0. */
function stockOf(term: Term, lengths: readonly number[]): number[] {
  const cells = cellsOf(term);
  // A host sends null, a blank or 0 for what is left out.
  if (cells.every((cell) => !cell)) return lengths.map(() => Infinity);
  const none = cells.map((cell) => typeof cell === "string" && cell.trim().toLowerCase() === "none");
  const numbersOnly = cells.map((cell, k) => (none[k] ? null : cell)) as Value;
  const counts = beside(lengths, panelsFt.name, numbersOnly, quantities.stock);
  return counts.map((count, k) => (none[k] ? 0 : count || Infinity));
}

/** Fences: mixes of panels. */
export const fenceCalls: Record<string, Call> = {
  PANEL_MIX: guarded((diameter, panels, gates, pinGap, prices, tolerance, fit, stock) => {
    const lengths = numbers(panels, panelsFt);
    if (lengths.every((length) => length === 0))
      throw notAllowed(messages.about(panelsFt.name, messages.needed(allowed(panelsFt))));
    const each = pricesOf(prices, lengths, panelsFt.name);
    const stocked = stockOf(stock, lengths);
    const listed = lengths.map((length, k): MixPanel => ({ length, price: each?.[k], stock: stocked[k] }));
    const counts = panelMix({
      diameter: required(diameter, quantities.diameter),
      panels: listed.filter(({ length }) => length > 0),
      gates: gatesOf(gates),
      pinGap: pinGapFeet(pinGap),
      tolerance: optional(tolerance, quantities.tolerance, 1),
      fit: option(fit, "fit", fits),
      priced: each !== undefined,
    });
    return inShapeOf(panels, lengths.map((length) => (length === 0 ? "" : counts.shift()!))); // prettier-ignore
  }),
};
