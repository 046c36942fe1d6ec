import { unwritten } from "../../taskpane/state";
import { opened, settled, written } from "./opened";

describe("own changes, missing keys and prices", () => {
  it("lists the cells of the sheet whose figures the user changed, and shows the sheet's own total", async () => {
    const { host, panel, cell, total } = await written();
    const figured = total() as number;
    host.type("Estimate", cell("panel_1_price").row, cell("panel_1_price").column, 100);
    await settled();
    const addresses = panel.figured.own.map(({ key }) => key);
    expect(addresses).toEqual(expect.arrayContaining(["panel_1_price", "panel_1_amount", "total"]));
    expect(panel.figured.own.find(({ key }) => key === "panel_1_price")).toMatchObject({
      shown: 100,
      figured: 123,
    });
    expect(cell("total").value).toBeLessThan(figured);
  });

  it("names a missing key and puts it back", async () => {
    const { host, panel, cell } = await written();
    const { row } = cell("overrun");
    const key = host.value("Estimate", row, 0);
    host.type("Estimate", row, 0, "");
    await settled();
    expect(panel.state.source!.sheet.missing).toEqual(["overrun"]);
    expect(panel.state.good.overrun).toBe(0);
    await panel.putBack();
    expect(host.value("Estimate", row, 0)).toBe(key);
    expect(panel.state.source!.sheet.missing).toEqual([]);
  });

  it("reads an input whose key is missing from its row, and lists no changes while it cannot be sure", async () => {
    const { host, panel, cell } = await written();
    host.type("Estimate", cell("depth").row, cell("depth").column, 2);
    host.type("Estimate", cell("depth").row, 0, "");
    await settled();
    expect(panel.state.source!.sheet.missing).toEqual(["depth"]);
    expect(panel.state.good.depth).toBe(2);
    expect(panel.figured.own).toEqual([]);
  });

  it("goes by the upper of two rows with one key", async () => {
    const { host, panel, cell } = await written();
    const below = cell("depth").row + 60;
    host.type("Estimate", below, 0, host.value("Estimate", cell("depth").row, 0) as string);
    host.type("Estimate", below, cell("depth").column, 9);
    await settled();
    expect(panel.state.good.depth).toBe(3);
  });

  it("does not write an answer for which the sheet has no cell, keeps it and says so", async () => {
    const { host, panel, cell } = await written();
    host.type("Estimate", cell("overrun").row, 0, "");
    await settled();
    panel.answer({ overrun: "5", depth: "4" });
    await panel.update();
    expect(cell("depth").value).toBe(4);
    expect(panel.notice).toMatchObject({
      kind: "refused",
      text: expect.stringContaining("Overrun") as string,
    });
    expect(unwritten(panel.state)).toEqual(["overrun"]);
    expect(panel.state.good.overrun).toBe(5);
  });

  it("adds a row without a price for each missing item once, and writes over no price", async () => {
    const { host, panel } = await written();
    panel.answer({ panel_2: "14", panel_3: "9' 6\"" });
    const missing = () => panel.figured.result!.missing.map(({ name, why }) => [name, why]);
    panel.answer({ panel_2_use: "2", panel_3_use: "2" });
    expect(missing()).toEqual([["Panel, 14 ft", "no row"], ["Panel, 9.5 ft", "no row"]]); // prettier-ignore
    const before = host.sheet("Prices").cells.size;
    const prices = [...host.sheet("Prices").cells.entries()];
    await panel.addPriceRows();
    expect(missing().map(([, why]) => why)).toEqual(["no price", "no price"]);
    for (const [place, cell] of prices) expect(host.sheet("Prices").cells.get(place)).toEqual(cell);
    const after = host.sheet("Prices").cells.size;
    expect(after).toBeGreaterThan(before);
    await panel.addPriceRows();
    expect(host.sheet("Prices").cells.size).toBe(after);
  });

  it("seeds the first prices with rows for what is missing", async () => {
    const { host, panel } = await opened();
    panel.answer({ panel_1: "14" });
    await panel.write();
    expect(panel.figured.result!.missing).toMatchObject([{ name: "Panel, 14 ft", why: "no price" }]);
    expect(host.sheets.map(({ name }) => name)).toContain("Prices");
  });
});
