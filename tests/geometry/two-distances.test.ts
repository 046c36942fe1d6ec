import fc from "fast-check";
import { bearingTo, distance } from "../../src/geometry/point";
import { twoDistances } from "../../src/geometry/two-distances";

const coordinate = fc.double({ min: -300, max: 300, noNaN: true });
const place = fc.record({ east: coordinate, north: coordinate });

describe("A place taped from two stakes", () => {
  it("is found again, on its own side of the line between them", () => {
    fc.assert(
      fc.property(place, place, place, (first, second, target) => {
        fc.pre(distance(first, second) > 1);
        const turn = ((bearingTo(first, target) - bearingTo(first, second) + 540) % 360) - 180;
        fc.pre(Math.abs(turn) > 1 && Math.abs(turn) < 179 && distance(first, target) > 1);
        const side = turn > 0 ? "right" : "left";
        const found = twoDistances(first, second, distance(first, target), distance(second, target), side);
        expect(distance(found, target)).toBeLessThan(1e-6);
      }),
    );
  });

  it("lies on the line where the two distances just meet", () => {
    const [first, second] = [{ east: 0, north: 0 }, { east: 0, north: 10 }]; // prettier-ignore
    expect(twoDistances(first, second, 4, 6, "right").north).toBeCloseTo(4, 12);
  });

  it("is refused where the distances do not meet or the stakes are one", () => {
    const [first, second] = [{ east: 0, north: 0 }, { east: 0, north: 10 }]; // prettier-ignore
    const missing = "these two distances do not meet from stakes that are 10' apart: measure them again";
    expect(() => twoDistances(first, second, 4, 5.9, "left")).toThrow(missing);
    expect(() => twoDistances(first, second, 25, 6, "left")).toThrow(missing);
    expect(() => twoDistances(first, first, 4, 4, "left")).toThrow(
      "the two stakes stand in one place: measure from two that are apart",
    );
  });
});
