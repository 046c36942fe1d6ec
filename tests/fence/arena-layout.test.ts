import fc from "fast-check";
import { type ArenaGate } from "../../src/fence/arena-gates";
import { type PostArena, arenaLayout } from "../../src/fence/arena-layout";
import { circumcircle } from "../../src/geometry/cyclic-polygon";
import { METERS_PER_FOOT } from "../../src/units/conversion";
import { expectWalkCloses, surveyedArea } from "./closed-walk";

const arena = (parts: Partial<PostArena>): PostArena => ({
  length: 200,
  width: 100,
  cornerRadius: 0,
  spacing: 10,
  gates: [],
  gatePost: 0,
  ...parts,
});
const gate = (parts: Partial<ArenaGate>): ArenaGate => ({ side: "near", opening: 12, ...parts });

const size = fc.double({ min: 40, max: 400, noNaN: true });
const part = fc.double({ min: 0, max: 1, noNaN: true });
const sides = ["left", "far", "right", "near"] as const;
const anyArena: fc.Arbitrary<PostArena> = fc
  .record({
    length: size,
    width: size,
    rounding: fc.oneof(fc.constantFrom(0, 1), part),
    spacing: fc.double({ min: 4, max: 16, noNaN: true }),
    gates: fc.uniqueArray(
      fc.record({
        side: fc.constantFrom(...sides),
        opening: fc.double({ min: 3, max: 16, noNaN: true }),
        part,
      }),
      { maxLength: 4, selector: ({ side }) => side },
    ),
    gatePost: fc.constantFrom(0, 0.5),
  })
  .map(({ length, width, rounding, gates, gatePost, ...rest }) => {
    const cornerRadius = (rounding * Math.min(length, width)) / 2;
    const room = (side: string) => (side === "left" || side === "right" ? length : width) - 2 * cornerRadius;
    const fitting = gates
      .map(({ part, ...kept }) => ({ ...kept, free: room(kept.side) - kept.opening - gatePost, part }))
      .filter(({ free }) => free > 0)
      .map(({ side, opening, free, part }) => ({ side, opening, at: cornerRadius + free * part }));
    return { ...rest, length, width, cornerRadius, gates: fitting, gatePost };
  });

