import { estimate, totalOf } from "../../../src/estimate/estimate";
import { newJob, type Job } from "../../../src/estimate/job";
import { type SizeAsked } from "../../../src/estimate/sizes-asked";
import { waysUnder } from "../../../src/estimate/ways-under";
import { comparePlan } from "../../../src/sheets/documents/compare";
import { compareWords as words } from "../../../src/sheets/documents/compare-words";
import { type SheetPlan } from "../../../src/sheets/plan";
import { type Cell } from "../../../src/units/cell";
import { shownBy } from "../shown";
import { ownPrices, sourcesOf, worked, wordsOf } from "./books";

const sizes: SizeAsked[] = [50, 60, 66, 80].map((size) => ({ label: `${size} ft`, answers: { size } }));

const alone = (job: Job) => totalOf(estimate(job, ownPrices)) as number;

interface Shown {
  job: Job;
  plans: SheetPlan[];
  plan: SheetPlan;
  /** What the cells under the sizes show, by the label of their row. */
  rows: Record<string, Cell[]>;
  words: string;
}

/** A comparison over an estimate of a job, as its sheet shows it. */
function compare(changes: Record<string, number | string | null>, asked = sizes): Shown {
  const job = { ...newJob(), ...changes };
  const { plans, sources } = sourcesOf([job]);
  const plan = comparePlan(sources[0], ownPrices, asked, "Compare", "2026-11-25");
  return { job, plans, plan, ...shownIn(plans, plan, asked) };
}

function shownIn(plans: SheetPlan[], plan: SheetPlan, asked = sizes) {
  const sheet = worked(plans, plan);
  const found = shownBy(sheet).values.map((row) => [String(row[1] ?? ""), row.slice(2, 2 + asked.length)]);
  return { rows: Object.fromEntries(found) as Record<string, Cell[]>, words: wordsOf(sheet) };
}

describe("sizes in columns", () => {
  it("have the price that each has alone, what is left of the budget, and the price per foot and square foot", () => {
    const { job, rows } = compare({ budget: 5000 });
    const prices = sizes.map(({ answers }) => alone({ ...job, ...answers }));
    expect(rows[words.price]).toEqual(prices);
    rows[words.left].forEach((left, k) => expect(left).toBeCloseTo(5000 - prices[k], 9));
    sizes.forEach(({ answers }, k) => {
      const { pen } = estimate({ ...job, ...answers }, ownPrices);
      expect(rows[words.perFoot][k]).toBeCloseTo(prices[k] / pen.distanceAround, 9);
      expect(rows[words.perSquareFoot][k]).toBeCloseTo(prices[k] / pen.area, 9);
    });
  });

  it("are refused in a sentence where none of them can be built", () => {
    const tiny = [3, 4, 5].map((size) => ({ label: `${size} ft`, answers: { size } }));
    expect(() => compare({}, tiny)).toThrow(/^None of these sizes can be built\. 3 ft: /);
  });

  it("mark the largest that fits in words and in shade, and say of the others whether they fit", () => {
    const prices = sizes.map(({ answers }) => alone({ ...newJob(), ...answers }));
    const { rows, plan } = compare({ budget: Math.ceil(prices[2]) });
    expect(rows[words.verdict]).toEqual([words.fits, words.fits, words.largest, words.isOver]);
    const shaded = plan.cells.filter(({ style }) => style.startsWith("sizeFits"));
    expect(new Set(shaded.map(({ column }) => column))).toEqual(new Set([4]));
    expect(shaded).toHaveLength(3);
  });

  it("follow the budget of the estimate in words and in money", () => {
    const { plans, plan, job } = compare({ budget: 1_000_000 });
    const budget = plans[0].cells.find(({ says }) => says.kind === "constant" && says.value === 1_000_000)!;
    const cells = plans[0].cells.map((cell) => (cell === budget ? { ...cell, says: { kind: "constant" as const, value: 1 } } : cell));
    const later = shownIn([{ ...plans[0], cells }, ...plans.slice(1)], plan);
    expect(later.rows[words.verdict]).toEqual(sizes.map(() => words.isOver));
    expect(later.rows[words.left][0]).toBeCloseTo(1 - alone({ ...job, size: 50 }), 9);
    expect(later.words).not.toContain("OUT OF DATE");
  }); // prettier-ignore

  it("say OUT OF DATE once the estimate builds something else", () => {
    const { plans, plan, words: before } = compare({ budget: 5000, depth: 3.25 });
    expect(before).not.toContain("OUT OF DATE");
    const depth = plans[0].cells.find(({ says }) => says.kind === "constant" && says.value === 3.25)!;
    const cells = plans[0].cells.map((cell) => (cell === depth ? { ...cell, says: { kind: "constant" as const, value: 4 } } : cell));
    expect(shownIn([{ ...plans[0], cells }, ...plans.slice(1)], plan).words).toContain("OUT OF DATE");
  }); // prettier-ignore

  it("say nothing of a budget where there is none", () => {
    const { rows, words: said } = compare({ budget: null });
    expect(rows[words.left]).toEqual(["", "", "", ""]);
    expect(rows[words.verdict]).toEqual(["", "", "", ""]);
    expect(said).toContain(words.noBudget);
  });

  it("keep the column of a size that cannot be built, and say why", () => {
    const asked = [{ label: "9 ft", answers: { size: 9 } }, ...sizes];
    const { rows, words: said } = compare({ budget: 5000, gate_1: 12, gate_2: 12, gate_3: 12 }, asked);
    expect(rows[words.verdict][0]).toBe(words.noPen);
    expect(rows[words.price][0]).toBe("");
    expect(said).toMatch(/9 ft: .*gates? alone/);
  });

  it("do not use counts set by hand for another size, and say so", () => {
    const { job, rows, words: said } = compare({ budget: 5000, panel_1_use: 30 });
    expect(rows[words.price][1]).toBe(alone({ ...job, panel_1_use: null, size: 60 }));
    expect(said).toContain(words.ownCounts);
  });
});

