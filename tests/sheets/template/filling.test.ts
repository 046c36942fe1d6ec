import fc from "fast-check";
import { calls } from "../../../functions/calls";
import { newJob, type Job } from "../../../src/estimate/job";
import { examplePrices } from "../../../src/estimate/prices";
import { calculate, contentOfPlans } from "../../../src/sheets/calculate";
import { estimatePlan } from "../../../src/sheets/estimate";
import { liveFormula } from "../../../src/sheets/formula";
import { readEstimate } from "../../../src/sheets/keyed";
import { parseFormula } from "../../../src/sheets/parse";
import { pricesPlan } from "../../../src/sheets/prices";
import { pricesName } from "../../../src/sheets/prices-layout";
import { fillTemplate } from "../../../src/sheets/template/filling";
import { piecesOf } from "../../../src/sheets/template/reading";
import { type Cell } from "../../../src/units/cell";
import { shownBy } from "../shown";

const pen = (name: string) => calls[name];

const estimates: [string, Job][] = [
  ["Estimate", { ...newJob(), customer: "Example Customer", size: 60 }],
  ["Bob's 2", { ...newJob(), structure: "post pen", size: 72.4, leaf_2: 4 }],
].map(([name, job]) => [name as string, job as Job]);

const plans = [
  ...estimates.map(([name, job]) => estimatePlan(job, name, pricesName)),
  pricesPlan(examplePrices),
];
const content = contentOfPlans(plans, pen);
const sheets = content.sheets.slice(0, 2).map((sheet) => readEstimate(shownBy(sheet)));
const [round, posts] = sheets;

/** The one cell of a template that says this, filled from the first estimate. */
const filled = (says: Cell) => fillTemplate([[says]], round, sheets);

/** What the filled cell shows in a workbook with both estimates. */
function shows(says: string): Cell {
  const { cells, unfilled } = filled(says);
  expect(unfilled).toEqual([]);
  expect(cells).toHaveLength(1);
  const books = [...plans, { name: "Copy", cells: cells.map((one) => ({ ...one, says: parseFormula(liveFormula(one.says)) })) }];
  return calculate(books, pen)("Copy", 0, 0);
} // prettier-ignore

describe("a field in braces", () => {
  it("alone in a cell points at the estimate's cell and shows its number", () => {
    expect(shows("{size}")).toBe(60);
    expect(shows("{ Total }")).toBe(round.cells.total.value);
    expect(shows("{sand  yards}")).toBe(round.cells.sand_delivered.value);
    expect(liveFormula(filled("{total}").cells[0].says)).toMatch(
      /^=IF\(Estimate!F\d+="","",Estimate!F\d+\)$/,
    );
  });

  it("of another estimate is named before a colon, quotes and capitals no matter", () => {
    expect(shows("{Bob's 2: posts}")).toBe(posts.cells.posts.value);
    expect(shows("{bob's 2:size in feet and inches}")).toBe(`72' 4 13/16"`);
  });

  it("takes several cells together where its name says so", () => {
    const counts = [1, 2, 3, 4, 5, 6].map((k) => Number(round.cells[`panel_${k}_count`].value || 0));
    expect(shows("{panels}")).toBe(counts.reduce((a, b) => a + b));
    expect(shows("{gates}")).toBe(1);
    expect(shows("{Bob's 2: gates}")).toBe(2);
    expect(shows("{sand tons}")).toBe((round.cells.sand_delivered.value as number) * 1.35);
    expect(shows("{estimate}")).toBe("Estimate");
  });

  it("in the middle of words makes a text, money with its cents and measures to two places", () => {
    expect(shows("Pen of {size} with {panels} panels")).toBe(`Pen of 60 with ${shows("{panels}")} panels`);
    expect(shows("Price: ${total}.")).toMatch(/^Price: \$\d,\d{3}\.\d{2}\.$/);
    expect(shows("{inside clear} ft")).toMatch(/^\d\d(\.\d\d?)? ft$/);
    expect(shows('For {customer}, "{site}"')).toBe('For Example Customer, ""');
  });

  it("that is blank in the estimate stays blank", () => {
    expect(shows("{site}")).toBe("");
    expect(shows("{budget}")).toBe("");
  });

  it("asks no number format of the host's language", () => {
    for (const says of ["{total}", "{total} in all", "{size} ft", "{area} sq ft"])
      expect(liveFormula(filled(says).cells[0].says)).not.toMatch(/\bTEXT\(/);
  });
});

describe("what cannot be filled", () => {
  it("is reported with the address and the nearest name, and its cell is left as it was", () => {
    const { cells, unfilled } = fillTemplate([["", "{totl}"], [null, "{size}"]], round, sheets);
    expect(unfilled).toEqual([{ address: "B1", sentence: "B1: No field is called {totl}. Nearest: {total}." }]);
    expect(cells.map(({ row, column }) => [row, column])).toEqual([[1, 1]]);
  }); // prettier-ignore

  it("is an estimate that is not there, or one that builds something else", () => {
    expect(filled("{Estimate 9: total}").unfilled[0].sentence).toBe(
      "A1: This workbook has no estimate called Estimate 9.",
    );
    expect(filled("{posts}").unfilled[0].sentence).toMatch(/^A1: Estimate has no \{posts\}/);
    expect(fillTemplate([["{total}"]], undefined, sheets).unfilled[0].sentence).toMatch(/^A1: Choose/);
  });
});

describe("a cell of a template", () => {
  it("that holds a formula or doubled braces is left alone", () => {
    expect(filled("=SUM({1;2})&{total}").cells).toEqual([]);
    expect(filled("{{total}}").cells).toEqual([]);
    expect(filled(12).cells).toEqual([]);
  });

  it("keeps every letter outside the braces, and never becomes a formula by them", () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 700 }), fc.string({ maxLength: 60 }), (before, after) => {
        fc.pre(!/[{}\0]/.test(before + after) && !before.startsWith("="));
        const { cells } = filled(`${before}{panels}${after}`);
        const formula = liveFormula(cells[0].says);
        for (const found of formula.match(/"(?:[^"]|"")*"/g) ?? [])
          expect(found.slice(1, -1).replaceAll('""', '"').length).toBeLessThanOrEqual(255);
        const books = [...plans, { name: "Copy", cells }];
        const panels = shows("{panels}");
        if (before + after === "") expect(calculate(books, pen)("Copy", 0, 0)).toBe(panels);
        else expect(calculate(books, pen)("Copy", 0, 0)).toBe(`${before}${panels}${after}`);
      }),
      { numRuns: 60 },
    );
  });

  it("gives back its whole text from its pieces", () => {
    fc.assert(
      fc.property(fc.stringMatching(/^[{}a:\n ]{0,30}$/), (said) => {
        const again = piecesOf(said).map((piece) => (typeof piece === "string" ? piece : `{${piece.written}}`));
        expect(again.join("")).toBe(said);
      }),
    );
  }); // prettier-ignore
});
