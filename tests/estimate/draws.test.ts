import fc from "fast-check";
import { draws } from "../../src/estimate/draws";
import { messages } from "../../src/estimate/messages";

const halves = [
  { name: "Fence stands", percent: 50 },
  { name: "Sand is spread", percent: 25 },
];

describe("deposit and draws by milestone", () => {
  // Worked by hand: 25 % and 50 % of 4917.33 are 1229.3325 and 2458.665; the last takes the rest.
  it("lists the deposit and each draw to the cent, and leaves the rest to the last", () => {
    expect(draws(4917.33, { percent: 25 }, halves)).toEqual([
      { name: "Deposit", amount: 1229.33 },
      { name: "Fence stands", amount: 2458.67 },
      { name: "Sand is spread", amount: 1229.33 },
    ]);
  });

  it("takes a deposit in dollars, and lists none where there is none", () => {
    expect(draws(1000, { amount: 150.5 }, halves).map(({ amount }) => amount)).toEqual([150.5, 500, 349.5]);
    expect(draws(1000, { percent: 0 }, halves).map(({ name }) => name)).toEqual([
      "Fence stands",
      "Sand is spread",
    ]);
    expect(draws(0, { percent: 10 }, halves).map(({ amount }) => amount)).toEqual([0, 0]);
  });

  it("adds up to the price exactly, whatever the parts", () => {
    const percent = fc.integer({ min: 0, max: 2500 }).map((n) => n / 100);
    const some = fc.array(
      percent.map((one) => ({ name: "part", percent: one })),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90_000_000 }), percent, some, (price, deposit, parts) => {
        const due = draws(price / 100, { percent: deposit > 20 ? 0 : deposit }, parts);
        const sum = due.reduce((all, { amount }) => all + Math.round(amount * 100), 0);
        expect(sum).toBe(price);
        expect(due.every(({ amount }) => amount >= 0)).toBe(true);
      }),
    );
  });

  it("refuses parts that come to more than the price, and what is no percentage", () => {
    expect(() => draws(1000, { percent: 60 }, halves)).toThrow(messages.drawsTooMuch);
    expect(() => draws(1000, { amount: 1000.01 }, halves)).toThrow(messages.depositTooMuch);
    expect(() => draws(1000, { amount: NaN }, halves)).toThrow(messages.depositTooMuch);
    expect(() => draws(1000, { percent: -1 }, halves)).toThrow(messages.drawPercent);
    expect(() => draws(1000, { percent: 0 }, [{ name: "All", percent: 101 }])).toThrow(messages.drawPercent);
    expect(() => draws(1000, { percent: 10 }, [])).toThrow(messages.noDraw);
  });
});
