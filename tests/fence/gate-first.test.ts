import fc from "fast-check";
import { arenaLayout } from "../../src/fence/arena-layout";
import { layOutFromGate } from "../../src/fence/gate-first";
import { type Stake } from "../../src/fence/layout";
import { panelLayout } from "../../src/fence/panel-layout";
import { postLayout } from "../../src/fence/post-layout";
import { markShared } from "../../src/fence/shared-fence";
import { type Point, ahead, distance, enclosedArea, midpoint } from "../../src/geometry/point";
import { expectWalkCloses, surveyedArea } from "./closed-walk";

const panelPen = (bearing: number) =>
  panelLayout({ panels: [{ length: 12, count: 15 }], gates: [12], pinGap: 0 }, bearing);
const postPen = (bearing: number) =>
  postLayout({ diameter: 60, spacing: 8, gates: [12, 4], gatePost: 0 }, bearing);
const arena = (bearing: number) =>
  arenaLayout(
    { length: 200, width: 100, cornerRadius: 20, spacing: 10, gates: [{ side: "near", opening: 12 }], gatePost: 0 },
    bearing,
  ).stakes; // prettier-ignore
const layouts = [panelPen, postPen, arena];

const origin = { east: 0, north: 0 };
const coordinate = fc.double({ min: -500, max: 500, noNaN: true });
const anyPlace = fc
  .record({
    from: fc.record({ east: coordinate, north: coordinate }),
    bearing: fc.double({ min: 0, max: 360, noNaN: true }),
    pen: fc.constantFrom<"left" | "right">("left", "right"),
  })
  .map(({ from, bearing, pen }) => ({ from, to: ahead(from, bearing, 12), pen }));
const rightOf = (from: Point, to: Point, place: Point) => enclosedArea([from, to, place]) > 0;

describe("A layout set from its gate", () => {
  it("puts the gate on its two places and the pen on its side, for any pen or arena", () => {
    fc.assert(
      fc.property(anyPlace, fc.constantFrom<(bearing: number) => Stake[]>(...layouts), (place, layout) => {
        const { stakes, center, gateBearing, over } = layOutFromGate(layout, place);
        const [post1, post2] = place.pen === "right" ? [place.from, place.to] : [place.to, place.from];
        expect(distance(stakes[0], post1)).toBeLessThan(1e-8);
        expect(distance(stakes[1], post2)).toBeLessThan(1e-8);
        expect(Math.abs(over)).toBeLessThan(1e-8);
        expect(rightOf(place.from, place.to, center)).toBe(place.pen === "right");
        const middle = midpoint(post1, post2);
        const seen = ahead(center, gateBearing, distance(center, middle));
        expect(distance(seen, middle)).toBeLessThan(1e-8);
        for (const stake of stakes) {
          const byBearing = ahead(center, stake.bearing, distance(center, stake));
          expect(distance(byBearing, stake)).toBeLessThan(1e-8);
        }
        const home = stakes.map((stake) => ({ ...stake, east: stake.east - center.east, north: stake.north - center.north }));
        expectWalkCloses(home);
        expect(surveyedArea(home)).toBeCloseTo(surveyedArea(layout(0)), 5);
      }),
    );
  }); // prettier-ignore

  it("has its center by hand: a gate of 12 ft on a 60 ft circle stands 29.394 ft from it", () => {
    const place = { from: { east: 100, north: 50 }, to: { east: 112, north: 50 }, pen: "right" as const };
    const south = layOutFromGate(postPen, place);
    expect(south.center).toEqual({ east: expect.closeTo(106, 9), north: expect.closeTo(50 - Math.sqrt(864), 9) });
    expect([south.bearing, south.gateBearing]).toEqual([expect.closeTo(0, 9), expect.closeTo(0, 9)]);
    const north = layOutFromGate(postPen, { ...place, pen: "left" });
    expect(north.center.north).toBeCloseTo(50 + Math.sqrt(864), 9);
    expect(north.gateBearing).toBeCloseTo(180, 9);
  }); // prettier-ignore

  it("shares out what the two places are over, and refuses more than an inch", () => {
    const place = (apart: number) => ({ from: origin, to: { east: apart, north: 0 }, pen: "left" as const });
    const { stakes, over } = layOutFromGate(postPen, place(12.06));
    expect(over).toBeCloseTo(0.06, 9);
    expect(stakes[1].east).toBeCloseTo(0.03, 9);
    expect(stakes[0].east).toBeCloseTo(12.03, 9);
    const refused =
      "the two places are 12' 1 3/16\" apart and the gate is 12' from post to post, 1 3/16\" too far: set them within an inch of it";
    expect(() => layOutFromGate(postPen, place(12.1))).toThrow(refused);
    expect(() => layOutFromGate(postPen, place(0))).toThrow(/are 0" apart.*, 12' too near/);
  });

  it("refuses a pen without a gate", () => {
    const gateless = (bearing: number) => postLayout({ diameter: 60, spacing: 8, gates: [], gatePost: 0 }, bearing);
    expect(() => layOutFromGate(gateless, { from: origin, to: { east: 8, north: 0 }, pen: "left" })).toThrow(
      "there is no gate to start from: give the pen a gate",
    );
  }); // prettier-ignore
});

describe("Two pens that share fence", () => {
  const marks = (stakes: { byOther: boolean; runByOther: boolean }[]) => ({
    stakes: stakes.flatMap(({ byOther }, i) => (byOther ? [i + 1] : [])),
    runs: stakes.flatMap(({ runByOther }, i) => (runByOther ? [i + 1] : [])),
  });

  it("have the shared gate and its two posts from the first, and all else of their own", () => {
    const first = postPen(40);
    const second = layOutFromGate(panelPen, { from: first[0], to: first[1], pen: "left" });
    expect(marks(markShared(second.stakes, first))).toEqual({ stakes: [1, 2], runs: [2] });
    // The centers stand as far apart as both lie from the gate.
    const panelRadius = distance(second.center, first[0]);
    expect(distance(second.center, origin)).toBeCloseTo(Math.sqrt(864) + Math.sqrt(panelRadius ** 2 - 36), 9);
  });

  it("share a run of an arena's side with every post on it", () => {
    const beside = { length: 60, width: 40, cornerRadius: 0, spacing: 10, gatePost: 0 };
    const first = arenaLayout({ ...beside, gates: [] }, 0).stakes;
    const second = arenaLayout({ ...beside, gates: [{ side: "left", opening: 10, at: 0 }] }, 0).stakes;
    const shifted = second.map((stake) => ({ ...stake, east: stake.east + 40 }));
    const marked = markShared(shifted, first);
    expect(marked.filter(({ byOther }) => byOther)).toHaveLength(7);
    expect(marked.filter(({ runByOther }) => runByOther)).toHaveLength(6);
  });

  it("share no run whose stakes are the first pen's but not neighbors there, and none a half inch off", () => {
    const first = postPen(0);
    const skipped = [first[0], first[2], first[3]];
    expect(marks(markShared(skipped, first))).toEqual({ stakes: [1, 2, 3], runs: [3] });
    const off = first.map((stake) => ({ ...stake, east: stake.east + 0.5 / 12 }));
    expect(marks(markShared(off, first))).toEqual({ stakes: [], runs: [] });
  });
});
