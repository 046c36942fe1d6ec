import { planFrame } from "../../src/drawing/frame";
import { placedPieces } from "../../src/drawing/pieces";
import { planDrawing, planShape, type PlanOptions } from "../../src/drawing/plan";
import { type Shape } from "../../src/drawing/shape";
import { panelLayout } from "../../src/fence/panel-layout";
import { penOf } from "./pens";

const pen = penOf([[12, 18]], [10]);

function* all(whole: Shape): Generator<Shape> {
  yield whole;
  for (const child of whole.children) if (typeof child !== "string") yield* all(child);
}
const marked = (name: string, drawn: Shape) =>
  [...all(drawn)].filter(({ attributes }) => `data-${name}` in attributes);
const numbersOn = (of: ReturnType<typeof penOf>, options: PlanOptions = {}) =>
  marked("stake", planShape(of, { width: 460, numbered: true, ...options })).map(({ attributes }) =>
    Number(attributes["data-stake"]),
  );

describe("a plan to set stakes by", () => {
  it("puts every pin where the layout has its stake, north at the top", () => {
    for (const [panels, gates, bearing] of [
      [[[12, 18]], [10], 33],
      [[[16, 4], [10, 6]], [12, 8], 270],
      [[[10, 12]], [], 120],
    ] as [[number, number][], number[], number][]) {
      const drawn = penOf(panels, gates);
      const frame = planFrame(460, { reach: 1.3, rim: 18 });
      const scale = (2 * frame.radius) / drawn.pinCircle;
      const chords = panels.map(([length, count]) => ({ length, count }));
      const stakes = panelLayout({ panels: chords, gates, pinGap: 0 }, bearing);
      const pieces = placedPieces(drawn, frame, bearing);
      expect(pieces).toHaveLength(stakes.length);
      stakes.forEach(({ east, north }, k) => {
        expect(pieces[k].from.x).toBeCloseTo(frame.center.x + east * scale, 6);
        expect(pieces[k].from.y).toBeCloseTo(frame.center.y - north * scale, 6);
      });
    }
  }); // prettier-ignore

  it("numbers every stake where there is room", () => {
    expect(numbersOn(pen)).toEqual(Array.from({ length: 19 }, (_, k) => k + 1));
  });

  it("numbers every other of 60 stakes, stake 1 and the ends of gates in any case", () => {
    const numbers = numbersOn(penOf([[10, 58]], [10, 12]), { bearing: 270 });
    for (const stake of [1, 2, 31, 32]) expect(numbers).toContain(stake);
    const others = numbers.filter((stake) => ![1, 31].includes(stake));
    expect(others.every((stake) => stake % 2 === 0)).toBe(true);
    expect(others.length).toBeGreaterThan(24);
  });

  it("keeps numbers apart, so that each can be read", () => {
    for (const [count, gates] of [[19, [10]], [58, [10, 12]], [60, []], [120, [16]]] as [number, number[]][])
      for (const bearing of [0, 77, 180]) {
        const drawn = planShape(penOf([[10, count]], gates), { width: 460, numbered: true, bearing });
        const places = marked("stake", drawn).map(({ attributes }) => attributes as Record<string, number>);
        places.forEach((a, k) => {
          for (const b of places.slice(k + 1))
            expect(Math.abs(a.x - b.x) >= 18.9 || Math.abs(a.y - b.y) >= 13.9).toBe(true);
        });
      }
  }); // prettier-ignore

  it("shows reference stakes to scale outside the pen, and all of it inside the picture", () => {
    const references = [
      { name: "A", bearing: 90, distance: 48 },
      { name: "B", bearing: 180, distance: 48 },
    ];
    const drawn = planShape(pen, { width: 460, numbered: true, references });
    expect(marked("reference", drawn).map(({ children }) => children[0])).toEqual(["A", "B"]);
    const frame = planFrame(460, { reach: 48 / (pen.pinCircle / 2), rim: 18 });
    const squares = [...all(drawn)].filter(({ tag }) => tag === "rect");
    const middles = squares.map(({ attributes: { x, y } }) => [Number(x) + 5, Number(y) + 5]);
    const far = (frame.radius * 48) / (pen.pinCircle / 2);
    expect(middles[0][0]).toBeCloseTo(frame.center.x + far, 6);
    expect(middles[0][1]).toBeCloseTo(frame.center.y, 6);
    expect(middles[1][1]).toBeCloseTo(frame.center.y + far, 6);
    for (const [x, y] of middles) expect(x > 10 && x < 450 && y > 10 && y < frame.height - 10).toBe(true);
  });

  it("keeps a gate's label whole inside the fence, wherever the gate is", () => {
    for (let bearing = 0; bearing < 360; bearing += 15) {
      const drawn = planShape(pen, { width: 460, numbered: true, north: "site", bearing });
      const { center, radius } = planFrame(460, { rim: 18 });
      const words = [...all(drawn)].find(
        ({ tag, children }) => tag === "text" && /^gate/.test(String(children[0])),
      )!;
      const { x, y } = words.attributes as Record<string, number>;
      for (const side of [-1, 1])
        for (const edge of [y - 12, y])
          expect(
            Math.hypot(x + side * 3.5 * String(words.children[0]).length - center.x, edge - center.y),
          ).toBeLessThan(radius);
    }
  });

  it("names its north and the gate's bearing, in the crew's language", () => {
    const said = (options: PlanOptions) =>
      [...all(planShape(pen, { width: 460, bearing: 33.25, ...options }))]
        .filter(({ tag }) => tag === "text")
        .map(({ children }) => children.join(""));
    expect(said({ north: "magnetic" })).toEqual(expect.arrayContaining(["gate 10' at 33.3°", "magnetic north"]));
    const spanish = said({ north: "true", language: "es" });
    expect(spanish).toEqual([
      `72' 3 1/4" entre pasadores`,
      `71' 3 1/4"`,
      "libre por dentro",
      "estaca central",
      "norte verdadero",
      "puerta 10' a 33.3°",
    ]);
  }); // prettier-ignore

  it("adds nothing of it where it is not asked for", () => {
    const plain = planShape(pen);
    for (const name of ["stake", "reference", "north"]) expect(marked(name, plain)).toEqual([]);
    expect(planDrawing(pen)).not.toContain("°");
  });
});
