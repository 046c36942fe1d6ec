import { calls } from "../../functions/calls";
import { readXlsx, writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { evaluate } from "../../src/sheets/evaluate";
import { expression, text, type Expression } from "../../src/sheets/expression";
import { formulaText, liveFormula } from "../../src/sheets/formula";
import { parseFormula } from "../../src/sheets/parse";
import { plainCopy } from "../../src/sheets/plain-copy";
import { type SheetPlan } from "../../src/sheets/plan";
import { contentOfPlan } from "../../src/sheets/workbook-content";
import { sheetNamed } from "./excel/outcomes";
import { countingWorkbook } from "./excel/stand-in";
import { injections } from "./injection";
import { partsOf } from "./xlsx/book";

const plan: SheetPlan = {
  name: "Texts",
  cells: injections.map((words, row) => ({ row, column: 1, says: expression(words), style: "text" })),
  columns: [],
  hiddenRows: [],
  heights: {},
  frozenRows: 0,
  print: {
    area: { top: 0, left: 0, bottom: 1, right: 1 },
    landscape: false,
    pages: { wide: 1, tall: 1 },
    repeatRows: 0,
    footer: "=1+1 &F",
  },
  pictures: [],
};
const changes = injections.map((says, row) => ({ row, column: 1, says }));

test("the list has at least forty texts, each once", () => {
  expect(new Set(injections).size).toBe(injections.length);
  expect(injections.length).toBeGreaterThanOrEqual(40);
});

describe("Excel takes a text from a person as that text", () => {
  const held = (excel: ReturnType<typeof countingWorkbook>, name: string, column = 1) =>
    injections.map((_, row) => sheetNamed(excel, name).cells.get(`${row} ${column}`));
  const same = injections.map((words) => ({ value: words, formula: words }));

  test("in a new document", async () => {
    const excel = countingWorkbook();
    await excel.host.write([plan]);
    expect(held(excel, "Texts")).toEqual(same);
  });

  test("in inputs, added rows, rewritten cells and a filled copy", async () => {
    const excel = countingWorkbook({ sheets: ["One", "Two"] });
    await excel.host.update("One", changes.map(({ says: value, ...at }) => ({ ...at, value })));
    await excel.host.append("Two", injections.map((words) => [null, words]));
    await excel.host.fillCopy("One", "Three", changes.map((cell) => ({ ...cell, column: 2 })));
    await excel.host.rewrite("One", changes.map((cell) => ({ ...cell, column: 3 })));
    expect([held(excel, "One"), held(excel, "Two"), held(excel, "Three", 2), held(excel, "One", 3)]).toEqual([same, same, same, same]);
  });

  test("also where a change is taken back", async () => {
    const excel = countingWorkbook({ sheets: ["One"] });
    await excel.host.rewrite("One", changes);
    excel.reset();
    excel.fail({ request: 1, action: 5, code: "AccessDenied" });
    await expect(excel.host.rewrite("One", changes.map((cell) => ({ ...cell, says: 1 })))).rejects.toThrow("protected");
    expect(held(excel, "One")).toEqual(same);
  });
}); // prettier-ignore

test("a file holds each text as a shared text and no formula, also in a plain copy, and gives it back", async () => {
  const whole = { sheets: [contentOfPlan(plan)] };
  for (const content of [whole, plainCopy(whole, (name) => calls[name], { sheets: ["Texts"], keepKeys: false })]) {
    const bytes = await writeXlsx(content);
    const parts = await partsOf(bytes);
    const xml = parts["xl/worksheets/sheet1.xml"];
    expect(xml).not.toMatch(/<f[\s>]/);
    expect(xml.match(/<c [^>]*t="s"/g)).toHaveLength(injections.length);
    for (const part of ["xl/worksheets/sheet1.xml", "xl/sharedStrings.xml"]) expect(parts[part]).not.toMatch(/<script|<f>/);
    const { content: back } = await readXlsx(bytes);
    // A carriage return of a text is a line feed in XML.
    const asRead = (words: string) => words.replace(/\r\n?/g, "\n");
    expect(back.sheets[0].cells.map(({ value }) => asRead(String(value)))).toEqual(injections.map(asRead));
    expect(back.sheets[0].cells.filter(({ formula }) => formula !== undefined)).toEqual([]);
  }
}); // prettier-ignore

test("a text inside a text formula is a quoted part of it, and nothing of it is worked out", () => {
  const around = { cell: () => null, pen: (name: string) => calls[name] };
  for (const words of injections) {
    const says = text("Pen for ", words, ".");
    const read: Expression = parseFormula(liveFormula(says));
    expect(evaluate(read, around)).toBe(`Pen for ${words}.`);
    const outside = formulaText(says).replace(/"(?:[^"]|"")*"/g, "");
    expect(outside.replaceAll("CHAR(39)", "")).toMatch(/^[&()]*$/);
  }
});
