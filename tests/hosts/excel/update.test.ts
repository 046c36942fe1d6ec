import { messages } from "../../../src/hosts/excel/messages";
import { type CellChange } from "../../../src/hosts/host";
import { put, refused, sheetNamed, state } from "./outcomes";
import { samplePlan } from "./sample-plan";
import { countingWorkbook } from "./stand-in";

async function withEstimate() {
  const excel = countingWorkbook();
  await excel.host.write([samplePlan("Estimate 1", 8)]);
  put(sheetNamed(excel, "Estimate 1"), 4, 8, "=not a formula");
  excel.reset();
  return excel;
}

const changes: CellChange[] = [
  { row: 3, column: 10, value: 14 },
  { row: 4, column: 10, value: null },
  { row: 6, column: 10, value: 16.5 },
  { row: 3, column: 12, value: "=1+1" },
  { row: 4, column: 8, value: "1/2" },
];

describe("updating inputs", () => {
  it("writes the named cells and touches no other", async () => {
    const excel = await withEstimate();
    const before = structuredClone(sheetNamed(excel, "Estimate 1").cells);
    await excel.host.update("Estimate 1", changes);
    const { cells } = sheetNamed(excel, "Estimate 1");
    for (const { row, column, value } of changes)
      expect(cells.get(`${row} ${column}`)?.value ?? null).toBe(value);
    for (const { row, column } of changes) {
      before.delete(`${row} ${column}`);
      cells.delete(`${row} ${column}`);
    }
    expect(cells).toEqual(before);
    expect(excel.trips()).toBe(2);
  });

  it("keeps a number a number in an input that was formatted as text, and leaves that format to a text", async () => {
    const excel = await withEstimate();
    const { cells, looks } = sheetNamed(excel, "Estimate 1");
    for (const place of ["3 10", "3 12"]) looks.set(place, { ...looks.get(place), format: "@" });
    await excel.host.update("Estimate 1", changes);
    expect([cells.get("3 10")?.value, looks.get("3 10")?.format]).toEqual([14, "General"]);
    expect([cells.get("3 12")?.value, looks.get("3 12")?.format]).toEqual(["=1+1", "@"]);
  });

  it("sends nothing without a change", async () => {
    const excel = await withEstimate();
    await excel.host.update("Estimate 1", []);
    expect(excel.trips()).toBe(0);
  });

  it("puts every cell back when Excel refuses a part, at whichever action", async () => {
    const excel = await withEstimate();
    const before = state(excel);
    await excel.host.update("Estimate 1", changes);
    const [read, write] = excel.sizes;
    await excel.host.update("Estimate 1", [
      { row: 3, column: 10, value: 12.75 },
      { row: 4, column: 10, value: 13 },
      { row: 6, column: 10, value: 13.5 },
      { row: 3, column: 12, value: null },
      { row: 4, column: 8, value: "=not a formula" },
    ]);
    expect(state(excel)).toEqual(before);
    for (const [request, size] of [read, write].entries())
      for (let action = 0; action < size; action++) {
        excel.reset();
        excel.fail({ request, action, code: "AccessDenied" });
        expect(await refused(excel.host.update("Estimate 1", changes))).toContain(messages.locked);
        expect(state(excel)).toEqual(before);
      }
  });

  it("names the cells to check where Excel no longer answers", async () => {
    const excel = await withEstimate();
    excel.fail({ request: 1, action: 8, code: "", silent: true });
    const message = await refused(excel.host.update("Estimate 1", changes));
    expect(message).toBe(
      `${messages.silent} ${messages.notRestored("Estimate 1", ["K4:K5", "K7", "M4", "I5"])}`,
    );
  });

  it("says so when the sheet is gone", async () => {
    const excel = countingWorkbook();
    expect(await refused(excel.host.update("Estimate 1", changes))).toBe(messages.gone);
  });
});

describe("adding rows", () => {
  it("puts them below the used cells, from column A, and leaves blanks blank", async () => {
    const excel = countingWorkbook({ sheets: ["Prices"] });
    const prices = sheetNamed(excel, "Prices");
    put(prices, 3, 1, "Panel");
    await excel.host.append("Prices", [["panel.12", "12 ft panel", null], ["gate.10", "10 ft gate", 0]]);
    expect([...prices.cells].map(([key, { value }]) => [key, value])).toEqual([
      ["3 1", "Panel"],
      ["4 0", "panel.12"],
      ["4 1", "12 ft panel"],
      ["5 0", "gate.10"],
      ["5 1", "10 ft gate"],
      ["5 2", 0],
    ]);
    expect(excel.trips()).toBe(2);
  }); // prettier-ignore

  it("begins at the top of an empty sheet", async () => {
    const excel = countingWorkbook({ sheets: ["Prices"] });
    await excel.host.append("Prices", [["panel.12"]]);
    expect(sheetNamed(excel, "Prices").cells.get("0 0")?.value).toBe("panel.12");
  });

  it("adds nothing where Excel refuses, and says why", async () => {
    const excel = countingWorkbook({ sheets: ["Prices"] });
    excel.fail({ request: 1, action: 4, code: "AccessDenied" });
    expect(await refused(excel.host.append("Prices", [["panel.12"]]))).toBe(messages.locked);
    expect(sheetNamed(excel, "Prices").cells.size).toBe(0);
  });
});

describe("putting an answer into the selected cell", () => {
  it("writes the formula into an empty cell and says where", async () => {
    const excel = countingWorkbook({ sheets: ["My job"] });
    excel.book.selected = { row: 4, column: 2 };
    expect(await excel.host.putFormula("=PEN.AREA(72)")).toEqual({ sheet: "My job", address: "C5" });
    expect(sheetNamed(excel, "My job").cells.get("4 2")?.formula).toBe("=PEN.AREA(72)");
  });

  it.each([
    ["a value", 12, 12],
    ["a formula", 12, "=A1"],
    ["a formula that shows nothing", "", '=""'],
    ["another formula's result", 3, ""],
  ])("refuses a cell that holds %s, with its address", async (_, value, formula) => {
    const excel = countingWorkbook({ sheets: ["My job"] });
    excel.book.selected = { row: 4, column: 2 };
    put(sheetNamed(excel, "My job"), 4, 2, value, formula);
    const before = state(excel);
    expect(await refused(excel.host.putFormula("=PEN.AREA(72)"))).toBe(messages.notEmpty("'My job'!C5"));
    expect(state(excel)).toEqual(before);
  });

  it.each([0, 1])("tells why when Excel refuses request %i", async (request) => {
    const excel = countingWorkbook();
    excel.fail({ request, action: 4, code: "InvalidSelection" });
    expect(await refused(excel.host.putFormula("=PEN.AREA(72)"))).toBe(messages.noCell);
    expect(excel.book.sheets[0].cells.size).toBe(0);
  });
});
