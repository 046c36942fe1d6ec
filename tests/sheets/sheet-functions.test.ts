import { evaluate, Unknown } from "../../src/sheets/evaluate";
import { parseFormula } from "../../src/sheets/parse";
import { leastTerms, sheetFunctions } from "../../src/sheets/sheet-functions";
import { type Cell } from "../../src/units/cell";

const column: Cell[] = [12.5, null, "text", "5", true, { error: "#N/A" }, -2.5, 0];
const around = {
  cell: ({ row }: { row: number }) => column[row] ?? null,
  pen: () => () => 0,
};
const result = (formula: string) => evaluate(parseFormula(formula), around);

// Where the outside spreadsheet of the other checks parts from the one that the add-in is for. All from memory.
test("where spreadsheets part, functions follow the one that the add-in is for", () => {
  const cases: [string, Cell][] = [
    ["=SUM(A4,A5)", 0],
    ['=SUM("4",1,TRUE)', 6],
    ["=COUNT(A1:A8)", 3],
    ["=ISNUMBER(A5)", false],
    ["=A5>A3", true],
    ["=A5&A3", "TRUEtext"],
    ["=INDEX(A1:A3,4)", { error: "#REF!" }],
    ["=INDEX(A1:B3,1,3)", { error: "#REF!" }],
    ["=SQRT(A7)", { error: "#NUM!" }],
    ["=ROUND(0.285*100,0)", 29],
    ["=FIXED(1.005,2)", "1.01"],
    ['=AND("x",TRUE)', { error: "#VALUE!" }],
  ];
  for (const [formula, expected] of cases) expect([formula, result(formula)]).toEqual([formula, expected]);
  expect(cases).toHaveLength(12);
});

test("money rounds half up to the cent, on what the sheet shows and not on its binary neighbor", () => {
  const cases: [number, number][] = [[1.005, 1.01], [2.675, 2.68], [-2.675, -2.68], [1.115, 1.12], [35.015, 35.02], [0.125, 0.13], [1e15, 1e15]]; // prettier-ignore
  for (const [given, rounded] of cases) expect(result(`=ROUND(${given},2)`)).toBe(rounded);
});

test("whole pieces round up without noise", () => {
  expect(result("=ROUNDUP(ROUND(160.494/10,6),0)")).toBe(17);
  expect(result("=ROUNDUP(ROUND(3*(1/3)+2,6),0)")).toBe(3);
  expect(result("=ROUNDUP(ROUND(3.0000001,6),0)")).toBe(3);
});

test("criteria count what a reader would count", () => {
  expect(result('=COUNTIF(A1:A8,">0")')).toBe(1);
  expect(result('=COUNTIF(A1:A8,"TEXT")')).toBe(1);
  expect(result('=COUNTIFS(A1:A8,"<=0",A1:A8,">-1")')).toBe(1);
  expect(result('=SUMIFS(A1:A8,A1:A8,"<>0")')).toBe(10);
});

test("IF looks only at the side that it takes", () => {
  expect(result("=IF(A1>0,1,A1/0)")).toBe(1);
  expect(result("=IF(A8,A1/0,2)")).toBe(2);
  expect(result("=IFERROR(1,VLOOKUP(A1,A1:A8,1))")).toBe(1);
});

test("too few terms, and functions that are not ours, are left to the spreadsheet", () => {
  const fewer = Object.keys(sheetFunctions).filter((name) => (leastTerms[name] ?? 1) > 0);
  for (const name of fewer) {
    const terms = new Array((leastTerms[name] ?? 1) - 1).fill("1").join(",");
    expect(() => result(`=${name}(${terms})`)).toThrow(Unknown);
  }
  expect(() => result("=VLOOKUP(A1,A1:A8,1)")).toThrow(Unknown);
  expect(() => result("=toString(A1)")).toThrow(Unknown);
});

test("a part of a text is found by its place from 1, numbers by their digits, and is an error where it is not there", () => {
  expect(result('=FIND(3,"1; 3")')).toBe(4);
  expect(result("=FIND(1,A1)")).toBe(1);
  expect(result("=FIND(3,A2)")).toEqual({ error: "#VALUE!" });
  expect(result("=FIND(3,A6)")).toEqual({ error: "#N/A" });
});
