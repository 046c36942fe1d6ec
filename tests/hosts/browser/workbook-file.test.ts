import fc from "fast-check";
import { HostError } from "../../../src/hosts/host";
import { samplePlan } from "./sample-plan";
import { fileText, readFile } from "../../../src/hosts/browser/workbook-file";

const sheet = (more: object = {}) => ({ name: "One", cellData: { 0: { 0: { v: 1, t: 2 } } }, ...more });
const file = (workbook: object, penstake: unknown = 1) => JSON.stringify({ penstake, workbook });
const read = (cell: unknown, more: object = {}) =>
  readFile(file({ sheetOrder: ["a"], sheets: { a: sheet({ cellData: { 0: { 0: cell } }, ...more }) } }))
    .sheets.a;

describe("the file of a whole workbook", () => {
  test("gives back what was put into it", () => {
    const first = readFile(
      file({ id: "w", name: "Job", sheetOrder: ["a"], sheets: { a: sheet() }, styles: { s: { bl: 1 } } }),
    );
    expect(readFile(fileText(first))).toEqual(first);
    expect(first.sheets.a.cellData).toEqual({ 0: { 0: { v: 1, t: 2 } } });
    expect(first.styles).toEqual({ s: { bl: 1 } });
  });

  test.each([
    ["no JSON", "penstake"],
    ["a list", "[]"],
    ["nothing", "null"],
    [
      "a workbook without its mark",
      JSON.stringify({ workbook: { sheets: { a: sheet() }, sheetOrder: ["a"] } }),
    ],
    ["no sheets", file({ sheets: {}, sheetOrder: [] })],
    ["an order of sheets that it lacks", file({ sheets: { a: sheet() }, sheetOrder: ["b"] })],
    ["a sheet without a name", file({ sheets: { a: { cellData: {} } }, sheetOrder: ["a"] })],
    ["a sheet without cells", file({ sheets: { a: { name: "One" } }, sheetOrder: ["a"] })],
    [
      "two sheets of one name",
      file({ sheets: { a: sheet(), b: sheet({ name: "ONE" }) }, sheetOrder: ["a", "b"] }),
    ],
  ])("is refused where it holds %s, and the present workbook is said to stay", (_, text) => {
    expect(() => readFile(text)).toThrow(/not a workbook file.*was not touched/);
  });

  test("is refused in the same sentence where it nests without end", () => {
    const nested = `${"[".repeat(20_000)}${"]".repeat(20_000)}`;
    const text = file({ sheetOrder: ["a"], sheets: { a: sheet() }, styles: {} }).replace('"styles":{}', `"styles":{"s":${nested}}`); // prettier-ignore
    expect(() => readFile(text)).toThrow(HostError);
    expect(() => readFile("[".repeat(1_000_000))).toThrow("not a workbook file");
  });

  test("is refused in a sentence or read, whatever its parts are replaced by", () => {
    const whole = { id: "w", name: "Job", sheetOrder: ["a"], styles: { s: { bl: 1 } }, custom: {}, resources: [], sheets: { a: { ...sheet(), freeze: {}, rowData: {}, columnData: {}, mergeData: [] } } }; // prettier-ignore
    const odd = fc.oneof(fc.jsonValue(), fc.constantFrom(null, -1, 1e308, "__proto__", { __proto__: null }, [[]], { length: 1e9 })); // prettier-ignore
    const key = fc.constantFrom(...Object.keys(whole), ...Object.keys(whole.sheets.a).map((name) => `sheets.a.${name}`)); // prettier-ignore
    fc.assert(
      fc.property(key, odd, (path, value) => {
        const damaged = JSON.parse(JSON.stringify(whole)) as Record<string, unknown>;
        const steps = path.split(".");
        const last = steps.pop()!;
        const at = steps.reduce((part, step) => part[step] as Record<string, unknown>, damaged);
        at[last] = value;
        try {
          return readFile(file(damaged)).sheetOrder.length > 0;
        } catch (reason) {
          return reason instanceof HostError;
        }
      }),
      { numRuns: 300 },
    );
  });

  test("is refused where it is of a later version or too large", () => {
    expect(() => readFile(file({}, 2))).toThrow("newer version");
    expect(() => readFile("x".repeat(50_000_001))).toThrow("larger than 50 MB");
  });

  test("keeps of a cell only what a cell is made of", () => {
    const kept = read({
      v: "=1",
      t: 1,
      f: "=A2",
      s: { bl: 1 },
      custom: { input: true, other: 1 },
      onclick: "x",
    });
    expect(kept.cellData![0][0]).toEqual({
      v: "=1",
      t: 1,
      f: "=A2",
      s: { bl: 1 },
      custom: { input: true, note: "" },
    });
    for (const bad of [
      { v: {}, t: 9, f: "A2", s: 4, p: "x", custom: "y" },
      { f: 5, si: {} },
    ])
      expect(read(bad).cellData![0][0]).toEqual({});
    for (const none of [null, 5, "x", []]) expect(read(none).cellData![0]).toEqual({});
  });

  test("leaves rows and columns behind that no sheet has, and sizes that are no counts", () => {
    const kept = read(
      { v: 1 },
      {
        rowCount: 1e9,
        columnCount: "x",
        mergeData: [{ startRow: -1 }, 5],
        rowData: { "-1": {}, 3: { h: 30 }, x: {} },
      },
    );
    expect([kept.rowCount, kept.columnCount, kept.mergeData, kept.rowData]).toEqual([
      200,
      26,
      [],
      { 3: { h: 30 } },
    ]);
  });

  test("keeps a sheet's print set-up where it is one", () => {
    const print = { ...samplePlan("").print };
    expect(read({}, { custom: { print, other: 1 } }).custom).toEqual({ print });
    for (const bad of [
      "x",
      {},
      { ...print, area: 5 },
      { ...print, area: { ...print.area, top: -1 } },
      { ...print, footer: 1 },
    ])
      expect(read({}, { custom: { print: bad } }).custom).toEqual({ print: null });
  });

  test("reaches no object's prototype", () => {
    const text = file({ sheetOrder: ["a"], sheets: { a: sheet() } });
    const hostile = text.replace(
      '"name":"One"',
      '"name":"One","custom":{"__proto__":{"ran":true},"constructor":{"prototype":{"ran":true}}}',
    );
    expect(readFile(hostile).sheets.a.custom).toEqual({ print: null });
    expect(({} as { ran?: boolean }).ran).toBeUndefined();
  });

  test("leaves pictures behind that would be fetched from elsewhere, and rules out of shape", () => {
    const drawing = (source: string) => ({
      data: { p: { source, transform: {}, sheetTransform: {} } },
      order: ["p"],
    });
    const rule = {
      uid: "r",
      type: "list",
      ranges: [{ startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 }],
    };
    const resources = [
      {
        name: "SHEET_DRAWING_PLUGIN",
        data: JSON.stringify({
          a: drawing("data:image/png;base64,AA"),
          b: drawing("https://example.com/x.png"),
        }),
      },
      {
        name: "SHEET_DATA_VALIDATION_PLUGIN",
        data: JSON.stringify({ a: [rule], b: [{ ...rule, ranges: 5 }] }),
      },
      { name: "SOMETHING_ELSE", data: "{}" },
    ];
    const kept = readFile(file({ sheetOrder: ["a"], sheets: { a: sheet() }, resources })).resources!;
    const [rules, drawings] = kept.map(({ data }) => Object.keys(JSON.parse(data)));
    expect([rules, drawings, kept.length]).toEqual([["a"], ["a"], 3]);
  });
});
