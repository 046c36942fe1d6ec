import { Decimal } from "decimal.js";
import { cents, charge, lineAmount } from "../../src/estimate/charges";

const none = { tax: 0, contingency: 0, overhead: 0, profit: 0, profitKind: "markup" } as const;
const money = (amount: number) => new Decimal(amount);

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
      const { total } = charge(money(cost), money(0), { ...none, profit: percent, profitKind: kind });
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

  it("loses no cent to the noise in a quantity: 325.5 cu yd and 7.5 % waste at 222.80 are 77,960.505", () => {
    expect(325.5 * (1 + 7.5 / 100)).toBeLessThan(349.9125);
    expect(lineAmount(325.5 * (1 + 7.5 / 100), money(222.8)).toFixed(2)).toBe("77960.51");
  });

  it("lays each percentage on the base that its label names", () => {
    const made = charge(money(1000), money(400), {
      tax: 5,
      contingency: 10,
      overhead: 20,
      profit: 50,
      profitKind: "markup",
    });
    expect(Object.values(made).map(String)).toEqual(["1000", "20", "102", "224.4", "673.2", "2019.6"]);
  });
});
