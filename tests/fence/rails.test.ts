import fc from "fast-check";
import { bend } from "../../src/fence/bend";
import { bayLength, postCircle } from "../../src/fence/posts";
import { bayPiece, bestStock, cornerReach, type FenceRun, flushReach, type RailLine, railTakeoff, rowOpenings, STOCK_LENGTHS } from "../../src/fence/rails"; // prettier-ignore
import { round, square } from "../../src/geometry/section";
import { Refusal } from "../../src/units/refusal";

const line = (over: Partial<RailLine> = {}): RailLine => ({
  thickness: 1.5,
  rows: 3,
  post: round(6),
  side: "inside",
  fastenersEach: 3,
  wastePercent: 0,
  ...over,
});
const ring = (bays: number, diameter: number): FenceRun => ({ bays, bay: diameter * Math.sin(Math.PI / bays), radius: diameter / 2, reach: [0, 0], runs: 1 }); // prettier-ignore

describe("Stock on a curve", () => {
  test("of 2x is one bay a piece on a pen, and a 1x bends on a larger one (common practice, no source)", () => {
    expect(bend(1.5, 30).bends).toBe(false);
    expect(bend(1.5, 33).bends).toBe(false);
    expect(bend(0.75, 33).bends).toBe(true);
    expect(bend(1.5, 60).bends).toBe(true);
  });

  test("is decided by how many times its thickness the radius is, and says so", () => {
    expect(bend(1.5, 30).sentence).toBe(
      "One bay a piece: a radius of 30 ft is 240 times the 1 1/2 in of the stock, and it is taken to bend by hand from 400 times on.",
    );
    expect(bend(0.75, 30).sentence).toMatch(/^Pieces follow the curve over several bays: .* is 480 times the 3\/4 in/); // prettier-ignore
    expect(bend(1.5, 50).bends).toBe(true);
    expect(bend(1.5, 49.9).bends).toBe(false);
    expect(bend(1.5, 30, 240).bends).toBe(true);
  });
});

describe("A piece of a bay", () => {
  test("on a straight is the bay, and nothing is decided", () => {
    const piece = bayPiece({ bays: 10, bay: 8, reach: [0, 0], runs: 1 }, line());
    expect(piece).toEqual({ length: 8, shortFace: 8, bevel: 0, spans: true });
  });

  test("inside a pen's posts is shorter than the bay, outside longer, at its longer face", () => {
    const run = ring(24, 60);
    const inside = bayPiece(run, line());
    expect(inside.length).toBeCloseTo(2 * 29.75 * Math.sin(Math.PI / 24), 12);
    expect(inside.bevel).toBeCloseTo(7.5, 12);
    const outside = bayPiece(run, line({ side: "outside" }));
    const back = 30 * Math.cos(Math.PI / 24) + 0.25;
    expect(outside.length).toBeCloseTo(2 * (back + 0.125) * Math.tan(Math.PI / 24), 12);
    expect(outside.shortFace).toBeCloseTo(2 * back * Math.tan(Math.PI / 24), 12);
    expect(inside.spans || outside.spans).toBe(false);
  });

  test("that bends is the arc along its middle", () => {
    const piece = bayPiece(ring(24, 60), line({ thickness: 0.75 }));
    expect(piece.spans).toBe(true);
    expect(piece.length).toBeCloseTo(((2 * Math.PI) / 24) * (30 - 0.25 - 0.375 / 12), 12);
  });

  test("closes the ring: the pieces' faces meet on the lines through the posts", () => {
    fc.assert(
      fc.property(fc.integer({ min: 6, max: 36 }), fc.constantFrom("inside" as const, "outside" as const), (bays, side) => {
        const piece = bayPiece(ring(bays, bays * 2.5), line({ side }));
        const apart = (piece.length - piece.shortFace) / (2 * Math.tan((piece.bevel * Math.PI) / 180));
        expect(apart).toBeCloseTo(1.5 / 12, 9);
      }),
    );
  }); // prettier-ignore
});

