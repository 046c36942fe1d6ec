import { newJob, type Job } from "../../src/estimate/job";
import { byOtherOf } from "../../src/estimate/by-other";
import { penOf } from "../../src/estimate/pen";
import { sitedPlan } from "../../src/drawing/plan-of-site";
import { boxOf, overlap } from "../../src/drawing/label-room";
import { planShape, type PlanOptions } from "../../src/drawing/plan";
import { type Shape } from "../../src/drawing/shape";

const all = (whole: Shape): Shape[] => [
  whole,
  ...whole.children.flatMap((child) => (typeof child === "string" ? [] : all(child))),
];
const drawn = (job: Job, more: PlanOptions = {}) => {
  const pen = penOf(job);
  return all(planShape(pen, { byOther: byOtherOf(job, pen), ...more }));
};
const texts = (shapes: Shape[]) =>
  shapes.filter(({ tag }) => tag === "text").map(({ children }) => String(children[0]));
const dashed = (shapes: Shape[], dashes: string) =>
  shapes.filter(({ attributes }) => attributes["stroke-dasharray"] === dashes);

describe("fence by other on a plan", () => {
  it.each([
    ["panel pen", { gate_1: 8, gate_2: 6 }],
    ["post pen", { leaf_1: 10, leaf_2: 6 }],
    ["panel arena", { gate_1: 12, gate_2: 8 }],
    ["post arena", { leaf_1: 10, leaf_2: 4, corner_radius: 20 }],
  ])(
    "of a %s stands in dashes with rings for stakes, its gate hatched, each named as such and labeled",
    (structure, gates) => {
      const own: Job = { ...newJob(), structure, ...gates };
      const shapes = drawn({ ...own, fence_by_other: "3; 6", gates_by_other: 2 });
      expect(dashed(shapes, "5 4")).toHaveLength(3);
      expect(dashed(shapes, "1.5 3")).toHaveLength(1);
      const titles = shapes.filter(
        ({ tag, children }) => tag === "title" && String(children[0]).endsWith("by other"),
      );
      expect(titles).toHaveLength(4);
      const rings = shapes.filter(
        ({ tag, attributes }) =>
          tag === "circle" &&
          attributes.fill === "#ffffff" &&
          attributes["stroke-width"] === 1.2 &&
          !("data-arc-center" in attributes),
      );
      expect(rings).toHaveLength(6);
      expect(texts(shapes).filter((words) => words === "by other")).toHaveLength(1);
      expect(texts(shapes).filter((words) => /^gate .*, by other$/.test(words))).toHaveLength(1);
      expect(texts(drawn(own)).filter((words) => words.includes("by other"))).toEqual([]);
      expect(texts(drawn({ ...own, fence_by_other: "3; 6" }, { language: "es" }))).toContain("por otro");
    },
  );

  it("says whose a stretch is once where a gate by other stands in it, and covers no other text with it", () => {
    const shapes = drawn(
      { ...newJob(), structure: "post pen", gates_by_other: 1, fence_by_other: "24; 4" },
      { numbered: true },
    );
    expect(dashed(shapes, "5 4")).toHaveLength(5);
    expect(texts(shapes).filter((words) => words === "by other")).toHaveLength(1);
    const written = shapes.filter(({ tag }) => tag === "text");
    const ours = written.filter(({ attributes }) => "data-by-other" in attributes).map(boxOf);
    for (const one of ours)
      expect(written.map(boxOf).filter((other) => overlap(one, other) > 0)).toHaveLength(1);
  });

  it("is one stretch where it goes on past the last stake", () => {
    const shapes = drawn({ ...newJob(), gate_1: null, fence_by_other: "16; 3" });
    expect(dashed(shapes, "5 4")).toHaveLength(4);
    expect(texts(shapes).filter((words) => words === "by other")).toHaveLength(1);
  });
});

describe("a site on a plan", () => {
  it("is shown where a fence is near or a leaf strikes, by its bearing and north, and else left out", () => {
    const of = (job: Job) => sitedPlan(job, penOf(job));
    expect(of(newJob())).toBeUndefined();
    const near = of({ ...newJob(), neighbor_1: "70; 0; 60", gate_bearing: 90, north: "true" })!;
    expect(near.options).toMatchObject({ bearing: 90, north: "true" });
    expect(near.found.wedges.length).toBeGreaterThan(0);
    const struck = of({ ...newJob(), structure: "panel arena", gate_1: 12, gate_at_1: 0 })!;
    expect(struck.found.leaves.filter(({ own }) => own !== undefined)).toHaveLength(1);
    expect(of({ ...newJob(), neighbor_1: "70; 0; 60", gate_right: "0; 0", gate_left: "30; 0" })).toBeUndefined();
    const shapes = drawn({ ...newJob(), neighbor_1: "70; 0; 60" }, near.options);
    expect(shapes.filter(({ attributes }) => "data-wedge" in attributes).length).toBeGreaterThan(8);
    expect(shapes.filter(({ attributes }) => "data-neighbor" in attributes).length).toBeGreaterThan(0);
  });

  it("draws what lies between an arena and a fence around its corner, and never across its inside", () => {
    const job: Job = { ...newJob(), structure: "panel arena", gate_1: 12, neighbor_1: "-60; 90; -30; 112" };
    const { options, found } = sitedPlan(job, penOf(job))!;
    const [{ wedge }] = found.wedges;
    expect(wedge.across!.length).toBeGreaterThan(9);
    for (const [a] of wedge.across!) expect(Math.abs(Math.abs(a.east) - 48) < 1e-6 || Math.abs(Math.abs(a.north) - 102) < 1e-6).toBe(true);
    expect(drawn(job, options).filter(({ attributes }) => "data-wedge" in attributes)).toHaveLength(wedge.across!.length * found.wedges.length);
  });
}); // prettier-ignore
