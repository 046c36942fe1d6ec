import fc from "fast-check";
import { boxOf, freest, overlap } from "../../src/drawing/label-room";
import { planShape, type PlanOptions } from "../../src/drawing/plan";
import { shape, type Shape } from "../../src/drawing/shape";
import { newJob } from "../../src/estimate/job";
import { arenaOfPanels } from "../../src/estimate/panel-arena";
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
    expect(freest(places, taken, paper)).toBe(places[2]);
    expect(freest(places.slice(0, 2), taken, paper)).toBe(places[1]);
    expect(freest([text("abcd", { x: 395 }), places[2]], [], paper)).toBe(places[2]);
  });
});
