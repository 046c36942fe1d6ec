import fc from "fast-check";
import {
  type HungLeaves,
  type Leaf,
  gateLeaves,
  leafFouls,
  leafTip,
  leavesFoul,
} from "../../src/fence/leaf-swing";
import { postLayout } from "../../src/fence/post-layout";
import { type Point, ahead, distance } from "../../src/geometry/point";

// A gate of 12 ft on the north side of a pen: clockwise is west to east, and the pen lies south.
const gate = (parts: Partial<HungLeaves>): HungLeaves => ({
  from: { east: 0, north: 0 },
  to: { east: 12, north: 0 },
  leaves: 1,
  hand: "right",
  swing: "in",
  leaf: 11.5,
  hingeInset: 0.25,
  hingeOff: 0,
  opens: 90,
  ...parts,
});
const one = (parts: Partial<HungLeaves>) => gateLeaves(gate(parts))[0];

describe("A gate's leaf", () => {
  test.each([
    // Common practice, no source: the hand is the side of the hinges as seen from outside, here from the north.
    { hand: "right", swing: "in", hinge: 0.25, tip: -11.5 },
    { hand: "right", swing: "out", hinge: 0.25, tip: 11.5 },
    { hand: "left", swing: "in", hinge: 11.75, tip: -11.5 },
    { hand: "left", swing: "out", hinge: 11.75, tip: 11.5 },
  ] as const)("hung $hand and swung $swing opens to its own side", ({ hand, swing, hinge, tip }) => {
    const leaf = one({ hand, swing });
    expect(leaf.hinge).toEqual({ east: expect.closeTo(hinge, 9), north: expect.closeTo(0, 9) });
    expect(leafTip(leaf, 90)).toEqual({ east: expect.closeTo(hinge, 9), north: expect.closeTo(tip, 9) });
    const closed = leafTip(leaf, 0);
    expect(closed.east).toBeCloseTo(hand === "right" ? 11.75 : 0.25, 9);
  });

  it("is one of two where the gate has two, each from its own end, that do not foul one another", () => {
    const [west, east] = gateLeaves(gate({ leaves: 2, leaf: 5.75 }));
    expect(leafTip(west, 0).east).toBeCloseTo(leafTip(east, 0).east, 9);
    expect(leafTip(west, 90).north).toBeCloseTo(-5.75, 9);
    expect(leafTip(east, 90).north).toBeCloseTo(-5.75, 9);
    expect(leavesFoul(west, east)).toBe(false);
    const [wide, other] = gateLeaves(gate({ leaves: 2, leaf: 6.5 }));
    expect(leavesFoul(wide, other)).toBe(true);
  });
});

