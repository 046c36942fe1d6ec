import { sheetFunctions } from "../../src/sheets/sheet-functions";
import { type CellData } from "../../src/sheets/workbook-content";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { type Cell } from "../../src/units/cell";
import { agree, ourValues, sheetOf, told } from "./books";
import { officeTest, recalculate, shown } from "./libreoffice";

/** Column A of the sheet In: numbers that round awkwardly, texts, blanks, errors. Column B: what is counted and summed. */
const a: Cell[] = [12.5, null, "text", "apple", "3", true, { error: "#N/A" }, { error: "#DIV/0!" }, -2.5, 1.005, 2.675, 123456789012.345, 0, "Apple pie", 1e-7]; // prettier-ignore
const b: Cell[] = [10, 20, 30, null, "panel", "Panel", "gate", -5, 0, 20, "yes", "no", null, 7.5, 1];

const cases: Record<string, string[]> = {
  IF: ["IF(A1>12,1,2)", "IF(A1<12,1)", "IF(A2,1,2)", "IF(A2=0,1,2)", 'IF(A2="",1,2)', 'IF(A3="TEXT",1,2)', "IF(A7,1,2)", "IF(A13,1,2)", "IF(A1,,5)", "IF(A13,5,)", "IF(A1>0,A7,1)", "IF(A1<0,A7,1)", "IF(A3,1,2)"],
  IFERROR: ["IFERROR(A7,5)", "IFERROR(A1/A13,A9)", "IFERROR(A1,5)", "IFERROR(A2,5)", 'IFERROR(A8,"")', "IFERROR(A7,A8)"],
  AND: ["AND(A1>0,A9<0)", "AND(A1>0,A9>0)", "AND(A1,A2)", "AND(A1,A7)", "AND(B1:B3)", "AND(B8:B9)", "AND(B1:B5)"],
  OR: ["OR(A1<0,A9<0)", "OR(A1<0,A9>0)", "OR(A13,A13)", "OR(A7,TRUE)", "OR(B8:B9)", "OR(B9:B9)"],
  NOT: ["NOT(A1>0)", "NOT(A13)", "NOT(A2)", "NOT(A7)"],
  ISNUMBER: ["ISNUMBER(A1)", "ISNUMBER(A2)", "ISNUMBER(A3)", "ISNUMBER(A5)", "ISNUMBER(A7)", "ISNUMBER(A1+1)"],
  ISERROR: ["ISERROR(A1)", "ISERROR(A2)", "ISERROR(A7)", "ISERROR(A8)", "ISERROR(A1/A13)", "ISERROR(A3+1)"],
  N: ["N(A1)", "N(A2)", "N(A3)", "N(A5)", "N(A6)", "N(A7)", 'N("x")'],
  SUM: ["SUM(A1,A9)", "SUM(B1:B15)", "SUM(A1:A5)", "SUM(A1:A7)", "SUM(A2)", "SUM(B1:B3,5,A1)", "SUM(B4:B4)", "SUM(A2:A3)", "SUM(1,,2)", "SUM(A3,1)", "SUM(\"x\",1)"],
  MAX: ["MAX(B1:B15)", "MAX(A9,A1)", "MAX(B4:B7)", "MAX(A1:A8)", "MAX(A9,A2)", "MAX(A9,-7)"],
  MIN: ["MIN(B1:B15)", "MIN(A9,A1)", "MIN(B4:B7)", "MIN(A1:A8)", "MIN(A1,A2)"],
  COUNT: ["COUNT(B1:B15)", "COUNT(A1:A15)-COUNT(A6)", "COUNT(1,2,3)", "COUNT(A2)", "COUNT(A7)"],
  COUNTIF: ['COUNTIF(B1:B15,"panel")', "COUNTIF(B1:B15,20)", 'COUNTIF(B1:B15,">10")', 'COUNTIF(B1:B15,"<=0")', 'COUNTIF(B1:B15,"<>")', 'COUNTIF(B1:B15,"<>20")', 'COUNTIF(B1:B15,"")', 'COUNTIF(B1:B15,"=20")', 'COUNTIF(B1:B15,"20")', "COUNTIF(B1:B15,B1)", 'COUNTIF(B1:B15,">"&A1)', 'COUNTIF(B1:B15,"<>panel")', 'COUNTIF(A1:A15,3)', 'COUNTIF(B1:B15,"=")', 'COUNTIF(B1:B15,">=7.5")', 'COUNTIF(B1:B15,"<0")'],
  COUNTIFS: ['COUNTIFS(B1:B15,">0",A1:A15,">0")', 'COUNTIFS(B1:B15,"<>",A1:A15,"<>")', 'COUNTIFS(B1:B15,"panel",A1:A15,"")', 'COUNTIFS(B1:B3,">15",B8:B10,"<1")'],
  SUMIFS: ['SUMIFS(B1:B15,B1:B15,">5")', 'SUMIFS(B1:B3,A9:A11,"<2")', 'SUMIFS(B8:B15,B8:B15,"<>20")', 'SUMIFS(B1:B15,A1:A15,"apple")', 'SUMIFS(B1:B15,B1:B15,"<>")', 'SUMIFS(B1:B3,B1:B3,20)', 'SUMIFS(B1:B15,B1:B15,">0",B1:B15,"<20")', 'SUMIFS(B1:B15,B1:B15,"yes")'],
  MINIFS: ['MINIFS(B1:B15,B1:B15,">5")', 'MINIFS(B1:B15,A1:A15,"apple")', 'MINIFS(B1:B15,A1:A15,">100")', 'MINIFS(B1:B15,B1:B15,">=0",A1:A15,"<>no")', 'MINIFS(A9:A11,B1:B3,"<>25")', 'MINIFS(B1:B15,B1:B15,"<"&N(A2))'],
  MAXIFS: ['MAXIFS(B1:B15,B1:B15,"<20")', 'MAXIFS(B1:B15,B1:B15,"yes")', 'MAXIFS(A9:A11,B1:B3,"<>0")', 'MAXIFS(A9:A11,B3:B5,"<>no")', 'MAXIFS(B1:B15,B1:B15,20,A1:A15,"<>yes")', 'MAXIFS(B1:B3,B1:B3,"<>0",B3:B5,"<>0")'],
  ROWS: ["ROWS(B1:B3)", "ROWS(A1)", "ROWS(A$1:A4)", "ROWS(A1:B2)"],
  TODAY: ["TODAY()", "TODAY()-90"],
  INDEX: ["INDEX(B1:B3,2)", "INDEX(B1:B3,2,1)", "INDEX(A1:B3,3,2)", "INDEX(A1:B1,2)", "INDEX(B1:B5,4)+1", "INDEX(B1:B3,A7)", "INDEX(A7:B8,1,1)", "INDEX(B1:B3,1.9)"],
  ABS: ["ABS(A9)", "ABS(A1)", "ABS(A2)", "ABS(A3)", "ABS(A7)"],
  SQRT: ["SQRT(A1)", "SQRT(A2)", "SQRT(A3)"],
  SIN: ["SIN(A1)", "SIN(A9)", "SIN(A2)", "SIN(A3)", "SIN(A7)", "SIN(PI()/6)"],
  ASIN: ["ASIN(0.5)", "ASIN(A2)", "ASIN(-1)", "ASIN(A1)", "ASIN(A3)", "ASIN(A7)"],
  PI: ["PI()", "PI()*A1^2/4"],
  ROUND: ["ROUND(A10,2)", "ROUND(A11,2)", "ROUND(A9,0)", "ROUND(-A9,0)", "ROUND(A1,-1)", "ROUND(A12,2)", "ROUND(A12,-6)", "ROUND(A2,2)", "ROUND(A3,2)", "ROUND(A15,6)", "ROUND(A1*3.3333333,6)", "ROUND(1.1*1.1,2)", "ROUND(1.115*100,0)", "ROUND(-1.005,2)", "ROUND(1234567.125,2)", "ROUND(0.5,0)", "ROUND(1.5,0)", "ROUND(2.5,0)", "ROUND(-0.5,0)", "ROUND(A1,)", "ROUND(35.015*3,2)", "ROUND(5.015,2)", "ROUND(1.45,1)", "ROUND(8.325*2,2)"],
  ROUNDUP: ["ROUNDUP(A10,2)", "ROUNDUP(A9,0)", "ROUNDUP(3,0)", "ROUNDUP(3.0000001,0)", "ROUNDUP(ROUND(2.9999999999,6),0)", "ROUNDUP(ROUND(3.0000000001,6),0)", "ROUNDUP(A1,-1)", "ROUNDUP(0,0)", "ROUNDUP(-2.1,0)", "ROUNDUP(A3,0)"],
  ROUNDDOWN: ["ROUNDDOWN(A10,2)", "ROUNDDOWN(A9,0)", "ROUNDDOWN(2.999999,0)", "ROUNDDOWN(A1,-1)", "ROUNDDOWN(-2.9,0)", "ROUNDDOWN(A7,0)"],
  FIXED: ["FIXED(A1)", "FIXED(A12,1)", "FIXED(A12,1,TRUE)", "FIXED(A9,0)", "FIXED(-1234.567,1)", "FIXED(1234567.891,2,FALSE)", "FIXED(A12,-3)", "FIXED(0,3)", "FIXED(A3,1)", "FIXED(A7,1)", "FIXED(-0.001,2)"],
  CHAR: ["CHAR(39)", "CHAR(65.9)", '"226"&CHAR(39)'],
  FIND: ['FIND("p",A4)', 'FIND("P",A4)', 'FIND("le",A14)', 'FIND("3",A5)', 'FIND("2",A1)', 'FIND("x",A2)', 'FIND("a",A7)', 'ISNUMBER(FIND("e",A4))', 'FIND(";2;",";1;2;3;")', 'FIND("12",";12;")'],
  LEN: ["LEN(A3)", "LEN(A2)", "LEN(A1)", 'LEN("")', "LEN(A7)", 'LEN("a""b")'],
}; // prettier-ignore

