import { type SheetPlan } from "../../src/sheets/plan";
import { laidOut, placesOf } from "../../src/sheets/estimate-layout";
import { type TypedLine } from "../estimate/random-job";

/** Where every key of an estimate stands. */
export const estimatePlaces = placesOf(laidOut().sections);

/** An estimate's plan with the user's own lines typed into it. */
export function withOwnLines(plan: SheetPlan, own: TypedLine[]): SheetPlan {
  const typed = new Map<string, number | string | null>();
  for (const { key, quantity, price, taxed } of own) {
    const at = (part: string) =>
      `${estimatePlaces[`${key}_${part}`].row},${estimatePlaces[`${key}_${part}`].column}`;
    typed.set(at("item"), quantity === null ? null : "A line of my own");
    typed.set(at("quantity"), quantity);
    typed.set(at("price"), price);
    typed.set(at("taxed"), taxed ? "yes" : null);
  }
  return {
    ...plan,
    cells: plan.cells.map((cell) => {
      const value = typed.get(`${cell.row},${cell.column}`);
      return value === undefined ? cell : { ...cell, says: { kind: "constant", value } };
    }),
  };
}
