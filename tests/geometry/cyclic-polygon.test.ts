import fc from "fast-check";
import {
  apothem,
  centralAngle,
  circumcircle,
  fullTurn,
  insideClear,
  inscribedArea,
  perimeter,
  type Chord,
} from "../../src/geometry/cyclic-polygon";
import { circleArea } from "../../src/geometry/circle";
import { Refusal } from "../../src/units/refusal";

const chords = (...pairs: [length: number, count: number][]): Chord[] =>
  pairs.map(([length, count]) => ({ length, count }));
const sides = (...lengths: number[]) => chords(...lengths.map((length): [number, number] => [length, 1]));
const degrees = (radians: number) => (radians * 180) / Math.PI;

describe("The circle through the corners of a closed polygon", () => {
  const published: [id: string, given: Chord[], radius: number, tolerance: number, source: string][] = [
    ["G1", sides(1, 2, 3, 4), 2.002602473449653, 1e-12, "OEIS A200728"],
    ["G2", chords([1, 7]), 1.15238243548124, 1e-12, "OEIS A374957"],
    ["G5", sides(25, 39, 60, 52), 32.5, 1e-9, "classical worked example (Brahmagupta), memory"],
    ["G6", sides(13, 14, 15), 8.125, 1e-9, "classical worked example (Heron), memory"],
  ];

  test.each(published)("%s has the published circumradius", (_id, given, radius, tolerance) => {
    expect(Math.abs(circumcircle(given).diameter / 2 - radius)).toBeLessThanOrEqual(tolerance);
  });

  const areas: [id: string, given: Chord[], area: number, tolerance: number, source: string][] = [
    ["G3", chords([1, 10]), 7.694208842938134, 1e-12, "OEIS A178816"],
    ["G4", chords([1, 12]), 11.196152422706632, 1e-12, "OEIS A178809"],
    ["G5", sides(25, 39, 60, 52), 1764, 1e-9, "classical worked example (Brahmagupta), memory"],
    ["G6", sides(13, 14, 15), 84, 1e-9, "classical worked example (Heron), memory"],
  ];

  test.each(areas)("%s has the published area", (_id, given, area, tolerance) => {
    expect(Math.abs(inscribedArea(given) - area)).toBeLessThanOrEqual(tolerance);
  });

  test("checks every published row", () => {
    expect([published.length, areas.length]).toEqual([4, 4]);
  });

  test("G5 has the published diagonals: each cuts off a triangle on the same circle (classical, memory)", () => {
    const { diameter } = circumcircle(sides(25, 39, 60, 52));
    const across = (a: number, b: number) =>
      diameter * Math.sin((centralAngle(a, diameter) + centralAngle(b, diameter)) / 2);
    expect(across(25, 39)).toBeCloseTo(56, 9);
    expect(across(39, 60)).toBeCloseTo(63, 9);
  });

  test("G13: a chord of 12 on a radius of 30 has the derived sagitta, central angle and arc", () => {
    expect(Math.abs(30 - apothem(12, 60) - 0.6061)).toBeLessThan(1e-4);
    expect(Math.abs(degrees(centralAngle(12, 60)) - 23.07392)).toBeLessThan(1e-4);
    expect(Math.abs(30 * centralAngle(12, 60) - 12.0815)).toBeLessThan(1e-4);
  });
});

describe("A pen of panels and gates", () => {
  // Derived: the sum of 2 asin(a/2R) over all of them is a full turn.
  const pens: [panels: [number, number], gates: [number, number], across: number, area: number, panel: number, gate: number][] = [
    [[10, 20], [12, 1], 67.7355, 3549.657, 16.97956, 20.40872],
    [[12, 15], [8, 1], 60.2357, 2775.679, 22.98239, 15.26418],
    [[12, 15], [12, 1], 61.51, 2895.748, 22.5, 22.5],
    [[12, 14], [6, 1], 55.8105, 2372.446, 24.83263, 12.34322],
    [[12, 13], [8, 2], 55.1675, 2318.353, 25.12676, 16.67606],
    [[16, 11], [12, 1], 60.5413, 2747.125, 30.64865, 22.86483],
  ]; // prettier-ignore

  test.each(pens)("of %p and %p closes on the derived circle", (panels, gates, across, area, panel, gate) => {
    const pen = chords(panels, gates);
    const { diameter, centerInside } = circumcircle(pen);
    expect(centerInside).toBe(true);
    expect(Math.abs(diameter - across)).toBeLessThan(1e-4);
    expect(Math.abs(inscribedArea(pen) - area)).toBeLessThan(1e-3);
    expect(Math.abs(degrees(centralAngle(panels[0], diameter)) - panel)).toBeLessThan(1e-4);
    expect(Math.abs(degrees(centralAngle(gates[0], diameter)) - gate)).toBeLessThan(1e-4);
  });

  test("has six derived rows", () => expect(pens).toHaveLength(6));

  test("18 ten-foot panels and one 8 ft gate close a 60 ft pen (common practice, no source)", () => {
    expect(Math.round(circumcircle(chords([10, 18], [8, 1])).diameter)).toBe(60);
  });
});

