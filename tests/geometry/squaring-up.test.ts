import fc from "fast-check";
import { cornerMoves } from "../../src/geometry/corner-moves";
import { diagonal } from "../../src/geometry/rounded-rectangle";
import { type MeasuredCorners, squareUp } from "../../src/geometry/squaring-up";
import { METERS_PER_FOOT } from "../../src/units/conversion";

const measured = (sides: MeasuredCorners["sides"], diagonals: [number, number]) => ({ sides, diagonals });
const rectangle = (length: number, width: number, diagonal1: number, diagonal2 = diagonal1) =>
  measured([length, width, length, width], [diagonal1, diagonal2]);

interface Corner {
  east: number;
  north: number;
}
const apart = (a: Corner, b: Corner) => Math.hypot(a.east - b.east, a.north - b.north);
const sixOf = ([a, b, c, d]: Corner[]) =>
  measured([apart(a, b), apart(b, c), apart(c, d), apart(d, a)], [apart(a, c), apart(b, d)]);
const inches = (feet: number) => feet * 12;
const squares = (values: number[]) => values.reduce((sum, value) => sum + value * value, 0);

const size = fc.double({ min: 30, max: 300, noNaN: true });
const slip = fc.double({ min: -1, max: 1, noNaN: true });
const fourCorners = fc
  .tuple(size, size, fc.array(fc.record({ east: slip, north: slip }), { minLength: 4, maxLength: 4 }))
  .map(([length, width, slips]) =>
    [[0, 0], [0, length], [width, length], [width, 0]].map(([east, north], i) => ({
      east: east + slips[i].east,
      north: north + slips[i].north,
    })),
  ); // prettier-ignore

describe("Four sides and two diagonals", () => {
  const published = [
    [
      "G8, published dressage-ring layout tables",
      40 / METERS_PER_FOOT,
      20 / METERS_PER_FOOT,
      44.72 / METERS_PER_FOOT,
      0.01 / METERS_PER_FOOT,
    ],
    ["G9, derived", 120, 60, 134.1641, 1e-3],
    ["G9, derived", 200, 100, 223.6068, 1e-3],
    ["G9, derived", 300, 150, 335.4102, 1e-3],
    ["G9, derived", 200, 150, 250, 1e-3],
  ] as const;

  test.each(published)("%s: %p by %p ft with diagonals %p ft closes, and no corner has to move", (_source, length, width, taped, tolerance) => {
    const { corners, out } = squareUp(rectangle(length, width, taped));
    expect(out).toBeLessThan(2 * tolerance);
    for (const move of cornerMoves(corners, length, width)) expect(move.distance).toBeLessThan(tolerance);
  }); // prettier-ignore

  it("are held to five rectangles", () => expect(published).toHaveLength(5));

  it("G12: 200 by 100 ft with diagonals 223.5 and 223.7 ft has its far long side 1.3416 in along itself (derived)", () => {
    const { corners } = squareUp(rectangle(200, 100, 223.5, 223.7));
    const [first, second, third, fourth] = cornerMoves(corners, 200, 100, "side 1");
    expect(first.distance).toBeLessThan(1e-9);
    // Diagonal 1, from corner 1 to corner 3, is the shorter: the far side slides the way of side 1.
    // The six do not quite close, and sharing that out leaves the figure within a thousandth of an inch.
    const slid = (third.along + fourth.along - second.along) / 2;
    expect(Math.abs(inches(slid) - 1.3416)).toBeLessThan(1e-3);
    // With nothing held, the turn shares the slide among all corners and each moves less.
    for (const move of cornerMoves(corners, 200, 100)) expect(inches(move.distance)).toBeLessThan(1);
  });

  it("are shared out by hand: 30 by 40 with both diagonals 50.2 becomes 30.06 by 40.08 with diagonals 50.1", () => {
    const { corners, corrections, out } = squareUp(rectangle(40, 30, 50.2));
    const exact = [0.08, 0.06, 0.08, 0.06, -0.1, -0.1];
    corrections.forEach((correction, i) => expect(correction).toBeCloseTo(exact[i], 9));
    expect(corners[2]).toEqual({ east: expect.closeTo(30.06, 9), north: expect.closeTo(40.08, 9) });
    expect(out).toBeCloseTo(2 * Math.sqrt(0.04), 9);
    // Each corner goes in by half of what the sides are over.
    const [move] = cornerMoves(corners, 40, 30);
    expect([move.along, move.across]).toEqual([expect.closeTo(0.04, 9), expect.closeTo(0.03, 9)]);
  });

  it("say an error in one diagonal as such, whatever the shape", () => {
    for (const [length, width] of [[40, 30], [200, 100], [300, 60]]) {
      const taped = diagonal(length, width);
      expect(squareUp(rectangle(length, width, taped + 0.1, taped)).out).toBeCloseTo(0.1, 3);
    }
  }); // prettier-ignore

  it("give back any four corners that were measured without error", () => {
    fc.assert(
      fc.property(fourCorners, (corners) => {
        const six = sixOf(corners);
        const found = squareUp(six);
        expect(found.out).toBeLessThan(1e-8);
        const again = sixOf(found.corners);
        [...again.sides, ...again.diagonals].forEach((length, i) =>
          expect(length).toBeCloseTo([...six.sides, ...six.diagonals][i], 8),
        );
      }),
    );
  });

  it("leave no nearby corners that fit better, and the same corrections from whichever corner they are counted", () => {
    const noise = fc.array(fc.double({ min: -0.2, max: 0.2, noNaN: true }), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(fourCorners, noise, fc.integer({ min: 0, max: 7 }), (corners, errors, which) => {
        const { sides, diagonals } = sixOf(corners);
        const six = [...sides, ...diagonals].map((length, i) => length + errors[i]);
        const [s1, s2, s3, s4, d1, d2] = six;
        const found = squareUp(measured([s1, s2, s3, s4], [d1, d2]));
        const nudged = found.corners.map((corner) => ({ ...corner }));
        nudged[which >> 1][which % 2 ? "east" : "north"] += 0.01;
        const other = sixOf(nudged);
        const worse = [...other.sides, ...other.diagonals].map((length, i) => length - six[i]);
        expect(squares(found.corrections)).toBeLessThanOrEqual(squares(worse) + 1e-9);
        const [c1, c2, c3, c4, e1, e2] = found.corrections;
        const turned = squareUp(measured([s2, s3, s4, s1], [d2, d1])).corrections;
        [c2, c3, c4, c1, e2, e1].forEach((value, i) => expect(turned[i]).toBeCloseTo(value, 6));
      }),
    );
  });

  it("that cannot belong together are refused, and so are sides that do not reach", () => {
    expect(() => squareUp(rectangle(200, 100, 223.6, 229))).toThrow(
      /^These six measures cannot belong together: a diagonal would be 5' \d.*" out, over 2 %\. Measure again\.$/,
    );
    expect(() => squareUp(measured([200, 100, 200, 223.6], [223.6, 100]))).toThrow(
      "These six measures cannot belong together: a diagonal would be far out, over 2 %. Measure again.",
    );
    expect(() => squareUp(rectangle(200, 100, 310))).toThrow(
      "Sides 1 and 2 do not reach across diagonal 1: measure these three again.",
    );
    expect(() => squareUp(measured([200, 100, 200, 100], [223.6, 90]))).toThrow(
      "Sides 1 and 4 do not reach across diagonal 2: measure these three again.",
    );
  });
});