describe("what would bring the others under", () => {
  it("is listed for every size over the budget, each priced again", () => {
    const prices = sizes.map(({ answers }) => alone({ ...newJob(), ...answers }));
    const budget = Math.floor(prices[1]);
    const { rows, job } = compare({ budget });
    for (const { label, answers } of sizes.slice(1))
      for (const way of waysUnder({ ...job, ...answers }, ownPrices)) {
        const row = rows[`${label} with ${way.words}`];
        expect(row.slice(0, 2)).toEqual([way.price, way.saves]);
        expect(row[2]).toBeCloseTo(budget - way.price!, 9);
      }
    expect(Object.keys(rows).filter((label) => label.startsWith("50 ft with"))).toEqual([]);
  });

  it("is nothing where every size fits", () => {
    expect(compare({ budget: 1_000_000 }).words).toContain(words.nothingOver);
  });
});

test("a size whose prices are missing has no price, and the others have theirs", () => {
  const asked = [{ label: "11 ft panels", answers: { panel_1: 11 } }, ...sizes];
  const { rows } = compare({ budget: 5000 }, asked);
  expect(rows[words.verdict][0]).toBe(words.noPrice);
  expect(rows[words.price][1]).toBe(alone({ ...newJob(), size: 50 }));
});

test("the chart shows every price and the budget, with words for who cannot see it", () => {
  const { plan } = compare({ budget: 5000 });
  const [chart] = plan.charts!;
  const rowOf = (label: string) =>
    plan.cells.find(({ says }) => says.kind === "constant" && says.value === label)!.row;
  expect([chart.categories.top, ...chart.series.map(({ values }) => values.top)]).toEqual(
    [words.asked, words.price, words.budget].map(rowOf),
  );
  expect(chart.description).toMatch(/^50 ft: \$[\d,]+, 60 ft: \$/);
  expect(chart.svg).toContain("Budget $5,000");
});

test("a comparison names no cost, markup or percentage of the charges", () => {
  const { words: said } = compare({ budget: 5000, profit: 17.25, overhead: 11.5 });
  expect(said).not.toMatch(/17\.25|11\.5|overhead|markup|profit/i);
});
