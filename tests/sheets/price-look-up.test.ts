import fc from "fast-check";
import { calls } from "../../functions/calls";
import { findPrice, unpricedRow, type PriceRow } from "../../src/estimate/prices";
import { contentOfPlans } from "../../src/sheets/calculate";
import { cell, expression } from "../../src/sheets/expression";
import { lookUp } from "../../src/sheets/price-look-up";
import { readPrices } from "../../src/sheets/price-rows";
import { pricesPlan } from "../../src/sheets/prices";
import { newPricesLayout, pricesLayoutOf, type PricesLayout } from "../../src/sheets/prices-layout";
import { type PlanCell, type SheetPlan } from "../../src/sheets/plan";
import { dayOf } from "../../src/units/day";
import { shownBy } from "./shown";

const today = dayOf(new Date());

/** Rows of one item from several suppliers, so that they meet and tie often. */
const rows = fc.array(
  fc.record({
    size: fc.constantFrom(10, 12),
    price: fc.constantFrom(null, 0, 90, 90, 95.5),
    waste: fc.constantFrom(0, 3, 5),
    taxed: fc.boolean(),
    example: fc.boolean(),
    supplier: fc.constantFrom("", "Supplier A (example)", "Supplier B (example)"),
    date: fc.constantFrom(null, today, today - 90, today - 91, today - 400),
    use: fc.constantFrom(null, null, null, true, false),
  }),
  { maxLength: 6 },
);

const wide = (parts: Partial<PriceRow>[]) =>
  parts.map((part): PriceRow => ({ ...unpricedRow({ item: "panel", size: 12 }), ...part }));

/** A sheet with one line that asks for a panel of 12 ft: pick, price, waste, tax, note. */
function asking(prices: PricesLayout): SheetPlan {
  const at = (column: number) => cell({ row: 0, column });
  const { pick, price, waste, taxed, note } = lookUp(prices, { item: "panel", size: 12, pick: at(0), price: at(1) }); // prettier-ignore
  const cells = [pick ?? "", price, waste, taxed, note].map((says, column): PlanCell => ({
    row: 0,
    column,
    says: expression(says),
    style: "text",
  }));
  return { ...pricesPlan([]), name: "Line", cells };
}

/** What the line shows, and what the rows read from the same sheet lead to. */
function both(sheet: SheetPlan, layout = newPricesLayout(sheet.name)) {
  const content = contentOfPlans([sheet, asking(layout)], (name) => calls[name]);
  const [, price, waste, taxed, note] = shownBy(content.sheets[1]).values[0];
  const found = findPrice(readPrices(shownBy(content.sheets[0]).values), { item: "panel", size: 12 });
  return {
    shown: { price, waste, taxed, note },
    found: {
      price: found.price?.toNumber() ?? "price?",
      waste: found.waste,
      taxed: found.taxed ? "yes" : "",
      note: found.example ? "example price" : (found.oldSince ?? 0),
    },
  };
}

const setTo = (sheet: SheetPlan, column: number, value: number | string | null): SheetPlan => ({
  ...sheet,
  cells: sheet.cells.map((one) =>
    one.row === 1 && one.column === column ? { ...one, says: { kind: "constant", value } } : one,
  ),
});

describe("a line of a sheet that asks the prices", () => {
  it("follows the same rule as the estimate in plain code, whatever the rows and the settings", () => {
    fc.assert(
      fc.property(
        rows,
        fc.constantFrom("cheapest", "chosen"),
        fc.constantFrom(null, 0, 90, 500),
        (some, which, days) => {
          const { shown, found } = both(setTo(setTo(pricesPlan(wide(some)), 10, which), 9, days));
          expect(shown).toEqual(found);
        },
      ),
      { numRuns: 300 },
    );
  });

  it("says of which day a price is that is older than the days set, and never where they are blank", () => {
    const old = pricesPlan(wide([{ price: 90, date: today - 91 }]));
    expect(both(old).shown.note).toBe(today - 91);
    expect(both(pricesPlan(wide([{ price: 90, date: today - 90 }]))).shown.note).toBe(0);
    expect(both(setTo(old, 9, null)).shown.note).toBe(0);
  });

  it("asks a sheet of the time before suppliers as it stands, whatever the user keeps beside it", () => {
    const sheet = pricesPlan(wide([{ price: 90 }, { price: 80, waste: 5, taxed: false }]));
    const before = { ...sheet, cells: sheet.cells.filter(({ column }) => column < 8) };
    const note: PlanCell = { row: 3, column: 10, says: expression("yes"), style: "text" };
    const noted = { ...before, cells: [...before.cells, note] };
    const values = shownBy(contentOfPlans([noted], (name) => calls[name]).sheets[0]).values;
    const layout = pricesLayoutOf(sheet.name, values);
    const { shown, found } = both(noted, layout);
    expect(layout.columns).not.toHaveProperty("use");
    expect(shown).toEqual({ price: 80, waste: 5, taxed: "", note: "" });
    expect(found).toMatchObject({ price: 80, waste: 5 });
  });
});
