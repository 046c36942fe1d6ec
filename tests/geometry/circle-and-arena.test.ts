import { circleArea, circumference } from "../../src/geometry/circle";
import {
  diagonal,
  roundedRectangleArea,
  roundedRectanglePerimeter,
} from "../../src/geometry/rounded-rectangle";
import { METERS_PER_FOOT } from "../../src/units/conversion";

describe("A circle", () => {
  test("of 60 ft is 188.4 ft round and holds 2826 sq ft with pi taken as 3.14 (common practice, no source)", () => {
    expect((circumference(60) / Math.PI) * 3.14).toBeCloseTo(188.4, 9);
    expect((circleArea(60) / Math.PI) * 3.14).toBeCloseTo(2826, 9);
  });
});

describe("An arena", () => {
  const diagonals: [id: string, length: number, width: number, expected: number, tolerance: number, source: string][] = [
    ["G9", 120, 60, 134.1641, 1e-4, "derived"],
    ["G9", 200, 100, 223.6068, 1e-4, "derived"],
    ["G9", 300, 150, 335.4102, 1e-4, "derived"],
    ["G9", 200, 150, 250, 1e-4, "derived"],
  ]; // prettier-ignore

  test.each(diagonals)("%s: %p by %p ft has the diagonal %p", (_id, length, width, expected, tolerance) => {
    expect(Math.abs(diagonal(length, width) - expected)).toBeLessThan(tolerance);
  });

  test("checks four diagonals in feet", () => expect(diagonals).toHaveLength(4));

  test("G8: 20 by 40 m has a diagonal of 44.72 m (published dressage-ring layout tables)", () => {
    const feet = diagonal(40 / METERS_PER_FOOT, 20 / METERS_PER_FOOT);
    expect(Math.abs(feet * METERS_PER_FOOT - 44.72)).toBeLessThan(0.01);
  });

  const rounded: [id: string, cornerRadius: number, area: number, around: number][] = [
    // Derived.
    ["G10", 20, 19656.637, 565.664],
    ["G11", 50, 17853.982, 514.159],
  ];

  test("checks two rounded arenas", () => expect(rounded).toHaveLength(2));

  test.each(rounded)("%s: 200 by 100 ft with a corner radius of %p ft has the derived area and perimeter", (_id, cornerRadius, area, around) => {
    const shape = { length: 200, width: 100, cornerRadius };
    expect(Math.abs(roundedRectangleArea(shape) - area)).toBeLessThan(1e-3);
    expect(Math.abs(roundedRectanglePerimeter(shape) - around)).toBeLessThan(1e-3);
  }); // prettier-ignore

  test("with square corners is length times width, and twice both around", () => {
    expect(roundedRectangleArea({ length: 190, width: 90, cornerRadius: 0 })).toBe(17100);
    expect(roundedRectanglePerimeter({ length: 190, width: 90, cornerRadius: 0 })).toBe(560);
  });

  test("that is square and as round as can be is a circle", () => {
    const shape = { length: 80, width: 80, cornerRadius: 40 };
    expect(roundedRectangleArea(shape)).toBeCloseTo(circleArea(80), 9);
    expect(roundedRectanglePerimeter(shape)).toBeCloseTo(circumference(80), 9);
  });

  test("takes no corner radius over half its shorter side, and says what is allowed", () => {
    const shape = { length: 200, width: 100, cornerRadius: 50.01 };
    expect(() => roundedRectangleArea(shape)).toThrow(
      /^corner_radius_ft: at most half the shorter side, 50'$/,
    );
    expect(() => roundedRectanglePerimeter(shape)).toThrow(/50'/);
  });
});
