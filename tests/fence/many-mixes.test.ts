import fc from "fast-check";
import { addExtremeInSteps } from "../../src/fence/extreme-mixes";
import { addNearestOfHalves } from "../../src/fence/half-mixes";
import { addNearestOnLattice } from "../../src/fence/lattice-mixes";
import { countsOf, panelClasses, ranking } from "../../src/fence/mix-classes";
import { type Search, type Side } from "../../src/fence/mix-search";
import { addNearestInSteps } from "../../src/fence/stepped-mixes";
import { aroundYardstick, circleYardstick } from "../../src/fence/yardstick";

interface Job {
  lengths: number[];
  stock: number[];
  gates: number[];
  wanted: number;
  many: number;
}

/** The search of a pen by its pin circle or its distance around. */
function searchOf({ lengths, stock, gates, wanted, many }: Job, side: Side, by: "pin" | "around"): Search {
  const listed = lengths.map((chord, k) => ({
    chord,
    price: 0,
    most: Math.min(stock[k], Math.ceil((4 * wanted) / chord)),
  }));
  const ranks = ranking(listed);
  const yardstick = by === "around" ? aroundYardstick : circleYardstick(wanted, [...lengths, ...gates]);
  const weight = gates.reduce((sum, gate) => sum + yardstick.weigh(gate), 0);
  const target = yardstick.range(wanted).least;
  return {
    given: { weight, cost: 0, count: 0, rank: 0 },
    classes: panelClasses(listed, ranks),
    yardstick,
    side,
    wanted,
    limit: target * (1 + (2 * Math.max(...lengths)) / wanted),
    surelyPens: true,
    keep: by === "around" ? many : Infinity,
    sizeOf: (rank) => {
      const counts = countsOf(rank, ranks);
      const panels = lengths.map((length, k) => ({ length, count: counts[k] }));
      return yardstick.size([...panels, ...gates.map((length) => ({ length, count: 1 }))]);
    },
    best: [],
    many,
  };
}

const found = (search: Search, add: (search: Search) => unknown) => {
  const did = add(search);
  return { did, ranks: search.best.map(({ rank }) => rank), sizes: search.best.map(({ size }) => size) };
};

const jobs = (length: fc.Arbitrary<number>, many: fc.Arbitrary<number>): fc.Arbitrary<Job> =>
  fc.record({
    lengths: fc.uniqueArray(length, { minLength: 6, maxLength: 6 }),
    stock: fc.array(fc.oneof(fc.constant(1000), fc.integer({ min: 25, max: 60 })), {
      minLength: 6,
      maxLength: 6,
    }),
    gates: fc.array(fc.constantFrom(4, 6, 8, 10), { maxLength: 4 }),
    wanted: fc.double({ min: 90, max: 130, noNaN: true }),
    many,
  });

describe("the ways past running halves of all mixes against each other", () => {
  it("find on a lattice what the halves hold, above and below a pin circle", () => {
    const length = fc.oneof(
      fc.double({ min: 4, max: 6, noNaN: true }),
      fc.integer({ min: 4 * 48, max: 6 * 48 }).map((quarters) => quarters / 48),
    );
    let walked = 0;
    fc.assert(
      fc.property(
        jobs(length, fc.constantFrom(1, 3)),
        fc.constantFrom("above", "below"),
        (job, side: Side) => {
          const lattice = found(searchOf(job, side, "pin"), addNearestOnLattice);
          if (lattice.did !== true) return;
          walked++;
          expect(lattice.ranks).toEqual(found(searchOf(job, side, "pin"), addNearestOfHalves).ranks);
        },
      ),
      { numRuns: 25 },
    );
    expect(walked).toBeGreaterThan(12);
  });

  it("find in steps the mix of fewest panels, where lengths are multiples of one", () => {
    const length = fc.integer({ min: 4 * 24, max: 8 * 24 }).map((halves) => halves / 24);
    let stepped = 0;
    fc.assert(
      fc.property(jobs(length, fc.constant(1)), fc.constantFrom("either", "below"), (job, side: Side) => {
        const steps = found(searchOf(job, side, "around"), addNearestInSteps);
        if (steps.did !== true) return;
        stepped++;
        const halves = found(searchOf(job, side, "around"), addNearestOfHalves);
        expect(steps.ranks).toEqual(halves.ranks);
        expect(steps.sizes[0]).toBeCloseTo(halves.sizes[0], 9);
      }),
      { numRuns: 25 },
    );
    expect(stepped).toBeGreaterThan(20);
  });

  it("find the heaviest or lightest of a length around, where the circle lies between two lengths", () => {
    const length = fc.integer({ min: 7, max: 12 }).map((halves) => halves / 2);
    let extreme = 0;
    fc.assert(
      fc.property(jobs(length, fc.constant(1)), fc.constantFrom("above", "below"), (job, side: Side) => {
        const ends = found(searchOf(job, side, "pin"), addExtremeInSteps);
        if (ends.did !== true) return;
        extreme++;
        expect(ends.ranks).toEqual(found(searchOf(job, side, "pin"), addNearestOfHalves).ranks);
      }),
      { numRuns: 25 },
    );
    expect(extreme).toBeGreaterThan(10);
  });

  it("leave to the halves what they cannot do", () => {
    const few: Job = { lengths: [12, 10, 8], stock: [99, 99, 99], gates: [], wanted: 60, many: 1 };
    expect(found(searchOf(few, "below", "pin"), addNearestOnLattice)).toMatchObject({
      did: false,
      ranks: [],
    });
    const odd = { ...few, lengths: [12, 10 * Math.SQRT2, 8] };
    expect(found(searchOf(odd, "either", "around"), addNearestInSteps)).toMatchObject({
      did: false,
      ranks: [],
    });
    expect(found(searchOf(few, "below", "pin"), addNearestInSteps)).toMatchObject({ did: false, ranks: [] });
  });
});
