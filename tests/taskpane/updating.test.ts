import { unwritten } from "../../taskpane/state";
import { settled, written } from "./opened";

describe("updating an estimate", () => {
  it("writes the changed input cells and nothing else", async () => {
    const { host, panel, line, cell } = await written();
    const before = new Map([...host.sheet("Estimate").cells].map(([place, { says }]) => [place, says]));
    panel.answer({ depth: "2 1/2", tax: "6" });
    expect(line()).toBe("Estimate, changes not written");
    expect(unwritten(panel.state)).toEqual(["depth", "tax"]);
    await panel.update();
    expect(line()).toBe("Estimate");
    expect([cell("depth").value, cell("tax").value]).toEqual([2.5, 6]);
    const changed = [...host.sheet("Estimate").cells].filter(
      ([place, { says }]) => says !== before.get(place),
    );
    expect(changed).toHaveLength(2);
    expect(panel.figured.own).toEqual([]);
  });

  it("finds the inputs again after the user has put a row in, and shows the sheet first where another is selected", async () => {
    const { host, panel, cell } = await written();
    panel.answer({ depth: "4" });
    host.activate("Sheet1");
    await settled();
    const { cells } = host.sheet("Estimate");
    const moved = [...cells.values()].map((one) => ({ ...one, row: one.row >= 10 ? one.row + 1 : one.row }));
    const was = cell("depth").row;
    host.sheet("Estimate").cells = new Map(moved.map((one) => [`${one.row},${one.column}`, one]));
    await panel.update();
    expect(host.active).toBe("Estimate");
    expect(cell("depth")).toMatchObject({ row: was + 1, value: 4 });
  });

  it("keeps the changes where the workbook refuses", async () => {
    const { host, panel, line, cell } = await written();
    panel.answer({ depth: "4" });
    host.failing = "update";
    await panel.update();
    expect(panel.notice!.kind).toBe("refused");
    expect(line()).toBe("Estimate, changes not written");
    expect(cell("depth").value).toBe(3);
    await panel.update();
    expect(cell("depth").value).toBe(4);
  });

  it("follows what the user types into the sheet, but for answers that are not written", async () => {
    const { host, panel, cell } = await written();
    panel.answer({ depth: "4", customer: "Ada Quill (invented)" });
    host.type("Estimate", cell("size").row, cell("size").column, 80);
    host.type("Estimate", cell("depth").row, cell("depth").column, 5);
    await settled();
    expect(panel.state.good.size).toBe(80);
    expect(panel.state.answers.depth).toBe("4");
    expect(unwritten(panel.state).sort()).toEqual(["customer", "depth"]);
  });

  it("keeps the answers as a new job where the sheet is deleted, and says so", async () => {
    const { host, panel, line } = await written();
    panel.answer({ depth: "4" });
    host.sheets = host.sheets.filter(({ name }) => name !== "Estimate");
    host.activate("Sheet1");
    await settled();
    expect(line()).toBe("New job, not written");
    expect(panel.state.lost).toBe("Estimate");
    expect(panel.state.good).toMatchObject({ size: 72, depth: 4 });
  });

  it("follows a sheet that the user gives another name", async () => {
    const { host, panel, line } = await written();
    panel.answer({ depth: "4" });
    host.sheet("Estimate").name = "North pen";
    host.activate("North pen");
    await settled();
    expect(line()).toBe("North pen, changes not written");
    await panel.update();
    expect(line()).toBe("North pen");
  });
});
