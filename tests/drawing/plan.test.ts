import { planDrawing, planShape } from "../../src/drawing/plan";
import { planFrame } from "../../src/drawing/frame";
import { placedPieces } from "../../src/drawing/pieces";
import { shape, svgText, type Shape } from "../../src/drawing/shape";
import { newJob } from "../../src/estimate/job";
import { arenaOfPosts } from "../../src/estimate/post-arena";
import { postPen } from "../../src/estimate/post-pen";
import { penOf } from "./pens";

const pen = penOf([[12, 18]], [10]);

function* all(whole: Shape): Generator<Shape> {
  yield whole;
  for (const child of whole.children) if (typeof child !== "string") yield* all(child);
}

const textsOf = (whole: Shape) =>
  [...all(whole)].filter(({ tag }) => tag === "text").map(({ children }) => children.join(""));

describe("the plan of a pen", () => {
  it("draws every piece as a straight line of its length to scale, and comes back to where it began", () => {
    for (const drawn of [pen, penOf([[16, 5], [10, 3], [8, 1]], [12, 4], 1 / 12), penOf([[6, 10]])]) {
      const frame = planFrame(318);
      const pieces = placedPieces(drawn, frame);
      const scale = (2 * frame.radius) / drawn.pinCircle;
      for (const { from, to, length } of pieces)
        expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo((length + drawn.pinGap) * scale, 9);
      expect(pieces.at(-1)!.to.x).toBeCloseTo(pieces[0].from.x, 6);
      expect(pieces.at(-1)!.to.y).toBeCloseTo(pieces[0].from.y, 6);
    }
  }); // prettier-ignore

  it("puts the middle of the first gate at the foot", () => {
    const frame = planFrame(318);
    const [gate] = placedPieces(pen, frame);
    expect(gate.kind).toBe("gate");
    expect((gate.from.x + gate.to.x) / 2).toBeCloseTo(frame.center.x, 9);
    expect(gate.from.y).toBeGreaterThan(frame.center.y);
  });

  it("names every panel and gate with its length", () => {
    const names = placedPieces(penOf([[12, 3]], [10, 4.5]), planFrame(318)).map(({ name }) => name);
    expect(names).toEqual([
      "Gate 1 of 2, 10 ft, clear opening 9 ft 8 in",
      "Panel 1 of 3, 12 ft",
      "Gate 2 of 2, 4 ft 6 in, clear opening 4 ft 2 in",
      "Panel 2 of 3, 12 ft",
      "Panel 3 of 3, 12 ft",
    ]);
    expect(placedPieces(pen, planFrame(318))[0].name).toBe("Gate, 10 ft, clear opening 9 ft 8 in");
  });

  it("draws a pen of posts with its bays, its gates from post to post, and the size across the posts", () => {
    const posts = postPen({ ...newJob(), structure: "post pen", leaf_2: 4 });
    const frame = planFrame(318);
    const pieces = placedPieces(posts, frame);
    const scale = (2 * frame.radius) / posts.postCircle;
    const drawn = pieces.map(({ from, to }) => Math.hypot(to.x - from.x, to.y - from.y) / scale);
    expect(drawn[0]).toBeCloseTo(posts.gateChords[0], 9);
    expect(drawn[1]).toBeCloseTo(posts.bay, 9);
    expect(pieces.at(-1)!.to.x).toBeCloseTo(pieces[0].from.x, 6);
    expect(pieces.slice(0, 2).map(({ name }) => name)).toEqual([
      "Gate 1 of 2, 10 ft, clear opening 10 ft 4 in",
      `Bay 1 of ${posts.bays}, 7 ft 11 7/16 in`,
    ]);
    const texts = textsOf(planShape(posts));
    expect(texts).toContain("66 ft across the posts");
    expect(texts.filter((text) => text.startsWith("gate"))).toHaveLength(2);
    expect(textsOf(planShape(posts, { language: "es" }))).toContain("66' entre postes");
  });

  it("draws a quarter turn from either post of a gate of two leaves, half as long as that of one leaf", () => {
    const arena = (gates_of_two: number | null) =>
      arenaOfPosts({ ...newJob(), structure: "post arena", leaf_1: 8, gates_of_two });
    const swings = (of: number | null) => [...all(planShape(arena(of)))].filter(({ attributes }) => "data-swing" in attributes); // prettier-ignore
    const radius = ({ attributes }: Shape) => Number(/A([\d.]+) /.exec(String(attributes.d))![1]);
    expect(swings(null).map(({ attributes }) => attributes["data-swing"])).toEqual(["right"]);
    expect(swings(1).map(({ attributes }) => attributes["data-swing"])).toEqual(["right", "left"]);
    const [gate] = placedPieces(arena(1), planFrame(318)).filter(({ kind }) => kind === "gate");
    const chord = Math.hypot(gate.to.x - gate.from.x, gate.to.y - gate.from.y);
    for (const swing of swings(1)) expect(radius(swing)).toBeCloseTo(chord / 2, 1);
    expect(gate.name).toBe("Gate, two leaves of 8 ft, clear opening 16 ft 6 in, near end");
    expect(textsOf(planShape(arena(1)))).toContain("gate 2 x 8'");
    expect(textsOf(planShape(arena(1), { language: "es" }))).toContain("puerta 2 x 8'");
  });

  it("carries each piece's place and name, and tells gates from panels by form", () => {
    const groups = [...all(planShape(pen))].filter(({ attributes }) => "data-piece" in attributes);
    expect(groups).toHaveLength(19);
    const drawn = (group: Shape) =>
      group.children.filter((child) => typeof child !== "string" && child.attributes.stroke !== "none").length - 1;
    expect(groups.map(drawn)).toEqual([2, ...Array<number>(18).fill(1)]);
    expect(groups.map(({ children }) => (children[0] as Shape).tag)).toEqual(Array<string>(19).fill("title"));
  }); // prettier-ignore

  it("says the sizes across, the gates and the stake, and describes itself for a reader who cannot see it", () => {
    expect(textsOf(planShape(pen))).toEqual([
      "72 ft 3 1/4 in across the pins",
      "71 ft 3 1/4 in",
      "clear inside",
      "center stake",
      "gate 10'",
    ]);
    const [title, desc] = planShape(pen).children as Shape[];
    expect([title.tag, title.children[0]]).toEqual(["title", "Plan of the pen"]);
    expect([desc.tag, desc.children[0]]).toEqual([
      "desc",
      "18 panels of 12 ft and one 10 ft gate: 72 ft 3 1/4 in across the pins, 71 ft 3 1/4 in clear inside, 72 ft 3 1/4 in outside",
    ]);
  });

  it("turns the line across out of the way of a gate at the side", () => {
    const across = (gates: number[]) => {
      const lines = [...all(planShape(penOf([[12, 16]], gates)))].filter(({ tag }) => tag === "line");
      const { x1, y1, x2, y2 } = lines[5].attributes as Record<string, number>;
      return Math.atan2(y2 - y1, x2 - x1);
    };
    expect(Math.sin(across([8]))).toBeCloseTo(0, 9);
    expect(Math.abs(Math.sin(across([8, 8, 8, 8])))).toBeGreaterThan(0.2);
  });

  it("keeps its height whatever the pen, and scales with its width", () => {
    const height = (drawn: Shape) => drawn.attributes.height;
    expect(height(planShape(pen))).toBe(height(planShape(penOf([[6, 10]], [4, 4, 4]))));
    expect(planShape(pen, { width: 500 }).attributes.width).toBe(500);
    expect(Number(height(planShape(pen, { width: 500 })))).toBeGreaterThan(Number(height(planShape(pen))));
  });

  it("is written in the colors asked for, black on white unless told", () => {
    expect(planDrawing(pen)).toContain('stroke="#000000"');
    const colors = { ink: "currentColor", faint: "gray", paper: "Canvas" };
    expect(planDrawing(pen, { colors })).not.toContain("#000000");
  });
});

describe("a drawing as text", () => {
  it("escapes whatever stands in texts and attributes", () => {
    const hostile = `<script>"&'`;
    expect(svgText(shape("text", { title: hostile }, hostile))).toBe(
      '<text title="&lt;script&gt;&quot;&amp;&apos;">&lt;script&gt;&quot;&amp;&apos;</text>',
    );
  });

  it("writes numbers to the hundredth and never a negative zero", () => {
    expect(svgText(shape("circle", { cx: 1 / 3, cy: -0.001, r: 12 }))).toBe(
      '<circle cx="0.33" cy="0" r="12"></circle>',
    );
  });

  it("has one root with its namespace, and every element closed", () => {
    const drawn = planDrawing(penOf([[16, 5], [10, 3]], [12, 4])); // prettier-ignore
    expect(drawn).toMatch(/^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg"/);
    const open: string[] = [];
    for (const [, slash, tag] of drawn.matchAll(/<(\/?)([a-z]+)/g))
      if (slash) expect(open.pop()).toBe(tag);
      else open.push(tag);
    expect(open).toEqual([]);
    expect(drawn).not.toMatch(/NaN|Infinity|undefined/);
  });
});
