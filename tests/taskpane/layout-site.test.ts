import { newJob, type Job } from "../../src/estimate/job";
import { penOf } from "../../src/estimate/pen";
import { siteOf } from "../../taskpane/layout-site";
import { planSite } from "../../taskpane/plan-site";

const site = (more: Job) => siteOf({ ...newJob(), ...more }, penOf({ ...newJob(), ...more }));

describe("what the panel says of a site", () => {
  it("is nothing of a job without one, and of no pen", () => {
    const nothing = { gate: "", byOther: [], notes: [], refusal: "" };
    expect([site({}), siteOf(newJob())]).toEqual([nothing, nothing]);
  });

  it("is what of gates and fence is by other", () => {
    const { byOther, refusal } = site({ structure: "post pen", leaf_2: 6, gates_by_other: 2, fence_by_other: "3; 5" });
    expect([byOther.length, refusal]).toEqual([2, ""]);
    expect(byOther.join()).toMatch(/Gate 2 of the estimate.*stake 3 to stake 5, 2 bays/);
  });

  it("is where the gate sets the center of a pen and of an arena, and by how much its two places miss the gate", () => {
    const pen = site({ gate_right: "0; 0", gate_left: `0; ${8 + 1 / 24}` });
    expect(pen.gate).toMatch(/sets the center stake 3\d' .* east and 4'.* north of your mark, the gate's middle at 270°\. The two places are 1\/2" farther apart/);
    const arena = site({ structure: "panel arena", gate_1: 12, gate_right: "0; 0", gate_left: "-12; 0" });
    expect(arena.gate).toMatch(/0" east and 102' north of your mark, the left side at 0°\. The two places are the gate's width apart\./);
    expect(site({ structure: "panel arena", gate_1: 12, gate_right: "0; 0", gate_left: "-14; 0" }).refusal).toMatch(/^The two places are 14' apart and the gate is 12'/);
  });

  it("is why nothing can be told where the fence by other does not fit the pen that is shown", () => {
    const job = { ...newJob(), fence_by_other: "3; 99" };
    expect(siteOf(job, penOf(newJob())).refusal).toMatch(/^Fence by other: there is no stake 99/);
  });

  it("is drawn and said at the plan where a fence is near, and not else", () => {
    expect(planSite(newJob(), penOf(newJob()))).toEqual({});
    const near = { ...newJob(), structure: "post arena", neighbor_1: "-58; -80; -58; 80" };
    const { options, notes } = planSite(near, penOf(near));
    expect(options).toMatchObject({ bearing: 0, north: "site" });
    expect(notes!.join()).toMatch(/The passage along fence nearby #1 narrows to/);
  });
}); // prettier-ignore
