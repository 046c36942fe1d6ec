import fc from "fast-check";
import { calls } from "../../functions/calls";
import { estimate } from "../../src/estimate/estimate";
import { fieldsOf, slotKeys, slots } from "../../src/estimate/fields";
import { structures, type Structure } from "../../src/estimate/structures";
import { figuresOf } from "../../src/estimate/figures";
import { gatePostAdequacy } from "../../src/fence/hung-gate";
import { postSizes } from "../../src/estimate/post-choices";
import { newJob, problemsOf, type Job } from "../../src/estimate/job";
import { examplePrices } from "../../src/estimate/prices";
import { contentOfPlans } from "../../src/sheets/calculate";
import { exampleJob } from "../../src/sheets/demo";
import { estimatePlan } from "../../src/sheets/estimate";
import { asksPen, parts } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { isEstimate, ownChanges, readEstimate } from "../../src/sheets/keyed";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { Refusal } from "../../src/units/refusal";
import { ownFor, randomJob, randomJobOf, randomOwn, randomPrices } from "../estimate/random-job";
import { estimatePlaces, placesIn, withOwnLines } from "./typed-plan";
import { shownBy } from "./shown";

const pen = (name: string) => calls[name];
const planOf = (structure: Structure) => estimatePlan({ ...newJob(), structure }, "Estimate", pricesName);
const plan = planOf("panel pen");
const at = ({ row, column }: { row: number; column: number }) => `${row},${column}`;

describe("the sheet of an estimate", () => {
  it.each(Object.entries(randomJobOf))("of a %s shows to the last digit what the figures of the job are, over random jobs, prices and own lines", (_, jobs) => {
    const answered = jobs.filter((job) => answer(() => estimate(job, [])) !== undefined);
    fc.assert(
      fc.property(answered, randomPrices, randomOwn, (job, prices, someOwn) => {
        const own = ownFor(job, someOwn);
        const plans = [withOwnLines(estimatePlan(job, "Estimate", pricesName), own), pricesPlan(prices)];
        const sheet = readEstimate(shownBy(contentOfPlans(plans, pen).sheets[0]));
        expect(ownChanges(sheet, figuresOf(job, estimate(job, prices, own)))).toEqual([]);
      }),
      { numRuns: 40 },
    );
  }); // prettier-ignore

  it("is asked of random jobs of every structure, in which no answer is wrong by itself", () => {
    expect(Object.keys(randomJobOf)).toEqual(structures);
    fc.assert(fc.property(randomJob, (job) => expect(problemsOf(job)).toEqual({})));
  });

  it("shows the same of 4x6 posts, which are deeper than wide, as line and as gate posts", () => {
    let held = 0;
    for (const structure of ["post pen", "post arena"] as const)
      for (const setting of ["concrete", "crushed stone"])
        for (const means of ["inside clear", "post circle", "outside"])
          for (const rail_side of ["inside", "outside"]) {
            const sizes = { post_size_means: means, arena_size_means: means === "post circle" ? "post line" : means };
            const job = { ...newJob(), structure, setting, rail_side, ...sizes, line_post: "4x6", gate_post: "4x6" } as Job;
            expect(problemsOf(job)).toEqual({});
            const made = estimate(job, examplePrices, []);
            const plans = [estimatePlan(job, "Estimate", pricesName), pricesPlan(examplePrices)];
            const sheet = readEstimate(shownBy(contentOfPlans(plans, pen).sheets[0]));
            expect(ownChanges(sheet, figuresOf(job, made))).toEqual([]);
            held++;
          }
    expect(held).toBe(24);
  }); // prettier-ignore

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

  it.each(structures)(
    "has a keyed cell for every field of a %s, and none for any other field",
    (structure) => {
      const places = placesIn[structure];
      const inputs = planOf(structure)
        .cells.filter((cell) => cell.input)
        .map(at);
      for (const { key, settled } of fieldsOf(structure)) {
        expect(places).toHaveProperty(key);
        expect([key, inputs.includes(at(places[key]))]).toEqual([key, !settled]);
      }
      const own = Object.keys(places).filter((key) => key.startsWith("own_") && !key.endsWith("_amount"));
      const asked = fieldsOf(structure).filter(({ settled }) => !settled);
      expect(inputs).toHaveLength(asked.length + own.length);
    },
  );

  it("gives every slot of a list its own row", () => {
    const lists = {
      "panel pen": ["panel", "gate", "truck"],
      "post pen": ["leaf", "truck"],
      "panel arena": ["gate", "truck"],
      "post arena": ["leaf", "truck"],
    } as const;
    for (const structure of structures)
      for (const list of lists[structure]) {
        const rows = slotKeys(list).map((key) => placesIn[structure][key].row);
        expect(new Set(rows).size).toBe(slots[list]);
      }
  });

  it.each(structures)("puts every cell of a %s in a place of its own", (structure) => {
    const places = planOf(structure).cells.map(at);
    expect(new Set(places).size).toBe(places.length);
  });

  it.each(structures)(
    "keeps the inputs of a %s right of the printed part, but for lines of the user's own",
    (structure) => {
      const { cells, print } = planOf(structure);
      for (const cell of cells.filter(({ input }) => input))
        if (cell.column <= print.area.right) expect(["ownText", "ownNumber"]).toContain(cell.style);
    },
  );

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
    expect(written.cells.total.value).toBe("10 prices missing");
    expect(written.cells.panel_1_price.value).toBe("price?");
    expect(written.cells.per_foot.value).toBe("");
  });

  it("says of a pen of posts whether its gate posts are too light, as the fence has it, and what is for screening only", () => {
    const shown = (changes: Partial<Job>) => {
      const job = { ...newJob(), structure: "post pen", ...changes } as Job;
      const plans = [estimatePlan(job, "Estimate", pricesName), pricesPlan(examplePrices)];
      return readEstimate(shownBy(contentOfPlans(plans, pen).sheets[0])).cells;
    };
    const says = { "too light": /too light/, marginal: /marginal/, serves: /^$/, "more than needed": /^$/ };
    const held = new Set<string>();
    for (const [gate_post, { width }] of Object.entries(postSizes))
      for (const leaf_1 of [4, 10, 16]) {
        const { adequacy } = gatePostAdequacy(width, leaf_1);
        held.add(adequacy);
        expect(shown({ gate_post, leaf_1 }).gate_warning.value).toMatch(says[adequacy]);
      }
    expect(held.size).toBe(4);
    expect(shown({ leaf_1: null, gate_post: "4x4" }).gate_warning.value).toBe("");
    expect(shown({}).depth_warning.value).toBe("");
    expect(shown({ depth_rule: "building code", side_push: 200 }).depth_warning.value).toMatch(/screening/);
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
