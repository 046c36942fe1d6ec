import { calls } from "../../functions/calls";
import { liveFormula } from "../../src/sheets/formula";
import { saying } from "../../src/sheets/expression";
import { ownNames, repairing } from "../../src/sheets/repair";
import { contentOfRead } from "../../src/sheets/replaced";
import { type Cell } from "../../src/units/cell";

const known = (name: string) => name in calls;
const everything = { sheet: "Job", top: 0, left: 0, bottom: Infinity, right: Infinity };
const nameError: Cell = { error: "#NAME?" };
const repair = (rows: [Cell, string][]) => {
  const sheet = { name: "Job", values: rows.map(([value]) => [value]), formulas: rows.map(([, says]) => [says]) }; // prettier-ignore
  const { cells, unknown } = repairing(contentOfRead([sheet]), everything, known);
  return { unknown, cells: cells.map(({ row, says }) => [row, liveFormula(saying(says))]) };
};

test.each([
  ["=_xldudf_PEN_AREA(B1)", "=PEN.AREA(B1)"],
  ["=_xldudf_PEN.FEET_INCHES(B1)", "=PEN.FEET_INCHES(B1)"],
  ["=_xlfn.PEN.AREA(B1)", "=PEN.AREA(B1)"],
  ["=_xlfn._xldudf_PEN_AREA(B1)", "=PEN.AREA(B1)"],
  ["=_xludf.PEN.AREA(B1)", "=PEN.AREA(B1)"],
  ["=@PEN.AREA(B1)", "=PEN.AREA(B1)"],
  ["=Penstake.xlam!PEN.AREA(B1)", "=PEN.AREA(B1)"],
  ["='C:\\Add-ins\\Penstake.xlam'!PEN.AREA(B1)", "=PEN.AREA(B1)"],
  ["='It''s here.xlam'!_xldudf_PEN_AREA(B1)", "=PEN.AREA(B1)"],
  ["=[1]!PEN.AREA(B1)+[Other.xlsx]Sheet1!B2", "=PEN.AREA(B1)+[Other.xlsx]Sheet1!B2"],
  ["=pen.area(B1)*2", "=PEN.AREA(B1)*2"],
  ["=_xlfn.IFS(B1>2,_xldudf_PEN_AREA(B1))", "=IFS(B1>2,PEN.AREA(B1))"],
  ["=INDEX(_xldudf_PEN_LOADS(B1,C1:C3),2)", "=INDEX(PEN.LOADS(B1,C1:C3),2)"],
  ['="_xldudf_PEN_AREA(1)"&PEN.AREA(2)', '="_xldudf_PEN_AREA(1)"&PEN.AREA(2)'],
  ["='_xlfn.PEN.AREA('!B1", "='_xlfn.PEN.AREA('!B1"],
  ["=MYPEN.AREA(1)", "=MYPEN.AREA(1)"],
  ["=PEN.UNHEARD(1)", "=PEN.UNHEARD(1)"],
])("%s is meant as %s", (stored, meant) => {
  expect(ownNames(stored, known)).toBe(meant);
});

test("what shows #NAME? and asks this add-in is entered again, and so is what holds a prefix; all else stays", () => {
  const { cells, unknown } = repair([
    [nameError, "=PEN.AREA(B1)"],
    [3.14, "=_xldudf_PEN_AREA(2)"],
    [3.14, "=PEN.AREA(2)"],
    [nameError, "=Budget*2"],
    [nameError, "=A1*2"],
    [{ error: "#VALUE!" }, '=PEN.AREA("wide")'],
    [2, "=_xlfn.IFS(B1>2,2)"],
  ]);
  expect(cells).toEqual([
    [0, "=PEN.AREA(B1)"],
    [1, "=PEN.AREA(2)"],
    [6, "=IFS(B1>2,2)"],
  ]);
  expect(unknown).toEqual([]);
});

test("a function that this add-in does not have is named, and its formula stays", () => {
  expect(repair([[nameError, "=PEN.UNHEARD(1)"], [nameError, "=PEN.AREA(PEN.UNHEARD(1))"]])).toEqual({ cells: [], unknown: ["UNHEARD"] }); // prettier-ignore
});

test("a formula that cannot be read, and a text that looks like one, stay", () => {
  expect(repair([[nameError, "=_xldudf_PEN_AREA((1"], ["=_xldudf_PEN_AREA(1)", "=_xldudf_PEN_AREA(1)"]]).cells).toEqual([]); // prettier-ignore
});
