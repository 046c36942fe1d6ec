import fc from "fast-check";
import { newJob, numbersOf, problemsOf, readField, type Job } from "../../src/estimate/job";
import { estimate } from "../../src/estimate/estimate";
import { fieldOf } from "../../src/estimate/fields";
import { examplePrices } from "../../src/estimate/prices";
import { penOf, type RoundPen } from "../../src/estimate/pen";
import { piecesOnGround } from "../../src/estimate/pieces-on-ground";
import { gatePlaceOf, neighborsOf, placed, siteFindings } from "../../src/estimate/site";
import { byOtherSentences, siteSentences } from "../../src/estimate/site-sentences";
import { stakesOnGround } from "../../src/estimate/stakes-on-ground";
import { TURNING_ROOM } from "../../src/fence/turning-room";
import { wedgesBetween } from "../../src/fence/wedges";
import { numbersAsCell } from "../../src/units/number-list";
import { distance } from "../../src/geometry/point";

const job = (more: Job = {}): Job => ({ ...newJob(), ...more });
const set = (one: Job) => placed(one, penOf(one), laid(one));
const laid = (one: Job) => (bearing: number) => stakesOnGround(penOf(one), bearing);
const found = (one: Job) => {
  const pen = penOf(one);
  return siteFindings(one, pen, set(one).bearing);
};
const sentences = (one: Job) => siteSentences(found(one), TURNING_ROOM);

describe("numbers that a job holds", () => {
  it("are read, kept as a text, and refused where there are too many, too few or too large ones", () => {
    const field = fieldOf("neighbor_1");
    expect(readField(field, "80, 0, 60")).toBe("80; 0; 60");
    expect(numbersOf(job({ neighbor_1: "80; 0; 60" }), "neighbor_1")).toEqual([80, 0, 60]);
    for (const bad of ["80; 0", "80; 0; 60; 1; 2", "80; 0; 6000", "a"])
      expect(problemsOf(job({ neighbor_1: bad })).neighbor_1).toMatch(/Write|write|Allowed/);
  });

  it("are a round fence by its center and size, or a straight one by its ends", () => {
    expect(neighborsOf(job({ neighbor_1: "80; 0; 60", neighbor_2: "1; 2; 3; 4" }))).toEqual([
      { center: { east: 80, north: 0 }, diameter: 60 },
      { from: { east: 1, north: 2 }, to: { east: 3, north: 4 } },
    ]);
    expect(neighborsOf(job())).toEqual([]);
  });
});

describe("a pen set from its gate", () => {
  it("puts the gate's ends on the places told, wherever they are and whatever the pen", () => {
    fc.assert(
      fc.property(
        fc.constantFrom<Job>({}, { gate_2: 6 }, { structure: "post pen" }, { structure: "post pen", leaf_2: 4 }),
        fc.double({ min: -300, max: 300, noNaN: true }),
        fc.double({ min: 0, max: 360, noNaN: true }),
        (more, east, turn) => {
          const first = laid(job(more))(0)[1].chord;
          const angle = (turn * Math.PI) / 180;
          const [right, left] = [
            [east, 40],
            [east + first * Math.sin(angle), 40 + first * Math.cos(angle)],
          ];
          const one = job({ ...more, gate_right: numbersAsCell(right), gate_left: numbersAsCell(left) });
          const { stakes, center, bearing } = set(one);
          const at = ({ east, north }: { east: number; north: number }) => [east + center!.east, north + center!.north];
          expect(at(stakes[0])).toEqual([expect.closeTo(right[0], 5), expect.closeTo(right[1], 5)]);
          expect(at(stakes[1])).toEqual([expect.closeTo(left[0], 5), expect.closeTo(left[1], 5)]);
          // Facing the pen from outside, the first post is on the right.
          const across = (stakes[1].east - stakes[0].east) * stakes[0].north - (stakes[1].north - stakes[0].north) * stakes[0].east;
          expect(across).toBeGreaterThan(0);
          expect(bearing).toBeGreaterThanOrEqual(0);
        },
      ),
      { numRuns: 60 },
    );
  }); // prettier-ignore

  it("refuses places that are not the gate's width apart and says how far they are", () => {
    const one = job({ gate_right: "0; 0", gate_left: "9; 0" });
    expect(() => set(one)).toThrow(/9' apart and the gate is 8'/);
  });

  it("is laid out by its bearing where only one of the two places is told", () => {
    expect(gatePlaceOf(job({ gate_right: "0; 0" }))).toBeUndefined();
    expect(set(job({ gate_right: "0; 0" })).bearing).toBe(180);
  });
});

