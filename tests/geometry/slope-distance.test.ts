import fc from "fast-check";
import { levelAndRise, tapedDistance } from "../../src/geometry/slope-distance";

describe("A tape along sloping ground", () => {
  it("G16: 300.00 ft at 5 degrees covers 298.86 ft and rises 26.15 ft (taping-correction worked example, surveying course notes)", () => {
    const { level, rise } = levelAndRise(300, 5);
    expect(Math.abs(level - 298.86)).toBeLessThan(0.005);
    expect(Math.abs(rise - 26.15)).toBeLessThan(0.005);
    expect(tapedDistance(level, (100 * rise) / level)).toBeCloseTo(300, 9);
  });

  it("shows the level distance across the fall, and more the nearer the line runs downhill", () => {
    expect(tapedDistance(30, 8, 90)).toBeCloseTo(30, 12);
    expect(tapedDistance(30, 0)).toBe(30);
    // 3, 4 and 5: a fall of 75 %.
    expect(tapedDistance(4, 75)).toBe(5);
    expect(tapedDistance(4, 75, 180)).toBe(5);
    const bearing = fc.double({ min: 0, max: 90, noNaN: true });
    fc.assert(
      fc.property(bearing, bearing, (a, b) => {
        const [near, far] = [Math.min(a, b), Math.max(a, b)];
        expect(tapedDistance(30, 10, near)).toBeGreaterThanOrEqual(tapedDistance(30, 10, far));
      }),
    );
  });
});
