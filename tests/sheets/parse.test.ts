import fc from "fast-check";
import { parts, type Expression } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { parseFormula } from "../../src/sheets/parse";
import { Refusal } from "../../src/units/refusal";

const again = (formula: string) => liveFormula(parseFormula(formula));

test("a formula of a document reads back as it was written", () => {
  const formulas = [
    "=B4*2", "=$B$4+B$4+$B4", "='Pat''s pen'!B4", "=SUM(Prices!A1:B5,2)", "=ROUND(B4*(1+C4%),2)", '=IF(B4="at least","x ""y""",0)',
    "=PEN.PANELS(B4,12,,,\"at least\")", "=INDEX(PEN.LOADS(B4,C4:C7),2)", "=-B4^2", "=2^3^2", "=1-(2-3)", "=A1<>B1", "=A1>=B1&C1",
    "=IFERROR(A1/B1,#N/A)", "=TRUE", "=PI()", "=1.5E-7*A1", "=IF(A1,,B1)",
  ]; // prettier-ignore
  for (const formula of formulas) expect(again(formula)).toBe(formula);
});

test("what was typed in another way means the same", () => {
  const cases = [
    ["= a1 +\n b2 ", "=A1+B2"],
    ["sum(a1:b2)", "=SUM(A1:B2)"],
    ["=+A1", "=A1"],
    ["=B2:A1", "=A1:B2"],
    ["=$B$1:A3", "=A$1:$B3"],
    ["=true()", "=TRUE"],
    ["=.5", "=0.5"],
    ["=_xlfn.CONCAT(A1)", "=CONCAT(A1)"],
    ["=@A1", "=A1"],
    ["=_xldudf_PEN_FEET_INCHES(A1)", "=PEN.FEET_INCHES(A1)"],
    ["=_xldudf_PEN.AREA(A1)", "=PEN.AREA(A1)"],
    ["=pen.area(a1)", "=PEN.AREA(A1)"],
    ["=sheet1!a1", "='sheet1'!A1"],
  ];
  for (const [typed, meant] of cases) expect(again(typed)).toBe(meant);
  expect(parseFormula("=pen.area(a1)")).toEqual({
    kind: "pen",
    name: "AREA",
    arguments: [{ kind: "cell", place: { row: 0, column: 0 } }],
  });
});

test("what only a spreadsheet understands stays as it is written, and the rest is still read", () => {
  const strange = [
    "Tax", "Table1[[#All],[Price]]", "[@Price]", "A:A", "$1:$5", "Prices!A:C", '{1,2;"}",3}', "Sheet1:Sheet3!A1",
    "[1]Prices!A1", "'[Book 2.xlsx]Prices'!A1:B2", "(A1,B2)", "A1:INDEX(B:B,3)", "A1:B2 B1:C2", "A1#", "Prices!#REF!", "ABCD1", "A1048577",
  ]; // prettier-ignore
  for (const text of strange) {
    const found = [...parts(parseFormula(`=SUM(${text},PEN.AREA(B3))*2`))];
    expect(found.filter(({ kind }) => kind === "verbatim")).toEqual([{ kind: "verbatim", text }]);
    expect(found.some(({ kind }) => kind === "pen")).toBe(true);
    expect(again(`=SUM(${text},PEN.AREA(B3))*2`)).toBe(`=SUM(${text},PEN.AREA(B3))*2`);
  }
});

test("a name that looks like a function or a number keeps apart from cells", () => {
  expect(parseFormula("=LOG10(5)")).toMatchObject({ kind: "call", name: "LOG10" });
  expect(parseFormula("=XFD1048576")).toMatchObject({
    kind: "cell",
    place: { row: 1_048_575, column: 16_383 },
  });
  expect(parseFormula("=XFE1")).toEqual({ kind: "verbatim", text: "XFE1" });
});

test("broken text gets one clear error that names the place", () => {
  const broken = ["", "=", "=1+", "=(1", '="a', "=A1)", "=5 A1", "=IF(", "={1", "=Prices!", "=A1,B1", "=[a", "=1..2", "=A1 +* 2", "=#OOPS!", "='Prices!A1", "=SUM(A1;B1)", "=1e999"]; // prettier-ignore
  for (const text of broken) {
    expect(() => parseFormula(text)).toThrow(Refusal);
    expect(() => parseFormula(text)).toThrow(/^This formula cannot be read at character \d+: it needs/);
  }
});

test("a formula that is too long or nested too deep is refused, and the longest legal one is read", () => {
  expect(() => parseFormula(`=${"1+".repeat(50_000)}1`)).toThrow("at most 8192 characters");
  for (const deep of ["(", "-", "+", "@", "SUM(", "IF(1,"])
    expect(() => parseFormula(`=${deep.repeat(1000)}1`)).toThrow("at most 100 brackets");
  const longest = `=${"1+".repeat(4095)}1`;
  expect(again(longest)).toBe(longest);
  expect([...parts(parseFormula(longest))]).toHaveLength(8191);
});

test("any text is read or refused in a sentence, and never anything else", () => {
  const signs = fc.constantFrom(..."=+-*/^&<>(){}[],;:!'\"#%@$ .AZ19eE_?\\".split(""), "SUM(", "PEN.AREA(", "A1", "A:A", "#N/A", "Tax", "é", "\u0000");
  const texts = fc.oneof(fc.string(), fc.array(signs, { maxLength: 60 }).map((all) => all.join("")));
  fc.assert(
    fc.property(texts, (text) => {
      let read: Expression;
      try {
        read = parseFormula(text);
      } catch (reason) {
        return reason instanceof Refusal;
      }
      return liveFormula(parseFormula(liveFormula(read))) === liveFormula(read);
    }),
    { numRuns: 5000 },
  );
}); // prettier-ignore
