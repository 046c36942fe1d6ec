import { address } from "../../src/sheets/address";
import { liveFormula } from "../../src/sheets/formula";
import { columns, rows } from "../../src/sheets/layout-places";
import { circleOf, type RoundPen } from "../../src/estimate/pen";
import { labels } from "../../src/sheets/layout-messages";
import { layoutMark } from "../../src/sheets/layout-sheet";
import { dayText } from "../../taskpane/day";
import { layoutCommand } from "../../taskpane/layout-command";
import { layoutHindrance } from "../../taskpane/layout-hindrance";
import { messages } from "../../taskpane/messages";
import { newLayout } from "../../taskpane/new-layout";
import { opened, settled, written } from "./opened";

/** A panel with a written estimate, and its command. */
async function ready(all: ReturnType<typeof opened> = written()) {
  const { host, panel, ...rest } = await all;
  const write = () => panel.run(layoutCommand(panel, host).run);
  const why = () => layoutHindrance(panel.state, panel.figured);
  const layouts = () => host.sheets.map(({ name }) => name).filter((name) => name.startsWith("Layout"));
  return { host, panel, write, why, layouts, ...rest };
}

describe("writing a layout sheet", () => {
  it("writes a new sheet for the estimate in the fields, and never over another", async () => {
    const { host, panel, write, layouts } = await ready();
    await write();
    expect(panel.notice).toEqual({ kind: "done", text: messages.layoutWritten("Layout") });
    expect(host.value("Layout", 0, 0)).toBe(layoutMark);
    expect(host.active).toBe("Layout");
    const before = new Map(host.sheet("Layout").cells);
    await write();
    expect(layouts()).toEqual(["Layout", "Layout 2"]);
    expect(host.sheet("Layout").cells).toEqual(before);
    expect(host.value("Layout 2", rows.title, columns.kind)).toBe(`Revision 2, ${dayText(new Date())}`);
  });

  it("uses the language and the bearing that the panel asked for", async () => {
    const { host, panel, write } = await ready();
    panel.answer({ language: "Spanish", gate_bearing: "45" });
    await panel.update();
    await write();
    expect(host.value("Layout", rows.title, columns.stake)).toBe(labels.title.es);
    const pen = panel.figured.result!.made.pen;
    const gate = (Math.asin(10 / circleOf(pen as RoundPen)) * 180) / Math.PI;
    const bearings = host.sheet("Layout").cells;
    const first = [...bearings.values()].find(({ column, says }) => column === columns.stake && says.kind === "constant" && says.value === 1)!.row;
    expect(host.value("Layout", first, columns.bearing)).toBeCloseTo(45 - gate, 9);
  }); // prettier-ignore

  it("lays out a pen of posts, and asks for an update first where its estimate is out of date", async () => {
    const { host, panel, cell, write, why } = await ready(opened());
    panel.answer({ structure: "post pen", size: "60" });
    await panel.write();
    await write();
    expect(panel.notice).toEqual({ kind: "done", text: messages.layoutWritten("Layout") });
    const kinds = [...host.sheet("Layout").cells.values()].filter(({ column }) => column === columns.kind);
    const said = kinds.map(({ row }) => host.value("Layout", row, columns.kind));
    expect(said.filter((kind) => kind === labels["gate post"].en)).toHaveLength(2);
    host.activate("Estimate");
    await settled();
    const { row, column } = cell("rail_rows");
    host.type("Estimate", row, column, 3);
    await settled();
    expect(why()).toBe(messages.layoutNeedsUpdate("Estimate"));
  });

  it("goes out of date when an input of the estimate changes, and is fresh when written again", async () => {
    const { host, panel, write, cell } = await ready();
    await write();
    expect(host.value("Layout", rows.warning, columns.stake)).toBe("");
    const { row, column } = cell("gate_1");
    host.type("Estimate", row, column, 12);
    await settled();
    expect(host.value("Layout", rows.warning, columns.stake)).toBe(labels.outOfDate.en);
    host.activate("Estimate");
    await settled();
    await write();
    expect(panel.notice?.kind).toBe("done");
    expect(host.value("Layout 2", rows.warning, columns.stake)).toBe("");
  });

  it("follows the estimate's inputs where the user put rows in above them", async () => {
    const { panel, cell } = await ready();
    const source = panel.state.source!;
    const cells = Object.fromEntries(
      Object.entries(source.sheet.cells).map(([key, one]) => [key, { ...one, row: one.row + 3 }]),
    );
    const moved = { ...source, sheet: { ...source.sheet, cells } };
    const { plan } = newLayout(panel.state.view!, moved, panel.figured.result!);
    const now = plan.cells
      .filter(({ column }) => column === columns.now)
      .map(({ says }) => liveFormula(says));
    const { row, column } = cell("north");
    const at = address({ sheet: "Estimate", row: row + 3, column });
    expect(now).toContain(`=IF(${at}="","",${at})`);
  });

  it("says why not, and writes nothing, before the estimate is written", async () => {
    const { host, panel, write, why, layouts } = await ready(opened());
    expect(why()).toBe(messages.layoutNeedsEstimate);
    await write();
    expect(panel.notice).toEqual({ kind: "refused", text: messages.layoutNeedsEstimate });
    expect([layouts(), host.asked.includes("write")]).toEqual([[], false]);
  });

  it("says why not while answers are not written, and keeps them", async () => {
    const { panel, write, why, layouts } = await ready();
    panel.answer({ gate_bearing: "90" });
    expect(why()).toBe(messages.layoutNeedsUpdate("Estimate"));
    await write();
    expect(panel.notice?.kind).toBe("refused");
    expect([layouts(), panel.state.answers.gate_bearing]).toEqual([[], "90"]);
    panel.answer({ gate_bearing: "400" });
    expect(why()).toBe(messages.layoutNeedsUpdate("Estimate"));
  });

  it("says why not where the count of panels was typed over, with its cell", async () => {
    const { host, write, why, cell, layouts } = await ready();
    const { row, column } = cell("panel_1_count");
    host.type("Estimate", row, column, 20);
    await settled();
    expect(why()).toMatch(/typed over in O\d+/);
    await write();
    expect(layouts()).toEqual([]);
  });

  it("says why not where the answers lead to nothing", async () => {
    const { host, why, cell } = await ready();
    host.type("Estimate", cell("size").row, cell("size").column, 8);
    await settled();
    expect(why()).toMatch(/^The answers lead to nothing to lay out yet/);
  });

  it("keeps every sheet as it was where the workbook refuses, and says what it said", async () => {
    const { host, panel, write, layouts } = await ready();
    host.failing = "write";
    await write();
    expect(panel.notice?.text).toMatch(/protected/);
    expect(layouts()).toEqual([]);
  });
});

test("a day is written so that days sort as they follow", () => {
  expect(dayText(new Date(2026, 3, 9))).toBe("2026-04-09");
});
