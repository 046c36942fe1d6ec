import fc from "fast-check";
import { pointsWithin, type Region, type Vector } from "../../src/geometry/lattice";

const BOUND = 12;

/** Every whole combination with coefficients up to a bound either way, tried one by one. */
function tried(basis: readonly Vector[], { center, distance, least, most }: Region): string[] {
  const found: string[] = [];
  const walk = (counts: number[]): void => {
    if (counts.length < basis.length) {
      for (let n = -BOUND; n <= BOUND; n++) walk([...counts, n]);
      return;
    }
    const point = center.map((_, i) => basis.reduce((sum, vector, k) => sum + counts[k] * vector[i], 0));
    const isIn = point.every((x, i) => x >= least[i] && x <= most[i]);
    if (isIn && Math.hypot(...point.map((x, i) => x - center[i])) <= distance) found.push(counts.join(" "));
  };
  walk([]);
  return found.sort();
}

const inside = (basis: readonly Vector[], region: Region, room = 1e6, most = Infinity) => {
  const found: string[] = [];
  const isWhole = pointsWithin(basis, region, room, (counts) => {
    found.push(counts.map((n) => n + 0).join(" "));
    return found.length < most;
  });
  return { isWhole, found: found.sort() };
};

const grown = ({ center, distance, least, most }: Region, by: number): Region => ({
  center,
  distance: distance + by,
  least: least.map((x) => x - by),
  most: most.map((x) => x + by),
});

// Each vector leans toward its own place so far that no combination with a coefficient past the bound is near.
const skewed = (size: number) =>
  fc
    .array(fc.array(fc.integer({ min: -1, max: 1 }), { minLength: size, maxLength: size }), {
      minLength: size,
      maxLength: size,
    })
    .map((rows) =>
      rows.map((row, k) => row.map((x, i) => (i === k ? x + Math.sign(x || 1) * 4.3 : x) * 0.7)),
    );

describe("pointsWithin", () => {
  it("gives each point that trying all of them gives, once, but for the rim", () => {
    const spread = { min: -5, max: 5, noNaN: true };
    const cases = fc.integer({ min: 1, max: 3 }).chain((size) =>
      fc.record({
        basis: skewed(size),
        center: fc.array(fc.double(spread), { minLength: size, maxLength: size }),
        distance: fc.double({ min: 1, max: 10, noNaN: true }),
        least: fc.array(fc.double({ min: -20, max: -2, noNaN: true }), { minLength: size, maxLength: size }),
        most: fc.array(fc.double({ min: 2, max: 20, noNaN: true }), { minLength: size, maxLength: size }),
      }),
    );
    let points = 0;
    fc.assert(
      fc.property(cases, ({ basis, ...region }) => {
        const { isWhole, found } = inside(basis, region);
        const [surely, atMost] = [-1e-9, 1e-9].map((by) => tried(basis, grown(region, by)));
        expect(isWhole).toBe(true);
        expect(found).toEqual(expect.arrayContaining(surely));
        expect(atMost).toEqual(expect.arrayContaining(found));
        expect(new Set(found).size).toBe(found.length);
        points += surely.length;
      }),
      { numRuns: 60 },
    );
    expect(points).toBeGreaterThan(60);
  });

  it("finds the few points of a thin slab of a steep lattice", () => {
    // 5a + 3b is 0, 1 or -1 for these alone of the pairs within 12 of nothing (worked by hand).
    const basis = [
      [1, 0, 5000],
      [0, 1, 3000],
    ];
    const region = { center: [0, 0, 0], distance: 1500, least: [-5, -5, -1500], most: [5, 5, 1500] };
    expect(inside(basis, region).found).toEqual(
      ["-1 2", "-2 3", "-3 5", "0 0", "1 -2", "2 -3", "3 -5"].sort(),
    );
  });

  it("says when there is more than the room that was given or the call takes", () => {
    const basis = [
      [1, 0],
      [0, 1],
    ];
    const region = { center: [0, 0], distance: 5, least: [-5, -5], most: [5, 5] };
    expect(inside(basis, region).isWhole).toBe(true);
    expect(inside(basis, region, 20).isWhole).toBe(false);
    expect(inside(basis, region, 1e6, 3)).toMatchObject({ isWhole: false, found: { length: 3 } });
  });
});
