import fc from "fast-check";
import { byOtherOf, fenceByOther, ownPosts, panelsByOther, runsByOther } from "../../src/estimate/by-other";
import { estimate } from "../../src/estimate/estimate";
import { fixedOf } from "../../src/estimate/fixed";
import { fieldOf } from "../../src/estimate/fields";
import { newJob, problemsOf, readField, type Job } from "../../src/estimate/job";
import { panelPen } from "../../src/estimate/panel-pen";
import { isPosted, penOf, stakesOf } from "../../src/estimate/pen";
import { examplePrices } from "../../src/estimate/prices";
import { countInWords, onHandSentence } from "../../src/estimate/sentences";
import { byOtherSentences } from "../../src/estimate/site-sentences";
import { railsOf } from "../../src/estimate/post-work";
import { ownCount } from "../../src/estimate/takeoff-line";
import { structures } from "../../src/estimate/structures";
import { Refusal } from "../../src/units/refusal";
import { randomJob } from "./random-job";

const job = (more: Job): Job => ({ ...newJob(), ...more });
const counts = (one: Job) =>
  Object.fromEntries(estimate(one, examplePrices).takeoff.map((line) => [line.key, ownCount(line)]));
const all = structures.map((structure) => [structure] as const);

describe("fence by other in a job", () => {
  it("is read as pairs of stakes, and refused with a sentence where they are no pairs or no stakes", () => {
    const field = fieldOf("fence_by_other");
    expect(readField(field, "3; 7")).toBe("3; 7");
    expect(readField(field, "3, 7")).toBe("3; 7");
    const problem = (typed: string) => problemsOf(job({ fence_by_other: typed })).fence_by_other;
    expect(problem("3; 7; 12; 15")).toBeUndefined();
    expect(problem("3; 7; 12")).toMatch(/Write pairs of stakes, 2, 4 or 6 numbers with semicolons between, such as 3; 7/);
    expect(problem("3")).toMatch(/Write pairs of stakes/);
    expect(problem("0; 7")).toMatch(/1 to 10,000/);
    expect(problem("2.5; 7")).toMatch(/whole number/);
    expect(problem("here")).toMatch(/here/);
  });

  it.each(all)("of a %s gives the estimate a sentence where its stakes do not fit, and loses no answer", (structure) => {
    const refused = (fence_by_other: string) => {
      const one = job({ structure, fence_by_other });
      expect(() => estimate(one, examplePrices)).toThrow(/^fence by other: /);
      expect(fixedOf(one)).toEqual({});
      expect(one.fence_by_other).toBe(fence_by_other);
    };
    refused("3; 9999");
    refused("5; 5");
    refused("2; 5; 4; 7");
    refused("10; 3");
  });

  it("takes the panels of its length off the line and their hours, and leaves the pen as it is", () => {
    const own = job({ size: 80, panel_2: 10, panel_2_use: 4, gate_1: 8 });
    const pen = panelPen(own);
    // Clockwise from the gate stand all of the first length, then the four of 10 ft, which end at stake 1.
    const shared = { ...own, fence_by_other: `${stakesOf(pen) - 5}; 1` };
    expect(panelsByOther(pen, byOtherOf(shared, pen))).toEqual([2, 4, 0, 0, 0, 0]);
    const [before, after] = [counts(own), counts(shared)];
    expect([before.panel_1 - after.panel_1, before.panel_2 - after.panel_2]).toEqual([2, 4]);
    expect(after.labor).toBeLessThan(before.labor);
    expect(penOf(shared)).toEqual(pen);
    const made = estimate(shared, examplePrices);
    expect(made.takeoff.find(({ key }) => key === "panel_2")).toMatchObject({ counted: 4, byOther: 4 });
    expect(made.lines.some(({ key }) => key === "panel_2")).toBe(false);
  });

  it("uses panels on hand for the estimate's own first", () => {
    const own = job({ panel_1_stock: 12, fence_by_other: "2; 12" });
    const pen = panelPen(own);
    const [line] = estimate(own, examplePrices).takeoff;
    const [needed] = pen.counts;
    expect([line.counted, line.byOther, line.onHand]).toEqual([needed, 10, 12]);
    const used = Math.min(12, needed! - 10);
    const said = onHandSentence(pen, panelsByOther(pen, byOtherOf(own, pen)));
    expect(said).toContain(`${countInWords(used)} of 12 ft used`);
    expect(onHandSentence(pen)).toContain("12 of 12 ft used");
  });

  it("takes bays, the posts between them and both end posts, which the owner of the run sets, with holes and rails", () => {
    const own = job({ structure: "post pen", leaf_2: 6 });
    const shared = { ...own, fence_by_other: "4; 8" };
    const [before, after] = [counts(own), counts(shared)];
    expect(before.line_posts - after.line_posts).toBe(5);
    expect(before.gate_posts).toBe(after.gate_posts);
    expect(before.holes - after.holes).toBe(5);
    expect(after.rails).toBeLessThan(before.rails);
    // Four rows over four bays on a curve: a piece and two ends a bay and row.
    expect(before.fasteners - after.fasteners).toBe(4 * 4 * 2 * 2);
    expect(before.leaf_1).toBe(after.leaf_1);
  });

  it("counts a post once where a run meets a gate by other, and takes a gate post of the own gate with the run", () => {
    const own = job({ structure: "post pen", leaf_2: 6 });
    const pen = penOf(own);
    if (!isPosted(pen)) throw new Error("no posts");
    const second = byOtherOf({ ...own, gates_by_other: 2 }, pen)!.stakes.indexOf(true) + 1;
    const posts = (more: Job) => ownPosts(pen, byOtherOf({ ...own, ...more }, pen));
    expect(posts({})).toEqual({ line: pen.posts - 4, gate: 4 });
    expect(posts({ gates_by_other: 2 })).toEqual({ line: pen.posts - 4, gate: 2 });
    const through = { gates_by_other: 2, fence_by_other: `${second - 2}; ${second + 3}` };
    expect(posts(through)).toEqual({ line: pen.posts - 4 - 4, gate: 2 });
    expect(posts({ gates_by_other: 2, fence_by_other: `${second - 2}; ${second}` })).toEqual({ line: pen.posts - 4 - 2, gate: 2 });
    expect(posts({ fence_by_other: "2; 4" })).toEqual({ line: pen.posts - 4 - 2, gate: 3 });
    expect(runsByOther({ ...own, ...through }, pen)).toEqual([{ from: second - 2, to: second + 3, fence: 4 }]);
  });

  it("takes panels or bays of an arena's sides, its corner posts too", () => {
    const panels = job({ structure: "panel arena", gate_1: 12 });
    expect(counts(panels).panel_1 - counts({ ...panels, fence_by_other: "3; 9" }).panel_1).toBe(6);
    expect(counts({ ...panels, panel_1_use: 40, fence_by_other: "3; 9" }).panel_1).toBe(40);
    const posts = job({ structure: "post arena" });
    const shared = { ...posts, fence_by_other: "3; 20" };
    expect(counts(posts).line_posts - counts(shared).line_posts).toBe(18);
    expect(fenceByOther(penOf(shared), byOtherOf(shared, penOf(shared)))).toBe(17);
  });

  it("leaves rails of as many bays as are the estimate's own, over random jobs, and nothing else where nothing is by other", () => {
    let held = 0;
    fc.assert(
      fc.property(randomJob, (one) => {
        const plain = { ...one, fence_by_other: null, gates_by_other: null };
        try {
          const pen = penOf(one);
          const byOther = byOtherOf(one, pen);
          expect(byOtherOf(plain, pen)).toBeUndefined();
          if (!byOther) return;
          expect(byOther.pieces).toHaveLength(stakesOf(pen));
          if (!isPosted(pen)) return;
          const { line, gate } = ownPosts(pen, byOther);
          expect(line + gate).toBe(byOther.stakes.filter((other) => !other).length);
          const bays = (of: Job) => railsOf(of, pen).runs.reduce((sum, { cuts }) => sum + cuts.reduce((part, { count, pieces }) => part + count * pieces.reduce((many, piece) => many + piece.bays, 0), 0), 0);
          const rows = Number(one.rail_rows ?? 4);
          expect(bays(plain) - bays(one)).toBe(rows * fenceByOther(pen, byOther));
          held++;
        } catch (refusal) {
          if (!(refusal instanceof Refusal)) throw refusal;
        }
      }),
      { numRuns: 150 },
    );
    expect(held).toBeGreaterThan(3);
  });

  it("is said from stake to stake in both languages", () => {
    const pen = penOf(job({ structure: "post pen" }));
    const shared = job({ structure: "post pen", fence_by_other: "4; 8; 9; 10" });
    expect(byOtherSentences(shared, pen)).toEqual([
      "The fence from stake 4 to stake 8, 4 bays, is by other, with the posts at both ends.",
      "The fence from stake 9 to stake 10, 1 bay, is by other, with the posts at both ends.",
    ]);
    expect(byOtherSentences(shared, pen, "es")[1]).toBe("La cerca de la estaca 9 a la 10, 1 vano, va por otro, con los postes de los dos extremos.");
    expect(byOtherSentences(job({ fence_by_other: "4; 8" }), penOf(newJob()))).toEqual(["The fence from stake 4 to stake 8, 4 panels, is by other."]);
  });
}); // prettier-ignore
