import { call, cell, minus, operate, over, pen, plus, range, text, times, type Expression } from "../../src/sheets/expression"; // prettier-ignore
import { formulaText, literal, liveFormula } from "../../src/sheets/formula";

const at = (row: number, column: number) => cell({ row, column });

test("brackets stand where the order of operators needs them, and nowhere else", () => {
  const cases: [Expression, string][] = [
    [plus(1, times(2, 3)), "1+2*3"],
    [times(plus(1, 2), 3), "(1+2)*3"],
    [minus(1, minus(2, 3)), "1-(2-3)"],
    [minus(minus(1, 2), 3), "1-2-3"],
    [over(12, times(2, 3)), "12/(2*3)"],
    [operate(operate(2, "^", 3), "^", 2), "2^3^2"],
    [operate(2, "^", operate(3, "^", 2)), "2^(3^2)"],
    [{ kind: "negative", of: plus(1, 2) }, "-(1+2)"],
    [{ kind: "percent", of: plus(1, 2) }, "(1+2)%"],
    [operate(-2, "^", 2), "(-2)^2"],
    [plus(at(0, 0), -4), "A1+(-4)"],
    [operate(text("a", plus(1, 2)), "=", "a3"), '"a"&1+2="a3"'],
    [text("a", operate(1, "=", 2)), '"a"&(1=2)'],
  ];
  for (const [expression, written] of cases) expect(formulaText(expression)).toBe(written);
});

test("calls, ranges on other sheets and omitted arguments are written in English notation", () => {
  const far = range({ sheet: "Pat's pen", row: 0, column: 0, fixedRow: true }, { row: 4, column: 1 });
  expect(liveFormula(call("SUM", far, 2))).toBe("=SUM('Pat''s pen'!A$1:B5,2)");
  expect(liveFormula(pen("PANELS", at(2, 1), 12, undefined, undefined, "at least"))).toBe(
    '=PEN.PANELS(B3,12,,,"at least")',
  );
});

test("a content is written as a formula holds it", () => {
  expect(literal('6" post')).toBe('"6"" post"');
  expect(literal(null)).toBe('""');
  expect(literal(true)).toBe("TRUE");
  expect(literal(1e21)).toBe("1E+21");
  expect(literal({ error: "#N/A", message: "no pen" })).toBe("#N/A");
});

test("a text that ends in a foot mark is written so that every grid keeps the mark", () => {
  const shown = { kind: "constant", value: "226'" } as const;
  expect(liveFormula({ kind: "call", name: "IF", arguments: [shown, shown, shown] })).toBe(
    `=IF(("226"&CHAR(39)),("226"&CHAR(39)),("226"&CHAR(39)))`,
  );
});