describe("A line of boards", () => {
  test("around the handbook's 66 ft pen of 29 bays is one bay a piece, two to a 16 ft board (G14; the split is derived)", () => {
    const pen = { diameter: 66, spacing: 7, gates: [5.5], gatePost: 0 };
    const run: FenceRun = { bays: postCircle(pen).bays, bay: bayLength(pen), radius: 33, reach: [0, 0], runs: 1 };
    const found = railTakeoff([run], line(), 16);
    expect(found).toMatchObject({ cut: 44, buy: 44, pieces: 87, fasteners: 3 * 2 * 87 });
    expect(found.runs[0].bend!.sentence).toMatch(/^One bay a piece/);
    expect(railTakeoff([run], line({ wastePercent: 10 }), 16)).toMatchObject({ cut: 44, buy: 49 });
  }); // prettier-ignore

  test("on the straights of an arena spans bays and needs fewer fasteners", () => {
    const sides: FenceRun[] = [
      { bays: 24, bay: 8, reach: [0, 0], runs: 2 },
      { bays: 12, bay: 8, reach: [0, 0], runs: 2 },
    ];
    expect(railTakeoff(sides, line({ rows: 4 }), 16)).toMatchObject({ cut: 144, pieces: 144, fasteners: 3 * 3 * 144 }); // prettier-ignore
    expect(railTakeoff(sides, line({ rows: 1, fastenersEach: 2 }), 8)).toMatchObject({ cut: 72, fasteners: 2 * 2 * 72 }); // prettier-ignore
  });

  test("follows an arena's rounded corner where the stock bends, straight and curve each with its own cuts", () => {
    const sides: FenceRun[] = [
      { bays: 20, bay: 8, reach: [0, 0], runs: 2 },
      { bays: 4, bay: 7.5, radius: 20, reach: [0, 0], runs: 4 },
    ];
    const stiff = railTakeoff(sides, line(), 16);
    expect(stiff.runs[1].cuts).toHaveLength(1);
    expect(stiff.runs[1].cuts[0].pieces.map(({ bays }) => bays)).toEqual([1, 1]);
    const thin = railTakeoff(sides, line({ thickness: 0.5 }), 16);
    expect(thin.runs[1].cuts).toEqual([{ count: 24, pieces: [{ bays: 2, length: expect.any(Number) }] }]);
  });

  test("takes the stock of which the fewest feet are bought, then the fewest pieces", () => {
    const side: FenceRun = { bays: 24, bay: 8, reach: [0, 0], runs: 1 };
    expect(bestStock([side], line()).stock).toBe(16);
    expect(bestStock([{ ...side, bay: 6.9 }], line()).stock).toBe(14);
    fc.assert(
      fc.property(
        fc.integer({ min: 4, max: 40 }),
        fc.double({ min: 5, max: 8, noNaN: true }),
        (bays, bay) => {
          const best = bestStock([{ ...side, bays, bay }], line());
          for (const stock of STOCK_LENGTHS.filter((one) => one >= bay))
            expect(best.buy * best.stock).toBeLessThanOrEqual(
              railTakeoff([{ ...side, bays, bay }], line(), stock).buy * stock,
            );
        },
      ),
      { numRuns: 30 },
    );
  });

  test("that no stock reaches is refused, and the bay said", () => {
    const wide: FenceRun = { bays: 4, bay: 21, reach: [0, 0], runs: 1 };
    expect(() => bestStock([wide], line())).toThrow(/stock of 20 ft does not reach over a bay of 21 ft/);
    expect(() => bestStock([wide], line(), [])).toThrow("list at least one length of stock");
    expect(() => bestStock([wide], line(), [])).toThrow(Refusal);
  });
});

describe("The ends of a run", () => {
  test("are flush with the gate post's face", () => expect(flushReach(square(5.5))).toBeCloseTo(2.75 / 12, 12));

  test("at a square corner close it: one side covers the other's end, outside and inside", () => {
    const outside = line({ post: square(5.5), side: "outside" });
    expect(12 * cornerReach(outside, true)).toBeCloseTo(2.75 + 1.5, 12);
    expect(12 * cornerReach(outside, false)).toBeCloseTo(2.75, 12);
    const inside = line({ post: square(5.5), side: "inside" });
    expect(12 * cornerReach(inside, true)).toBeCloseTo(-2.75, 12);
    expect(12 * cornerReach(inside, false)).toBeCloseTo(-2.75 - 1.5, 12);
  });
}); // prettier-ignore

describe("Rows of boards", () => {
  test("leave openings from the ground up, a kick board at the foot counted", () => {
    const rows = [{ top: 60, height: 5.5 }, { top: 9.25, height: 9.25 }, { top: 40, height: 5.5 }, { top: 20, height: 5.5 }]; // prettier-ignore
    expect(rowOpenings(rows)).toEqual([0, 5.25, 14.5, 14.5]);
    expect(rowOpenings([])).toEqual([]);
  });

  test("that overlap or stand in the ground are refused", () => {
    expect(() => rowOpenings([{ top: 20, height: 5.5 }, { top: 24, height: 5.5 }])).toThrow("rows: the one at 2 ft overlaps what is below it, up to 1 ft 8 in"); // prettier-ignore
    expect(() => rowOpenings([{ top: 5, height: 5.5 }])).toThrow(Refusal);
  });
});
