import { estimate } from "../../src/estimate/estimate";
import { figuresOf } from "../../src/estimate/figures";
import { newJob, type Job } from "../../src/estimate/job";
import { gateCautions } from "../../src/estimate/gate-cautions";
import { panelPen } from "../../src/estimate/panel-pen";
import { examplePrices } from "../../src/estimate/prices";
import { onHandSentence, openingsSentence } from "../../src/estimate/sentences";

const job = (answers: Partial<Job>): Job => ({ ...newJob(), ...answers }) as Job;
const made = (answers: Partial<Job>) => estimate(job(answers), examplePrices);
const lineOf = (answers: Partial<Job>, key: string) => made(answers).lines.find((line) => line.key === key);

describe("panels on hand", () => {
  it("are used first and not bought, and what is left over is said", () => {
    expect(panelPen(job({})).counts[0]).toBe(17);
    expect(lineOf({ panel_1_stock: 5 }, "panel_1")!.quantity).toBe(12);
    const all = { panel_1_stock: 20 };
    expect(lineOf(all, "panel_1")).toBeUndefined();
    const figures = figuresOf(job(all), made(all));
    expect([figures.panel_1_count, figures.panel_1_quantity, figures.panel_1_left]).toEqual([17, "", 3]);
    expect(onHandSentence(panelPen(job(all)))).toBe(
      "Of the panels on hand: 17 of 12 ft used, three left over",
    );
    expect(onHandSentence(panelPen(job({ panel_2: 10, panel_2_use: 0, panel_2_stock: 4 })))).toBe(
      "Of the panels on hand: none of 10 ft used, four left over",
    );
    expect(onHandSentence(panelPen(job({})))).toBe("");
  });

  it("change no pen while others may be bought, and are all there is where they may not", () => {
    const hand = { panel_2: 10, panel_1_stock: 9, panel_2_stock: 30 };
    expect(panelPen(job(hand)).counts).toEqual(panelPen(job({ panel_2: 10 })).counts);
    const { counts } = panelPen(job({ ...hand, beyond_stock: "not used" }));
    expect(counts[0]).toBeLessThanOrEqual(9);
    expect(12 * counts[0]! + 10 * counts[1]! + 8).toBeCloseTo(66 * Math.PI, -1);
    expect(() => panelPen(job({ panel_1_stock: 1, beyond_stock: "not used" }))).toThrow(/close no pen/);
  });

  it("are not asked of where the user set every count", () => {
    expect(panelPen(job({ panel_1_use: 6, beyond_stock: "not used" })).counts[0]).toBe(6);
  });
});

describe("the size of a panel pen", () => {
  const thick = { panel_thickness: 3 };

  it("is taken between the panels' faces inside, through the pins, or outside of the panels", () => {
    const [thin, full] = [panelPen(job({})), panelPen(job(thick))];
    expect(thin.outside).toBe(thin.pinCircle);
    expect(full.pinCircle).toBe(thin.pinCircle);
    expect(full.insideClear).toBeCloseTo(thin.insideClear - 0.25, 12);
    expect(full.outside).toBeCloseTo(thin.pinCircle + 0.25, 12);
  });

  it("holds what was asked by that meaning, at every size", () => {
    for (let size = 20; size <= 110; size += 0.37) {
      const clear = panelPen(job({ ...thick, size, size_means: "inside clear" }));
      expect(clear.insideClear).toBeGreaterThanOrEqual(size - 1e-9);
      const outside = panelPen(job({ ...thick, size, size_means: "outside" }));
      expect(outside.outside).toBeLessThanOrEqual(size + 1e-9);
    }
  });
});

describe("the gate frames of a panel pen", () => {
  it("have a clear opening, and a bow where one is given", () => {
    const pen = panelPen(job({ gate_1: 10, gate_2: 8, frame_less_opening: 6, bow_height: 9 }));
    expect(pen.openings).toEqual([9.5, 7.5]);
    expect(openingsSentence(pen)).toBe(
      "Clear through the gates: 9 ft 6 in and 7 ft 6 in, under a bow of 9 ft",
    );
    expect(openingsSentence(panelPen(job({ gate_1: null })))).toBe("");
  });

  it("call for caution where a rider may not clear the bow (common practice, no source)", () => {
    const cautions = (bow: number) => gateCautions(panelPen(job({ gate_1: 12, bow_height: bow })), 40);
    expect(cautions(8.5)).toEqual([expect.stringMatching(/^Bow under 9 ft: lead the horse/)]);
    expect(cautions(9)).toEqual([]);
  });

  // V11, 23 CFR 658.15: a truck may be 102 in wide.
  it("call for caution where sand is wanted and no opening is as wide as a truck", () => {
    const cautions = (frame: number, sand = 40) =>
      gateCautions(panelPen(job({ gate_1: frame, frame_less_opening: 6 })), sand);
    expect(cautions(102 / 12 + 0.5)).toEqual([]);
    expect(cautions(101 / 12 + 0.5)).toEqual([
      expect.stringMatching(/^No gate lets in a truck 8 ft 6 in wide/),
    ]);
    expect(cautions(8, 0)).toEqual([]);
  });
});
