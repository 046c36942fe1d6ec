import { examplePrices, findPrice, priceKinds, unpricedRow, type PriceRow } from "../../src/estimate/prices";

const row = (change: Partial<PriceRow>): PriceRow => ({
  ...unpricedRow({ item: "panel", size: 12 }),
  ...change,
});

describe("the user's prices", () => {
  it("find the row of an item and its size", () => {
    const found = findPrice([row({ size: 10, price: 90 }), row({ price: 110.5, waste: 3 })], {
      item: "panel",
      size: 12,
    });
    expect(found.price?.toNumber()).toBe(110.5);
    expect(found.waste).toBe(3);
  });

  it("count a price of 0 as free and a blank as missing", () => {
    expect(findPrice([row({ price: 0 })], { item: "panel", size: 12 }).price?.toNumber()).toBe(0);
    expect(findPrice([row({ price: null })], { item: "panel", size: 12 }).price).toBeNull();
  });

  it("never take two prices of one item for one", () => {
    expect(findPrice([row({ price: 90 }), row({ price: 95 })], { item: "panel", size: 12 }).price).toBeNull();
    expect(
      findPrice([row({ price: 90 }), row({ price: null })], { item: "panel", size: 12 }).price?.toNumber(),
    ).toBe(90);
  });

  it("start as marked examples of every kind, each with one price", () => {
    expect(new Set(examplePrices.map(({ item }) => item))).toEqual(new Set(Object.keys(priceKinds)));
    expect(examplePrices.every(({ example, price }) => example && price! > 0)).toBe(true);
    const names = examplePrices.map(({ item, size }) => `${item} ${size}`);
    expect(new Set(names).size).toBe(names.length);
  });
});
