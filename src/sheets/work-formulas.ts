import { equipmentKeys } from "../estimate/equipment";
import { PART_OF_HOUR, rateOfLine } from "../estimate/labor";
import { blankUnless, above, cellsOf, countOrOwn, roundedUp, sum, type Sheet } from "./formula-terms";
import { type SectionLayout } from "./estimate-sections";
import { type Place } from "./address";
import { number, over, plus, times, call, minus, range, type Expression } from "./expression";

/** The length of stock whose feet the hours of a line are counted by. */
const stockOf: Record<string, string> = { rails: "rail_stock_length", kick: "kick_stock_length" };

/** The formulas of equipment and labor: days as they were answered, and hours by the production rates, by key. */
export function workFormulas(sheet: Sheet, sections: readonly SectionLayout[]): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const keys = sections.flatMap(({ left }) => left.flatMap((one) => (one.kind === "line" ? [one.key] : [])));
  const days = equipmentKeys.map((key) => [`${key}_count`, blankUnless(above(number(at(key)), 0), at(key))]);
  const byRate = new Map<string, string[]>();
  for (const key of keys) {
    const rate = rateOfLine(key);
    if (rate) byRate.set(rate, [...(byRate.get(rate) ?? []), key]);
  }
  const hours = [...byRate].map(([rate, lines]) => {
    const feet = (key: string) => times(number(at(stockOf[key])), number(at(`${key}_count`)));
    return times(number(at(rate)), rate === "hours_rail" ? sum(lines.map(feet)) : counts(sheet, lines));
  });
  const whole = plus(
    times(number(at("hours_yard")), plus(at("base_delivered"), at("sand_delivered"))),
    ...hours,
  );
  return {
    ...Object.fromEntries(days),
    labor_count: countOrOwn(sheet, "labor", times(roundedUp(over(whole, PART_OF_HOUR)), PART_OF_HOUR)),
  };
}

/** The counts of some lines added up, less what of a pen's panels is by other. */
function counts({ places }: Sheet, lines: readonly string[]): Expression {
  const all = added(lines.map((key) => places[`${key}_count`]));
  const shared = lines.filter((key) => `${key}_stock` in places);
  return shared.length === 0 ? all : minus(all, added(shared.map((key) => places[`${key}_fixed`])));
}

/** Cells added up; as one range where they stand below each other. */
function added(cells: readonly Place[]): Expression {
  const [first, last] = [cells[0], cells[cells.length - 1]];
  const together = last.row - first.row === cells.length - 1;
  return together
    ? call("SUM", range(first, last))
    : call("SUM", ...cells.map((place) => range(place, place)));
}
