import { Decimal } from "decimal.js";
import fc from "fast-check";
import { cents, charge, lineAmount, type LineCost, type Rates } from "../../src/estimate/charges";
import { costKinds, type CostKind } from "../../src/estimate/cost-kinds";
import { roundings, taxBases, type Rounding } from "../../src/estimate/fields";

const none: Rates = {
  burden: 0,
  tax: 0,
  taxOn: "material cost",
  contingency: 0,
  overhead: 0,
  markups: {},
  profit: 0,
  profitKind: "markup",
  minimum: 0,
  rounding: "cent",
};
const money = (amount: number) => new Decimal(amount);

/** Lines of so much of each kind, and how much of them is taxed. */
function linesOf(some: Partial<Record<CostKind, number>>, taxed = 0): LineCost {
  const kinds = Object.fromEntries(
    costKinds.map((kind) => [kind, money(some[kind] ?? 0)]),
  ) as LineCost["kinds"];
  return { direct: Decimal.sum(...Object.values(kinds)), taxed: money(taxed), kinds };
}

const steps = (cost: LineCost, rates: Partial<Rates>) =>
  Object.fromEntries(
    Object.entries(charge(cost, { ...none, ...rates })).map(([key, amount]) => [key, amount.toNumber()]),
  );

describe("what comes on top of the lines", () => {
  // M1, M2: accounting textbook example and table.
  const textbook = [
    { cost: 10_000, kind: "markup", percent: 25, price: "12500" },
    { cost: 10_000, kind: "margin", percent: 20, price: "12500" },
    { cost: 9_000, kind: "margin", percent: 10, price: "10000" },
    { cost: 9_000, kind: "markup", percent: 11.111111111, price: "10000" },
    { cost: 8_000, kind: "margin", percent: 20, price: "10000" },
    { cost: 7_500, kind: "margin", percent: 25, price: "10000" },
    { cost: 7_500, kind: "markup", percent: 33.333333333, price: "10000" },
    { cost: 6_000, kind: "margin", percent: 33.333333333, price: "9000" },
    { cost: 6_000, kind: "markup", percent: 50, price: "9000" },
  ] as const;

  it.each(textbook)(
    "turns a cost of $cost with a $kind of $percent % into $price",
    ({ cost, kind, percent, price }) => {
      const { total } = charge(linesOf({ material: cost }), { ...none, profit: percent, profitKind: kind });
      expect(total.toFixed(2)).toBe(`${price}.00`);
    },
  );

  it("checks all nine rows of the textbook table", () => expect(textbook).toHaveLength(9));

  // M3: decimal arithmetic; binary floating point gives 1.00 and 2.67 for the second and the last.
  it.each([
    [0.125, "0.13"],
    [1.005, "1.01"],
    [2.665, "2.67"],
    [2.675, "2.68"],
  ])("rounds %d to the cent as %s, half up", (amount, shown) => {
    expect(cents(money(amount)).toFixed(2)).toBe(shown);
    expect(lineAmount(amount, money(1)).toFixed(2)).toBe(shown);
  });

  it("loses no cent where the digits of a quantity end early: 527/24 ton at 0.12 are 2.635", () => {
    expect(lineAmount(527 / 24, money(0.12)).toFixed(2)).toBe("2.64");
  });

  it("loses no cent to the noise in a quantity: 325.5 cu yd and 7.5 % waste at 222.80 are 77,960.505", () => {
    expect(325.5 * (1 + 7.5 / 100)).toBeLessThan(349.9125);
    expect(lineAmount(325.5 * (1 + 7.5 / 100), money(222.8)).toFixed(2)).toBe("77960.51");
  });

  // Worked by hand. 1000 + 600 + 300 + 200 + 100 = 2200 of lines, of which 1000 are taxed.
  const lines = linesOf({ material: 1000, labor: 600, rental: 300, sub: 200, freight: 100 }, 1000);

  it("lays each percentage on the base that its label names", () => {
    const rates = { burden: 25, tax: 8, contingency: 5, overhead: 10, profit: 20 };
    expect(steps(lines, rates)).toEqual({
      direct: 2200,
      burden: 150, // 25 % of 600
      tax: 80, // 8 % of 1000
      contingency: 121.5, // 5 % of 2430
      overhead: 255.15, // 10 % of 2551.50
      markup: 0,
      profit: 561.33, // 20 % of 2806.65
      adjustment: 0,
      salesTax: 0,
      total: 3367.98,
    });
  });

  it("marks up material, labor with its burden, rental and subcontracts each by a percentage of its own", () => {
    const markups = { material: 10, labor: 20, rental: 5, sub: 7.5 };
    // 100 + 20 % of 750 + 15 + 15
    expect(steps(lines, { burden: 25, markups })).toMatchObject({ burden: 150, markup: 280, total: 2630 });
    expect(steps(lines, { markups, profit: 10 })).toMatchObject({ markup: 250, profit: 245, total: 2695 });
  });

  // Half up to the nearest: 3367.98 is worked out above; 1225 lies in the middle of 1200 and 1250.
  it.each([
    ["cent", 3367.98, 3367.98],
    ["dollar", 3367.98, 3368],
    ["10 dollars", 3367.98, 3370],
    ["50 dollars", 3367.98, 3350],
    ["100 dollars", 3367.98, 3400],
    ["50 dollars", 1225, 1250],
    ["10 dollars", 1224.99, 1220],
  ] as const)("rounds to the %s: %d becomes %d", (rounding, figured, price) => {
    const made = steps(linesOf({ material: figured }), { rounding });
    expect(made).toMatchObject({ total: price });
    expect(made.adjustment).toBeCloseTo(price - figured, 10);
  });

  it("raises the price of a small job to the least charge, and leaves a larger one alone", () => {
    expect(steps(linesOf({ material: 400 }), { minimum: 950 })).toMatchObject({
      adjustment: 550,
      total: 950,
    });
    expect(steps(linesOf({ material: 1200 }), { minimum: 950 })).toMatchObject({
      adjustment: 0,
      total: 1200,
    });
    expect(steps(linesOf({ material: 400 }), { minimum: 955, rounding: "10 dollars" }).total).toBe(960);
  });

  it("lays the tax on what it is on: material cost, the items sold, the whole price, or nothing", () => {
    // Lines of 2200 and 10 % profit make 2420; the taxed 1000 are 10/22 of the lines, so 1100 of the price.
    const taxed = (taxOn: Rates["taxOn"]) => steps(lines, { tax: 8, profit: 10, taxOn });
    expect(taxed("material cost")).toMatchObject({ tax: 80, salesTax: 0, total: 2508 });
    expect(taxed("items sold")).toMatchObject({ tax: 0, salesTax: 88, total: 2508 });
    expect(taxed("whole price")).toMatchObject({ tax: 0, salesTax: 193.6, total: 2613.6 });
    expect(taxed("exempt")).toMatchObject({ tax: 0, salesTax: 0, total: 2420 });
  });

  it("taxes the price that was rounded, and no part of a job without lines", () => {
    const rates = { tax: 10, minimum: 104, rounding: "10 dollars", taxOn: "whole price" } as const;
    expect(steps(linesOf({ material: 50 }, 50), rates)).toMatchObject({
      adjustment: 50,
      salesTax: 10,
      total: 110,
    });
    expect(steps(linesOf({}), { ...rates, taxOn: "items sold" })).toMatchObject({ salesTax: 0, total: 100 });
  });

  it("adds up to the cent whatever the rates, and rounds the price before tax as asked", () => {
    const percent = fc.integer({ min: 0, max: 9000 }).map((n) => n / 100);
    const amount = fc.integer({ min: 0, max: 5_000_000 }).map((n) => n / 100);
    const rates = fc.record({
      burden: percent,
      tax: percent,
      taxOn: fc.constantFrom(...taxBases),
      contingency: percent,
      overhead: percent,
      markups: fc.record({ material: percent, labor: percent, rental: percent, sub: percent }),
      profit: percent,
      profitKind: fc.constantFrom("markup" as const, "margin" as const),
      minimum: amount,
      rounding: fc.constantFrom(...(Object.keys(roundings) as Rounding[])),
    });
    fc.assert(
      fc.property(fc.record({ material: amount, labor: amount, sub: amount }), rates, (some, all) => {
        const made = charge(linesOf(some, some.material), all);
        const { total, salesTax, ...parts } = made;
        expect(Decimal.sum(...Object.values(parts), salesTax).eq(total)).toBe(true);
        expect(total.minus(salesTax).mod(roundings[all.rounding]).toNumber()).toBe(0);
        expect(Object.values(made).every((one) => one.eq(cents(one)))).toBe(true);
      }),
    );
  });
});
