import fc from "fast-check";
import { type Stake } from "../../src/fence/layout";
import { panelLayout } from "../../src/fence/panel-layout";
import { fenceChords } from "../../src/fence/panels";
import { postLayout } from "../../src/fence/post-layout";
import { bayLength, postCircle, postCount } from "../../src/fence/posts";
import { circumcircle, inscribedArea } from "../../src/geometry/cyclic-polygon";
import { surveyedArea } from "./closed-walk";
import { anyPanelPen } from "./panel-pens";
import { anyPostPen } from "./post-pens";

const bearings = fc.double({ min: -360, max: 360, noNaN: true });

const from = (a: Stake, b: Stake) => Math.hypot(a.east - b.east, a.north - b.north);
const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Checks every column of a layout against its coordinates, and walks it by chord and bearing back to the first stake. */
function expectClosed(stakes: Stake[], diameter: number) {
  let [east, north] = [stakes[0].east, stakes[0].north];
  stakes.forEach((stake, i) => {
    const next = stakes[(i + 1) % stakes.length];
    expect(stake.stake).toBe(i + 1);
    expect(stake.bearing >= 0 && stake.bearing < 360).toBe(true);
    expect((diameter / 2) * Math.sin(radians(stake.bearing))).toBeCloseTo(stake.east, 9);
    expect((diameter / 2) * Math.cos(radians(stake.bearing))).toBeCloseTo(stake.north, 9);
    expect(stake.tie1).toBeCloseTo(from(stake, stakes[0]), 9);
    expect(stake.tie2).toBeCloseTo(from(stake, stakes[1]), 9);
    expect(from(stake, next)).toBeCloseTo(next.chord, 9);
    const heading = Math.atan2(next.east - stake.east, next.north - stake.north);
    east += next.chord * Math.sin(heading);
    north += next.chord * Math.cos(heading);
  });
  expect(Math.hypot(east - stakes[0].east, north - stakes[0].north)).toBeLessThan(1e-9);
}

/** Where the middle of the first gate is seen from the center, degrees. */
const gateBearing = ([a, b]: Stake[]) => (Math.atan2(a.east + b.east, a.north + b.north) * 180) / Math.PI;
const apart = (a: number, b: number) => Math.abs(Math.sin(radians(a - b) / 2));

describe("The layout of a post pen", () => {
  it("closes, has a stake a post, and every bay the same", () => {
    fc.assert(
      fc.property(anyPostPen, bearings, (pen, bearing) => {
        const stakes = postLayout(pen, bearing);
        expectClosed(stakes, pen.diameter);
        expect(stakes).toHaveLength(postCount(pen));
        expect(stakes.filter(({ atGate }) => atGate)).toHaveLength(2 * pen.gates.length);
        const bays = stakes.filter(({ chord }) => Math.abs(chord - bayLength(pen)) < 1e-9);
        expect(bays.length).toBeGreaterThanOrEqual(postCircle(pen).bays);
        if (pen.gates.length > 0) expect(apart(gateBearing(stakes), bearing)).toBeLessThan(1e-9);
        else expect(apart(stakes[0].bearing, bearing)).toBeLessThan(1e-9);
      }),
    );
  });

  it("starts at the first gate's first post and goes clockwise, gates in their order with bays spread between them", () => {
    const stakes = postLayout({ diameter: 60, spacing: 12, gates: [12, 8], gatePost: 0 }, 180);
    const { bays } = postCircle({ diameter: 60, spacing: 12, gates: [12, 8], gatePost: 0 });
    expect(bays).toBe(14);
    expect(stakes[1].chord).toBe(12);
    expect(stakes[9].chord).toBe(8);
    expect(stakes.filter(({ atGate }) => atGate).map(({ stake }) => stake)).toEqual([1, 2, 9, 10]);
    // South: the first post of a gate that is walked clockwise stands east of its middle, the second west.
    expect(stakes[0].east).toBeCloseTo(6, 9);
    expect(stakes[1].east).toBeCloseTo(-6, 9);
    expect(stakes[0].bearing).toBeLessThan(stakes[1].bearing);
  });

  it("puts the odd bay after the later gate", () => {
    const stakes = postLayout({ diameter: 60, spacing: 12.2, gates: [16, 16], gatePost: 0 }, 0);
    expect(stakes).toHaveLength(15);
    expect(stakes.filter(({ atGate }) => atGate).map(({ stake }) => stake)).toEqual([1, 2, 8, 9]);
  });

  it("turns with the bearing and keeps it from 0 to under 360 degrees", () => {
    const pen = { diameter: 60, spacing: 8, gates: [], gatePost: 0 };
    expect(postLayout(pen, 0)[0]).toMatchObject({ bearing: 0, east: 0, north: 30, tie1: 0 });
    expect(postLayout(pen, -360)[0].bearing).toBe(0);
    expect(postLayout(pen, 90)[0].east).toBe(30);
  });

  it("refuses more stakes than any fence has", () => {
    const pen = { diameter: 5000, spacing: 0.5, gates: [], gatePost: 0 };
    expect(() => postLayout(pen, 0)).toThrow("over 10000 stakes: check the lengths");
    expect(() => postLayout({ ...pen, spacing: 5e-324 }, 0)).toThrow("over 10000 stakes: check the lengths");
  });
});

