import { offered, unwritten } from "../../taskpane/state";
import { copy, settled, written } from "./opened";

describe("selecting sheets", () => {
  it("shows a selected estimate at once where nothing is unwritten", async () => {
    const { host, panel, line, cell } = await written();
    copy(host, "Estimate", "Estimate 3");
    host.type("Estimate 3", cell("size").row, cell("size").column, 60);
    host.activate("Estimate 3");
    await settled();
    expect(line()).toBe("Estimate 3");
    expect(panel.state.good.size).toBe(60);
    host.activate("Sheet1");
    await settled();
    expect(line()).toBe("Estimate 3");
  });

  it("offers it where answers are not written, and leaves them in the fields", async () => {
    const { host, panel, line } = await written();
    copy(host, "Estimate", "Estimate 3");
    panel.answer({ size: "80" });
    host.activate("Estimate 3");
    await settled();
    expect(offered(panel.state)).toBe("Estimate 3");
    expect(line()).toBe("Estimate, changes not written");
    expect(panel.state.answers.size).toBe("80");
    panel.keep();
    expect(offered(panel.state)).toBeUndefined();
    host.activate("Sheet1");
    await settled();
    host.activate("Estimate 3");
    await settled();
    expect(offered(panel.state)).toBe("Estimate 3");
  });

  it("sets unwritten answers aside when the offer is taken, and brings only those back", async () => {
    const { host, panel, line, cell } = await written();
    copy(host, "Estimate", "Estimate 3");
    panel.answer({ size: "80" });
    host.activate("Estimate 3");
    await settled();
    panel.showSelected();
    expect(line()).toBe("Estimate 3");
    expect(panel.state.good.size).toBe(72);
    host.type("Estimate", cell("depth").row, cell("depth").column, 5);
    await settled();
    await panel.takeBack();
    expect(line()).toBe("Estimate, changes not written");
    expect(panel.state.good).toMatchObject({ size: 80, depth: 5 });
    expect(panel.state.aside).toEqual([]);
  });

  it("shows an empty new job, and claims nothing was kept, when an estimate without unwritten answers is gone", async () => {
    const { host, panel, line } = await written();
    host.sheets = host.sheets.filter(({ name }) => name !== "Estimate");
    host.active = "Sheet1";
    host.type("Sheet1", 0, 0, "elsewhere");
    await settled();
    expect(line()).toBe("New job, not written");
    expect(panel.state.lost).toBeUndefined();
    expect(unwritten(panel.state)).toEqual([]);
  });

  it("brings answers back as a new job where their sheet is gone", async () => {
    const { host, panel, line } = await written();
    copy(host, "Estimate", "Estimate 3");
    panel.answer({ size: "80" });
    host.activate("Estimate 3");
    await settled();
    panel.showSelected();
    host.sheets = host.sheets.filter(({ name }) => name !== "Estimate");
    await panel.takeBack();
    expect(line()).toBe("New job, not written");
    expect(panel.state.good.size).toBe(80);
    expect(panel.state.lost).toBe("Estimate");
  });

  it("asks before a new job takes the place of unwritten answers, and not otherwise", async () => {
    const { host, panel, line } = await written();
    panel.answer({ size: "80" });
    panel.newJob();
    expect([panel.asking, line()]).toEqual([true, "Estimate, changes not written"]);
    panel.stay();
    expect([panel.asking, panel.state.answers.size]).toEqual([false, "80"]);
    panel.newJob();
    panel.newJob(true);
    expect([panel.asking, line(), panel.state.good.size]).toEqual([false, "New job, not written", 66]);
    host.activate("Estimate");
    await settled();
    expect(line()).toBe("New job, not written");
    expect(offered(panel.state)).toBe("Estimate");
    panel.showSelected();
    panel.newJob();
    expect(panel.asking).toBe(false);
  });

  it("ends what the last command said once another sheet is selected, and not by the sheet that it wrote itself", async () => {
    const { host, panel } = await written();
    await settled();
    expect(panel.notice?.text).toContain("Written on the new sheet");
    host.active = "Sheet1";
    host.type("Sheet1", 0, 0, "elsewhere");
    await settled();
    expect(panel.notice).toBeUndefined();
  });
});
