import fc from "fast-check";
import { type RoundFence, type StraightFence } from "../../src/fence/fence-line";
import { TURNING_ROOM } from "../../src/fence/turning-room";
import { CLOSED_GAP, wedgesBetween, type Wedge } from "../../src/fence/wedges";
import { wedgesAlong } from "../../src/fence/wedges-along";
import { contactOn, convexOutline, cornered, grown, holds } from "../../src/geometry/convex-outline";
import { type Point, distance, turned } from "../../src/geometry/point";
import { roundedOutline } from "../../src/geometry/rounded-outline";
import { away, run } from "./fences";

const arena = (cornerRadius: number, bearing = 0, length = 200, width = 100) =>
  convexOutline(roundedOutline({ length, width, cornerRadius }, bearing).pieces);

/** Whether a ball of this width comes by along the whole outline without the fence in its way, tried at many places. */
function comesBy(outline: ReturnType<typeof arena>, fence: StraightFence, width: number): boolean {
  return grown(outline, width / 2).every((piece) =>
    Array.from({ length: 60 }, (_, k) => contactOn(piece, k / 60)).every(
      ({ place }) => away(place, fence) >= width / 2 - 1e-9,
    ),
  );
}

describe("wedges along an arena", () => {
  it("are a passage beside a parallel fence that is nearer than a horse can turn in, and none beyond", () => {
    const [passage, ...others] = wedgesAlong(arena(0), run(-58, -60, -58, 40));
    expect(others).toEqual([]);
    expect(passage).toMatchObject({ narrowest: 8, passage: true });
    // A ball of 10 ft passes the ends of the run at 3 ft before and behind: 5² = 3² + 4².
    expect(passage.first.length).toBeCloseTo(100 + 2 * 4, 6);
    expect(passage.second.length).toBeCloseTo(100, 6);
    expect(wedgesAlong(arena(0), run(-60, -60, -60, 40))).toEqual([]);
    expect(wedgesAlong(arena(0), run(-58, -60, -58, 40), 8)).toEqual([]);
  });

  it("lie to both sides of a fence that comes in at a slant, longer on the side of the sharp corner", () => {
    // At 30 degrees to the side a ball of w ft stands w / 2 / tan 15° from the corner.
    const slant = run(-50, 0, -50 - 100 * Math.sin(Math.PI / 6), 100 * Math.cos(Math.PI / 6));
    const wedges = wedgesAlong(arena(0), slant);
    expect(wedges).toHaveLength(1);
    const length = (TURNING_ROOM - CLOSED_GAP) / 2 / Math.tan(Math.PI / 12);
    expect(wedges[0]).toMatchObject({ narrowest: CLOSED_GAP, passage: false });
    expect(wedges[0].first.length).toBeCloseTo(length, 6);
    expect(wedges[0].second.length).toBeCloseTo(length, 6);
  });

  it("are none where a fence meets a side or goes on from a corner squarely", () => {
    expect(wedgesAlong(arena(0), run(-50, 20, -150, 20))).toEqual([]);
    expect(wedgesAlong(arena(0), run(-50, 100, -50, 200))).toEqual([]);
    expect(wedgesAlong(arena(0), run(-50, 100, -150, 100))).toEqual([]);
    expect(wedgesAlong(arena(20), run(0, 100, 0, 200))).toEqual([]);
  });

  it("lie beside rounded corners that a straight fence touches", () => {
    const found = wedgesAlong(arena(20), run(-50, -100, -50, 100));
    expect(found).toHaveLength(2);
    for (const { passage, first } of found) {
      expect(passage).toBe(false);
      expect(first.length).toBeGreaterThan(10);
    }
  });

  it("are those of a round pen where the outline is round, whatever is beside it", () => {
    const radius = 30;
    const outline = arena(radius, 0, 2 * radius, 2 * radius);
    const first: RoundFence = { center: { east: 0, north: 0 }, diameter: 2 * radius };
    const beside = fc.record({
      off: fc.double({ min: 1, max: 9, noNaN: true }),
      turn: fc.double({ min: 0, max: 360, noNaN: true }),
      other: fc.double({ min: 10, max: 80, noNaN: true }),
    });
    fc.assert(
      fc.property(beside, ({ off, turn, other }) => {
        const center = turned({ east: radius + off + other / 2, north: 0 }, turn);
        const ends = [-200, 200].map((north) => turned({ east: radius + off, north }, turn));
        for (const fence of [{ center, diameter: other }, { from: ends[0], to: ends[1] }]) {
          const [ours, theirs] = [wedgesAlong(outline, fence), wedgesBetween(first, fence)];
          expect(ours).toHaveLength(1);
          expect(ours[0].narrowest).toBeCloseTo(theirs[0].narrowest, 6);
          expect(ours[0].first.length).toBeCloseTo(theirs[0].first.length, 5);
          expect(ours[0].second.length).toBeCloseTo(theirs[0].second.length, 5);
        }
      }),
      { numRuns: 25 },
    );
  });

  it("end where a ball as wide as a horse turns in touches both fences, over random arenas and runs", () => {
    const place = fc.record({
      east: fc.double({ min: -150, max: 150, noNaN: true }),
      north: fc.double({ min: -150, max: 150, noNaN: true }),
    });
    let found = 0;
    fc.assert(
      fc.property(place, place, fc.constantFrom(0, 12, 50), fc.integer({ min: 0, max: 359 }), (from, to, radius, bearing) => {
        fc.pre(distance(from, to) > 1);
        const outline = arena(radius, bearing);
        fc.pre(!(holds(outline, from) && holds(outline, to)));
        const wedges = wedgesAlong(outline, { from, to });
        found += wedges.length;
        for (const wedge of wedges) {
          for (const [a, b] of wedge.across!.slice(1, -1)) expect(distance(a, b)).toBeLessThan(TURNING_ROOM + 1e-6);
          for (const end of wedge.passage ? ([0, -1] as const) : ([-1] as const)) expectBall(wedge, end, { from, to });
        }
        const open = !outline.some((piece) => away(contactOn(piece, 0).place, { from, to }) < 12) && wedges.length === 0;
        if (open) expect(comesBy(outline, { from, to }, TURNING_ROOM - 0.05) || crosses(outline, from, to)).toBe(true);
      }),
      { numRuns: 100 },
    );
    expect(found).toBeGreaterThan(20);
  });

  it("are refused of a fence inside the arena, a pen around it, and a turning room no wider than a closed gap", () => {
    expect(() => wedgesAlong(arena(0), run(-20, 0, 20, 0))).toThrow(/inside the arena/);
    expect(() => wedgesAlong(arena(0), { center: { east: 0, north: 0 }, diameter: 400 })).toThrow(/inside the other/);
    expect(() => wedgesAlong(arena(0), { center: { east: 0, north: 0 }, diameter: 60 })).toThrow(/inside the other/);
    expect(() => wedgesAlong(arena(0), run(-58, 0, -58, 9), 0.25)).toThrow(/must be over the closed gap/);
  });

  it("turn a square corner and hold what lies inside", () => {
    const square = cornered([{ east: -5, north: -5 }, { east: -5, north: 5 }, { east: 5, north: 5 }, { east: 5, north: -5 }]);
    expect(square).toHaveLength(8);
    expect([holds(square, { east: 4.9, north: -4.9 }), holds(square, { east: 5.1, north: 0 })]).toEqual([true, false]);
    expect(wedgesAlong(square, run(-30, 13, 30, 13))).toHaveLength(1);
  });
}); // prettier-ignore

/** Where a run goes through the outline it meets it, and the ball cannot come by however square the corners are. */
const crosses = (outline: ReturnType<typeof arena>, from: Point, to: Point) =>
  holds(outline, from) !== holds(outline, to) ||
  Array.from({ length: 150 }, (_, k) => k / 150).some((share) =>
    holds(outline, {
      east: from.east + (to.east - from.east) * share,
      north: from.north + (to.north - from.north) * share,
    }),
  );

/** At the wide end the places touched are half a turning room from one ball's center. */
function expectBall({ across }: Wedge, end: 0 | -1, fence: StraightFence) {
  const [a, b] = across!.at(end)!;
  const middle = { east: (a.east + b.east) / 2, north: (a.north + b.north) / 2 };
  expect(away(b, fence)).toBeLessThan(1e-6);
  // Both lie on a circle of that room: no chord of it is longer.
  expect(distance(a, middle)).toBeLessThanOrEqual(TURNING_ROOM / 2 + 1e-6);
}
