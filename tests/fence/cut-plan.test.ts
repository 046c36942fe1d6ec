import fc from "fast-check";
import { type BayRun, cutRun, type StockCut } from "../../src/fence/cut-plan";
import { Refusal } from "../../src/units/refusal";

const counted = (cuts: readonly StockCut[]) => cuts.reduce((sum, { count }) => sum + count, 0);
const overPieces = (cuts: readonly StockCut[], of: (piece: { bays: number; length: number }) => number) =>
  cuts.reduce((sum, { count, pieces }) => sum + count * pieces.reduce((part, piece) => part + of(piece), 0), 0); // prettier-ignore

/** The fewest lengths of stock by trying every way to fill one with firsts, lasts and middles, and then the next. */
function exhaustive({ bays, bay, reach, rows }: BayRun, stock: number): number {
  const lengths = bays === 1 ? [bay + reach[0] + reach[1]] : [bay + reach[0], bay + reach[1], bay];
  const known = new Map<string, number>();
  const least = (left: number[]): number => {
    if (left.every((one) => one === 0)) return 0;
    const key = left.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = Infinity;
    const fill = (kind: number, room: number, rest: number[], any: boolean): void => {
      if (kind === lengths.length) {
        if (any) best = Math.min(best, 1 + least(rest));
        return;
      }
      for (let n = 0; n <= rest[kind] && n * lengths[kind] <= room + 1e-9; n++)
        fill(kind + 1, room - n * lengths[kind], rest.map((one, k) => (k === kind ? one - n : one)), any || n > 0); // prettier-ignore
    };
    fill(0, stock, left, false);
    known.set(key, best);
    return best;
  };
  return least(bays === 1 ? [rows] : [rows, rows, rows * (bays - 2)]);
}

const anyRun: fc.Arbitrary<{ run: BayRun; stock: number; spans: boolean }> = fc.record({
  run: fc.record({
    bays: fc.integer({ min: 1, max: 6 }),
    bay: fc.double({ min: 2, max: 9, noNaN: true }),
    reach: fc.tuple(fc.double({ min: -0.5, max: 0.5, noNaN: true }), fc.double({ min: -0.5, max: 0.5, noNaN: true })), // prettier-ignore
    rows: fc.integer({ min: 1, max: 4 }),
  }),
  stock: fc.constantFrom(10, 12, 14, 16, 20),
  spans: fc.boolean(),
});

