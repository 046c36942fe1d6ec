import fc from "fast-check";
import { fenceChords, fits, measures, panelCount, type PanelQuestion } from "../../src/fence/panels";
import { circumcircle, insideClear } from "../../src/geometry/cyclic-polygon";
import { Refusal } from "../../src/units/refusal";

describe("The count of panels", () => {
  test("18 ten-foot panels and one 8 ft gate close a 60 ft pen (common practice, no source)", () => {
    expect(panelCount({ diameter: 60, panel: 10, gates: [8] })).toBe(18);
  });

  test("comes nearest around, and a tie takes more", () => {
    expect(panelCount({ diameter: 100 / Math.PI, panel: 10, gates: [] })).toBe(10);
    expect(panelCount({ diameter: 105 / Math.PI, panel: 10, gates: [] })).toBe(11);
    expect(panelCount({ diameter: 104.99 / Math.PI, panel: 10, gates: [] })).toBe(10);
    expect(panelCount({ diameter: 104 / Math.PI, panel: 10, gates: [4, 0.001] })).toBe(10);
  });

  test("adds the pin gap to every panel and gate", () => {
    expect(panelCount({ diameter: 72, panel: 12, gates: [10], pinGap: 0 })).toBe(18);
    expect(panelCount({ diameter: 72, panel: 12, gates: [10], pinGap: 1 })).toBe(17);
    expect(panelCount({ diameter: 72, panel: 12, gates: [10], pinGap: -0.5 })).toBe(19);
  });

  test("answers its own sizes exactly, whichever the fit", () => {
    for (let count = 3; count <= 80; count++) {
      const pen = fenceChords([{ length: 12, count }], [10, 4], 0.1);
      const asked = { panel: 12, gates: [10, 4], pinGap: 0.1 };
      expect(panelCount({ ...asked, diameter: insideClear(pen), fit: "at least" })).toBe(count);
      expect(panelCount({ ...asked, diameter: circumcircle(pen).diameter, fit: "at most" })).toBe(count);
      expect(panelCount({ ...asked, diameter: measures.nearest(pen), fit: "nearest" })).toBe(count);
    }
  });

  test("is 0 where the gates alone close the pen that was asked for, even if one long panel closes none", () => {
    expect(panelCount({ diameter: 15, panel: 30, gates: [16, 16, 16] })).toBe(0);
    expect(panelCount({ diameter: 9, panel: 30, gates: [16, 16, 16], fit: "at least" })).toBe(0);
    expect(panelCount({ diameter: 20, panel: 30, gates: [16, 16, 16], fit: "at most" })).toBe(0);
  });

  test("is refused where gates alone need more than was asked, with the smallest pen that closes", () => {
    expect(() => panelCount({ diameter: 8, panel: 12, gates: [16] })).toThrow(/^gates alone need .* across the pins: .* 2 of these panels$/);
    expect(() => panelCount({ diameter: 8, panel: 12, gates: [16, 16, 16] })).toThrow(/^gates alone need .*without a panel$/);
    expect(() => panelCount({ diameter: 1, panel: 12, gates: [] })).toThrow(/^3 of these panels need 13' 10 1\/4" across the pins/);
    expect(() => panelCount({ diameter: 13, panel: 12, gates: [], fit: "at most" })).toThrow(
      expect.objectContaining({ kind: "answer" }),
    );
  }); // prettier-ignore

  test("is refused where a negative gap leaves nothing of a panel or gate", () => {
    expect(() => panelCount({ diameter: 8, panel: 0.5, gates: [4], pinGap: -0.5 })).toThrow(
      expect.objectContaining({ kind: "value" }),
    );
    expect(() => fenceChords([], [0.4], -0.5)).toThrow(/^pin_gap_in/);
  });

  test("is what trying every count finds", () => {
    const question = fc.record({
      diameter: fc.integer({ min: 12, max: 260 }).map((x) => x / 4),
      panel: fc.constantFrom(5, 6, 8, 10, 12, 16, 30),
      gates: fc.array(fc.constantFrom(4, 6, 8, 10, 12, 16), { maxLength: 4 }),
      pinGap: fc.constantFrom(0, 0.1, -0.05),
      fit: fc.constantFrom(...fits),
    });
    fc.assert(
      fc.property(question, (asked) => expect(answer(asked)).toBe(tried(asked))),
      { numRuns: 3000 },
    );
  });
});

function answer(asked: PanelQuestion): number | null {
  try {
    return panelCount(asked);
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal);
    return null;
  }
}

/** The rule to the letter, over all counts to 60; null where nothing answers. */
function tried({ diameter, panel, gates, pinGap = 0, fit = "nearest" }: PanelQuestion): number | null {
  const pens: { count: number; size: number }[] = [];
  for (let count = Math.max(0, 3 - gates.length); count <= 60; count++) {
    const chords = fenceChords([{ length: panel, count }], gates, pinGap);
    const around = chords.reduce((sum, chord) => sum + chord.length * chord.count, 0);
    const longest = Math.max(...chords.map((chord) => (chord.count > 0 ? chord.length : 0)));
    if (around - 2 * longest < 1e-6 || !circumcircle(chords).centerInside) continue;
    pens.push({ count, size: measures[fit](chords) });
  }
  if (pens.every(({ size }) => Math.PI * (size - diameter) > (panel + pinGap) / 2 + 1e-9)) return null;
  if (fit === "at least") return pens.find(({ size }) => size >= diameter - 1e-9)!.count;
  if (fit === "at most") return pens.filter(({ size }) => size <= diameter + 1e-9).at(-1)?.count ?? null;
  const miss = Math.min(...pens.map(({ size }) => Math.abs(size - diameter)));
  return pens.filter(({ size }) => Math.abs(size - diameter) <= miss + 1e-9).at(-1)!.count;
}
