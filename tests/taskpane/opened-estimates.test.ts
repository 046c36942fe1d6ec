import { aboutEstimates } from "../../taskpane/opened-estimates";
import { cell, sheet } from "../hosts/xlsx/book";

const estimate = (name: string, formula: string) =>
  sheet(name, [cell(0, 0, "penstake estimate 1"), cell(2, 2, 3.14, { formula })]);

test("an estimate with fixed figures is to be made live again, a live one written anew, and no other sheet is named", () => {
  const sheets = [
    estimate("Estimate", "=B2*2"),
    estimate("Estimate 2", "=PEN.AREA(B2)"),
    sheet("My list", []),
  ];
  const [fixed, live, ...more] = aboutEstimates({ sheets });
  expect(fixed).toMatch(/^"Estimate" .*Make it live again.*draws its plan anew/);
  expect(live).toMatch(/^"Estimate 2" is a live estimate/);
  expect(more).toEqual([]);
});