describe("The layout of a panel pen", () => {
  it("closes on its own pin circle and encloses the area that its circle says, for any mix", () => {
    fc.assert(
      fc.property(anyPanelPen, bearings, (pen, bearing) => {
        const chords = fenceChords(pen.panels, pen.gates, pen.pinGap);
        const stakes = panelLayout(pen, bearing);
        expectClosed(stakes, circumcircle(chords).diameter);
        expect(stakes).toHaveLength(chords.reduce((sum, { count }) => sum + count, 0));
        const area = inscribedArea(chords);
        expect(Math.abs(surveyedArea(stakes) - area)).toBeLessThan(1e-9 * Math.max(100, area));
        if (pen.gates.length > 0) expect(apart(gateBearing(stakes), bearing)).toBeLessThan(1e-6);
      }),
    );
  });

  const published = [
    // Closed polygons of straight panels and gates (derived): pin circle and area.
    { panels: [{ length: 10, count: 20 }], gates: [12], diameter: 67.7355, area: 3549.657 },
    { panels: [{ length: 12, count: 15 }], gates: [8], diameter: 60.2357, area: 2775.679 },
    { panels: [{ length: 12, count: 15 }], gates: [12], diameter: 61.51, area: 2895.748 },
    { panels: [{ length: 12, count: 14 }], gates: [6], diameter: 55.8105, area: 2372.446 },
    { panels: [{ length: 12, count: 13 }], gates: [8, 8], diameter: 55.1675, area: 2318.353 },
    { panels: [{ length: 16, count: 11 }], gates: [12], diameter: 60.5413, area: 2747.125 },
    // Classical worked examples (Brahmagupta; Heron), memory.
    { panels: [25, 39, 60, 52].map((length) => ({ length, count: 1 })), gates: [], diameter: 65, area: 1764 },
    { panels: [13, 14, 15].map((length) => ({ length, count: 1 })), gates: [], diameter: 16.25, area: 84 },
  ];

  it("is held to six derived and two classical polygons", () => expect(published).toHaveLength(8));

  test.each(published)(
    "stands on the published circle: $panels, $gates",
    ({ panels, gates, diameter, area }) => {
      const stakes = panelLayout({ panels, gates, pinGap: 0 }, 30);
      for (const { east, north } of stakes) expect(2 * Math.hypot(east, north)).toBeCloseTo(diameter, 3);
      expect(surveyedArea(stakes)).toBeCloseTo(area, 2);
    },
  );

  it("G5: has the diagonals 56 and 63 of the quadrilateral 25, 39, 60, 52", () => {
    // Classical worked example (Brahmagupta), memory.
    const panels = [25, 39, 60, 52].map((length) => ({ length, count: 1 }));
    const [a, b, c, d] = panelLayout({ panels, gates: [], pinGap: 0 }, 0);
    expect(from(a, c)).toBeCloseTo(56, 9);
    expect(from(b, d)).toBeCloseTo(63, 9);
  });

  it("lays panels in the order listed, each as long as its joint makes it", () => {
    const panels = [{ length: 12, count: 6 }, { length: 10, count: 7 }]; // prettier-ignore
    const stakes = panelLayout({ panels, gates: [8], pinGap: 0.125 }, 0);
    const chords = stakes.slice(1).map(({ chord }) => chord);
    expect(chords).toEqual([8.125, ...Array(6).fill(12.125), ...Array(6).fill(10.125)]);
    expect(stakes[0].chord).toBe(10.125);
  });

  it("refuses what closes nothing", () => {
    const closed = () => panelLayout({ panels: [{ length: 10, count: 2 }], gates: [20], pinGap: 0 }, 0);
    expect(closed).toThrow(/These close nothing/);
  });
});
