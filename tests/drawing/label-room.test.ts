import fc from "fast-check";
import { boxOf, freest, freestLines, overlap } from "../../src/drawing/label-room";
import { planShape, type PlanOptions } from "../../src/drawing/plan";
import { shape, type Shape } from "../../src/drawing/shape";
import { newJob, type Job } from "../../src/estimate/job";
import { arenaOfPanels } from "../../src/estimate/panel-arena";
import { offSizes } from "../../src/estimate/off-sizes";
import { panelPen } from "../../src/estimate/panel-pen";
import { type Pen } from "../../src/estimate/pen";
import { postPen } from "../../src/estimate/post-pen";
import { penOf } from "./pens";

const textsIn = (whole: Shape): Shape[] =>
  whole.tag === "text"
    ? [whole]
    : whole.children.flatMap((child) => (typeof child === "string" ? [] : textsIn(child)));
const saying = ({ children }: Shape) => children.join("");

/** The labels that cover one another, each pair in words. */
function covering(pen: Pen, options: PlanOptions): string[] {
  const texts = textsIn(planShape(pen, options));
  const gates = texts.filter((text) => /^(gate|puerta)/.test(saying(text)));
  const rest = texts.filter((text) => !gates.includes(text));
  return gates.flatMap((gate, k) =>
    [...gates.slice(k + 1), ...rest]
      .filter((other) => overlap(boxOf(gate), boxOf(other)) > 0)
      .map((other) => `${saying(gate)} / ${saying(other)}`),
  );
}

const pens: Pen[] = [
  penOf([[6, 10]], [6, 4, 4, 4]),
  penOf([[12, 16]], [10]),
  penOf([[10, 58]], [12, 6]),
  penOf([[16, 8], [10, 3]], [12, 8, 4]),
  postPen({ ...newJob(), structure: "post pen", leaf_2: 8, leaf_3: 4 }),
  arenaOfPanels({ ...newJob(), structure: "panel arena", gate_1: 10, gate_2: 8 }),
  arenaOfPanels({ ...newJob(), structure: "panel arena", arena_length: 300, arena_width: 60, gate_1: 12 }),
]; // prettier-ignore

describe("the labels of gates", () => {
  it("cover no other label on a plan to set stakes by, wherever the first gate lies", () => {
    const place = fc.record({
      which: fc.nat({ max: pens.length - 1 }),
      bearing: fc.oneof(fc.constantFrom(0, 30, 120, 200, 315), fc.integer({ min: 0, max: 359 })),
      language: fc.constantFrom("en" as const, "es" as const),
    });
    fc.assert(
      fc.property(place, ({ which, bearing, language }) => {
        const pen = pens[which];
        const reach = pen.distanceAround / 4;
        const references = [90, 180].map((turn, k) => ({
          name: "AB"[k],
          bearing: bearing + turn,
          distance: reach,
        }));
        const options = { width: 460, numbered: true, north: "site" as const, bearing, language, references };
        expect(covering(pen, options)).toEqual([]);
      }),
      { numRuns: 300 },
    );
  });

  it("cover no other label in the panel", () => {
    for (const pen of pens) expect(covering(pen, { width: 318 })).toEqual([]);
  });
});

describe("the sizes that will not close", () => {
  const off = (job: Job, options: PlanOptions = {}) => {
    const pen = job.structure === "panel arena" ? arenaOfPanels(job) : panelPen(job);
    const drawn = planShape(pen, { off: offSizes(job, pen), ...options });
    return { words: textsIn(drawn).filter(({ attributes }) => "data-off" in attributes).map(saying), drawn };
  };

  it("are said with how much the pen is over or under, by what the size means", () => {
    const job = { ...newJob(), size: 60, panel_1: 12, gate_1: 10 };
    // 15 panels and a gate of 10 ft: 190 ft / pi, and (pi / 16)^2 / 6 of it more as a polygon: 60.87 ft (worked by hand).
    expect(off(job).words).toEqual(["60 ft will not close:", "built 10 1/2 in over"]);
    expect(off({ ...job, size_means: "outside" }).words[1]).toMatch(/under$/);
    expect(off({ ...job, size_means: "inside clear" }).words[1]).toMatch(/over$/);
    expect(off(job, { language: "es" }).words[1]).toMatch(/^queda 10 1\/2" de más$/);
  });

  it("are said of each side of an arena that panels do not close, and of none that they do", () => {
    const arena = { ...newJob(), structure: "panel arena", panel_1: 12, gate_1: 12, arena_length: 156, arena_width: 77 };
    expect(off(arena).words).toEqual(["77 ft will not close:", "built 5 ft under"]);
    expect(off({ ...arena, arena_width: 72 }).words).toEqual([]);
    const posts = { ...newJob(), structure: "post pen", size: 61.3 };
    expect(offSizes(posts, postPen(posts))).toEqual([]);
  });

  it("cover no other label", () => {
    for (const size of [24, 40, 60.5, 100])
      for (const width of [318, 460]) {
        const texts = textsIn(off({ ...newJob(), size, gate_1: 8, gate_2: 4 }, { width, numbered: width > 400 }).drawn);
        const said = texts.filter(({ attributes }) => "data-off" in attributes);
        expect(said).toHaveLength(2);
        for (const one of said)
          for (const other of texts) if (other !== one) expect(overlap(boxOf(one), boxOf(other))).toBe(0);
      }
  });
}); // prettier-ignore

describe("the room that labels take", () => {
  const text = (words: string, more: Shape["attributes"] = {}) =>
    shape("text", { x: 100, y: 50, "text-anchor": "middle", ...more }, words);

  it("is known of texts to either side of their place, larger ones and turned ones", () => {
    const middle = boxOf(text("abcd"));
    expect((middle.left + middle.right) / 2).toBeCloseTo(100, 9);
    expect(boxOf(text("abcd", { "text-anchor": "start" })).left).toBe(100);
    expect(boxOf(text("abcd", { "text-anchor": "end" })).right).toBe(100);
    const across = ({ left, right }: typeof middle) => right - left;
    expect(across(boxOf(text("abcd", { "font-size": 28 })))).toBeCloseTo(2 * across(middle), 9);
    const turned = boxOf(text("abcd", { transform: "rotate(90 100 50)" }));
    expect(turned.bottom - turned.top).toBeCloseTo(across(middle), 9);
    expect(across(turned)).toBeCloseTo(middle.bottom - middle.top, 9);
  });

  it("is taken from the first place that is free, else from the one that covers least", () => {
    const paper = { left: 0, right: 400, top: 0, bottom: 100 };
    const places = [100, 110, 300].map((x) => text("abcd", { x }));
    const taken = [boxOf(places[0])];
    const one = (choices: Shape[], of = taken) => freest(choices, of, paper);
    expect(one(places)).toBe(places[2]);
    expect(one(places.slice(0, 2))).toBe(places[1]);
    expect(one([text("abcd", { x: 395 }), places[2]], [])).toBe(places[2]);
    const lines = [places[2], places[0]];
    expect(freestLines([lines, [places[2]]], taken, paper)).toEqual([places[2]]);
  });
});
