import fc from "fast-check";
import { arenaLayout } from "../../src/fence/arena-layout";
import { layOutFromGate } from "../../src/fence/gate-first";
import { type Stake } from "../../src/fence/layout";
import { panelLayout } from "../../src/fence/panel-layout";
import { postLayout } from "../../src/fence/post-layout";
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
