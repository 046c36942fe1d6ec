import { openedCopy } from "./opened-copy";
import { put, sheetNamed } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";
import { messages as sheetMessages } from "../../../src/sheets/messages";
import { contentOfPlan } from "../../../src/sheets/workbook-content";
import { makePlainCopy } from "../../../taskpane/share/copy";

const notes = "Notes on its cells, if it has any, were left out.";

async function withEstimate() {
  const excel = countingWorkbook({ sheets: ["Sheet1", "Letter"] });
  await excel.host.write([samplePlan("Estimate 1", 8)]);
  const letter = sheetNamed(excel, "Letter");
  put(letter, 1, 1, "=not a formula");
  put(letter, 2, 1, "#N/A", "=NA()");
  excel.reset();
  return excel;
}

const { fixedInCopy } = sheetMessages;

/** The look of a cell that has a rule, as the stand-in keeps it. */
const rule = (accepts: object, alert: object = {}) => ({
  "DataValidation.Rule": accepts,
  "DataValidation.ErrorAlert": { title: "", message: "No.", showAlert: true, style: "Stop", ...alert },
});

describe("the whole workbook as plain data", () => {
  it("has of a document what its plan says, in three round trips", async () => {
    const excel = await withEstimate();
    const { sheets, activeSheet } = await excel.host.content!();
    expect([excel.trips(), activeSheet]).toEqual([3, "Estimate 1"]);
    expect(sheets.map(({ name }) => name)).toEqual(["Sheet1", "Letter", "Estimate 1"]);
    const plan = contentOfPlan(samplePlan("Estimate 1", 8));
    const found = sheets[2];
    for (const cell of plan.cells.filter(({ value, formula }) => formula ?? (value !== null && value !== ""))) {
      const same = found.cells.find(({ row, column }) => row === cell.row && column === cell.column)!;
      expect([same.formula, same.accepts]).toEqual([cell.formula, cell.accepts]);
      expect(same.input ?? false).toBe(cell.style?.fill === "FFF8DB" || cell.accepts !== undefined);
      if (!cell.formula) expect(same.value).toEqual(cell.value);
      const { fill, line, bold, format, wrap, align } = cell.style ?? {};
      expect(same.style).toMatchObject(JSON.parse(JSON.stringify({ fill, line, bold, format, wrap, align })) as object);
    }
    expect([found.hiddenRows, found.heights, found.frozenRows]).toEqual([plan.hiddenRows, plan.heights, plan.frozenRows]);
    expect(found.merges).toEqual(plan.merges);
    expect(found.print).toEqual(plan.print);
    found.columns.forEach(({ width, hidden }, k) =>
      expect([hidden, width]).toEqual([plan.columns[k]?.hidden || undefined, expect.closeTo(plan.columns[k]?.width ?? 8.43, 1)]));
    expect(found.pictures.map(({ width, height, description }) => [width, height, description])).toEqual(
      plan.pictures.map(({ width, height, description }) => [width, height, description]),
    );
    for (const { svg } of found.pictures) expect(svg).toContain('href="data:image/png;base64,');
  });

  it("tells a text that looks like a formula from one, and errors from texts", async () => {
    const excel = await withEstimate();
    const { sheets } = await excel.host.content!();
    expect(sheets[1].cells.map(({ value, formula }) => [value, formula])).toEqual([
      ["=not a formula", undefined],
      [{ error: "#N/A" }, "=NA()"],
    ]);
    expect([sheets[0].cells, sheets[0].print, sheets[0].merges]).toEqual([[], undefined, []]);
  });

  it("carries what blank cells accept, and the mark of a cell that is fixed in this copy", async () => {
    const excel = await withEstimate();
    await excel.host.rewrite("Estimate 1", [{ row: 3, column: 10, says: 12, style: "fixed" }]);
    const letter = sheetNamed(excel, "Letter");
    put(letter, 0, 0, "Dear customer");
    letter.looks.set("1 0", rule({ wholeNumber: { formula1: "1", formula2: 9, operator: "Between" } }));
    letter.looks.set("2 0", rule({ list: { inCellDropDown: true, source: "yes, no" } }));
    letter.looks.set("9 9", rule({ list: { inCellDropDown: true, source: "out,of,use" } }));
    const { sheets } = await excel.host.content!();
    expect(sheets[2].cells.find(({ row, column }) => row === 3 && column === 10)).toMatchObject({ value: 12, note: fixedInCopy });
    expect(sheets[1].cells.filter(({ input }) => input).map(({ value, accepts }) => [value, accepts])).toEqual([
      [null, { kind: "number", least: 1, most: 9, whole: true, message: "No." }],
      [null, { kind: "list", options: ["yes", "no"], message: "No." }],
    ]);
    expect(sheets.map(({ lost }) => lost)).toEqual([undefined, [notes], [notes]]);
  });

  it("counts the rules that it cannot carry: those that rest on cells, only warn, or know no span", async () => {
    const excel = await withEstimate();
    const letter = sheetNamed(excel, "Letter");
    put(letter, 0, 0, "Dear customer");
    const { looks } = letter;
    const span = { decimal: { formula1: 0, formula2: 5, operator: "Between" } };
    looks.set("1 0", rule({ list: { inCellDropDown: true, source: "=$A$1:$A$3" } }));
    looks.set("2 0", rule({ decimal: { formula1: 0, operator: "GreaterThan" } }));
    looks.set("2 1", rule({ decimal: { ...span.decimal, formula2: "=B2" } }));
    looks.set("1 1", rule(span, { style: "Warning" }));
    const said = async () => (await excel.host.content!()).sheets[1].lost;
    expect(await said()).toEqual(["Rules for what 4 cells accept were left out.", notes]);
    looks.set("1 0", rule(span));
    looks.set("2 0", rule(span));
    looks.set("2 1", rule(span));
    expect(await said()).toEqual(["Rules for what 1 cell accepts were left out.", notes]);
  });

  it("asks for no rule of a sheet that has over a thousand", async () => {
    const excel = await withEstimate();
    const letter = sheetNamed(excel, "Letter");
    put(letter, 0, 1, "top");
    put(letter, 1000, 1, "end");
    for (let row = 0; row <= 1000; row++) letter.looks.set(`${row} 1`, rule({ list: { inCellDropDown: true, source: "a,b" } }));
    const { sheets } = await excel.host.content!();
    expect(sheets[1].lost).toEqual(["Rules for what 1001 cells accept were left out.", notes]);
  });

  it("says what it leaves out", async () => {
    const excel = await withEstimate();
    sheetNamed(excel, "Letter").set.comments = 2;
    sheetNamed(excel, "Letter").set.conditional = 1;
    const { sheets } = await excel.host.content!();
    expect(sheets.map(({ lost }) => lost)).toEqual([
      undefined,
      ["2 comments were left out.", "Conditional formatting was left out.", notes],
      [notes],
    ]);
  });

  it("makes a plain copy, which Excel opens as a new workbook", async () => {
    const excel = await withEstimate();
    sheetNamed(excel, "Letter").set.comments = 1;
    const said = await makePlainCopy(excel.host, { sheets: ["Letter"], keepKeys: false });
    expect(said).toMatch(/^The plain copy has 1 sheet\. .* Letter: 1 comment was left out\. Letter: Notes on its cells, if it has any, were left out\.$/);
    const { sheets } = await openedCopy(excel);
    expect(sheets.map(({ name }) => name)).toEqual(["Letter"]);
    expect(sheets[0].cells[0].value).toBe("=not a formula");
  });
}); // prettier-ignore