describe("The layout of an arena of posts", () => {
  it("closes, keeps its bays to the spacing, and has a post at every corner, tangent point and gate", () => {
    fc.assert(
      fc.property(anyArena, fc.double({ min: -360, max: 360, noNaN: true }), (asked, bearing) => {
        const { stakes, corners, fence, area, around } = arenaLayout(asked, bearing);
        expectWalkCloses(stakes);
        const { gates, gatePost, spacing } = asked;
        stakes.forEach(({ chord, atGate }, i) => {
          if (!(atGate && stakes.at(i - 1)?.atGate)) expect(chord).toBeLessThan(spacing + 1e-6);
        });
        if (gates.length > 0) expect(stakes[1].chord).toBeCloseTo(gates[0].opening + gatePost, 9);
        const fixed = stakes.filter(({ place }) => place === "corner" || place === "tangent point").length;
        expect(fixed).toBeLessThanOrEqual(8);
        expect(fence).toBeLessThanOrEqual(around + 1e-9);
        expect(surveyedArea(stakes)).toBeLessThanOrEqual(area + 1e-6);
        expect(surveyedArea(corners)).toBeCloseTo(asked.length * asked.width, 6);
      }),
    );
  });

  const derived = [
    // Derived: G10 and G11; the fence straight from post to post comes near as bays shorten.
    { id: "G10", cornerRadius: 20, area: 19656.637, around: 565.664, centers: 4, tangents: 8 },
    { id: "G11", cornerRadius: 50, area: 17853.982, around: 514.159, centers: 2, tangents: 4 },
  ] as const;

  test.each(derived)("$id: 200 by 100 ft has the derived area and distance around", ({ cornerRadius, area, around, centers, tangents }) => {
    const layout = arenaLayout(arena({ cornerRadius, spacing: 0.25 }), 20);
    expect(layout.area).toBeCloseTo(area, 3);
    expect(layout.around).toBeCloseTo(around, 3);
    expect(layout.fence).toBeCloseTo(around, 2);
    expect(Math.abs(surveyedArea(layout.stakes) - area)).toBeLessThan(0.05);
    expect(layout.arcCenters).toHaveLength(centers);
    expect(layout.stakes.filter(({ place }) => place === "tangent point")).toHaveLength(tangents);
    for (const { east, north } of layout.stakes.filter(({ place }) => place !== "straight"))
      expect(Math.min(...layout.arcCenters.map((c) => Math.hypot(c.east - east, c.north - north)))).toBeCloseTo(cornerRadius, 9);
  }); // prettier-ignore

  it("is held to two derived areas", () => expect(derived).toHaveLength(2));

  const diagonalsToCheck = [
    [
      "G8, published dressage-ring layout tables",
      40 / METERS_PER_FOOT,
      20 / METERS_PER_FOOT,
      44.72 / METERS_PER_FOOT,
      0.01 / METERS_PER_FOOT,
    ],
    ["G9, derived", 120, 60, 134.1641, 1e-4],
    ["G9, derived", 200, 100, 223.6068, 1e-4],
    ["G9, derived", 300, 150, 335.4102, 1e-4],
    ["G9, derived", 200, 150, 250, 1e-4],
  ] as const;

  test.each(diagonalsToCheck)("%s: %p by %p ft is checked by two diagonals of %p ft", (_source, length, width, diagonal, tolerance) => {
    const { diagonals } = arenaLayout(arena({ length, width }), 33);
    for (const taped of diagonals) expect(Math.abs(taped - diagonal)).toBeLessThan(tolerance);
  }); // prettier-ignore

  it("is held to five diagonals", () => expect(diagonalsToCheck).toHaveLength(5));

  it("starts at the first gate listed, clockwise, with equal bays from gate to corner", () => {
    const gates = [gate({ side: "right", opening: 12, at: 30 }), gate({ side: "left" })];
    const { stakes } = arenaLayout(arena({ gates, spacing: 8 }), 0);
    expect(stakes[0]).toMatchObject({ atGate: true, place: "straight" });
    // The right side runs from far right (50, 100) to near right: 30 ft down it, and 12 ft on.
    expect([stakes[0].east, stakes[0].north]).toEqual([expect.closeTo(50, 9), expect.closeTo(70, 9)]);
    expect([stakes[1].east, stakes[1].north]).toEqual([expect.closeTo(50, 9), expect.closeTo(58, 9)]);
    expect(stakes[2].chord).toBeCloseTo(158 / 20, 9);
    const left = stakes.filter(({ atGate, east }) => atGate && east < 0).map(({ north }) => north);
    expect(left).toEqual([expect.closeTo(-6, 9), expect.closeTo(6, 9)]);
  });

  it("lets a gate begin in a square corner and two gates share a post", () => {
    const gates = [gate({ at: 0 }), gate({ at: 12, opening: 4 })];
    const { stakes } = arenaLayout(arena({ gates }), 0);
    expect(stakes.slice(0, 3).map(({ place }) => place)).toEqual(["corner", "straight", "straight"]);
    expect(stakes.map(({ atGate }) => atGate).slice(0, 4)).toEqual([true, true, true, false]);
    expect(stakes.filter(({ place }) => place === "corner")).toHaveLength(4);
  });

  it("keeps a length all round that is square and as round as can be: a circle of equal bays", () => {
    const layout = arenaLayout(arena({ length: 80, width: 80, cornerRadius: 40, spacing: 8 }), 0);
    expect(layout.arcCenters).toHaveLength(1);
    expect(layout.stakes.every(({ place }) => place === "arc")).toBe(true);
    const bay = { length: layout.stakes[0].chord, count: layout.stakes.length };
    expect(circumcircle([bay]).diameter).toBeCloseTo(80, 9);
    expect(bay.count).toBe(32);
  });

  it("puts half-round ends on the shorter side, whichever that is", () => {
    const long = arenaLayout(arena({ cornerRadius: 50 }), 0);
    const wide = arenaLayout(arena({ length: 100, width: 200, cornerRadius: 50 }), 90);
    expect(wide.stakes).toHaveLength(long.stakes.length);
    expect(wide.fence).toBeCloseTo(long.fence, 9);
  });

  it("has at least a bay a quarter turn, however long the spacing", () => {
    expect(arenaLayout(arena({ cornerRadius: 50, spacing: 300 }), 0).stakes).toHaveLength(6);
    expect(arenaLayout(arena({ spacing: 300 }), 0).stakes).toHaveLength(4);
  });

  test.each([
    ["a radius too large", { cornerRadius: 50.1 }, "corner_radius_ft: at most half the shorter side, 50'"],
    ["a gate where all is arc", { cornerRadius: 50, gates: [gate({})] }, "the near side is all arc: a gate needs a straight side"],
    ["a gate too long", { cornerRadius: 45, gates: [gate({})], gatePost: 0.5 }, "gates on the near side: one is 12' 6\" with its posts, and the straight is 10'"],
    ["a gate past the end", { gates: [gate({ at: 89 })] }, "a gate on the near side must begin from 0\" to 88' from the corner"],
    ["a gate on the arc", { cornerRadius: 20, gates: [gate({ at: 19 })] }, "a gate on the near side must begin from 20' to 68' from the corner"],
    ["a gate at no number", { gates: [gate({ at: NaN })] }, "a gate on the near side must begin from 0\" to 88' from the corner"],
    ["gates that overlap", { gates: [gate({ at: 10 }), gate({ at: 0, opening: 11 })] }, "two gates on the near side overlap: set them farther apart"],
    ["more stakes than any fence has", { spacing: 0.001 }, "over 10000 stakes: check the lengths"],
    ["a spacing of nothing", { cornerRadius: 50, spacing: 5e-324 }, "over 10000 stakes: check the lengths"],
  ])("refuses %s and says what is allowed", (_what, parts, sentence) => {
    expect(() => arenaLayout(arena(parts), 0)).toThrow(sentence);
  }); // prettier-ignore
});