describe("Chords that close nothing", () => {
  test.each([
    ["none", sides()],
    ["one", sides(5)],
    ["two equal ones", sides(5, 5)],
    ["one as long as the others together", sides(3, 4, 7)],
    ["one longer than the others together", sides(1, 1, 1, 9)],
    ["counts of 0 alone", chords([12, 0], [10, 2])],
  ])("%s are refused without an answer", (_name, given) => {
    expect(() => circumcircle(given)).toThrow(Refusal);
    expect(() => inscribedArea(given)).toThrow(expect.objectContaining({ kind: "answer" }));
    expect(() => insideClear(given)).toThrow(/close nothing/);
  });

  test("as soon as the longest is a little shorter there is a circle", () => {
    const { diameter, centerInside } = circumcircle(sides(3, 4, 6.999999));
    expect(centerInside).toBe(false);
    expect(Number.isFinite(diameter) && diameter > 1000).toBe(true);
  });
});

describe("A center on or outside the fence", () => {
  test("a right triangle has its center on the longest side, and it counts as inside", () => {
    expect(circumcircle(sides(3, 4, 5))).toEqual({ diameter: 5, centerInside: true });
    expect(insideClear(sides(3, 4, 5))).toBeCloseTo(0, 6);
    expect(inscribedArea(sides(3, 4, 5))).toBeCloseTo(6, 9);
  });

  test("has the area of Heron's formula and no inside clear", () => {
    const [a, b, c] = [3, 4, 6.5];
    const half = (a + b + c) / 2;
    const heron = Math.sqrt(half * (half - a) * (half - b) * (half - c));
    const { diameter, centerInside } = circumcircle(sides(a, b, c));
    expect(centerInside).toBe(false);
    expect(diameter).toBeCloseTo((a * b * c) / (2 * heron), 9);
    expect(inscribedArea(sides(a, b, c))).toBeCloseTo(heron, 9);
    expect(() => insideClear(sides(a, b, c))).toThrow(/center lies outside/);
  });
});

describe("Any pen", () => {
  const pieces = fc.array(
    fc.record({
      length: fc.double({ min: 3, max: 24, noNaN: true }),
      count: fc.integer({ min: 0, max: 30 }),
    }),
    { minLength: 1, maxLength: 8 },
  );
  const pens = pieces.filter((pen) => {
    const longest = Math.max(...pen.map(({ length, count }) => (count > 0 ? length : 0)));
    return perimeter(pen) - 2 * longest > 0.01;
  });

  test("has central angles that make one turn, the longest's outer one where the center lies outside", () => {
    fc.assert(
      fc.property(pens, (pen) => {
        const { diameter, centerInside } = circumcircle(pen);
        const longest = Math.max(...pen.map(({ length, count }) => (count > 0 ? length : 0)));
        const turn = fullTurn(pen, diameter);
        const whole = centerInside ? turn : turn + 2 * Math.PI - 2 * centralAngle(longest, diameter);
        expect(Math.abs(whole - 2 * Math.PI)).toBeLessThan(1e-7);
      }),
      { numRuns: 2000 },
    );
  });

  test("does not depend on the order of its panels, nor on how equal ones are grouped", () => {
    fc.assert(
      fc.property(pens, (pen) => {
        const single = pen.flatMap(({ length, count }) =>
          Array.from({ length: count }, () => ({ length, count: 1 })),
        );
        const { diameter } = circumcircle(pen);
        for (const other of [[...pen].reverse(), single]) {
          expect(circumcircle(other).diameter / diameter).toBeCloseTo(1, 9);
          expect(inscribedArea(other) / inscribedArea(pen)).toBeCloseTo(1, 9);
        }
      }),
    );
  });

  test("has a pin circle over distance around / pi over inside clear, and an area between the two circles'", () => {
    fc.assert(
      fc.property(pens, (pen) => {
        const { diameter, centerInside } = circumcircle(pen);
        expect(diameter).toBeGreaterThan(perimeter(pen) / Math.PI);
        expect(inscribedArea(pen)).toBeLessThan(circleArea(diameter));
        if (!centerInside) return;
        const clear = insideClear(pen);
        expect(clear).toBeLessThan(perimeter(pen) / Math.PI);
        expect(inscribedArea(pen)).toBeGreaterThan(circleArea(clear));
      }),
      { numRuns: 1000 },
    );
  });
});
