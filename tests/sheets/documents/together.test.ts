import { fields } from "../../../src/estimate/fields";
import { newJob, type Job } from "../../../src/estimate/job";
import { together } from "../../../src/estimate/together";
import { bidPlan } from "../../../src/sheets/documents/bid";
import { messages } from "../../../src/sheets/documents/messages";
import { readDocument } from "../../../src/sheets/documents/read";
import { sharesIn, totalIn } from "../../../src/sheets/documents/together";
import { shownBy } from "../shown";
import { ownPrices, sourcesOf, wordsOf, worked } from "./books";
import { like, togetherOf } from "./together-books";

const first = {
  ...newJob(),
  truck_1: 16,
  truck_2: 10,
  tax: 6.25,
  contingency: 3,
  burden: 12,
  markup_material: 4,
};

function shownOf(jobs: Job[]) {
  const { plans, sources } = sourcesOf(jobs);
  const sheet = worked(plans, togetherOf(sources));
  return { sheet, read: readDocument(shownBy(sheet), []), made: together(jobs.map((job) => ({ job })), ownPrices) }; // prettier-ignore
}

describe("several estimates priced as one on a sheet", () => {
  test.each([
    ["two pens of panels", [first, like(first, { ...newJob(), size: 50 })]],
    ["a pen of panels and one of posts", [first, like(first, { ...newJob(), structure: "post pen", setting: "concrete" })]],
    ["two of posts, the tax on what is sold", [{ ...first, structure: "post pen", tax_on: "items sold", rounding: "10 dollars" }, like({ ...first, tax_on: "items sold", rounding: "10 dollars" }, { ...newJob(), structure: "post pen", size: 60, mobilization: 2 })]],
    ["two with a base, one of them on fabric", [{ ...first, base_depth: 4, base_unit: "cu yd" }, like({ ...first, base_unit: "cu yd" }, { ...newJob(), size: 50, base_depth: 6, fabric: "under base" })]],
    ["one alone", [first]],
  ])("come to every step of the plain arithmetic, to the cent: %s", (_, jobs) => {
    const { read, made } = shownOf(jobs as (typeof first)[]);
    const { charges } = made;
    const steps = {
      direct: charges.direct, burden_amount: charges.burden, tax_amount: charges.tax, contingency_amount: charges.contingency,
      overhead_amount: charges.overhead, markup_amount: charges.markup, profit_amount: charges.profit,
      adjustment: charges.adjustment, sales_tax_amount: charges.salesTax, total: charges.total,
    };
    for (const [key, amount] of Object.entries(steps))
      expect([key, read.cells[key].value]).toEqual([key, amount.toNumber()]);
    expect(read.cells.sand_delivered.value).toBeCloseTo(made.ground.sand.delivered, 9);
    expect(read.cells.base_delivered.value).toBeCloseTo(made.ground.base.delivered, 9);
    expect(read.cells.mobilization_count.value).toBe(Math.max(...jobs.map((job) => Number((job as { mobilization?: number }).mobilization ?? 0))));
  }); // prettier-ignore

  test("print the answers taken from the first, with heads over the figures, and no truck that nobody has", () => {
    const { sheet } = shownOf([first, like(first, { ...newJob(), size: 50 })]);
    const printed = sheet.cells.filter(({ column }) => column > 0 && column <= sheet.print!.area.right);
    const rowOf = (label: string) => printed.filter(({ row }) => row === printed.find(({ value }) => value === label)?.row).map(({ value }) => value);
    expect(rowOf("Markup, of material cost")).toEqual(["Markup, of material cost", "%", 4]);
    expect(rowOf("The tax is on")).toEqual(["The tax is on", "material cost"]);
    expect(rowOf("Loads of truck 2")).toContain("Loads of truck 2");
    expect(rowOf("Loads of truck 3")).toEqual([]);
    for (const head of Object.values(messages.together.heads)) expect(printed.map(({ value }) => value)).toContain(head);
  }); // prettier-ignore

  test("say that panels on hand count in each by itself, where both list some", () => {
    const key = fields.find(({ onHandOf }) => onHandOf === "panel_1")!.key;
    const some = { ...first, [key]: 5 };
    const words = (jobs: Job[]) => wordsOf(shownOf(jobs).sheet);
    expect(words([some, like(some, { ...newJob(), size: 50, [key]: 4 })])).toContain(
      messages.together.onHand,
    );
    expect(words([some, like(some, { ...newJob(), size: 50 })])).not.toContain(messages.together.onHand);
  });

  test("say so once they no longer agree on what is charged", () => {
    const { plans, sources } = sourcesOf([first, like(first, { ...newJob(), size: 50 })]);
    const plan = togetherOf(sources);
    const { row, column } = sources[1].sheet.cells.overhead;
    const moved = plans.map((one) =>
      one.name === "Estimate 2"
        ? { ...one, cells: one.cells.map((cell) => cell.row === row && cell.column === column ? { ...cell, says: { kind: "constant" as const, value: 99 } } : cell) }
        : one,
    );
    expect(wordsOf(worked(plans, plan))).not.toContain(messages.together.differ);
    expect(wordsOf(worked(moved, plan))).toContain(messages.together.differ);
  }); // prettier-ignore

  test("give each pen in the bid its share of the loads that all get together", () => {
    const pen = { ...newJob(), size: 60, depth: 3, base_depth: 4 };
    const { plans, sources } = sourcesOf([{ ...first, base_depth: 5 }, like(first, pen)]);
    const plan = togetherOf(sources);
    const price = totalIn(sources, plan.name);
    const data = { sources, price, answers: {}, alternates: [], draws: [] };
    const { ground } = together(sources.map(({ job }) => ({ job })), ownPrices);
    const bid = bidPlan({ ...data, shares: sharesIn(sources, plan.name) }, "Bid 1");
    const said = wordsOf(worked([...plans, plan], bid));
    const apart = wordsOf(worked([...plans, plan], bidPlan(data, "Bid 1")));
    for (const material of ["sand", "base"] as const)
      for (const { made } of sources) {
        const yards = (made[material].need * ground[material].delivered) / ground[material].need;
        expect(said).toContain(`about ${Math.round(yards)} cubic yards`);
        expect(apart).toContain(`about ${Math.round(made[material].delivered)} cubic yards`);
      }
    expect(said).not.toBe(apart);
  }); // prettier-ignore
});
