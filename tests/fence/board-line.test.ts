import fc from "fast-check";
import { backFace, beveledPiece, type CurvedBay } from "../../src/fence/board-line";
import { round, square } from "../../src/geometry/section";

const anyBay: fc.Arbitrary<CurvedBay> = fc.record({
  radius: fc.double({ min: 120, max: 1800, noNaN: true }),
  halfAngle: fc.double({ min: 0.005, max: 0.5, noNaN: true }),
  post: fc.oneof(
    fc.double({ min: 3, max: 12, noNaN: true }).map(round),
    fc.tuple(fc.constantFrom(3.5, 5.5), fc.constantFrom(3.5, 5.5)).map(([width, depth]) => square(width, depth)),
  ),
  side: fc.constantFrom("inside", "outside"),
}); // prettier-ignore

/** Points of a post's outline in a plane whose first axis runs from the center to the middle of the bay. */
function outline({ radius, halfAngle, post }: CurvedBay): [number, number][] {
  const [cosine, sine] = [Math.cos(halfAngle), Math.sin(halfAngle)];
  const at = (out: number, along: number): [number, number] => [
    (radius + out) * cosine + along * sine,
    (radius + out) * sine - along * cosine,
  ];
  const [d, w] = [post.depth / 2, post.width / 2];
  if (post.shape === "square") {
    const edge = Array.from({ length: 41 }, (_, i) => -1 + i / 20);
    return edge.flatMap((t) => [at(d, t * w), at(-d, t * w), at(t * d, w), at(t * d, -w)]);
  }
  return Array.from({ length: 720 }, (_, i) => at(d * Math.cos((i * Math.PI) / 360), d * Math.sin((i * Math.PI) / 360))); // prettier-ignore
}

describe("A board on a curve", () => {
  test("is clear of its post and touches it, up to the line through the post where it ends", () => {
    fc.assert(
      fc.property(anyBay, (bay) => {
        const back = backFace(bay);
        const half = back * Math.tan(bay.halfAngle);
        const beside = outline(bay).filter(([, along]) => along <= half + 1e-9);
        const gaps = beside.map(([out]) => (bay.side === "outside" ? back - out : out - back));
        expect(Math.min(...gaps)).toBeGreaterThan(-1e-9);
        expect(Math.min(...gaps)).toBeLessThan(0.01);
      }),
    );
  });

  test("is longer on the face away from the center, by twice its thickness over the bevel", () => {
    fc.assert(
      fc.property(anyBay, fc.double({ min: 0.5, max: 3, noNaN: true }), (bay, thickness) => {
        const { longFace, shortFace, bevel } = beveledPiece(bay, thickness);
        expect(longFace - shortFace).toBeCloseTo(2 * thickness * Math.tan((bevel * Math.PI) / 180), 9);
        const chord = 2 * bay.radius * Math.sin(bay.halfAngle);
        if (bay.side === "inside") expect(longFace).toBeLessThan(chord);
        else expect(shortFace).toBeGreaterThan(chord);
      }),
    );
  });

  test("inside round posts of 6 in on a 60 ft pen in 24 bays is the chord at the posts' inner faces", () => {
    const bay: CurvedBay = { radius: 360, halfAngle: Math.PI / 24, post: round(6), side: "inside" };
    expect(beveledPiece(bay, 1.5).longFace).toBeCloseTo(2 * 357 * Math.sin(Math.PI / 24), 9);
    expect(beveledPiece(bay, 1.5).bevel).toBeCloseTo(7.5, 12);
  });
});
