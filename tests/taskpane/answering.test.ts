import { isEstimate } from "../../src/sheets/keyed";
import { opened, settled, written } from "./opened";

describe("answers and figures", () => {
  it("keeps what was typed, the last answer that could be read, and the last good figures", async () => {
    const { panel, total } = await opened();
    panel.answer({ size: "72" });
    const good = total();
    panel.answer({ size: "72 fx" });
    expect(panel.state.answers.size).toBe("72 fx");
    expect(panel.state.good.size).toBe(72);
    expect(panel.state.problems.size).toContain('cannot read "72 fx"');
    expect([total(), panel.figured.old]).toEqual([good, true]);
    panel.answer({ size: "60'" });
    expect([panel.state.problems, panel.figured.old]).toEqual([{}, false]);
    expect(total()).not.toBe(good);
  });

  it("says why answers that are each allowed lead to no pen", async () => {
    const { panel } = await opened();
    panel.answer({ size: "8", gate_1: "40" });
    expect(panel.state.problems).toEqual({});
    expect(panel.figured.refusal).toMatch(/need|close/);
    expect(panel.figured.result!.made.pen.gates).toEqual([8]);
  });

  it("counts what would be taken without the user's own count", async () => {
    const { panel } = await opened();
    panel.answer({ size: "72", gate_1: "10", panel_1_use: "20" });
    expect(panel.figured.result!.figures.panel_1_count).toBe(20);
    expect(panel.counted("panel_1_use")).toBe(18);
  });

  it("puts one answer into the selected cell, and leaves a filled one alone", async () => {
    const { host, panel } = await opened();
    host.selected = { row: 4, column: 2 };
    await panel.put("=PEN.AREA(72)");
    expect(panel.notice).toEqual({ kind: "done", text: "Put into Sheet1!C5 as a live formula." });
    expect(host.value("Sheet1", 4, 2)).toBeCloseTo(Math.PI * 36 ** 2, 9);
    await panel.put("=PEN.AREA(60)");
    expect(panel.notice!.kind).toBe("refused");
    expect(host.value("Sheet1", 4, 2)).toBeCloseTo(Math.PI * 36 ** 2, 9);
  });

  it("shows an input of the sheet that cannot be read as a problem, and never as an unwritten answer", async () => {
    const { host, panel, line, cell } = await written();
    host.type("Estimate", cell("size").row, cell("size").column, "about 70");
    await settled();
    expect(panel.state.problems.size).toContain("about 70");
    expect(line()).toBe("Estimate");
    expect(isEstimate(panel.state.view!.active)).toBe(true);
  });

  it("says that the workbook cannot be looked at for as long as that is so", async () => {
    const { host, panel } = await opened();
    host.failing = "look";
    await panel.look();
    expect(panel.notice).toMatchObject({ kind: "unseen" });
    await panel.look();
    expect(panel.notice).toBeUndefined();
  });

  it("takes only the newest look, whichever comes back last", async () => {
    const { host, panel } = await written();
    const slow = host.look.bind(host);
    const before = await slow();
    const waiting: (() => void)[] = [];
    host.look = () => new Promise((resolve) => waiting.push(() => resolve(before)));
    const first = panel.look();
    host.look = slow;
    host.type(
      "Estimate",
      panel.state.source!.sheet.cells.size.row,
      panel.state.source!.sheet.cells.size.column,
      80,
    );
    await settled();
    waiting[0]();
    await first;
    expect(panel.state.good.size).toBe(80);
  });
});
