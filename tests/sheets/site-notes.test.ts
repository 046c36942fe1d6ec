import { newJob, type Job } from "../../src/estimate/job";
import { penOf } from "../../src/estimate/pen";
import { examplePrices } from "../../src/estimate/prices";
import { siteFindings } from "../../src/estimate/site";
import { siteSentences } from "../../src/estimate/site-sentences";
import { contentOfPlans } from "../../src/sheets/calculate";
import { estimatePlan, typedInto } from "../../src/sheets/estimate";
import { messages } from "../../src/sheets/messages";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { type Cell, isError } from "../../src/units/cell";
import { pen } from "./layouts";

/** What an estimate's sheet says at its foot, once these are typed into it, and its plan. */
function footOf(job: Job, typed: Record<string, Cell> = {}) {
  const plan = estimatePlan(job, "Estimate", pricesName);
  const { cells } = contentOfPlans([typedInto(plan, typed), pricesPlan(examplePrices)], pen).sheets[0];
  expect(cells.filter(({ value }) => isError(value ?? null))).toEqual([]);
  const from = cells.find(({ value }) => value === messages.cautions)!.row;
  const foot = cells.filter(({ row, column }) => row > from && column === 1).map(({ value }) => value ?? "");
  return { foot, plan, last: from + foot.length };
}

const found = (job: Job) => siteSentences(siteFindings(job, penOf(job), Number(job.gate_bearing ?? 0)), 10);

describe("what was found on a site, on an estimate's sheet", () => {
  const jobs: [string, Job][] = [
    ["panel pen", { ...newJob(), gate_bearing: 90, neighbor_1: "68; 0; 60" }],
    ["post pen", { ...newJob(), structure: "post pen", neighbor_1: "-50; -37; 50; -37", gate_swing: "out" }],
    ["panel arena", { ...newJob(), structure: "panel arena", gate_1: 12, gate_at_1: 0 }],
    ["post arena", { ...newJob(), structure: "post arena", length_bearing: 0, gate_bearing: 0, neighbor_1: "-58; -80; -58; 80" }],
  ];

  it.each(jobs)("of a %s stands before the cautions as the site was found, is printed with them, and drawn", (structure, job) => {
    const { foot, plan, last } = footOf(job);
    const said = found({ ...job, gate_bearing: structure.includes("arena") ? 0 : job.gate_bearing });
    expect(said.length).toBeGreaterThan(0);
    expect(foot.slice(0, said.length)).toEqual(said);
    expect(plan.print.area.bottom).toBe(last);
    expect(plan.pictures![0].svg).toMatch(job.neighbor_1 ? /data-neighbor/ : /data-swing="fouls"/);
    expect(foot.join()).not.toContain(messages.siteOutOfDate);
  });

  it.each(jobs)("of a %s is out of date once a fence nearby, a swing or the pen's size is another", (structure, job) => {
    for (const typed of [{ neighbor_2: "10; 200; 60" }, { gate_hand: "left" }, { turning_room: 12 }] as Record<string, Cell>[]) {
      const { foot } = footOf(job, typed);
      expect([typed, foot[0]]).toEqual([typed, messages.siteOutOfDate]);
      expect(foot.filter((words) => /fence nearby|leaf of gate/.test(String(words)))).toEqual([]);
    }
    if (structure === "panel pen") expect(footOf(job, { size: 90 }).foot[0]).toBe(messages.siteOutOfDate);
  });

  it("takes no room where nothing was found", () => {
    const { foot, plan } = footOf(newJob());
    expect(foot).toHaveLength(4);
    expect(plan.pictures![0].svg).not.toContain("data-neighbor");
  });
}); // prettier-ignore
