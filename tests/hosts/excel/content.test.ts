import { openedCopy } from "./opened-copy";
import { put, sheetNamed } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";
import { contentOfPlan } from "../../../src/sheets/workbook-content";
import { makePlainCopy } from "../../../taskpane/share/copy";

async function withEstimate() {
  const excel = countingWorkbook({ sheets: ["Sheet1", "Letter"] });
  await excel.host.write([samplePlan("Estimate 1", 8)]);
  const letter = sheetNamed(excel, "Letter");
  put(letter, 1, 1, "=not a formula");
  put(letter, 2, 1, "#N/A", "=NA()");
  excel.reset();
  return excel;
}

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
      expect([same.formula, same.input ?? false]).toEqual([cell.formula, cell.style?.fill === "FFF8DB"]);
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

  it("says what it leaves out", async () => {
    const excel = await withEstimate();
    sheetNamed(excel, "Letter").set.comments = 2;
    sheetNamed(excel, "Letter").set.conditional = 1;
    const { sheets } = await excel.host.content!();
    expect(sheets.map(({ lost }) => lost)).toEqual([
      undefined,
      ["2 comments were left out.", "Conditional formatting was left out."],
      ["The rules for what its inputs accept were left out."],
    ]);
  });

  it("makes a plain copy, which Excel opens as a new workbook", async () => {
    const excel = await withEstimate();
    sheetNamed(excel, "Letter").set.comments = 1;
    const said = await makePlainCopy(excel.host, { sheets: ["Letter"], keepKeys: false });
    expect(said).toMatch(/^The plain copy has 1 sheet\. .* Letter: 1 comment was left out\.$/);
    const { sheets } = await openedCopy(excel);
    expect(sheets.map(({ name }) => name)).toEqual(["Letter"]);
    expect(sheets[0].cells[0].value).toBe("=not a formula");
  });
}); // prettier-ignore
