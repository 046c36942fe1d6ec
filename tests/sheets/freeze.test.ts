import { calls } from "../../functions/calls";
import { freezing } from "../../src/sheets/freeze";
import { contentOfRead, type Read } from "../../src/sheets/replaced";
import { formulaText } from "../../src/sheets/formula";
import { saying } from "../../src/sheets/expression";
import { type Cell } from "../../src/units/cell";

const pen = (name: string) => calls[name];
const everything = { sheet: "Job", top: 0, left: 0, bottom: Infinity, right: Infinity };

/** A sheet whose column A shows and says what each row gives. */
const sheet = (name: string, rows: [value: Cell, says?: string][]): Read => ({
  name,
  values: rows.map(([value]) => [value]),
  formulas: rows.map(([value, says = value]) => [says]),
});
const frozen = (sheets: Read[], area = everything) =>
  freezing(contentOfRead(sheets), area, pen).map(({ sheet: on, row, now, says, style }) => [
    `${on} ${row + 1}`,
    now,
    formulaText(saying(says)),
    ...(style ? [style] : []),
  ]);

test("a call becomes its value, what stands around it stays live, and what leads to it is marked as fixed", () => {
  const area = 2500 * Math.PI / 4;
  const job = sheet("Job", [[50], [area, "=PEN.AREA(A1)"], [2 * area, "=PEN.AREA(A1)*A4"], [2], [4, "=A4*2"]]);
  expect(frozen([job])).toEqual([
    ["Job 2", "=PEN.AREA(A1)", String(area)],
    ["Job 3", "=PEN.AREA(A1)*A4", `${area}*A4`],
    ["Job 1", "50", "50", "fixed"],
  ]);
}); // prettier-ignore

test("only what is asked for is frozen, with what leads to it on whatever sheet", () => {
  const job = sheet("Job", [
    [1963.5, "=PEN.AREA(Sizes!A1)"],
    [157.1, "=PEN.CIRCUMFERENCE(Sizes!A2)"],
  ]);
  const sizes = sheet("Sizes", [[50, "=A3*2"], [50], [25]]);
  const first = { ...everything, bottom: 0, right: 0 };
  expect(frozen([job, sizes], first).map(([place, , , style]) => [place, style])).toEqual([
    ["Job 1", undefined],
    ["Sizes 3", "fixed"],
  ]);
});

test("a result that fills several cells becomes the values of all of them, but a cell of the user's is not taken", () => {
  const filled = (third: Cell): Read => ({
    name: "Job",
    values: [[10, 31.4], [20, 62.8], [30, third]].map(([size, shown], k) => [size, k < 2 || third !== "mine" ? Math.PI * Number(size) : shown]),
    formulas: [[10, "=PEN.CIRCUMFERENCE(A1:A3)"], [20, null], [30, third === "mine" ? "mine" : null]],
  });
  const places = (third: Cell) => frozen([filled(third)]).filter(([, , , style]) => !style).map(([place]) => place);
  expect(places(null)).toEqual(["Job 1", "Job 2", "Job 3"]);
  expect(places("mine")).toEqual(["Job 1", "Job 2"]);
}); // prettier-ignore

test("a sheet without a call has nothing to freeze, and a text that looks like one stays", () => {
  expect(frozen([sheet("Job", [[50], [100, "=A1*2"], ["=PEN.AREA(1)"]])])).toEqual([]);
});

test("a text that a call gave stays a text, whatever it begins with", () => {
  const [, , says] = frozen([sheet("Job", [["50'", "=PEN.FEET_INCHES(50)"]])])[0];
  expect(says).toBe('("50"&CHAR(39))');
});
