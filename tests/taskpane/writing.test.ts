import { pricesMark } from "../../src/sheets/prices-layout";
import { FakeHost } from "./fake-host";
import { opened, settled, written } from "./opened";

describe("writing an estimate", () => {
  it("makes a new sheet and, the first time, the prices, and then shows what the sheet holds", async () => {
    const { host, panel, line, cell, total } = await opened();
    expect(line()).toBe("New job, not written");
    panel.answer({ size: "72 ft", gate_1: "10'", truck_1: "16", truck_2: "10" });
    expect(line()).toBe("New job, not written");
    const figured = total();
    await panel.write();
    expect(host.sheets.map(({ name }) => name)).toEqual(["Sheet1", "Prices", "Estimate"]);
    expect(line()).toBe("Estimate");
    expect(cell("size").value).toBe(72);
    expect(cell("total").value).toBe(figured);
    expect(panel.figured.own).toEqual([]);
    expect(panel.notice).toEqual({ kind: "done", text: 'Written on the new sheet "Estimate".' });
  });

  it("asks the workbook three times: what is there, the write, and what came of it", async () => {
    const { host, panel } = await opened();
    host.asked = [];
    await panel.write();
    expect(host.asked.slice(0, 3)).toEqual(["look", "write", "look"]);
  });

  it("takes the next free name and keeps the estimates and prices that are there", async () => {
    const { host, panel, line, cell } = await written();
    const price = host.value("Prices", 3, 4);
    host.type("Prices", 3, 4, 777);
    await settled();
    await panel.write();
    expect(line()).toBe("Estimate 2");
    expect(host.sheets.filter((sheet) => host.value(sheet.name, 0, 0) === pricesMark)).toHaveLength(1);
    expect(price).not.toBe(777);
    expect(host.value("Prices", 3, 4)).toBe(777);
    expect(cell("size").value).toBe(72);
  });

  it("gives its own prices another name where the user has a sheet of that name", async () => {
    const host = new FakeHost();
    host.sheets.push({ name: "prices", cells: new Map() });
    const { panel } = await opened(host);
    await panel.write();
    expect(host.sheets.map(({ name }) => name)).toEqual(["Sheet1", "prices", "Prices 2", "Estimate"]);
    expect(panel.figured.own).toEqual([]);
  });

  it("keeps every answer where the workbook refuses, and says what it said", async () => {
    for (const failing of ["look", "write"] as const) {
      const { host, panel, line } = await opened();
      panel.answer({ size: "72 ft", customer: "Wren Halloway (invented)" });
      host.failing = failing;
      await panel.write();
      expect(panel.notice).toEqual({
        kind: "refused",
        text: "The workbook is protected. Take the protection off, then try again.",
      });
      expect(host.sheets).toHaveLength(1);
      expect(line()).toBe("New job, not written");
      expect(panel.state.answers).toMatchObject({ size: "72 ft", customer: "Wren Halloway (invented)" });
      expect(panel.busy).toBe(false);
    }
  });

  it("runs one command at a time", async () => {
    const { host, panel } = await opened();
    await Promise.all([panel.write(), panel.write()]);
    expect(host.sheets.filter(({ name }) => name.startsWith("Estimate"))).toHaveLength(1);
  });

  it("keeps what is typed while it writes, as changes that are not written", async () => {
    const { host, panel, line, cell } = await opened();
    panel.answer({ size: "72" });
    const writing = panel.write();
    panel.answer({ depth: "4" });
    await writing;
    expect(line()).toBe("Estimate, changes not written");
    expect([cell("size").value, cell("depth").value, panel.state.good.depth]).toEqual([72, 3, 4]);
    const update = host.update.bind(host);
    host.update = (...given) => {
      panel.answer({ tax: "6" });
      return update(...given);
    };
    await panel.update();
    expect(line()).toBe("Estimate, changes not written");
    expect([cell("depth").value, cell("tax").value, panel.state.good.tax]).toEqual([4, 0, 6]);
  });
});