describe("what is wrong on a site", () => {
  it("is nothing where nothing is near and the gates open freely", () => {
    expect(sentences(job({ gate_2: 6 }))).toEqual([]);
  });

  it("names the wedges beside a round pen that touches, and beside a run of fence, as the geometry finds them", () => {
    const one = job();
    const { outside } = penOf(one) as RoundPen;
    const near = job({ neighbor_1: `${outside / 2 + 30}; 0; 60`, neighbor_2: `-${outside / 2 + 4}; -80; -${outside / 2 + 4}; 80` });
    const { wedges } = found(near);
    expect(wedges.map(({ neighbor, wedge }) => [neighbor, wedge.passage])).toEqual([[1, false], [1, false], [2, true]]);
    expect(wedges.slice(0, 2).map(({ wedge }) => wedge)).toEqual(
      wedgesBetween({ center: { east: 0, north: 0 }, diameter: outside }, neighborsOf(near)[0]),
    );
    const said = sentences(near);
    expect(said[0]).toMatch(/^A wedge of .* at fence nearby #1 .*Close it off/);
    expect(said[2]).toMatch(/^The passage along fence nearby #2 narrows to 4': a horse needs 10' to turn/);
    expect(sentences({ ...near, turning_room: 3 })).toHaveLength(2);
  }); // prettier-ignore

  it("says that a gate that swings out strikes the fence before it, and one that swings in does not", () => {
    const wall = "-50; -37; 50; -37";
    expect(sentences(job({ neighbor_1: wall, gate_swing: "out" })).join()).toMatch(
      /leaf of gate 1 strikes fence nearby #1 when \d+(\.\d)?° open/,
    );
    expect(sentences(job({ neighbor_1: wall, gate_swing: "in" })).join()).not.toMatch(/leaf/);
  });

  it("says that leaves of gates side by side strike one another or the fence across", () => {
    const tight = job({ panel_1: 4, panel_1_use: 2, gate_1: 12, gate_2: 12, gate_3: 12 });
    expect(sentences(tight).join()).toMatch(/strike one another/);
    const pieces = piecesOnGround(penOf(tight), 180);
    expect(Math.max(...pieces.map(({ from, to }) => distance(from, to)))).toBeCloseTo(12, 9);
  });

  it("says of a pen inside another that it cannot tell", () => {
    expect(sentences(job({ neighbor_1: "5; 0; 300" }))[0]).toMatch(
      /Fence nearby #1: one pen lies inside the other/,
    );
    const spanish = siteSentences(found(job({ neighbor_1: "5; 0; 300" })), 10, "es");
    expect(spanish[0]).toMatch(/Cerca vecina #1/);
  });
});

describe("gates by other", () => {
  const prices = examplePrices;
  const counts = (one: Job) =>
    Object.fromEntries(estimate(one, prices).takeoff.map(({ key, counted }) => [key, counted]));

  it("are counted neither themselves nor by their posts, and take no hours", () => {
    const own = job({ structure: "post pen", leaf_1: 10, leaf_2: 6 });
    const shared = { ...own, gates_by_other: 2 };
    const [all, ours] = [counts(own), counts(shared)];
    expect([all.leaf_1, all.leaf_2, ours.leaf_1, ours.leaf_2]).toEqual([1, 1, 1, 0]);
    expect(ours.gate_posts).toBe(all.gate_posts! - 2);
    expect(ours.line_posts).toBe(all.line_posts);
    expect(ours.holes).toBe(all.holes! - 2);
    expect(ours.labor!).toBeLessThan(all.labor!);
  });

  it("leave the pen as it is", () => {
    const own = job({ gate_2: 6 });
    expect(penOf({ ...own, gates_by_other: "1; 2" })).toEqual(penOf(own));
  });

  it("are said by the number that they have in the estimate, in both languages", () => {
    const shared = job({ gate_3: 6, gates_by_other: "2; 3" });
    expect(byOtherSentences(shared, penOf(shared))).toEqual([
      "Gate 3 of the estimate, 6', and its posts are by other.",
    ]);
    expect(byOtherSentences(shared, penOf(shared), "es")).toEqual([
      "La puerta 3 del presupuesto, 6', va por otro, con sus postes.",
    ]);
    expect(byOtherSentences(job(), penOf(job()))).toEqual([]);
  });
});
