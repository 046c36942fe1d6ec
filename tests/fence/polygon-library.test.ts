import { polygonArea, polygonCentroid, polygonLength } from "d3-polygon";
import fc from "fast-check";
import { type ArenaGate } from "../../src/fence/arena-gates";
import { arenaLayout } from "../../src/fence/arena-layout";
import { type Stake } from "../../src/fence/layout";
import { panelArena } from "../../src/fence/panel-arena";
import { panelLayout } from "../../src/fence/panel-layout";
import { fenceChords } from "../../src/fence/panels";
import { postLayout } from "../../src/fence/post-layout";
import { bayLength, postCircle } from "../../src/fence/posts";
import { circumcircle, inscribedArea, longestChord, perimeter } from "../../src/geometry/cyclic-polygon";
import { type Point } from "../../src/geometry/point";
import { sides } from "../../src/geometry/rounded-outline";
import { Refusal } from "../../src/units/refusal";
import { anyPanelPen } from "./panel-pens";
import { expectWalkCloses } from "./closed-walk";
import { anyPostPen } from "./post-pens";

// d3-polygon, an independent library, is given the coordinates alone. It counts area as positive where they run
// counterclockwise on a screen, whose second coordinate points down: with north up, that is clockwise.
const corners = (places: readonly Point[]) =>
  places.map(({ east, north }): [number, number] => [east, north]);
const area = (places: readonly Point[]) => polygonArea(corners(places));
const around = (places: readonly Point[]) => polygonLength(corners(places));
const walked = (stakes: readonly Stake[]) => stakes.reduce((sum, { chord }) => sum + chord, 0);
const near = (found: number, expected: number) =>
  expect(Math.abs(found - expected)).toBeLessThan(1e-9 * Math.max(1, Math.abs(expected)));
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Walks a layout and holds its area, in square feet, and its distance around to the library's. */
function expectPolygon(stakes: readonly Stake[], enclosed: number) {
  expectWalkCloses(stakes);
  near(around(stakes), walked(stakes));
  expect(Math.abs(area(stakes) - enclosed)).toBeLessThan(1e-9 * Math.max(1000, enclosed));
}

const bearings = fc.double({ min: -360, max: 360, noNaN: true });
const arenaParts = {
  length: fc.double({ min: 20, max: 300, noNaN: true }),
  width: fc.double({ min: 20, max: 300, noNaN: true }),
  gates: fc.array(
    fc.record({ side: fc.constantFrom(...sides), opening: fc.double({ min: 3, max: 16, noNaN: true }) }),
    { maxLength: 4 },
  ) as fc.Arbitrary<ArenaGate[]>,
  bearing: bearings,
};

/** What an arena lays out, or nothing where its gates do not fit; how many did is counted. */
function built<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

