import { calls } from "../../functions/calls";
import { examplePrices, priceKinds, type PriceKind } from "../../src/estimate/prices";
import { contentOfPlans } from "../../src/sheets/calculate";
import { pricesPlan } from "../../src/sheets/prices";
import { readPrices } from "../../src/sheets/price-rows";
import { styles } from "../../src/sheets/styles";
import { shownBy } from "./shown";

const plan = pricesPlan(examplePrices);

describe("the sheet of prices", () => {
  it("shows every size in the unit of its kind: feet, cubic yards or pounds", () => {
    const sizes = plan.cells.filter(({ row, column }) => row > 2 && column === 2);
    examplePrices.forEach(({ item, size }, k) => {
      const { format } = styles[sizes[k].style] as { format?: string };
      const unit = size === null ? undefined : priceKinds[item as PriceKind].sized;
      expect([item, format]).toEqual([item, unit && `General" ${unit}"`]);
    });
    expect(new Set(sizes.map(({ style }) => style)).size).toBe(4);
  });

  it("is read back as the rows that were written", () => {
    const sheet = contentOfPlans([plan], (name) => calls[name]).sheets[0];
    const rows = examplePrices.map((row, k) => ({ ...row, at: k + 3 }));
    expect(readPrices(shownBy(sheet).values)).toEqual(rows);
  });
});