describe("A cut list", () => {
  test("of like bays buys as many lengths as hold all the bays, floor(stock / bay) in each", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 60 }), fc.integer({ min: 1, max: 6 }), fc.double({ min: 4, max: 8, noNaN: true }), fc.constantFrom(8, 10, 12, 14, 16, 18, 20), (bays, rows, bay, stock) => {
        const cuts = cutRun({ bays, bay, reach: [0, 0], rows }, stock, true);
        expect(counted(cuts)).toBe(Math.ceil((bays * rows) / Math.floor(stock / bay + 1e-8)));
      }),
    );
  }); // prettier-ignore

  test("of bays whose ends reach farther or less far buys the fewest there are, by exhaustive trial", () => {
    fc.assert(
      fc.property(anyRun, ({ run, stock, spans }) => {
        fc.pre(run.bay + Math.abs(run.reach[0]) + Math.abs(run.reach[1]) <= stock);
        expect(counted(cutRun(run, stock, spans))).toBe(exhaustive(run, stock));
      }),
    );
  });

  test("covers every bay once, fits its stock, and cuts all that the run is long", () => {
    fc.assert(
      fc.property(anyRun, ({ run, stock, spans }) => {
        fc.pre(run.bay + Math.abs(run.reach[0]) + Math.abs(run.reach[1]) <= stock);
        const cuts = cutRun(run, stock, spans);
        expect(overPieces(cuts, ({ bays }) => bays)).toBe(run.bays * run.rows);
        expect(overPieces(cuts, ({ length }) => length)).toBeCloseTo(
          run.rows * (run.bays * run.bay + run.reach[0] + run.reach[1]),
          6,
        );
        for (const { pieces } of cuts) {
          expect(pieces.reduce((sum, { length }) => sum + length, 0)).toBeLessThanOrEqual(stock + 1e-6);
          for (const piece of pieces) expect(piece.bays).toBeLessThanOrEqual(spans ? run.bays : 1);
        }
      }),
    );
  });

  test("keeps bays side by side in one piece where pieces span, and one bay a piece where not", () => {
    const run: BayRun = { bays: 4, bay: 8, reach: [0, 0], rows: 3 };
    expect(cutRun(run, 16, true)).toEqual([{ count: 6, pieces: [{ bays: 2, length: 16 }] }]);
    expect(cutRun(run, 16, false)).toEqual([{ count: 6, pieces: [{ bays: 1, length: 8 }, { bays: 1, length: 8 }] }]); // prettier-ignore
  });

  test("goes on with what is left of a length in the next row", () => {
    expect(cutRun({ bays: 3, bay: 8, reach: [0, 0], rows: 2 }, 16, true)).toEqual([
      { count: 2, pieces: [{ bays: 2, length: 16 }] },
      { count: 1, pieces: [{ bays: 1, length: 8 }, { bays: 1, length: 8 }] },
    ]); // prettier-ignore
  });

  test("spans a whole short row with both its ends in one piece", () => {
    expect(cutRun({ bays: 2, bay: 7.5, reach: [0.25, 0.25], rows: 3 }, 16, true)).toEqual([
      { count: 3, pieces: [{ bays: 2, length: 15.5 }] },
    ]);
  });

  test("leaves the longest pieces beside the ends that as few lengths allow", () => {
    const cuts = cutRun({ bays: 4, bay: 7.5, reach: [0.25, 0.25], rows: 2 }, 16, true);
    expect(cuts).toEqual([{ count: 4, pieces: [{ bays: 2, length: 15.25 }] }]);
    const odd = cutRun({ bays: 3, bay: 7.5, reach: [0.25, 0.25], rows: 2 }, 16, true);
    expect(counted(odd)).toBe(3);
    expect(overPieces(odd, () => 1)).toBe(4);
  });

  test("of many rows of a long run is found", () => {
    const cuts = cutRun({ bays: 150, bay: 7.9, reach: [0.25, 0.25], rows: 24 }, 16, true);
    expect(overPieces(cuts, ({ bays }) => bays)).toBe(3600);
    expect(counted(cuts)).toBe(1824);
  });

  test("of stock that does not reach over a bay is refused, and the bay's length said", () => {
    const short = (run: Partial<BayRun>) => () => cutRun({ bays: 3, bay: 8, reach: [0, 0], rows: 1, ...run }, 8, true); // prettier-ignore
    expect(short({})).not.toThrow();
    expect(short({ bay: 8.25 })).toThrow(Refusal);
    expect(short({ bay: 8.25 })).toThrow("stock of 8 ft does not reach over a bay of 8 ft 3 in");
    expect(short({ reach: [0.25, 0] })).toThrow("over a bay of 8 ft 3 in");
    expect(short({ bays: 1, reach: [0, 0.5] })).toThrow("over a bay of 8 ft 6 in");
  });

  test("of more bays than a fence has, or of none, is refused", () => {
    const run: BayRun = { bays: 3, bay: 8, reach: [0, 0], rows: 1 };
    expect(() => cutRun({ ...run, bays: 1e9 }, 16, true)).toThrow(
      "over 100000 bays of boards: check the spacing",
    );
    expect(() => cutRun({ ...run, reach: [-8, 0] }, 16, true)).toThrow(/leave nothing of a bay/);
    expect(() => cutRun({ ...run, bays: 1, reach: [-4, -4] }, 16, true)).toThrow(Refusal);
  });
});
