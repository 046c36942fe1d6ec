import fc from "fast-check";
import { type PanelArena, panelArena } from "../../src/fence/panel-arena";
import { expectWalkCloses, surveyedArea } from "./closed-walk";

const arena = (parts: Partial<PanelArena>): PanelArena => ({
  length: 200,
  width: 100,
  panel: 12,
  pinGap: 0,
  gates: [],
  ...parts,
});

/** Panels so long, and ends all gate, that the left side is 70 ft and the right one 50. */
const longGates = (end: number): PanelArena => {
  const [far, near] = [
    { side: "far" as const, opening: end },
    { side: "near" as const, opening: end },
  ];
  return arena({ length: 20, width: end, panel: 50, gates: [{ side: "left", opening: 20 }, far, near] });
};

const sides = ["left", "far", "right", "near"] as const;
const anyArena: fc.Arbitrary<PanelArena> = fc.record({
  length: fc.double({ min: 60, max: 300, noNaN: true }),
  width: fc.double({ min: 60, max: 300, noNaN: true }),
  panel: fc.double({ min: 6, max: 20, noNaN: true }),
  pinGap: fc.constantFrom(0, 1 / 24, -1 / 24),
  gates: fc.array(
    fc.record(
      {
        side: fc.constantFrom(...sides),
        opening: fc.double({ min: 4, max: 14, noNaN: true }),
        at: fc.double({ min: -20, max: 320, noNaN: true }),
      },
      { requiredKeys: ["side", "opening"] },
    ),
    { maxLength: 4 },
  ),
});

describe("The layout of an arena of panels", () => {
  it("closes with whole panels and gates on every side, in any size and with any gates", () => {
    fc.assert(
      fc.property(anyArena, fc.double({ min: -360, max: 360, noNaN: true }), (asked, bearing) => {
        const { stakes, built, corners, around, area, diagonals } = panelArena(asked, bearing);
        expectWalkCloses(stakes);
        const panels = sides.reduce((sum, side) => sum + built[side].panels, 0);
        expect(stakes).toHaveLength(panels + asked.gates.length);
        expect(stakes.filter(({ place }) => place === "corner")).toHaveLength(4);
        expect(stakes.reduce((sum, { chord }) => sum + chord, 0)).toBeCloseTo(around, 6);
        expect(surveyedArea(stakes)).toBeCloseTo(area, 6);
        if (asked.gates.length > 0)
          expect(stakes[1].chord).toBeCloseTo(asked.gates[0].opening + asked.pinGap, 9);
        const { left, far, right, near } = built;
        // Ptolemy: in four corners on a circle the diagonals' product is the sum of the opposite sides' products.
        const product = left.length * right.length + far.length * near.length;
        expect(diagonals[0] * diagonals[1]).toBeCloseTo(product, 5);
        const heading = Math.atan2(corners[1].east - corners[0].east, corners[1].north - corners[0].north);
        expect(Math.abs(Math.sin(heading - (bearing * Math.PI) / 180))).toBeLessThan(1e-9);
      }),
    );
  });

  it("takes the whole panels nearest to each side, more on a tie, and shows the built size", () => {
    const { built, unlike, diagonals, stakes } = panelArena(arena({ length: 200, width: 102 }), 0);
    expect(built.left).toEqual({ panels: 17, length: 204 });
    expect(built.far).toEqual({ panels: 9, length: 108 });
    expect([built.right, built.near]).toEqual([built.left, built.far]);
    expect(unlike).toEqual({ length: 0, width: 0 });
    expect(diagonals[0]).toBeCloseTo(Math.hypot(204, 108), 9);
    expect(diagonals[1]).toBeCloseTo(diagonals[0], 9);
    expect(stakes).toHaveLength(52);
  });

  it("lets a gate as long as a panel take a panel's place, and adds the gap to every piece", () => {
    const gates = [{ side: "near" as const, opening: 12 }];
    const { built, unlike } = panelArena(arena({ gates, pinGap: 0.125 }), 0);
    expect(built.near.panels).toBe(built.far.panels - 1);
    expect(built.near.length).toBeCloseTo(8 * 12.125, 9);
    expect(unlike.width).toBeCloseTo(0, 12);
  });

  it("says how unlike opposite sides are where a gate fits no panel, as alike as they can be", () => {
    const gates = [{ side: "near" as const, opening: 10 }];
    const { built, unlike, diagonals } = panelArena(arena({ gates }), 0);
    expect(unlike.width).toBeCloseTo(2, 12);
    expect([built.far.length, built.near.length]).toEqual([96, 94]);
    expect(diagonals[0]).toBeCloseTo(diagonals[1], 9);
  });

  it("sets a gate at the joint nearest to its place, and first where it is listed first", () => {
    const gates = [{ side: "left" as const, opening: 12, at: 50 }];
    const { stakes } = panelArena(arena({ length: 120, gates }), 0);
    expect(stakes[0]).toMatchObject({ atGate: true, place: "straight" });
    expect(stakes[0].north).toBeCloseTo(-60 + 48, 9);
    const inCorner = panelArena(arena({ length: 120, gates: [{ ...gates[0], at: 2 }] }), 0).stakes;
    expect(inCorner[0]).toMatchObject({ atGate: true, place: "corner" });
  });

  it("takes a side that is all gate", () => {
    const gates = [{ side: "near" as const, opening: 24 }];
    expect(panelArena(arena({ width: 24, gates }), 0).built.near).toEqual({ panels: 0, length: 24 });
  });

  it("keeps the length along the bearing where one side is so long that the circle's center lies outside", () => {
    const { corners, area, unlike, diagonals } = panelArena(longGates(12), 0);
    expect(unlike.length).toBe(20);
    // Left side 70 with the corner angles sharp: each diagonal is shorter than the side.
    expect(diagonals[0]).toBeLessThan(70);
    expect(corners[1].north).toBeGreaterThan(corners[0].north);
    expect(corners[1].east).toBeCloseTo(corners[0].east, 9);
    expect(area).toBeGreaterThan(0);
  });

  it("refuses sides so unlike that they close nothing", () => {
    expect(() => panelArena(longGates(4), 0)).toThrow(/These close nothing/);
  });

  it("refuses gates that are longer than their side, a gap that eats a piece, and too many panels", () => {
    const gates = [{ side: "near" as const, opening: 60 }, { side: "near" as const, opening: 48 }]; // prettier-ignore
    expect(() => panelArena(arena({ gates }), 0)).toThrow(
      "the gates on the near side are 108' together, longer than the side of 100'",
    );
    expect(() => panelArena(arena({ pinGap: -12 }), 0)).toThrow(/^pin_gap_in: a gap this far below 0/);
    expect(() => panelArena(arena({ panel: 0.01 }), 0)).toThrow("over 10000 stakes: check the lengths");
  });
});
