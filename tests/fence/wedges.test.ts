import fc from "fast-check";
import { type RoundFence, type StraightFence } from "../../src/fence/fence-line";
import { type Wedge, wedgesBetween } from "../../src/fence/wedges";
import { type Point, ahead, bearingTo, distance } from "../../src/geometry/point";
import { away, run } from "./fences";

const round = (east: number, north: number, diameter = 60): RoundFence => ({
  center: { east, north },
  diameter,
});

/** Holds the end of a wedge to a ball of this width that touches both fences there. */
function expectBall(
  first: RoundFence,
  second: RoundFence | StraightFence,
  ends: [Point, Point],
  width: number,
) {
  const ball = ahead(ends[0], bearingTo(first.center, ends[0]), width / 2);
  expect(away(ends[0], first)).toBeCloseTo(0, 6);
  expect(away(ends[1], second)).toBeCloseTo(0, 6);
  expect(distance(ball, ends[1])).toBeCloseTo(width / 2, 5);
  expect(away(ball, second)).toBeCloseTo(width / 2, 5);
}

function expectEnds(first: RoundFence, second: RoundFence | StraightFence, wedges: Wedge[]) {
  for (const wedge of wedges) {
    expectBall(first, second, [wedge.first.to, wedge.second.to], 10);
    expectBall(first, second, [wedge.first.from, wedge.second.from], wedge.passage ? 10 : 0.25);
  }
}

describe("Wedges between two fences", () => {
  it("lie to either side of where two pens touch, by hand", () => {
    // Two circles of radius 30, a ball of 5 ft between them: its center is seen at acos(30 / 35) from the line of centers.
    const wedges = wedgesBetween(round(0, 0), round(60, 0));
    const length = 30 * (Math.acos(30 / 35) - Math.acos(30 / 30.125));
    expect(wedges).toHaveLength(2);
    for (const wedge of wedges) {
      expect(wedge).toMatchObject({ narrowest: 0.25, passage: false });
      expect(wedge.first.length).toBeCloseTo(length, 9);
      expect(wedge.second.length).toBeCloseTo(length, 9);
    }
    const [north, south] = wedges.map(({ first }) => first.to.north).sort((a, b) => b - a);
    expect(north).toBeCloseTo((30 * Math.sqrt(35 ** 2 - 30 ** 2)) / 35, 9);
    expect(south).toBeCloseTo(-north, 9);
  });

  it("lie to either side of where a pen touches a straight run, by hand", () => {
    const wedges = wedgesBetween(round(0, 30), run(-100, 0, 100, 0));
    // A ball of radius q touches the run at sqrt(4 r q) from the foot.
    const reach = (q: number) => Math.sqrt(4 * 30 * q);
    expect(wedges).toHaveLength(2);
    for (const { second } of wedges) expect(second.length).toBeCloseTo(reach(5) - reach(0.125), 9);
    expect(wedges.map(({ second }) => second.to.east).sort((a, b) => a - b)).toEqual([
      expect.closeTo(-reach(5), 9),
      expect.closeTo(reach(5), 9),
    ]);
  });

  it("are one passage where the fences come near without closing, and none where a horse can turn", () => {
    const [passage, ...others] = wedgesBetween(round(0, 0), round(64, 0));
    expect(others).toEqual([]);
    expect(passage).toMatchObject({ narrowest: 4, passage: true });
    expect(wedgesBetween(round(0, 0), round(69.99, 0))).toHaveLength(1);
    expect(wedgesBetween(round(0, 0), round(70, 0))).toEqual([]);
    expect(wedgesBetween(round(0, 40), run(-50, 0, 50, 0))).toEqual([]);
    expect(wedgesBetween(round(0, 0), round(64, 0), 4)).toEqual([]);
    expect(wedgesBetween(round(0, 0), round(64, 0), 12, 5)).toHaveLength(2);
  });

  it("end where a ball touches both fences, for circles of any size", () => {
    const size = fc.double({ min: 20, max: 300, noNaN: true });
    const clear = fc.double({ min: -3, max: 9.9, noNaN: true });
    const bearing = fc.double({ min: 0, max: 360, noNaN: true });
    fc.assert(
      fc.property(size, size, clear, bearing, (diameter1, diameter2, clear, bearing) => {
        const first = round(7, -3, diameter1);
        const center = ahead(first.center, bearing, (diameter1 + diameter2) / 2 + clear);
        const second = { center, diameter: diameter2 };
        const wedges = wedgesBetween(first, second);
        expect(wedges).toHaveLength(clear > 0.25 ? 1 : 2);
        expectEnds(first, second, wedges);
        const back = wedgesBetween(second, first);
        const lengths = (found: Wedge[]) => found.map(({ first, second }) => first.length + second.length);
        lengths(wedges).forEach((length, i) => expect(lengths(back)[i]).toBeCloseTo(length, 6));
      }),
    );
  });

  it("end where a ball touches both fences, for a run of any length, on either side and past its ends", () => {
    const at = fc.double({ min: -120, max: 120, noNaN: true });
    fc.assert(
      fc.property(at, at, at, fc.double({ min: 20, max: 44, noNaN: true }), (a, b, east, off) => {
        fc.pre(Math.abs(a - b) > 1);
        const [first, second] = [round(east, off), run(a, 0, b, 0)];
        const clear = away(first.center, second) - 30;
        const wedges = wedgesBetween(first, second);
        const ended = [Math.min(a, b), Math.max(a, b)].filter((end) => (end - east) ** 2 + off ** 2 < 900);
        expect(wedges).toHaveLength(clear >= 10 - 1e-8 ? 0 : clear > 0.25 ? 1 : 2 - ended.length);
        const mirrored = wedgesBetween(round(east, -off), second);
        const onRun = (found: Wedge[]) => found.map(({ second }) => second.length).sort((a, b) => a - b);
        onRun(wedges).forEach((length, i) => expect(onRun(mirrored)[i]).toBeCloseTo(length, 8));
        expectEnds(first, second, wedges);
      }),
    );
  });

  it("take a run's end for a corner that the ball goes around", () => {
    const [wedge] = wedgesBetween(round(0, 32), run(-100, 0, 5, 0));
    expect([wedge.second.from.east, wedge.second.to.east]).toContainEqual(5);
  });

  it("are refused for a pen inside another, and for a turning room no wider than a closed gap", () => {
    expect(() => wedgesBetween(round(0, 0), round(1, 0, 100))).toThrow(
      "one pen lies inside the other: wedges are looked for between pens side by side",
    );
    expect(() => wedgesBetween(round(0, 0), round(60, 0), 0.25)).toThrow(
      'the room to turn must be over the closed gap of 3"',
    );
  });
});
