import fc from "fast-check";
import { address, columnName, columnNumber, isSheetName, sheetName } from "../../src/sheets/address";

test("columns are named as spreadsheets name them", () => {
  const named = [[0, "A"], [25, "Z"], [26, "AA"], [51, "AZ"], [52, "BA"], [701, "ZZ"], [702, "AAA"], [16_383, "XFD"]] as const; // prettier-ignore
  for (const [number, name] of named) {
    expect(columnName(number)).toBe(name);
    expect(columnNumber(name)).toBe(number);
  }
  expect(columnNumber("xfd")).toBe(16_383);
});

test("a column's name gives its number back", () => {
  fc.assert(fc.property(fc.nat(16_383), (k) => columnNumber(columnName(k)) === k));
});

test("an address counts rows from 1 and carries its dollar signs and its sheet", () => {
  expect(address({ row: 3, column: 1 })).toBe("B4");
  expect(address({ row: 3, column: 1, fixedRow: true })).toBe("B$4");
  expect(address({ row: 3, column: 1, fixedColumn: true, fixedRow: true })).toBe("$B$4");
  expect(address({ sheet: "Estimate 2", row: 3, column: 1 })).toBe("'Estimate 2'!B4");
  expect(address({ sheet: "Prices", row: 0, column: 0 })).toBe("Prices!A1");
});

test("a sheet's name is quoted where a formula could read it as something else", () => {
  expect(sheetName("Prices")).toBe("Prices");
  for (const name of ["R1C1", "A1", "TRUE", "Tax", "2026", "Try it", "Pen-1"])
    expect(sheetName(name)).toBe(`'${name}'`);
  expect(sheetName("Pat's pen")).toBe("'Pat''s pen'");
});

test("a sheet's name has 1 to 31 characters that every spreadsheet takes", () => {
  for (const name of ["Estimate 2", "Pat's pen", "x".repeat(31)]) expect(isSheetName(name)).toBe(true);
  for (const name of ["", "x".repeat(32), "a/b", "a:b", "[a]", "a*", "'quoted'"])
    expect(isSheetName(name)).toBe(false);
});
