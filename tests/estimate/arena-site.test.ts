import fc from "fast-check";
import { newJob, type Job } from "../../src/estimate/job";
import { penOf, isArena } from "../../src/estimate/pen";
import { panelArenaLayout } from "../../src/estimate/panel-arena";
import { placed, siteFindings } from "../../src/estimate/site";
import { offGateSentence, siteSentences } from "../../src/estimate/site-sentences";
import { stakesOnGround } from "../../src/estimate/stakes-on-ground";
import { TURNING_ROOM } from "../../src/fence/turning-room";
import { ahead, distance, type Point } from "../../src/geometry/point";
import { numbersAsCell } from "../../src/units/number-list";
import { expectWalkCloses } from "../fence/closed-walk";

const panels: Job = { ...newJob(), structure: "panel arena", gate_1: 12 };
const posts: Job = { ...newJob(), structure: "post arena" };
const set = (job: Job) => placed(job, penOf(job), (bearing) => stakesOnGround(penOf(job), bearing));
const said = (job: Job) => {
  const pen = penOf(job);
  return siteSentences(siteFindings(job, pen, set(job).bearing), TURNING_ROOM);
};

/** The same job with its first gate's posts at a place and, so much farther than the gate is wide, at a bearing from it. */
function gateFirst(job: Job, right: Point, bearing: number, over = 0): Job {
  const [, second] = stakesOnGround(penOf(job), 0);
  const left = ahead(right, bearing, second.chord + over);
  const asCell = ({ east, north }: Point) => numbersAsCell([east, north]);
  return { ...job, gate_right: asCell(right), gate_left: asCell(left) };
}

/** Gates at their middle, in a corner, at the end of a side, on any side, of square and rounded arenas. */
const jobs: Job[] = [
  panels,
  { ...panels, gate_at_1: 0, gate_2: 8 },
  { ...panels, gate_side_1: "left side", gate_at_1: 1000, pin_gap: 0.5 },
  posts,
  { ...posts, gate_at_1: 0, leaf_2: 4 },
  { ...posts, corner_radius: 20, gate_side_1: "right side", gate_at_1: 20 },
  { ...posts, arena_length: 120, arena_width: 60, corner_radius: 30, gate_side_1: "left side" },
];

