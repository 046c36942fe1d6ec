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

  it("take the cheapest of several, the chosen one before it, and never one marked no", () => {
    const found = (...rows: PriceRow[]) => findPrice(rows, { item: "panel", size: 12 }).price?.toNumber();
    const [dear, cheap, blank] = [row({ price: 95 }), row({ price: 90 }), row({ price: null })];
    expect(found(dear, cheap, blank)).toBe(90);
    expect(found({ ...dear, use: true }, cheap)).toBe(95);
    expect(found({ ...dear, use: true }, { ...cheap, use: true })).toBe(90);
    expect(found(dear, { ...cheap, use: false })).toBe(95);
    expect(found({ ...blank, use: true }, cheap)).toBeUndefined();
    expect(found({ ...cheap, use: false })).toBeUndefined();
    expect(found(row({ price: -5 }), dear)).toBe(95);
  });

  it("take waste, tax and age from the row used; of rows that tie, whatever one of them says", () => {
    const used = row({ price: 90, waste: 2, taxed: false });
    const other = row({ price: 95, waste: 9, taxed: true, example: true, old: true, date: 46000 });
    const asked = { item: "panel", size: 12 };
    expect(findPrice([used, other], asked)).toMatchObject({
      waste: 2,
      taxed: false,
      example: false,
      oldSince: null,
    });
    expect(findPrice([used, { ...other, price: 90 }], asked)).toMatchObject({
      waste: 9,
      taxed: true,
      example: true,
      oldSince: 46000,
    });
    expect(findPrice([row({ price: null, waste: 4 })], asked).waste).toBe(4);
  });

  it("start as marked examples of every kind, each with one price", () => {
    expect(new Set(examplePrices.map(({ item }) => item))).toEqual(new Set(Object.keys(priceKinds)));
    expect(examplePrices.every(({ example, price }) => example && price! > 0)).toBe(true);
    const names = examplePrices.map(({ item, size }) => `${item} ${size}`);
    expect(new Set(names).size).toBe(names.length);
  });
});
