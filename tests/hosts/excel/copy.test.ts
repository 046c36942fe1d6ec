import { messages } from "../../../src/hosts/excel/messages";
import { type FilledCell } from "../../../src/hosts/host";
import { cell, text } from "../../../src/sheets/expression";
import { put, refused, sheetNamed, sheetNames, state } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";

const place = { sheet: "Estimate 1", row: 3, column: 10 };
const cells: FilledCell[] = [
  { row: 2, column: 1, says: text("Pen of ", cell(place), " ft") },
  { row: 3, column: 1, says: "=1+1" },
  { row: 3, column: 2, says: 12 },
  { row: 4, column: 1, says: null },
];

async function withTemplate() {
  const excel = countingWorkbook({ sheets: ["Sheet1", "Letter"] });
  await excel.host.write([samplePlan("Estimate 1", 8)]);
  const letter = sheetNamed(excel, "Letter");
  put(letter, 0, 0, "Dear {customer}");
  put(letter, 2, 1, "Pen of {size} ft");
  put(letter, 4, 1, "goes");
  letter.looks.set("2 1", { format: "@" });
  letter.looks.set("2 2", { format: "0.00" });
  letter.set.merged = [{ top: 0, left: 0, bottom: 0, right: 3, across: false }];
  letter.pictures.push({ png: "logo" });
  excel.reset();
  return excel;
}

describe("a filled copy of a sheet", () => {
  it("has all that its sheet has, and what was filled in, in one read and one write", async () => {
    const excel = await withTemplate();
    const before = structuredClone(sheetNamed(excel, "Letter"));
    expect(await excel.host.fillCopy("Letter", "Letter 2", cells)).toEqual([]);
    expect(excel.trips()).toBe(2);
    expect(sheetNamed(excel, "Letter")).toEqual(before);
    const copy = sheetNamed(excel, "Letter 2");
    expect(excel.book.active).toBe(copy);
    expect([copy.set, copy.pictures]).toEqual([before.set, before.pictures]);
    expect([...copy.cells].map(([key, { formula }]) => [key, formula])).toEqual([
      ["0 0", "Dear {customer}"],
      ["2 1", `="Pen of "&'Estimate 1'!K4&" ft"`],
      ["3 1", "=1+1"],
      ["3 2", 12],
    ]);
    expect(copy.cells.get("3 1")).toEqual({ value: "=1+1", formula: "=1+1" });
  });

  it("is General where the sheet shows texts, and keeps every other format", async () => {
    const excel = await withTemplate();
    await excel.host.fillCopy("Letter", "Letter 2", cells);
    const { looks } = sheetNamed(excel, "Letter 2");
    expect([looks.get("2 1")?.format, looks.get("2 2")?.format]).toEqual(["General", "0.00"]);
  });

  it("is refused where a sheet has its name in any capitals, where Excel takes no such name, and without its sheet", async () => {
    const excel = await withTemplate();
    const before = state(excel);
    expect(await refused(excel.host.fillCopy("Letter", "ESTIMATE 1", cells))).toBe(
      messages.nameTaken("ESTIMATE 1"),
    );
    expect(await refused(excel.host.fillCopy("Letter", "a/b", cells))).toBe(messages.nameCharacters("a/b"));
    expect(await refused(excel.host.fillCopy("Gone", "New", cells))).toBe(messages.gone);
    expect(state(excel)).toEqual(before);
  });

  it("leaves the workbook as it was, at whichever action Excel refuses, or names the copy to delete", async () => {
    const excel = await withTemplate();
    const before = state(excel);
    await excel.host.fillCopy("Letter", "Letter 2", cells);
    const sizes = [...excel.sizes];
    excel.book.sheets.pop();
    excel.book.active = sheetNamed(excel, "Estimate 1");
    const named: string[][] = [];
    for (const [request, size] of sizes.entries())
      for (let action = 0; action < size; action++) {
        excel.reset();
        excel.fail({ request, action, code: "GeneralException" });
        const message = await refused(excel.host.fillCopy("Letter", "Letter 2", cells));
        if (sheetNames(excel).length > 3) named.push(sheetNames(excel).slice(3));
        excel.book.sheets.splice(3);
        expect([message.endsWith(messages.untouched) || request === 0, state(excel)]).toEqual([true, before]);
      }
    // Only between the copy's making and the trace that tells of it can nobody know whose the sheet is.
    expect(named).toEqual([["Letter (2)"]]);
  });

  it("names the sheet to delete where Excel no longer answers", async () => {
    const excel = await withTemplate();
    excel.fail({ request: 1, action: 9, code: "", silent: true });
    expect(await refused(excel.host.fillCopy("Letter", "Letter 2", cells))).toBe(
      `${messages.silent} ${messages.left(["Letter 2"])}`,
    );
  });
});
