import fc from "fast-check";
import { calls } from "../../functions/calls";
import { type Job, newJob } from "../../src/estimate/job";
import { estimate } from "../../src/estimate/estimate";
import { examplePrices } from "../../src/estimate/prices";
import { answersOf } from "../../src/sheets/answers";
import { calculate, contentOfPlans } from "../../src/sheets/calculate";
import { estimatePlan } from "../../src/sheets/estimate";
import { type PenFunction } from "../../src/sheets/evaluate";
import { asksPen, expression, pen as penCall, type Expression } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { readEstimate } from "../../src/sheets/keyed";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { type Value } from "../../src/units/cell";
import { Refusal } from "../../src/units/refusal";
import { randomJob } from "../estimate/random-job";
import { shownBy } from "./shown";

const pen = (name: string) => calls[name];

const formulas = (changes: Job) => {
  const job = { ...newJob(), ...changes };
  const answers = answersOf(job, estimate(job, examplePrices));
  return Object.fromEntries(answers.map(({ key, says }) => [key, liveFormula(says)]));
};

describe("one answer in a cell", () => {
  it("is a formula on plain numbers where there is one length, one gate, one truck", () => {
    const found = formulas({ size: 72, gate_1: 10, truck_1: 16 });
    expect(found.panel_1).toBe("=PEN.PANELS(72,12,10)");
    expect(found.inside_clear).toBe("=PEN.INSIDE_CLEAR(12,PEN.PANELS(72,12,10),10)");
    expect(found.distance_around).toBe("=12*PEN.PANELS(72,12,10)+10");
    expect(found.truck_1).toMatch(/^=PEN\.LOADS\(PEN\.FILL\(.*,3\),16,5\)$/);
    for (const formula of Object.values(found)) expect(formula).not.toContain("{");
  });

  it("leaves out what is not there, and passes on what the size means", () => {
    const found = formulas({ gate_1: null, truck_1: null, size_means: "inside clear", pin_gap: 0.5 });
    expect(found.panel_1).toBe('=PEN.PANELS(66,12,,0.5,"at least")');
    expect(found).not.toHaveProperty("truck_1");
    expect(found.sand_delivered).toBe(found.sand_need);
  });

  it("takes several lengths as an array constant, and the user's own count as it is", () => {
    const found = formulas({ panel_2: 10, truck_1: 10, truck_2: 16, truck_1_use: 1, truck_2_use: 2 });
    expect(found.panel_2).toBe("=INDEX(PEN.PANEL_MIX(66,{12;10},8),2)");
    expect(found.truck_2).toBe("=2");
    expect(found.sand_delivered).toBe("=SUMPRODUCT({10;16},{1;2})");
  });

  it("points at the estimate's cells where it holds several lengths", () => {
    const job = { ...newJob(), panel_1: 12, panel_2: 10 };
    const sheet = readEstimate(shownBy(contentOfPlans([estimatePlan(job, "Estimate 2", pricesName)], pen).sheets[0]));
    const answers = answersOf(job, estimate(job, examplePrices), sheet);
    const of = (key: string) => liveFormula(answers.find((answer) => answer.key === key)!.says);
    expect(of("panel_2")).toMatch(/^=INDEX\(PEN\.PANEL_MIX\(66,'Estimate 2'!K\d+:K\d+,8\),2\)$/);
    const moved = { ...sheet, cells: { ...sheet.cells, panel_3: { ...sheet.cells.panel_3, row: 200 } } };
    const apart = answersOf(job, estimate(job, examplePrices), moved);
    expect(liveFormula(apart[0].says)).toContain("{12;10}");
  }); // prettier-ignore

  it("shows in the cell what the panel says, over random jobs, from the estimate's cells and by itself", () => {
    let checked = 0;
    fc.assert(
      fc.property(randomJob, (job) => {
        const made = answerOrNone(() => estimate(job, examplePrices));
        if (!made) return;
        const plans = [estimatePlan(job, "Estimate", pricesName), pricesPlan(examplePrices)];
        const sheet = readEstimate(shownBy(contentOfPlans(plans, pen).sheets[0]));
        const answers = [sheet, undefined].flatMap((from) => answersOf(job, made, from));
        const cells = answers.map(({ says }, row) => ({ row, column: 0, says: workable(says) }));
        const shown = calculate([...plans, { name: "Mine", cells }], withArrays);
        answers.forEach(({ key, value }, row) =>
          expect([key, shown("Mine", row, 0)]).toEqual([key, expect.closeTo(value, 9)]),
        );
        checked += answers.length;
      }),
      { numRuns: 40 },
    );
    expect(checked).toBeGreaterThan(100);
  });

  it("asks at least one worksheet function for every answer that the user did not set", () => {
    const job = newJob();
    const says = answersOf(job, estimate(job, examplePrices)).map((answer): Expression => answer.says);
    expect(says).toHaveLength(11);
    expect(says.every(asksPen)).toBe(true);
  });
});

/** Array constants and SUMPRODUCT, which only spreadsheets work out, as functions that this test brings along. */
function workable(says: Expression): Expression {
  if (says.kind === "verbatim")
    return penCall(
      "ARRAY",
      ...says.text
        .slice(1, -1)
        .split(";")
        .map((cell) => expression(Number(cell))),
    );
  if (says.kind === "operation") return { ...says, left: workable(says.left), right: workable(says.right) };
  if (says.kind !== "call" && says.kind !== "pen") return says;
  const terms = says.arguments.map((term) => term && workable(term));
  return says.name === "SUMPRODUCT" ? penCall("SUMPRODUCT", ...terms) : { ...says, arguments: terms };
}

const withArrays = (name: string): PenFunction => {
  const column = (value: Value | undefined) => (Array.isArray(value) ? value.flat() : [value]).map(Number);
  if (name === "ARRAY") return (...cells) => cells.map((cell) => [cell as number]);
  if (name !== "SUMPRODUCT") return pen(name);
  return (sizes, counts) => column(sizes).reduce((sum, size, k) => sum + size * column(counts)[k], 0);
};

function answerOrNone<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}
