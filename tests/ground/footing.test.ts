import { circleArea } from "../../src/geometry/circle";
import { depthOf, fill } from "../../src/ground/footing";
import { DRY_SAND_TONS, tons, truckYards } from "../../src/ground/weight";
import { CUBIC_FEET_PER_CUBIC_YARD, POUNDS_PER_SHORT_TON } from "../../src/units/conversion";

describe("Footing", () => {
  test("V6: 4 in on a 60 ft circle is 34.9066 cubic yards (derived)", () => {
    expect(Math.abs(fill(circleArea(60), 4) - 34.9066)).toBeLessThan(1e-3);
  });

  test("4 in of sand, the depth taken as 0.34 ft, is about 35.6 cubic yards in a 60 ft pen (common practice, no source)", () => {
    expect(fill(circleArea(60), 0.34 * 12)).toBeCloseTo(35.6, 1);
  });

  test("4 in of sand is about 19 1/2 cubic yards in a 45 ft pen (common practice, no source)", () => {
    expect(Math.abs(fill(circleArea(45), 4) - 19.5)).toBeLessThan(0.25);
  });

  test("buys what settling takes, and the overrun on top of that", () => {
    expect(fill(8100, 1.2)).toBeCloseTo(30, 12);
    expect(fill(8100, 1.2, 10)).toBeCloseTo(33, 12);
    expect(fill(8100, 1.2, 0, 20)).toBeCloseTo(37.5, 12);
    expect(fill(8100, 1.2, 10, 20)).toBeCloseTo(41.25, 12);
    expect(fill(8100, 0, 10, 20)).toBe(0);
  });

  // V10: loose and compacted volumes of one bank yard, US Army FM 5-434, memory.
  const soils = [
    { soil: "sand", loose: 1.11, compacted: 0.95, ratio: 0.86 },
    { soil: "common earth", loose: 1.25, compacted: 0.9, ratio: 0.72 },
    { soil: "clay", loose: 1.43, compacted: 0.9, ratio: 0.63 },
  ];

  test.each(soils)(
    "V10: $soil bought loose gives the layer asked for once it has settled to $ratio",
    (row) => {
      const settle = (1 - row.compacted / row.loose) * 100;
      const bought = fill(8100, 1.2, 0, settle);
      expect(Math.abs(30 / bought - row.ratio)).toBeLessThan(0.01);
      expect((bought / row.loose) * row.compacted).toBeCloseTo(30, 12);
    },
  );

  test("V10 has all three soils", () => expect(soils).toHaveLength(3));

  test("gives back its depth", () => expect(depthOf(fill(4027, 3), 4027)).toBeCloseTo(3, 12));
});

describe("Weight", () => {
  test("V4: 100 lb a cubic foot is exactly 1.35 short tons a cubic yard (derived)", () => {
    expect((100 * CUBIC_FEET_PER_CUBIC_YARD) / POUNDS_PER_SHORT_TON).toBe(DRY_SAND_TONS);
  });

  test("V5: dry sand is about 100 lb a cubic foot (US Navy engineering-aid training text)", () => {
    const pounds = (DRY_SAND_TONS * POUNDS_PER_SHORT_TON) / CUBIC_FEET_PER_CUBIC_YARD;
    expect(Math.abs(pounds / 100 - 1)).toBeLessThan(0.1);
  });

  test("of a volume is its cubic yards times the tons in one", () => {
    expect(tons(10)).toBe(13.5);
    expect(tons(10, 1.5)).toBe(15);
  });

  test("or room, whichever is less, is what a truck carries", () => {
    expect(truckYards(16, 27)).toBe(16);
    expect(truckYards(16, 13.5)).toBe(10);
    expect(truckYards(16, 15, 1.5)).toBe(10);
  });
});
