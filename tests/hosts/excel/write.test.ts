import { blank, expression } from "../../../src/sheets/expression";
import { pricesMark } from "../../../src/sheets/prices-layout";
import { type SheetPlan } from "../../../src/sheets/plan";
import { put, refused, sheetNamed, sheetNames, state } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";

const small = (name: string): SheetPlan => samplePlan(name, 8);

const saying = (name: string, texts: (string | number | boolean)[]): SheetPlan => ({
  ...small(name),
  cells: texts.map((text, row) => ({ row, column: 0, says: expression(text), style: "label" })),
});

describe("writing a document into Excel", () => {
  it("takes one read, one write and one activation, under 100 KB, for a sheet as large as an estimate", async () => {
    const excel = countingWorkbook({ sheets: ["Sheet1", "Prices"] });
    put(sheetNamed(excel, "Prices"), 0, 0, pricesMark);
    await excel.host.look();
    await excel.host.write([samplePlan("Estimate 1")]);
    expect(excel.trips()).toBe(3);
    expect(excel.bytes()).toBeLessThan(100 * 1024);
    expect(sheetNamed(excel, "Estimate 1").cells.size).toBeGreaterThan(1500);
  });

  it("repeats header rows from where they stand", async () => {
    const excel = countingWorkbook();
    const plan = small("Layout");
    await excel.host.write([{ ...plan, print: { ...plan.print, repeatFrom: 12 } }]);
    expect(sheetNamed(excel, "Layout").set.titleRows).toBe("$13:$14");
  });

  it("gives every cell its content and shows the sheet named last", async () => {
    const excel = countingWorkbook();
    await excel.host.write([small("Prices"), small("Estimate 1")]);
    expect(sheetNames(excel)).toEqual(["Sheet1", "Prices", "Estimate 1"]);
    expect(excel.book.active.name).toBe("Estimate 1");
    const { cells } = sheetNamed(excel, "Estimate 1");
    expect(cells.get("0 0")).toEqual({ value: "penstake sample 1", formula: "penstake sample 1" });
    expect(cells.get("3 2")?.formula).toBe("=INDEX(PEN.LOADS(K4,K4),1)");
    expect(cells.get("3 4")?.formula).toBe("=ROUND(D4*1.5,2)");
    expect(cells.get("3 10")?.value).toBe(12.75);
    expect(cells.has("3 12")).toBe(false);
    expect(cells.size).toBe(2 + 6 * 14 - 2);
  });

  it("carries looks, widths, hidden lines, merges, what inputs accept, the frozen rows, the page and the picture", async () => {
    const excel = countingWorkbook();
    await excel.host.write([small("Estimate 1")]);
    const { looks, set, pictures } = sheetNamed(excel, "Estimate 1");
    expect(looks.get("2 1")).toMatchObject({ "Font.Bold": true, "Font.Size": 11, "Fill.Color": "#E4E7EB" });
    expect(looks.get("2 1")).toHaveProperty(["Border.EdgeBottom.Style"], "Continuous");
    expect(looks.get("2 5")).toHaveProperty(["Format.HorizontalAlignment"], "Right");
    expect(looks.get("3 10")).toMatchObject({
      "Border.EdgeLeft.Style": "Continuous",
      "Border.EdgeTop.Style": "Continuous",
      "DataValidation.Rule": { decimal: { formula1: 0, formula2: 5000, operator: "Between" } },
      "DataValidation.ErrorAlert": { message: "0 to 5000 ft", style: "Stop", showAlert: true, title: "" },
    });
    expect(looks.get("3 12")).toHaveProperty(["DataValidation.Rule", "list"], {
      inCellDropDown: true,
      source: "yes,no",
    });
    const width = (characters: number) => ((characters * 7 + 5) * 72) / 96;
    const column = (characters: number, hidden = false) => ({ ...(hidden ? { columnHidden: true } : {}), format: { columnWidth: width(characters) } }); // prettier-ignore
    expect(set.columns).toEqual([
      column(12, true),
      column(38),
      ...Array.from({ length: 12 }, () => column(12)),
    ]);
    expect(looks.get("6 3")).toHaveProperty(["Range.RowHidden"], true);
    expect(looks.get("7 3")).not.toHaveProperty(["Range.RowHidden"]);
    expect(looks.get("0 1")).toMatchObject({ "Font.Size": 16, "Format.RowHeight": 24 });
    expect(set).toMatchObject({
      merged: [{ top: 0, left: 1, bottom: 0, right: 6, across: true }],
      frozenRows: 2,
      printArea: "B1:H8",
      titleRows: "$1:$2",
      "PageLayout.Orientation": "Portrait",
      "PageLayout.Zoom": { horizontalFitToPages: 1 },
      "HeaderFooter.LeftFooter": "&8 Posts && rails",
      "HeaderFooter.RightFooter": "&8 &P / &N",
    });
    expect(pictures).toEqual([
      expect.objectContaining({
        Width: 200,
        Height: 200,
        Left: 15 * 48,
        Top: 30,
        AltTextDescription: "The pen from above",
      }),
    ]);
  });

  it("keeps a person's text as text, whatever it looks like", async () => {
    const texts = [
      "=1+1",
      "+5",
      "-3",
      "@SUM(A1)",
      "\t=1",
      "\n=1",
      "12-6",
      "1/2",
      "007",
      "TRUE",
      "'quoted",
      "Round pen",
      "10' 6\"",
      "50 %",
    ];
    const excel = countingWorkbook();
    await excel.host.write([saying("Notes", texts)]);
    const { cells } = sheetNamed(excel, "Notes");
    expect(texts.map((_, row) => cells.get(`${row} 0`))).toEqual(
      texts.map((text) => ({ value: text, formula: text })),
    );
  });

  it("writes numbers and truth values as such, and an error by its code", async () => {
    const excel = countingWorkbook();
    const plan = saying("Values", [-2.5, true]);
    plan.cells.push({
      row: 2,
      column: 0,
      says: { kind: "constant", value: { error: "#N/A" } },
      style: "label",
    });
    plan.cells.push({ row: 3, column: 0, says: blank, style: "label" });
    await excel.host.write([plan]);
    expect([...sheetNamed(excel, "Values").cells.values()].map(({ value }) => value)).toEqual([
      -2.5,
      true,
      "#N/A",
    ]);
  });

  it.each([
    ["", /needs a name/],
    ["   ", /needs a name/],
    ["A name of more than thirty-one chars", /at most 31 characters/],
    ["Bid 1/2", /may not hold/],
    ["'Pen", /apostrophe/],
    ["History", /keeps the name/],
  ])("refuses the name %j before anything is sent", async (name, why) => {
    const excel = countingWorkbook();
    expect(await refused(excel.host.write([small(name)]))).toMatch(why);
    expect(excel.trips()).toBe(0);
  });

  it("refuses two sheets of one name, in whatever letters", async () => {
    const excel = countingWorkbook();
    expect(await refused(excel.host.write([small("Bid"), small("BID")]))).toMatch(/Two new sheets/);
    expect(excel.trips()).toBe(0);
  });

  it("refuses a name that exists and takes back the sheets made before it", async () => {
    const excel = countingWorkbook({ sheets: ["Sheet1", "estimate 1"] });
    const before = state(excel);
    const message = await refused(excel.host.write([small("Prices"), small("Estimate 1")]));
    expect(message).toMatch(/"Estimate 1" is already in the workbook.*as it was/);
    expect(state(excel)).toEqual(before);
    expect(excel.trips()).toBe(2);
  });

  it("sends nothing where there is nothing to write", async () => {
    const excel = countingWorkbook();
    await excel.host.write([]);
    expect(excel.trips()).toBe(0);
  });

  it("finds a list that Excel cannot hold before anything is sent", async () => {
    const excel = countingWorkbook();
    const plan = small("Lists");
    plan.cells[0].accepts = { kind: "list", options: ["sand, washed", "clay"], message: "" };
    await expect(excel.host.write([plan])).rejects.toThrow(/no comma/);
    expect(excel.trips()).toBe(0);
  });
});
