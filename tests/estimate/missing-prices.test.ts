import { itemName, missingPrices, rowsToAdd } from "../../src/estimate/missing-prices";
import { examplePrices, unpricedRow } from "../../src/estimate/prices";

const fourteen = { item: "panel", size: 14 };
const stake = { item: "stake", size: null };

describe("missing prices", () => {
  it("names each item once, with its size, and says what is wrong", () => {
    const passed = examplePrices.map((row) => (row.item === "stake" ? { ...row, use: false } : row));
    expect(missingPrices([fourteen, fourteen, stake], passed)).toEqual([
      { item: fourteen, name: "Panel, 14 ft", why: "no row" },
      { item: stake, name: "Layout stake", why: "none chosen" },
    ]);
    expect(missingPrices([fourteen], [unpricedRow(fourteen)])[0].why).toBe("no price");
    expect(itemName({ item: "haul", size: 12 })).toBe("Truck load hauled, 12 cu yd");
  });

  it("adds rows only where there is none, without a price and without an example mark", () => {
    const missing = missingPrices([fourteen, stake], [unpricedRow(stake)]);
    expect(rowsToAdd(missing)).toEqual([unpricedRow(fourteen)]);
    expect(rowsToAdd(missing)[0]).toMatchObject({ price: null, example: false });
  });
});
