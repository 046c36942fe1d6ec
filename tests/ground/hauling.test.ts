import fc from "fast-check";
import { loads, type Truck } from "../../src/ground/hauling";
import { circleArea } from "../../src/geometry/circle";
import { fill } from "../../src/ground/footing";
import { Refusal } from "../../src/units/refusal";
import { costOf, deliveredBy, jobs, loadsOf } from "./jobs";

const sizes = (...all: number[]): Truck[] => all.map((size) => ({ size }));
const priced = (...all: [size: number, price: number | undefined][]): Truck[] =>
  all.map(([size, price]) => ({ size, price }));

describe("Truck loads", () => {
  test("V9: 160.494 cubic yards in 10-yard trucks, nothing short, are 17 loads (derived)", () => {
    expect(loads(160.494, sizes(10))).toEqual([17]);
  });

  test("one 20 and one 14 serve a 60 ft pen of 4 in with 5 % short (common practice, no source)", () => {
    expect(loads(fill(circleArea(60), 4), sizes(20, 14, 8), 5)).toEqual([1, 1, 0]);
  });

  test("n loads' worth are n loads, for n to 400", () => {
    for (const size of [0.1, 0.7, 8.3, 14.4, 1 / 0.15])
      for (let n = 0; n <= 400; n++) expect(loads(n * size, sizes(size))).toEqual([n]);
  });

  test("nothing needed is no load of any", () => expect(loads(0, sizes(16, 10))).toEqual([0, 0]));

  test("of a size that is not there are none", () => expect(loads(37, sizes(0, 10), 5)).toEqual([0, 4]));

  test("are the fewest, then the nearest to the need, then the greater volume", () => {
    expect(loads(30, sizes(16, 10))).toEqual([2, 0]);
    expect(loads(24, sizes(16, 10))).toEqual([1, 1]);
    expect(loads(20, sizes(12, 9, 11))).toEqual([0, 1, 1]);
    expect(loads(20, sizes(18, 22), 10)).toEqual([0, 1]);
  });

  test("are more of the larger, then of the earlier listed, where nothing else parts them", () => {
    expect(loads(20, sizes(8, 12, 10))).toEqual([1, 1, 0]);
    expect(loads(20, sizes(10, 10))).toEqual([2, 0]);
  });

  test("with prices are the cheapest, then the fewest", () => {
    expect(loads(30, priced([10, 100], [15, 200]))).toEqual([3, 0]);
    expect(loads(30, priced([10, 100], [15, 150]))).toEqual([0, 2]);
    expect(loads(20, priced([10, 100], [10, 90]))).toEqual([0, 2]);
  });

  test("leave out a truck without a price beside others that have one", () => {
    expect(loads(30, priced([20, undefined], [10, 100]))).toEqual([0, 3]);
  });

  test("of no truck at all are refused without an answer", () => {
    expect(() => loads(30, [])).toThrow(expect.objectContaining({ kind: "answer" }));
    expect(() => loads(30, sizes(0))).toThrow(/no truck is offered/);
  });

  test("that would take too long to prove are refused, with what to do about it", () => {
    const odd = priced([20.1, 402], [14.23, 284.6], [10.77, 215.4], [8.51, 170.2], [6.3701, 127.402]);
    expect(() => loads(123456.7, odd)).toThrow(Refusal);
    expect(() => loads(123456.7, odd)).toThrow(/give fewer or rounder truck sizes/);
  });

  test("take a pit's one price a yard: the least volume that is enough, then the fewest loads", () => {
    const trucks = priced([20, 400], [14.25, 285], [10.75, 215], [8.5, 170]);
    const counts = loads(1234.7, trucks, 3);
    expect(deliveredBy(trucks, counts)).toBe(1197.75);
    for (let a = 0; a <= 59; a++)
      for (let b = 0; b <= 84; b++)
        for (let c = 0; c <= 111; c++) {
          const d = (1197.75 - 20 * a - 14.25 * b - 10.75 * c) / 8.5;
          if (d >= 0 && Number.isInteger(d)) expect(a + b + c + d).toBeGreaterThanOrEqual(loadsOf(counts));
        }
  });

  test("are never under the limit", () => {
    fc.assert(
      fc.property(jobs(600, 5), ({ need, trucks, short }) => {
        const delivered = deliveredBy(trucks, loads(need, trucks, short));
        expect(delivered).toBeGreaterThanOrEqual(need * (1 - short / 100) - 1e-9 * Math.max(1, need));
      }),
      { numRuns: 1000 },
    );
  });

  test("are never beaten by exhaustive search on small jobs", () => {
    fc.assert(
      fc.property(jobs(45, 4), ({ need, trucks, short }) => {
        expect(loads(need, trucks, short)).toEqual(exhaustive(need, trucks, short));
      }),
      { numRuns: 400 },
    );
  });
});

/** The best of all ways, in the stated order, by trying every one; the last tie takes more of the larger, then of the earlier. */
function exhaustive(need: number, trucks: readonly Truck[], short: number): number[] {
  const limit = need * (1 - short / 100) - 1e-9;
  const order = trucks.map((_, k) => k).sort((a, b) => trucks[b].size - trucks[a].size || a - b);
  const rank = (counts: readonly number[]) => {
    const delivered = deliveredBy(trucks, counts);
    return [costOf(trucks, counts), loadsOf(counts), Math.abs(delivered - need), -delivered, ...order.map((k) => -counts[k])];
  }; // prettier-ignore
  let best: number[] | undefined;
  const counts = trucks.map(() => 0);
  const visit = (k: number): void => {
    if (k === trucks.length) {
      if (deliveredBy(trucks, counts) >= limit && (!best || isLess(rank(counts), rank(best))))
        best = [...counts];
      return;
    }
    for (counts[k] = 0; counts[k] <= Math.ceil(need / trucks[k].size); counts[k]++) visit(k + 1);
    counts[k] = 0;
  };
  visit(0);
  return best!;
}

function isLess(a: readonly number[], b: readonly number[]): boolean {
  const differing = a.findIndex((x, k) => Math.abs(x - b[k]) > 1e-9);
  return differing >= 0 && a[differing] < b[differing];
}