describe("What a leaf strikes", () => {
  it("is found with the opening at which it does, by hand", () => {
    // A run straight out from the hinge at 60 degrees, and one square across the leaf's way, 5 ft south of the gate.
    const leaf = one({ hingeInset: 0, opens: 90, leaf: 10 });
    const slanted = { from: leaf.hinge, to: ahead(leaf.hinge, 150, 4) };
    const across = { from: { east: -20, north: -5 }, to: { east: 20, north: -5 } };
    expect(leafFouls(leaf, [slanted, across])).toEqual([
      { fence: 0, at: expect.closeTo(60, 9) },
      { fence: 1, at: expect.closeTo(30, 9) },
    ]);
    expect(leafFouls({ ...leaf, opens: 45 }, [slanted, across])).toEqual([{ fence: 1, at: expect.closeTo(30, 9) }]);
    // A round post 8 ft down the open leaf, 2 ft thick: the leaf meets it asin(1 / 8) before 90 degrees.
    const post = { center: { east: 0, north: -8 }, diameter: 2 };
    const [{ at }] = leafFouls(leaf, [post]);
    expect(at).toBeCloseTo(90 - (Math.asin(1 / 8) * 180) / Math.PI, 9);
  }); // prettier-ignore

  it("is nothing beyond its tip, behind its hinge, at its own hinge post, or on the other side of the gate", () => {
    const leaf = one({ hingeInset: 0, leaf: 10 });
    const clear = [
      { from: { east: -20, north: -10 }, to: { east: 20, north: -10 } },
      { center: { east: 0, north: -11 }, diameter: 2 },
      { center: { east: 0.1, north: 0 }, diameter: 0.5 },
      { from: { east: 0, north: 0 }, to: { east: -8, north: -1 } },
      { from: { east: 3, north: 2 }, to: { east: 9, north: 2 } },
      { from: { east: 10, north: 0 }, to: { east: 18, north: -1 } },
    ];
    expect(leafFouls(leaf, clear)).toEqual([]);
  });

  it("is at 0 degrees where a post or run crosses the closed leaf", () => {
    const leaf = one({ hingeInset: 0, leaf: 10 });
    const crossing = { from: { east: 5, north: -3 }, to: { east: 5, north: 3 } };
    const posts = [0.5, -0.5].map((north) => ({ center: { east: 5, north }, diameter: 2 }));
    expect(leafFouls(leaf, [crossing, ...posts]).map(({ at }) => at)).toEqual([0, 0, 0]);
  });

  it("is the bay beside the hinge when a leaf swings in as far as the fence's own angle", () => {
    const stakes = postLayout({ diameter: 60, spacing: 8, gates: [12], gatePost: 0 }, 0);
    const bays = stakes.slice(1).map((from, i) => ({ from, to: stakes[(i + 2) % stakes.length] }));
    const leaf = one({ from: stakes[0], to: stakes[1], hingeInset: 0, opens: 180 });
    const turn = Math.asin(stakes[0].chord / 60) + Math.asin(stakes[1].chord / 60);
    const struck = leafFouls(leaf, bays);
    const beside = struck.find(({ fence }) => fence === bays.length - 1);
    expect(beside?.at).toBeCloseTo(180 - (turn * 180) / Math.PI, 6);
    // The leaf is longer than that bay: its tip strikes the next one sooner.
    expect(Math.min(...struck.map(({ at }) => at))).toBeLessThan(beside?.at as number);
    expect(leafFouls({ ...leaf, opens: 150 }, bays)).toEqual([]);
    expect(leafFouls({ ...leaf, way: -1 }, bays)).toEqual([]);
  });

  it("agrees with a leaf that is opened in small steps, for any post and run", () => {
    const near = fc.integer({ min: -15_000, max: 15_000 }).map((thousandths) => thousandths / 1000);
    const place = fc.record({ east: near, north: near });
    fc.assert(
      fc.property(place, place, fc.double({ min: 0.2, max: 3, noNaN: true }), (from, to, diameter) => {
        const leaf: Leaf = one({ hingeInset: 0, leaf: 10, opens: 180 });
        fc.pre(distance(from, to) > 0.5 && distance(from, leaf.hinge) > diameter);
        // An end on the closed leaf itself touches it or not by the rounding.
        const onClosed = (place: Point) => toPiece(place, leaf.hinge, leafTip(leaf, 0)) < 1e-3;
        fc.pre(toPiece(leaf.hinge, from, to) > 1e-3 && !onClosed(from) && !onClosed(to));
        const [run] = leafFouls(leaf, [{ from, to }]);
        const [post] = leafFouls(leaf, [{ center: from, diameter }]);
        if (run?.at > 0) {
          const tip = leafTip(leaf, run.at);
          const ends = [toPiece(from, leaf.hinge, tip), toPiece(to, leaf.hinge, tip), toPiece(tip, from, to)];
          expect(Math.min(...ends)).toBeLessThan(1e-6);
        }
        if (post?.at > 0) expect(toPiece(from, leaf.hinge, leafTip(leaf, post.at))).toBeCloseTo(diameter / 2, 6);
        for (let opening = 0; opening <= 180; opening += 2.5) {
          const [hinge, tip] = [leaf.hinge, leafTip(leaf, opening)];
          if (crosses(hinge, tip, from, to)) expect(run?.at).toBeLessThanOrEqual(opening + 1e-6);
          const hit = toPiece(from, hinge, tip) < diameter / 2;
          if (hit) expect(post?.at).toBeLessThanOrEqual(opening + 1e-6);
          if (post && opening < post.at - 1e-6) expect(hit).toBe(false);
          if (run && opening < run.at - 1e-6) expect(crosses(hinge, tip, from, to)).toBe(false);
        }
      }),
    );
  }); // prettier-ignore
});

/** From a place to the nearest point of a straight piece. */
function toPiece(place: Point, a: Point, b: Point): number {
  const [x, y] = [b.east - a.east, b.north - a.north];
  const dot = (place.east - a.east) * x + (place.north - a.north) * y;
  const share = Math.min(1, Math.max(0, dot / (x * x + y * y)));
  return distance(place, { east: a.east + share * x, north: a.north + share * y });
}

/** Whether two straight pieces cross, by the sides on which their ends lie. */
function crosses(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point) =>
    Math.sign((q.east - p.east) * (r.north - p.north) - (q.north - p.north) * (r.east - p.east));
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

describe("Two leaves", () => {
  const leaf = (parts: Partial<Leaf>): Leaf => ({
    hinge: { east: 0, north: 0 },
    closed: 90,
    way: 1,
    length: 10,
    opens: 90,
    ...parts,
  });

  it("foul where only their arcs cross, where one sweeps within the other, and not where they are apart", () => {
    expect(leavesFoul(leaf({}), leaf({ hinge: { east: 14, north: -14 }, closed: 270 }))).toBe(true);
    expect(leavesFoul(leaf({}), leaf({ hinge: { east: 16, north: -16 }, closed: 270 }))).toBe(false);
    expect(leavesFoul(leaf({}), leaf({ hinge: { east: 3, north: -3 }, length: 2 }))).toBe(true);
    expect(leavesFoul(leaf({}), leaf({ hinge: { east: 12, north: 5 }, closed: 270, opens: 80 }))).toBe(false);
    expect(leavesFoul(leaf({}), leaf({ hinge: { east: 40, north: 0 } }))).toBe(false);
  });
});
