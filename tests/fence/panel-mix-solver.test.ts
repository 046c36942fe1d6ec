import fc from "fast-check";
import loadHighs, { type Highs } from "highs";
import { type PanelMixJob, panelMix } from "../../src/fence/panel-mix";
import { fullTurn } from "../../src/geometry/cyclic-polygon";

// HiGHS, a general solver for linear problems in whole numbers, is asked the same as panelMix. It holds bounds to 1e-6
// only, so that its optimum may differ by a little more than that.
const SLACK = 1e-4;

let highs: Highs;
beforeAll(async () => {
  highs = await loadHighs();
});

const sum = (weights: number[]) =>
  weights.map((w, i) => `${w < 0 ? "-" : "+"} ${Math.abs(w)} n${i}`).join(" ");

function optimum(
  objective: string,
  rows: string[],
  counts: number,
  most: (number | undefined)[],
): number | null {
  const names = Array.from({ length: counts }, (_, i) => `n${i}`);
  const bounds = most.flatMap((stock, i) => (stock === undefined ? [] : [`0 <= n${i} <= ${stock}`]));
  const model = [
    "Minimize",
    `goal: ${objective}`,
    "Subject To",
    ...rows,
    "Bounds",
    ...bounds,
    "General",
    names.join(" "),
    "End",
  ];
  const solution = highs.solve(model.join("\n"), { mip_rel_gap: 0, mip_abs_gap: 0 });
  return solution.Status === "Optimal" ? solution.ObjectiveValue : null;
}

const lengths = fc.array(
  fc.integer({ min: 6 * 96, max: 18 * 96 }).map((eighths) => eighths / 96),
  { minLength: 2, maxLength: 6 },
);
const jobs = fc.record({
  diameter: fc.double({ min: 50, max: 200, noNaN: true }),
  panels: lengths.chain((all) =>
    fc.tuple(
      ...all.map((length) =>
        fc.record({
          length: fc.constant(length),
          price: fc.integer({ min: 60, max: 260 }),
          stock: fc.option(fc.integer({ min: 3, max: 20 }), { nil: undefined, freq: 3 }),
        }),
      ),
    ),
  ),
  gates: fc.array(fc.constantFrom(4, 6, 8, 10, 12, 16), { maxLength: 4 }),
});
const job = (
  random: Pick<PanelMixJob, "diameter" | "panels" | "gates">,
  fit: PanelMixJob["fit"],
  priced: boolean,
): PanelMixJob => ({ ...random, fit, priced, pinGap: 0, tolerance: 1 });
const counts = (asked: PanelMixJob) => {
  try {
    return panelMix(asked);
  } catch {
    return null;
  }
};

describe("panelMix beside a general integer solver", () => {
  it("comes as near to the distance around, for up to six lengths and four gates to 200 ft", () => {
    fc.assert(
      fc.property(jobs, (random) => {
        const asked = job(
          { ...random, panels: random.panels.map((p) => ({ ...p, stock: undefined })) },
          "nearest",
          false,
        );
        const goal = Math.PI * asked.diameter - asked.gates.reduce((a, b) => a + b, 0);
        const weights = asked.panels.map(({ length }) => length);
        const ours = panelMix(asked).reduce((around, n, i) => around + n * weights[i], 0);
        const rows = [`over: ${sum(weights)} - off <= ${goal}`, `under: ${sum(weights)} + off >= ${goal}`];
        const solved = optimum("off", [...rows, `near: off <= ${Math.abs(ours - goal)}`], weights.length, []);
        expect(Math.abs(Math.abs(ours - goal) - solved!)).toBeLessThan(SLACK);
      }),
      { numRuns: 15 },
    );
  });

  it.each(["nearest", "at most"] as const)("finds a mix as cheap, %s", (fit) => {
    let answered = 0;
    fc.assert(
      fc.property(jobs, (random) => {
        const asked = job(random, fit, true);
        const { diameter, panels, gates } = asked;
        const prices = panels.map(({ price }) => price ?? 0);
        const all = (bound: string, size: number) => {
          const weigh = (length: number) =>
            fit === "nearest" ? length : fullTurn([{ length, count: 1 }], size);
          const given = gates.reduce((total, gate) => total + weigh(gate), 0);
          const goal = (fit === "nearest" ? Math.PI * size : 2 * Math.PI) - given;
          return `${sum(panels.map(({ length }) => weigh(length)))} ${bound} ${goal}`;
        };
        const rows = [
          `low: ${all(">=", diameter - 1)}`,
          `high: ${all("<=", fit === "nearest" ? diameter + 1 : diameter)}`,
        ];
        const solved = optimum(
          sum(prices),
          rows,
          panels.length,
          panels.map(({ stock }) => stock),
        );
        const mix = counts(asked);
        const cost = mix && mix.reduce((total, n, i) => total + n * prices[i], 0);
        if (cost === null) expect(solved).toBeNull();
        else expect(cost).toBeCloseTo(solved!, 4);
        if (cost !== null) answered++;
      }),
      { numRuns: 30 },
    );
    expect(answered).toBeGreaterThan(12);
  });
});