describe("Coordinates beside an independent polygon library", () => {
  it("of any post pen from 20 to 300 ft enclose its triangles to the center, and go around its bays and gates", () => {
    fc.assert(
      fc.property(anyPostPen, bearings, (pen, bearing) => {
        const stakes = postLayout(pen, bearing);
        const { bays, gateChords } = postCircle(pen);
        const triangle = (chord: number) => (chord / 4) * Math.sqrt(pen.diameter ** 2 - chord ** 2);
        const gates = gateChords.reduce((sum, chord) => sum + triangle(chord), 0);
        // One bay over half a turn has the center outside of it.
        fc.pre(bays > 1);
        expectPolygon(stakes, bays * triangle(bayLength(pen)) + gates);
        near(around(stakes), bays * bayLength(pen) + gateChords.reduce((sum, chord) => sum + chord, 0));
        if (pen.gates.length > 0) return;
        const [east, north] = polygonCentroid(corners(stakes));
        expect(Math.hypot(east, north)).toBeLessThan(1e-9 * pen.diameter);
      }),
    );
  });

  it("of any mix of panels and gates enclose what its pin circle says", () => {
    fc.assert(
      fc.property(anyPanelPen, bearings, (pen, bearing) => {
        const chords = fenceChords(pen.panels, pen.gates, pen.pinGap);
        const stakes = panelLayout(pen, bearing);
        expectPolygon(stakes, inscribedArea(chords));
        near(around(stakes), perimeter(chords));
      }),
    );
  });

  it("of an arena of posts, square or rounded, enclose its outline less what each bay cuts off an arc", () => {
    const some = fc.record({
      ...arenaParts,
      rounding: fc.oneof(fc.constantFrom(0, 1), fc.double({ min: 0, max: 1, noNaN: true })),
      spacing: fc.double({ min: 4, max: 16, noNaN: true }),
    });
    let laid = 0;
    fc.assert(
      fc.property(some, ({ rounding, bearing, ...asked }) => {
        const cornerRadius = (rounding * Math.min(asked.length, asked.width)) / 2;
        const layout = built(() => arenaLayout({ ...asked, cornerRadius, gatePost: 0 }, bearing));
        if (!layout) return;
        laid++;
        const { stakes, corners: outer } = layout;
        const cutOff = stakes.reduce((sum, { side }, i) => {
          if (side !== undefined) return sum;
          const angle = 2 * Math.asin(Math.min(1, stakes[(i + 1) % stakes.length].chord / 2 / cornerRadius));
          return sum + (cornerRadius ** 2 / 2) * (angle - Math.sin(angle));
        }, 0);
        expectPolygon(stakes, layout.area - cutOff);
        near(around(stakes), layout.fence);
        near(area(outer), asked.length * asked.width);
        near(around(outer), 2 * (asked.length + asked.width));
        const [east, north] = polygonCentroid(corners(outer));
        expect(Math.hypot(east, north)).toBeLessThan(1e-9 * (asked.length + asked.width));
      }),
      { numRuns: 300 },
    );
    expect(laid).toBeGreaterThan(100);
  });

  it("of an arena of panels enclose its four corners", () => {
    const some = fc.record({
      ...arenaParts,
      panel: fc.double({ min: 4, max: 20, noNaN: true }),
      pinGap: fc.constantFrom(0, 1 / 24, -1 / 24),
    });
    let laid = 0;
    fc.assert(
      fc.property(some, ({ bearing, ...asked }) => {
        const layout = built(() => panelArena(asked, bearing));
        if (!layout) return;
        laid++;
        expectPolygon(layout.stakes, layout.area);
        near(around(layout.stakes), layout.around);
        near(area(layout.corners), layout.area);
      }),
      { numRuns: 300 },
    );
    expect(laid).toBeGreaterThan(100);
  });

  const derived = [
    // Closed polygons of straight panels and gates (derived): area, and the distance around by hand.
    { panels: [10, 20], gates: [12], area: 3549.657, feet: 212 },
    { panels: [12, 15], gates: [8], area: 2775.679, feet: 188 },
    { panels: [12, 15], gates: [12], area: 2895.748, feet: 192 },
    { panels: [12, 14], gates: [6], area: 2372.446, feet: 174 },
    { panels: [12, 13], gates: [8, 8], area: 2318.353, feet: 172 },
    { panels: [16, 11], gates: [12], area: 2747.125, feet: 188 },
  ];

  it("are held to six derived polygons", () => expect(derived).toHaveLength(6));

  test.each(derived)("of $panels and gates $gates have the derived area (closed-polygon table)", ({ panels, gates, area: square, feet }) => {
    const [length, count] = panels;
    const stakes = panelLayout({ panels: [{ length, count }], gates, pinGap: 0 }, 77);
    expect(Math.abs(area(stakes) - square)).toBeLessThan(1e-3);
    expect(around(stakes)).toBeCloseTo(feet, 9);
  }); // prettier-ignore

  it("of a pen with one gate have their centroid on the line through the gate's middle and the center", () => {
    const oneGate = fc.record({ length: fc.double({ min: 4, max: 20, noNaN: true }), count: fc.integer({ min: 12, max: 40 }) });
    fc.assert(
      fc.property(oneGate, fc.double({ min: 3, max: 16, noNaN: true }), bearings, (panel, gate, bearing) => {
        const stakes = panelLayout({ panels: [panel], gates: [gate], pinGap: 0 }, bearing);
        const [east, north] = polygonCentroid(corners(stakes));
        const across = east * Math.cos(radians(bearing)) - north * Math.sin(radians(bearing));
        const toward = east * Math.sin(radians(bearing)) + north * Math.cos(radians(bearing));
        expect(Math.abs(across)).toBeLessThan(1e-8);
        // A gate longer than a panel cuts more off the circle, and the centroid moves away from it; a shorter one less.
        if (Math.abs(gate - panel.length) > 0.01) expect(toward < 0).toBe(gate > panel.length);
      }),
    );
  }); // prettier-ignore

  it("come back by the bearings seen from the center, too: two radii and the angle between them are the chord", () => {
    fc.assert(
      fc.property(anyPanelPen, bearings, (pen, bearing) => {
        const chords = fenceChords(pen.panels, pen.gates, pen.pinGap);
        fc.pre(longestChord(chords) > 0);
        const radius = circumcircle(chords).diameter / 2;
        const stakes = panelLayout(pen, bearing);
        const start = stakes[0];
        let [east, north] = [start.east, start.north];
        for (let i = 0; i < stakes.length; i++) {
          const [from, to] = [stakes[i], stakes[(i + 1) % stakes.length]];
          east += radius * (Math.sin(radians(to.bearing)) - Math.sin(radians(from.bearing)));
          north += radius * (Math.cos(radians(to.bearing)) - Math.cos(radians(from.bearing)));
          near(2 * radius * Math.abs(Math.sin(radians(to.bearing - from.bearing) / 2)), to.chord);
        }
        expect(Math.hypot(east - start.east, north - start.north)).toBeLessThan(1e-9);
      }),
    );
  });
});
