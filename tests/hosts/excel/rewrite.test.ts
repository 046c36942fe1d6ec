import { messages } from "../../../src/hosts/excel/messages";
import { type RewrittenCell } from "../../../src/hosts/host";
import { cell, pen } from "../../../src/sheets/expression";
import { messages as sheetMessages } from "../../../src/sheets/messages";
import { put, refused, sheetNamed, state } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";

const cells: RewrittenCell[] = [
  { row: 3, column: 2, says: 7 },
  { row: 4, column: 2, says: pen("AREA", cell({ row: 3, column: 10 })) },
  { row: 3, column: 10, says: 12.75, style: "fixed" },
  { row: 3, column: 12, says: "=no", style: "fixed" },
  { row: 4, column: 1, says: null, style: "fixed" },
];

async function withEstimate() {
  const excel = countingWorkbook();
  await excel.host.write([samplePlan("Estimate 1", 8)]);
  put(sheetNamed(excel, "Estimate 1"), 3, 1, "=typed");
  excel.reset();
  return excel;
}

describe("rewriting cells", () => {
  it("replaces what the cells say and touches no other", async () => {
    const excel = await withEstimate();
    const before = structuredClone(sheetNamed(excel, "Estimate 1").cells);
    await excel.host.rewrite("Estimate 1", cells);
    const after = sheetNamed(excel, "Estimate 1").cells;
    expect(after.get("3 2")).toEqual({ value: 7, formula: 7 });
    expect(after.get("4 2")?.formula).toBe("=PEN.AREA(K4)");
    expect(after.get("3 12")).toEqual({ value: "=no", formula: "=no" });
    expect(after.has("4 1")).toBe(false);
    for (const { row, column } of cells) {
      before.delete(`${row} ${column}`);
      after.delete(`${row} ${column}`);
    }
    expect(after).toEqual(before);
    expect(excel.trips()).toBe(3);
  });

  it("takes the look and the rule of an input away where it is fixed, and says so beside the cell", async () => {
    const excel = await withEstimate();
    const before = structuredClone(sheetNamed(excel, "Estimate 1").looks);
    await excel.host.rewrite("Estimate 1", cells);
    const { looks } = sheetNamed(excel, "Estimate 1");
    const input = looks.get("3 10")!;
    expect(before.get("3 10")).toMatchObject({
      "Fill.Color": "#FFF8DB",
      "DataValidation.ErrorAlert": expect.anything() as unknown,
    });
    expect(input).not.toHaveProperty("Fill.Color");
    expect(input).not.toHaveProperty("DataValidation.ErrorAlert");
    expect(input).toMatchObject({
      "Border.EdgeTop.Style": "None",
      "DataValidation.Rule": { custom: { formula: "=TRUE" } },
      "DataValidation.Prompt": { message: sheetMessages.fixedInCopy, showPrompt: true },
      "Font.Size": 10,
    });
    expect(looks.get("3 2")).toEqual(before.get("3 2"));
    expect(looks.get("4 1")).toMatchObject({
      "Font.Color": before.get("4 1")!["Font.Color"],
      "DataValidation.Prompt": { message: sheetMessages.fixedInCopy },
    });
  });

  it("takes only its own mark away where a cell is to live", async () => {
    const excel = await withEstimate();
    const { looks } = sheetNamed(excel, "Estimate 1");
    const rule = looks.get("4 10")!["DataValidation.Rule"];
    await excel.host.rewrite("Estimate 1", [{ row: 3, column: 10, says: 12, style: "fixed" }]);
    await excel.host.rewrite(
      "Estimate 1",
      [3, 4].map((row) => ({ row, column: 10, says: 13, style: "live" as const })),
    );
    expect(looks.get("3 10")).not.toHaveProperty("DataValidation.Prompt");
    expect(looks.get("4 10")!["DataValidation.Rule"]).toEqual(rule);
  });

  it("brings content, looks and rules back when Excel refuses a part, at whichever action", async () => {
    const first = await withEstimate();
    await first.host.rewrite("Estimate 1", cells);
    const sizes = [...first.sizes];
    const excel = await withEstimate();
    const before = state(excel);
    for (const [request, size] of sizes.entries())
      for (let action = 0; action < size; action++) {
        excel.reset();
        excel.fail({ request, action, code: "AccessDenied" });
        expect(await refused(excel.host.rewrite("Estimate 1", cells))).toContain(messages.locked);
        expect(state(excel)).toEqual(before);
      }
  });

  it("names the cells to check where Excel no longer answers, and sends nothing without a cell", async () => {
    const excel = await withEstimate();
    await excel.host.rewrite("Estimate 1", []);
    expect(excel.trips()).toBe(0);
    excel.fail({ request: 2, action: 8, code: "", silent: true });
    expect(await refused(excel.host.rewrite("Estimate 1", cells.slice(0, 3)))).toBe(
      `${messages.silent} ${messages.notRestored("Estimate 1", ["C4:C5", "K4"])}`,
    );
  });

  it("is one step for the user to take back where Excel can group", async () => {
    const excel = await withEstimate();
    await excel.host.rewrite("Estimate 1", cells);
    expect(excel.runs.at(-1)).toEqual({ mergeUndoGroup: true });
  });
});

