import { underFreeNames, withRenamed } from "../../src/sheets/renamed";
import { cell, sheet } from "../hosts/xlsx/book";

const renamed = new Map([
  ["data", "Data 2"],
  ["pat's pen", "Pen"],
  ["size", "size 2"],
]);

describe("a formula whose sheets are renamed", () => {
  test.each([
    ["=Data!A1+DATA!$B$2", "='Data 2'!A1+'Data 2'!$B$2"],
    ["=SUM('Pat''s pen'!A1:B4)", "=SUM('Pen'!A1:B4)"],
    ['="Data!A1"&Data!A1', `="Data!A1"&'Data 2'!A1`],
    ["=Other!A1+MyData!A1+Data.x!A1", "=Other!A1+MyData!A1+Data.x!A1"],
    ["=[1]Data!A1", "=[1]Data!A1"],
    ["='[book]Data'!A1", "='[book]Data'!A1"],
    ["=Data", "=Data"],
    ["=SIZE!A1", "='size 2'!A1"],
  ])("%s becomes %s", (before, after) => expect(withRenamed(before, renamed)).toBe(after));
});

describe("sheets under free names", () => {
  it("keep names that are free, get the next number where one is taken, and their formulas follow", () => {
    const sheets = [
      sheet("Letter", [cell(0, 0, 7, { formula: "=Data!A1" })]),
      sheet("Data", [cell(0, 0, 7), cell(1, 0, 7, { formula: "=Letter!A1" })]),
    ];
    const found = underFreeNames(sheets, ["DATA", "Data 2"]);
    expect(found.map(({ name }) => name)).toEqual(["Letter", "Data 3"]);
    expect(found.flatMap(({ cells }) => cells.map(({ formula }) => formula))).toEqual([
      "='Data 3'!A1",
      undefined,
      "=Letter!A1",
    ]);
    expect(sheets[1].name).toBe("Data");
  });

  it("never take the name of another sheet of the file, and are cut where a number would make them too long", () => {
    const long = "A name of thirty-one characters";
    const found = underFreeNames([sheet("Data", []), sheet("Data 2", []), sheet(long, [])], ["data", long]);
    expect(found.map(({ name }) => name)).toEqual(["Data 3", "Data 2", "A name of thirty-one characte 2"]);
  });
});