const operators = [
  "A1+A2", "A1+A5", "A1+A3", "A1&A3", 'A2&""', "A1/A13", "A9^0.5", "-A9^2", "2^-1", "A1%", "-A1%", "A1&A10", "A1*A7",
  "A1=12.5", "A3=A14", 'A4="APPLE"', "A3>A1", "A2=0", 'A2=""', "A2=A13", "A1<>A9", "A3<A4", "A7=A7", "1/3&A3", "A12&A3",
  "0.1+0.2=0.3", "1=1.0000000000001", "0.3-0.1-0.2", "0.1+0.2-0.3=0", "43.1-43.2+0.1", "A7+A3", "A3+A7",  "A13^A13", "(A1+A9)*2", "A1-A9-1", "A1/(A9/5)", "2^3^2", "1E+300*1E+300",
]; // prettier-ignore

const formulas = [...Object.values(cases).flat(), ...operators];
const column = (values: Cell[], at: number): CellData[] =>
  values.map((value, row) => ({ row, column: at, value }));
const asked: CellData[] = formulas.map((formula, row) => ({
  row,
  column: 3,
  value: null,
  formula: `=${formula}`,
}));
const book = { sheets: [sheetOf("In", [...column(a, 0), ...column(b, 1), ...asked])] };

test("every function of the sheets has cases that a spreadsheet is asked about", () => {
  expect(Object.keys(cases).sort()).toEqual(Object.keys(sheetFunctions).sort());
});

officeTest("functions and operators give what LibreOffice gives", async () => {
  const [office] = await recalculate([await writeXlsx(book)]);
  const ours = ourValues(book);
  const parted = formulas.flatMap((formula, row) => {
    const [mine, theirs] = [ours("In", row, 3), shown(office, "In", row, 3)];
    return agree(mine, theirs) ? [] : [`${formula}: ${told(mine)}, LibreOffice ${told(theirs)}`];
  });
  expect(parted).toEqual([]);
});
