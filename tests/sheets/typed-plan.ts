import { structures, type Structure } from "../../src/estimate/structures";
import { type SheetPlan } from "../../src/sheets/plan";
import { typedInto } from "../../src/sheets/estimate";
import { laidOut, placesOf } from "../../src/sheets/estimate-layout";
import { type Cell } from "../../src/units/cell";
import { type TypedLine } from "../estimate/random-job";

/** Where every key of an estimate of each structure stands. */
export const placesIn = Object.fromEntries(
  structures.map((structure) => [structure, placesOf(laidOut(structure).sections)]),
) as Record<Structure, ReturnType<typeof placesOf>>;

/** Where every key of a panel pen's estimate stands. */
export const estimatePlaces = placesIn["panel pen"];

/** An estimate's plan with the user's own lines typed into it. */
export function withOwnLines(plan: SheetPlan, own: TypedLine[]): SheetPlan {
  const values: Record<string, Cell> = {};
  for (const { key, quantity, price, taxed } of own) {
    values[`${key}_item`] = quantity === null ? null : "A line of my own";
    values[`${key}_quantity`] = quantity;
    values[`${key}_price`] = price;
    values[`${key}_taxed`] = taxed ? "yes" : null;
  }
  return typedInto(plan, values);
}