describe("an arena set from its gate", () => {
  it("puts the gate's ends on the places told, the arena on the right of them, and every stake as far from every other", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...jobs),
        fc.double({ min: -300, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true }),
        (job, east, turn) => {
          const told = gateFirst(job, { east, north: -70 }, turn);
          const { stakes, center, over } = set(told);
          const at = ({ east, north }: Point) => ({
            east: east + center!.east,
            north: north + center!.north,
          });
          const [right, left] = [at(stakes[0]), at(stakes[1])];
          expect(distance(right, { east, north: -70 })).toBeLessThan(1e-5);
          expect(distance(left, ahead({ east, north: -70 }, turn, stakes[1].chord))).toBeLessThan(1e-5);
          expect(over).toBeCloseTo(0, 5);
          expectWalkCloses(stakes);
          const plain = stakesOnGround(penOf(job), 0);
          for (const [k, stake] of stakes.entries()) {
            expect(distance(stake, stakes[0])).toBeCloseTo(plain[k].tie1, 8);
            const side =
              (left.east - right.east) * (at(stake).north - right.north) -
              (left.north - right.north) * (at(stake).east - right.east);
            expect(side).toBeLessThan(1e-3);
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it("brings the corners and both diagonals along, so that they are as long as before", () => {
    const told = gateFirst({ ...panels, gate_at_1: 0 }, { east: 10, north: 20 }, 77);
    const { bearing } = set(told);
    const { corners, diagonals } = panelArenaLayout(told, bearing);
    const before = panelArenaLayout(told, 0);
    expect(diagonals).toEqual(before.diagonals.map((one) => expect.closeTo(one, 9)));
    expect(distance(corners[1], corners[2])).toBeCloseTo(distance(before.corners[1], before.corners[2]), 9);
    // The near end is walked from right to left: its first joint, where the gate begins, is the near right corner.
    expect(distance(stakesOnGround(penOf(told), bearing)[0], corners[3])).toBeLessThan(1e-9);
  });

  it("says by how much the places miss the gate's width, and takes no more than an inch", () => {
    expect(set(gateFirst(posts, { east: 0, north: 0 }, 90, 0.5 / 12)).over).toBeCloseTo(0.5 / 12, 5);
    expect(set(gateFirst(panels, { east: 0, north: 0 }, 90, -1 / 24)).over).toBeCloseTo(-1 / 24, 5);
    expect(() => set(gateFirst(panels, { east: 0, north: 0 }, 90, 0.2))).toThrow(
      /12' 2 3\/8" apart and the gate is 12'/,
    );
    expect(offGateSentence(0.5 / 12)).toBe(
      'The two places are 1/2" farther apart than the gate is wide: half of it lies at each end.',
    );
    expect(offGateSentence(-0.5 / 12)).toMatch(/nearer than the gate is wide/);
    expect(offGateSentence(1e-7)).toBe("The two places are the gate's width apart.");
    expect(offGateSentence(0.01, "es")).toMatch(/más separados/);
  });

  it("is refused without a gate, and laid out by its bearing where only one place is told", () => {
    const told = gateFirst(panels, { east: 0, north: 0 }, 90);
    expect(() => set({ ...told, gate_1: null })).toThrow(/give the pen a gate/);
    expect(set({ ...told, gate_left: null, length_bearing: 45 })).toMatchObject({ bearing: 45 });
  });
});

describe("what is wrong around an arena", () => {
  it("is nothing where nothing is near and its gates open freely", () => {
    for (const job of [panels, posts, { ...posts, corner_radius: 20, leaf_2: 4 }]) expect(said(job)).toEqual([]);
  });

  it("is a parallel fence that leaves a passage too narrow for a horse to turn in, measured from what stands outermost", () => {
    const wall = (off: number, job: Job) => ({ ...job, neighbor_1: `${-50 - off}; -90; ${-50 - off}; 90` });
    const pen = penOf(posts);
    if (!isArena(pen) || pen.structure !== "post arena") throw new Error("not an arena of posts");
    const out = (pen.sizes.outside.width - pen.line.width) / 2;
    expect(out).toBeGreaterThan(0.2);
    const [one, ...others] = said(wall(6 + out, posts));
    expect(one).toMatch(/^The passage along fence nearby #1 narrows to 6': a horse needs 10' to turn/);
    expect(others).toEqual([]);
    expect(said(wall(10 + out + 0.01, posts))).toEqual([]);
    expect(said({ ...wall(6 + out, posts), turning_room: 5 })).toEqual([]);
  });

  it("is one passage, not one a panel, beside a round pen, and a wedge where a run comes in at a slant", () => {
    const near = said({ ...panels, neighbor_1: "82; 0; 60", neighbor_2: "-48; 0; -80; 70" });
    expect(near.filter((one) => one.includes("#1"))).toHaveLength(1);
    expect(near.filter((one) => /^A wedge of .* at fence nearby #2/.test(one))).toHaveLength(1);
    expect(said({ ...panels, neighbor_1: "0; 0; 60" })[0]).toMatch(/Fence nearby #1: one pen lies inside the other/);
    expect(said({ ...panels, neighbor_1: "-10; 0; 10; 0" })[0]).toMatch(/Fence nearby #1: it lies inside the arena/);
  });

  it("is a leaf that strikes the fence across a corner, a fence nearby, or the leaf of a gate beside it", () => {
    const corner = { gate_side_1: "near end", gate_at_1: 0, gate_side_2: "right side", gate_at_2: 186, gate_2: 12 };
    const strikes = "The leaf of gate 1 strikes its own fence when 90° open: swing it the other way, or take a shorter leaf.";
    const each = "The leaves of gates 1 and 2 can strike one another: hang one on its other side.";
    expect(said({ ...panels, ...corner })).toEqual([strikes, each]);
    expect(said({ ...panels, gate_at_1: 0 })).toEqual([strikes]);
    expect(said({ ...panels, gate_at_1: 0, gate_hand: "left" })).toEqual([]);
    const beside = { ...posts, leaf_1: 10, leaf_2: 10, gate_side_2: "near end", gate_at_1: 40, gate_at_2: 51.5, gate_hand: "left" };
    expect(said({ ...beside }).filter((one) => one.includes("strike one another"))).toHaveLength(0);
    const wall = { neighbor_1: "-50; -105; 50; -105" };
    expect(said({ ...posts, ...wall, gate_swing: "out", turning_room: 1 })[0]).toMatch(/leaf of gate 1 strikes fence nearby #1 when \d/);
    expect(said({ ...posts, ...wall, gate_swing: "in", turning_room: 1 })).toEqual([]);
  });
}); // prettier-ignore
