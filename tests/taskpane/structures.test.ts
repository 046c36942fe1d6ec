import { fixedKeys } from "../../src/estimate/fixed-keys";
import { isOutOfDate } from "../../src/sheets/keyed";
import { isOther, unwritten } from "../../taskpane/state";
import { opened, settled, written } from "./opened";

/** A panel at work with the estimate of a post pen written. */
async function writtenPosts() {
  const all = await opened();
  all.panel.answer({ structure: "post pen", size: "60", kick_board: "2x10" });
  await all.panel.write();
  await settled();
  return all;
}

describe("what is built", () => {
  it("decides which fields are asked, and gives figures at once", async () => {
    const { panel, total } = await opened();
    const panels = total();
    panel.answer({ structure: "post pen" });
    expect(panel.figured.old).toBe(false);
    expect(panel.figured.result!.figures).toHaveProperty("bay");
    expect(total()).not.toBe(panels);
    panel.answer({ structure: "panel pen" });
    expect(total()).toBe(panels);
  });

  it("lets no answer of another structure stand in the way, and keeps it", async () => {
    const { panel } = await opened();
    panel.answer({ panel_1: "twelve" });
    expect(Object.keys(panel.state.problems)).toEqual(["panel_1"]);
    panel.answer({ structure: "post pen" });
    expect([panel.state.problems, panel.figured.old]).toEqual([{}, false]);
    expect(unwritten(panel.state)).toEqual(["structure"]);
    panel.answer({ structure: "panel pen" });
    expect(panel.state.answers.panel_1).toBe("twelve");
    expect(Object.keys(panel.state.problems)).toEqual(["panel_1"]);
  });

  it("is written as a sheet of its own, read back from it, and shown without own changes", async () => {
    const { host, panel, line, cell } = await writtenPosts();
    expect(line()).toBe("Estimate");
    expect(cell("structure").value).toBe("post pen");
    expect(panel.state.good).toMatchObject({ structure: "post pen", size: 60 });
    expect(panel.figured.own).toEqual([]);
    expect(host.value("Estimate", 0, 0)).toBe("penstake estimate 1");
    expect(panel.state.source!.sheet.missing).toEqual([]);
  });

  it("is never changed on a sheet: an update is refused in a sentence, and a new sheet keeps the old one", async () => {
    const { host, panel, line, cell } = await written();
    const before = [...host.sheet("Estimate").cells].map(([place, { says }]) => [place, says]);
    panel.answer({ structure: "post pen" });
    expect(isOther(panel.state)).toBe(true);
    await panel.update();
    expect(panel.notice).toEqual({
      kind: "refused",
      text: '"Estimate" is the estimate of a panel pen and stays one. Write these answers as a new estimate.',
    });
    expect([...host.sheet("Estimate").cells].map(([place, { says }]) => [place, says])).toEqual(before);
    await panel.write();
    expect(line()).toBe("Estimate 2");
    expect([cell("structure").value, isOther(panel.state)]).toEqual(["post pen", false]);
    host.activate("Estimate");
    await settled();
    expect(panel.state.good.structure).toBe("panel pen");
    expect(panel.figured.own).toEqual([]);
  });

  it("is a panel pen on a sheet from before there were others", async () => {
    const { host, panel } = await written();
    const sheet = host.sheet("Estimate");
    const { row, column } = panel.state.source!.sheet.cells.structure;
    for (const place of [`${row},0`, `${row},${column}`]) sheet.cells.delete(place);
    host.activate("Sheet1");
    host.activate("Estimate");
    await settled();
    expect(panel.state.source!.sheet.cells).not.toHaveProperty("structure");
    expect(panel.state.good.structure).toBe("panel pen");
    expect(panel.state.source!.sheet.missing).toEqual([]);
    panel.answer({ depth: "4" });
    await panel.update();
    expect(panel.notice!.kind).toBe("done");
  });
});

describe("numbers of the time of writing", () => {
  it("are renewed by an update, with what they were worked out from", async () => {
    const { panel, line, cell } = await writtenPosts();
    panel.answer({ post_size_means: "inside clear", rail_rows: "5" });
    const figures = panel.figured.result!.figures;
    await panel.update();
    expect(line()).toBe("Estimate");
    expect(cell("post_circle").value).toBeCloseTo(Number(figures.post_circle), 12);
    expect(cell("rails_count").value).toBe(figures.rails_count);
    expect([cell("stale_warning").value, isOutOfDate(panel.state.source!.sheet)]).toEqual(["", false]);
    expect(panel.figured.own).toEqual([]);
  });

  it("make a sheet say that it is out of date where the user types over what they rest on, until it is updated", async () => {
    const { host, panel, cell } = await writtenPosts();
    const { row, column } = cell("rail_rows");
    host.type("Estimate", row, column, 3);
    await settled();
    expect(unwritten(panel.state)).toEqual([]);
    expect(cell("stale_warning").value).toMatch(/^OUT OF DATE/);
    expect([isOutOfDate(panel.state.source!.sheet), panel.figured.own]).toEqual([true, []]);
    await panel.update();
    expect(isOutOfDate(panel.state.source!.sheet)).toBe(false);
    expect(cell("stale_warning").value).toBe("");
    expect(cell("rails_count").value).toBe(panel.figured.result!.figures.rails_count);
    expect(panel.figured.own).toEqual([]);
  });

  it("stand hidden on the sheet of a post pen, each with a cell of its own", async () => {
    const { panel } = await writtenPosts();
    const { cells } = panel.state.source!.sheet;
    for (const key of fixedKeys["post pen"]) expect(cells[`${key}_fixed`].value).toBeGreaterThan(0);
  });
});