describe("How corners move to a true rectangle", () => {
  it("is the least that any turn and shift of the rectangle asks", () => {
    const near = fc.double({ min: -0.5, max: 0.5, noNaN: true });
    fc.assert(
      fc.property(
        fourCorners,
        size,
        size,
        near,
        near,
        near,
        (corners, length, width, east, north, degrees) => {
          const least = squares(cornerMoves(corners, length, width).map((move) => move.distance));
          const held = squares(cornerMoves(corners, length, width, "side 1").map((move) => move.distance));
          expect(least).toBeLessThanOrEqual(held + 1e-9);
          const [sine, cosine] = [Math.sin(degrees / 60), Math.cos(degrees / 60)];
          const middle = [0, 1].map((k) => corners.reduce((sum, c) => sum + (k ? c.north : c.east) / 4, 0));
          const other = [[-1, -1], [-1, 1], [1, 1], [1, -1]].map(([x, y], i) => {
          const [right, up] = [(x * width) / 2, (y * length) / 2];
          return Math.hypot(
            middle[0] + east + right * cosine + up * sine - corners[i].east,
            middle[1] + north + up * cosine - right * sine - corners[i].north,
          );
        }); // prettier-ignore
          expect(least).toBeLessThanOrEqual(squares(other) + 1e-7);
        },
      ),
    );
  });

  it("keeps corner 1 and the line of side 1 where that side is held", () => {
    const corners = [[0, 0], [0, 201], [99, 202], [100.5, 1]].map(([east, north]) => ({ east, north })); // prettier-ignore
    const moves = cornerMoves(corners, 200, 100, "side 1");
    const exact = [[0, 0], [-1, 0], [-2, 1], [-1, -0.5]]; // prettier-ignore
    moves.forEach(({ along, across, distance }, i) => {
      expect([along, across]).toEqual(exact[i].map((value) => expect.closeTo(value, 9)));
      expect(distance).toBeCloseTo(Math.hypot(...exact[i]), 9);
    });
  });
});
