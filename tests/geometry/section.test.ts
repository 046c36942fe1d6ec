import { across, round, sectionArea, square } from "../../src/geometry/section";

describe("A section", () => {
  test("that is round is as wide across as its diameter", () => {
    expect(across(round(6))).toBe(6);
    expect(sectionArea(round(6))).toBeCloseTo(9 * Math.PI, 12);
  });

  test("with corners is widest along its diagonal", () => {
    expect(across(square(3, 4))).toBe(5);
    expect(sectionArea(square(3, 4))).toBe(12);
    expect(square(5.5)).toEqual({ shape: "square", width: 5.5, depth: 5.5 });
  });
});
