import fc from "fast-check";
import { calls } from "../../functions/calls";
import { estimate } from "../../src/estimate/estimate";
import { fields, slots } from "../../src/estimate/fields";
import { figuresOf } from "../../src/estimate/figures";
import { newJob, problemsOf } from "../../src/estimate/job";
import { examplePrices } from "../../src/estimate/prices";
import { contentOfPlans } from "../../src/sheets/calculate";
import { exampleJob } from "../../src/sheets/demo";
import { estimatePlan } from "../../src/sheets/estimate";
import { asksPen, parts } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { isEstimate, ownChanges, readEstimate } from "../../src/sheets/keyed";
import { pricesName, pricesPlan } from "../../src/sheets/prices";
import { Refusal } from "../../src/units/refusal";
import { randomJob, randomOwn, randomPrices } from "../estimate/random-job";
import { estimatePlaces, withOwnLines } from "./typed-plan";
import { shownBy } from "./shown";

const pen = (name: string) => calls[name];
const plan = estimatePlan(newJob(), "Estimate", pricesName);

describe("the sheet of an estimate", () => {
  it("shows to the last digit what the figures of the job are, over random jobs, prices and own lines", () => {
    let answered = 0;
    fc.assert(
      fc.property(randomJob, randomPrices, randomOwn, (job, prices, own) => {
        expect(problemsOf(job)).toEqual({});
        const made = answer(() => estimate(job, prices, own));
        if (!made) return;
        answered++;
        const plans = [withOwnLines(estimatePlan(job, "Estimate", pricesName), own), pricesPlan(prices)];
        const sheet = readEstimate(shownBy(contentOfPlans(plans, pen).sheets[0]));
        expect(ownChanges(sheet, figuresOf(job, made))).toEqual([]);
      }),
      { numRuns: 150 },
    );
    expect(answered).toBeGreaterThan(50);
  });

  it("is read back as the job that was written into it", () => {
    fc.assert(
      fc.property(randomJob, (job) => {
        const written = shownBy(
          contentOfPlans([estimatePlan(job, "Estimate", pricesName), pricesPlan(examplePrices)], pen)
            .sheets[0],
        );
        expect(isEstimate(written)).toBe(true);
        const read = readEstimate(written);
        expect(read.job).toEqual(job);
        expect(read.missing).toEqual([]);
      }),
      { numRuns: 30 },
    );
  });

  it("has a keyed cell for every field of the list, and none for a field that the list lacks", () => {
    const inputs = plan.cells.filter((cell) => cell.input).map(({ row, column }) => `${row},${column}`);
    for (const { key } of fields) {
      expect(estimatePlaces).toHaveProperty(key);
      expect(inputs).toContain(`${estimatePlaces[key].row},${estimatePlaces[key].column}`);
    }
    const own = Object.keys(estimatePlaces).filter(
      (key) => key.startsWith("own_") && !key.endsWith("_amount"),
    );
    expect(inputs).toHaveLength(fields.length + own.length);
  });

  it("gives every slot of a list its own row", () => {
    for (const [list, count] of Object.entries(slots)) {
      const rows = Array.from({ length: count }, (_, k) => estimatePlaces[`${list}_${k + 1}`].row);
      expect(new Set(rows).size).toBe(count);
    }
  });

  it("puts every cell in a place of its own", () => {
    const places = plan.cells.map(({ row, column }) => `${row},${column}`);
    expect(new Set(places).size).toBe(places.length);
  });

  it("keeps every input right of the printed part, but for the lines of the user's own", () => {
    for (const cell of plan.cells.filter(({ input }) => input))
      if (cell.column <= plan.print.area.right) expect(["ownText", "ownNumber"]).toContain(cell.style);
  });

  it("holds live PEN formulas for what the trade decides, and names no range of another sheet but the prices", () => {
    const asked = plan.cells.filter(({ says }) => asksPen(says));
    expect(asked.length).toBeGreaterThan(20);
    for (const { says } of plan.cells)
      for (const part of parts(says))
        if (part.kind === "range" && part.from.sheet !== undefined) expect(part.from.sheet).toBe(pricesName);
    expect(liveFormula(cellOf("panel_1_count").says)).toMatch(
      /^=IF\(N\(K\d+\)=0,"",IF\(ISNUMBER\(N\d+\),N\d+,INDEX\(PEN\.PANEL_MIX\(/,
    );
  });

  it("says how many prices are missing in the place of a total, and of which line", () => {
    const written = readEstimate(
      shownBy(
        contentOfPlans([estimatePlan(exampleJob(), "Estimate", pricesName), pricesPlan([])], pen).sheets[0],
      ),
    );
    expect(written.cells.total.value).toBe("8 prices missing");
    expect(written.cells.panel_1_price.value).toBe("price?");
    expect(written.cells.per_foot.value).toBe("");
  });

  it("marks lines on example prices until the price is the user's own", () => {
    const mine = examplePrices.map((row) => ({ ...row, example: false }));
    const note = (prices: typeof mine) =>
      readEstimate(
        shownBy(
          contentOfPlans([estimatePlan(exampleJob(), "Estimate", pricesName), pricesPlan(prices)], pen)
            .sheets[0],
        ),
      ).cells.example_warning.value;
    expect(note([...examplePrices])).toMatch(/example prices/);
    expect(note(mine)).toBe("");
  });
});

const cellOf = (key: string) =>
  plan.cells.find(
    ({ row, column }) => row === estimatePlaces[key].row && column === estimatePlaces[key].column,
  )!;

function answer<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}
