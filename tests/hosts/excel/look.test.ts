import { messages } from "../../../src/hosts/excel/messages";
import { pricesMark } from "../../../src/sheets/prices-layout";
import { put, refused, sheetNamed } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";

describe("looking at a workbook", () => {
  it("sees the sheets, the active one from A1, the prices and the selected cell in one round trip", async () => {
    const excel = countingWorkbook({ sheets: ["Estimate 1", "Prices"] });
    put(sheetNamed(excel, "Prices"), 0, 0, pricesMark);
    put(sheetNamed(excel, "Prices"), 1, 2, 41.5);
    put(sheetNamed(excel, "Estimate 1"), 2, 1, 72.25, "=PEN.CIRCUMFERENCE(B1)");
    put(sheetNamed(excel, "Estimate 1"), 3, 2, "#N/A", "=NA()");
    excel.book.selected = { row: 4, column: 2 };
    expect(await excel.host.look()).toEqual({
      sheetNames: ["Estimate 1", "Prices"],
      active: {
        name: "Estimate 1",
        values: [[null, null, null], [null, null, null], [null, 72.25, null], [null, null, { error: "#N/A" }]],
        formulas: [[null, null, null], [null, null, null], [null, "=PEN.CIRCUMFERENCE(B1)", null], [null, null, "=NA()"]],
      },
      prices: {
        name: "Prices",
        values: [[pricesMark, null, null], [null, null, 41.5]],
        formulas: [[pricesMark, null, null], [null, null, 41.5]],
      },
      selected: { sheet: "Estimate 1", row: 4, column: 2 },
    });
    expect(excel.trips()).toBe(1);
  });

  it("reads back what it wrote", async () => {
    const excel = countingWorkbook();
    await excel.host.write([samplePlan("Estimate 1", 8)]);
    const { active } = await excel.host.look();
    expect(active.name).toBe("Estimate 1");
    expect(active.values[0][0]).toBe("penstake sample 1");
    expect(active.values[3][1]).toBe("Panels of 12 ft, line 3");
    expect(active.values[3][10]).toBe(12.75);
    expect(active.formulas[3][4]).toBe("=ROUND(D4*1.5,2)");
  });

  it("finds the prices by what their A1 says when the sheet bears another name", async () => {
    const excel = countingWorkbook({ sheets: ["Sheet1", "Prices", "My prices"] });
    put(sheetNamed(excel, "Prices"), 0, 0, "Prices of hay");
    put(sheetNamed(excel, "My prices"), 0, 0, pricesMark);
    const { prices } = await excel.host.look();
    expect(prices).toEqual({ name: "My prices", values: [[pricesMark]], formulas: [[pricesMark]] });
    expect(excel.trips()).toBe(3);
  });

  it("sees no prices where no sheet says so, and an empty sheet as empty", async () => {
    const excel = countingWorkbook();
    const view = await excel.host.look();
    expect(view.prices).toBeUndefined();
    expect(view.active).toEqual({ name: "Sheet1", values: [], formulas: [] });
    expect(excel.trips()).toBe(2);
  });

  it("tells why it cannot while a cell is being edited", async () => {
    const excel = countingWorkbook();
    excel.fail({ request: 0, action: 0, code: "InvalidOperationInCellEditMode" });
    expect(await refused(excel.host.look())).toBe(messages.editing);
  });
}); // prettier-ignore

describe("showing a sheet", () => {
  it("activates it in one round trip", async () => {
    const excel = countingWorkbook({ sheets: ["Sheet1", "Estimate 1"] });
    await excel.host.show("Estimate 1");
    expect(excel.book.active.name).toBe("Estimate 1");
    expect(excel.trips()).toBe(1);
  });

  it("says so when the sheet is gone", async () => {
    const excel = countingWorkbook();
    expect(await refused(excel.host.show("Estimate 1"))).toBe(messages.gone);
  });
});

describe("reading several sheets", () => {
  it("takes one round trip, in the order asked for", async () => {
    const excel = countingWorkbook({ sheets: ["First", "Second", "Blank"] });
    put(sheetNamed(excel, "First"), 1, 1, 3, "=1+2");
    put(sheetNamed(excel, "Second"), 0, 0, "mark");
    expect(await excel.host.read(["Second", "Blank", "First"])).toEqual([
      { name: "Second", values: [["mark"]], formulas: [["mark"]] },
      { name: "Blank", values: [], formulas: [] },
      {
        name: "First",
        values: [
          [null, null],
          [null, 3],
        ],
        formulas: [
          [null, null],
          [null, "=1+2"],
        ],
      },
    ]);
    expect(excel.trips()).toBe(1);
    expect(await excel.host.read([])).toEqual([]);
    expect(excel.trips()).toBe(1);
  });

  it("is refused where one of them is gone", async () => {
    const excel = countingWorkbook({ sheets: ["First"] });
    expect(await refused(excel.host.read(["First", "Gone"]))).toBe(messages.gone);
  });
});

describe("the selection", () => {
  it("is the rectangle of selected cells, with its sheet, in one round trip", async () => {
    const excel = countingWorkbook({ sheets: ["Sheet1", "Estimate 1"] });
    excel.book.active = sheetNamed(excel, "Estimate 1");
    excel.book.selected = { row: 2, column: 1, bottom: 5, right: 3 };
    expect(await excel.host.selection()).toEqual({
      sheet: "Estimate 1",
      top: 2,
      left: 1,
      bottom: 5,
      right: 3,
    });
    excel.book.selected = { row: 4, column: 0 };
    expect(await excel.host.selection()).toMatchObject({ top: 4, left: 0, bottom: 4, right: 0 });
    expect(excel.trips()).toBe(2);
  });

  it("is refused in a sentence where it is no one rectangle of cells", async () => {
    const excel = countingWorkbook();
    excel.fail({ request: 0, action: 0, code: "InvalidSelection" });
    expect(await refused(excel.host.selection())).toBe(messages.noCell);
  });
});
