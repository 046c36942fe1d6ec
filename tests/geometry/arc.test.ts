import fc from "fast-check";
import { arcOfLength, arcOverChord, curveRadius, curveTable } from "../../src/geometry/arc";

describe("A piece of a circle", () => {
  it("G13: a chord of 12 on a radius of 30 has sagitta 0.6061, angle 23.07392 degrees, arc 12.0815 (derived)", () => {
    const found = arcOverChord(12, 30);
    expect(found.sagitta).toBeCloseTo(0.6061, 4);
    expect(found.angle).toBeCloseTo(23.07392, 5);
    expect(found.arc).toBeCloseTo(12.0815, 4);
    expect(found.chord).toBe(12);
  });

  it("G15: 76.62 ft of a 4 degree curve: radius 1432.39, chord 76.61 ft, deflection 1 deg 31' 57\" (highway curve worked example, Penn State)", () => {
    const radius = curveRadius(4);
    expect(Math.abs(radius - 1432.39)).toBeLessThan(0.005);
    const found = arcOfLength(76.62, radius);
    expect(Math.abs(found.chord - 76.61)).toBeLessThan(0.005);
    const seconds = (1 * 60 + 31) * 60 + 57;
    expect(Math.abs(found.deflection * 3600 - seconds)).toBeLessThan(0.5);
  });

  it("is the same from its chord and from its length, and its sagitta closes the right triangle", () => {
    const radius = fc.double({ min: 5, max: 500, noNaN: true });
    fc.assert(
      fc.property(radius, fc.double({ min: 0.01, max: 1, noNaN: true }), (radius, part) => {
        const found = arcOverChord(2 * radius * part, radius);
        expect(arcOfLength(found.arc, radius).chord).toBeCloseTo(found.chord, 6);
        expect((radius - found.sagitta) ** 2 + (found.chord / 2) ** 2).toBeCloseTo(radius ** 2, 5);
        expect(found.deflection).toBeCloseTo(found.angle / 2, 12);
      }),
    );
  });

  it("is set out from its tangent point by deflections that end at half the turn", () => {
    const table = curveTable(20, 90, 3);
    expect(table.map(({ deflection }) => deflection)).toEqual([15, 30, 45].map((d) => expect.closeTo(d, 9)));
    expect(table[2].chord).toBeCloseTo(20 * Math.SQRT2, 9);
    expect(table[2].arc).toBeCloseTo(10 * Math.PI, 9);
  });

  it("has no chord over the diameter and no arc over a turn", () => {
    expect(() => arcOverChord(60.1, 30)).toThrow("a chord is at most the diameter, 60'");
    expect(() => arcOfLength(7, 1)).toThrow("an arc is at most the distance around, 6' 3 3/8\"");
    expect(arcOfLength(2 * Math.PI, 1).chord).toBeCloseTo(0, 12);
  });
});