describe("rewriting cells that are formatted as text", () => {
  const asText: RewrittenCell[] = [
    { row: 3, column: 2, says: pen("AREA", cell({ row: 3, column: 10 })) },
    { row: 4, column: 2, says: 12.5 },
    { row: 5, column: 2, says: "=no" },
    { row: 6, column: 2, says: 7 },
  ];
  async function withTexts() {
    const excel = await withEstimate();
    const { cells, looks } = sheetNamed(excel, "Estimate 1");
    for (const row of [3, 4, 5]) looks.set(`${row} 2`, { format: "@" });
    cells.set("3 2", { value: "=PEN.AREA(K4)", formula: "=PEN.AREA(K4)" });
    cells.set("4 2", { value: "12", formula: "12" });
    cells.set("5 2", { value: 0, formula: "=1+2" });
    looks.set("6 2", { format: "0.0" });
    return excel;
  }

  it("makes those General that get a formula or a number, which would stay a text there, and no other", async () => {
    const excel = await withTexts();
    await excel.host.rewrite("Estimate 1", asText);
    const { cells, looks } = sheetNamed(excel, "Estimate 1");
    const shown = [3, 4, 5, 6].map((row) => [looks.get(`${row} 2`)!.format, cells.get(`${row} 2`)]);
    expect(shown).toEqual([
      ["General", { value: 0, formula: "=PEN.AREA(K4)" }],
      ["General", { value: 12.5, formula: 12.5 }],
      ["@", { value: "=no", formula: "=no" }],
      ["0.0", { value: 7, formula: 7 }],
    ]);
    expect(excel.trips()).toBe(2);
  });

  it("brings texts, and formulas under the format of texts, back when Excel refuses a part, at whichever action", async () => {
    const first = await withTexts();
    await first.host.rewrite("Estimate 1", asText);
    const sizes = [...first.sizes];
    const excel = await withTexts();
    const before = state(excel);
    for (const [request, size] of sizes.entries())
      for (let action = 0; action < size; action++) {
        excel.reset();
        excel.fail({ request, action, code: "AccessDenied" });
        expect(await refused(excel.host.rewrite("Estimate 1", asText))).toContain(messages.locked);
        expect(state(excel)).toEqual(before);
      }
  });
});

describe("rewriting cells of several sheets", () => {
  const spread: RewrittenCell[] = [
    { row: 3, column: 2, says: 7 },
    { row: 3, column: 10, says: 12, style: "fixed", sheet: "Estimate 2" },
    { row: 4, column: 2, says: pen("AREA", cell({ row: 3, column: 10 })), sheet: "Estimate 2" },
    { row: 3, column: 10, says: 13, sheet: "Estimate 1" },
  ];
  async function withTwo() {
    const excel = await withEstimate();
    await excel.host.write([samplePlan("Estimate 2", 8)]);
    excel.reset();
    return excel;
  }

  it("changes each on its own sheet and is one step", async () => {
    const excel = await withTwo();
    await excel.host.rewrite("Estimate 1", spread);
    const [one, two] = ["Estimate 1", "Estimate 2"].map((name) => sheetNamed(excel, name));
    expect([one.cells.get("3 2")?.value, one.cells.get("3 10")?.value]).toEqual([7, 13]);
    expect([two.cells.get("3 10")?.value, two.cells.get("4 2")?.formula]).toEqual([12, "=PEN.AREA(K4)"]);
    expect(one.looks.get("3 10")).toHaveProperty(["Fill.Color"]);
    expect(two.looks.get("3 10")).not.toHaveProperty(["Fill.Color"]);
    expect(two.cells.get("3 2")).not.toEqual(one.cells.get("3 2"));
    expect(excel.runs.filter((options) => "mergeUndoGroup" in options)).toHaveLength(1);
  });

  it("brings every sheet back when Excel refuses a part, at whichever action", async () => {
    const first = await withTwo();
    await first.host.rewrite("Estimate 1", spread);
    const sizes = [...first.sizes];
    const excel = await withTwo();
    const before = state(excel);
    for (const [request, size] of sizes.entries())
      for (let action = 0; action < size; action++) {
        excel.reset();
        excel.fail({ request, action, code: "AccessDenied" });
        expect(await refused(excel.host.rewrite("Estimate 1", spread))).toContain(messages.locked);
        expect(state(excel)).toEqual(before);
      }
  });

  it("names the cells of every sheet to check where Excel no longer answers", async () => {
    const excel = await withTwo();
    await excel.host.rewrite("Estimate 1", spread);
    const last = excel.trips() - 1;
    excel.reset();
    excel.fail({ request: last, action: 4, code: "", silent: true });
    const said = await refused(excel.host.rewrite("Estimate 1", spread));
    for (const name of ["Estimate 1", "Estimate 2"]) expect(said).toContain(`cells on "${name}"`);
  });

  it("is refused where one of the sheets is gone, and nothing changes", async () => {
    const excel = await withTwo();
    const before = state(excel);
    const cells = [...spread, { row: 0, column: 0, says: 1, sheet: "Gone" }];
    expect(await refused(excel.host.rewrite("Estimate 1", cells))).toContain(messages.gone);
    expect(state(excel)).toEqual(before);
  });
});
