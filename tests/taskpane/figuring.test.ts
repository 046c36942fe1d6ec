import { Controller } from "../../taskpane/controller";
import { messages } from "../../taskpane/messages";
import { FakeHost } from "./fake-host";
import { settled } from "./opened";

afterEach(() => jest.dontMock("../../taskpane/result"));

describe("what figures the fields", () => {
  it("is fetched once the panel starts: until then there is no answer, and what was answered is kept", async () => {
    const panel = new Controller(new FakeHost(), () => undefined);
    panel.answer({ size: "72" });
    expect([panel.figured.result, panel.figured.old, panel.counted("panel_1_use")]).toEqual([undefined, true, ""]);
    panel.start();
    await settled();
    expect([panel.figured.old, panel.figured.result!.job.size]).toEqual([false, 72]);
  });

  it("is waited for where an estimate is written before it is there", async () => {
    const host = new FakeHost();
    const panel = new Controller(host, () => undefined);
    panel.answer({ size: "72" });
    panel.start();
    await panel.write();
    expect(panel.notice).toEqual({ kind: "done", text: messages.written("Estimate") });
    expect(host.sheets.map(({ name }) => name)).toContain("Estimate");
  });

  it("says so where it cannot be had, writes nothing, and keeps the answers", async () => {
    jest.doMock("../../taskpane/result", () => {
      throw new Error("no connection");
    });
    const host = new FakeHost();
    const before = host.sheets.length;
    const panel = new Controller(host, () => undefined);
    panel.answer({ size: "72" });
    panel.start();
    await settled();
    expect(panel.figured.refusal).toBe(messages.noFigures);
    await panel.write();
    expect(panel.notice).toEqual({ kind: "refused", text: messages.noFigures });
    expect([host.sheets.length, panel.state.good.size]).toEqual([before, 72]);
  });
}); // prettier-ignore
