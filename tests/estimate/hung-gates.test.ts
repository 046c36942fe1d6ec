import fc from "fast-check";
import { estimate } from "../../src/estimate/estimate";
import { hungGates } from "../../src/estimate/hung-gates";
import { choiceOf, newJob, problemsOf, type Job } from "../../src/estimate/job";
import { penOf } from "../../src/estimate/pen";
import { piecesOnGround } from "../../src/estimate/pieces-on-ground";
import { postSizes } from "../../src/estimate/post-choices";
import { postCautions } from "../../src/estimate/post-sentences";
import { examplePrices } from "../../src/estimate/prices";
import { penSentence } from "../../src/estimate/sentences";
import { siteFindings } from "../../src/estimate/site";
import { siteSentences } from "../../src/estimate/site-sentences";
import { waysUnder } from "../../src/estimate/ways-under";
import { gateOpening } from "../../src/fence/hung-gate";
import { leafTip } from "../../src/fence/leaf-swing";
import { distance } from "../../src/geometry/point";
import { Refusal } from "../../src/units/refusal";
import { randomPostArena, randomPostJob } from "./random-job";

const job = (answers: Job = {}): Job => ({ ...newJob(), structure: "post pen", ...answers });
const openings = (answers: Job) => hungGates(job(answers)).map(({ opening }) => opening);
const counts = (answers: Job) => {
  const { takeoff } = estimate(job(answers), examplePrices);
  return Object.fromEntries(takeoff.map(({ key, counted }) => [key, counted]));
};
const found = (answers: Job) => {
  const pen = penOf(job(answers));
  return siteFindings(job(answers), pen, 180);
};

describe("gates hung on posts", () => {
  const cases: { of: Job; opening: number }[] = [
    // Common practice, no source: 4 in of room for hinges and latch together, half of it the hinges', 3 in of lap.
    { of: {}, opening: 10 + 4 / 12 },
    { of: { gates_of_two: 1 }, opening: 20 + (2 + 2 + 2) / 12 },
    { of: { gates_of_two: 1, gate_room: 3.75, hinge_room: 0.75 }, opening: 20 + (0.75 + 0.75 + 3) / 12 },
    { of: { gates_on_face: 1 }, opening: 10 - 6 / 12 },
    { of: { gates_on_face: 1, gates_of_two: 1, gate_lap: 2 }, opening: 20 + (2 - 2 * 2) / 12 },
    { of: { gates_of_two: 2, gates_on_face: "2; 3" }, opening: 10 + 4 / 12 },
    { of: { gate_room: 3, hinge_room: 8, gates_of_two: 1 }, opening: 20 + (3 + 3 + 0) / 12 },
  ];

  it.each(cases)("leave an opening by their leaves, room and lap: $of", ({ of, opening }) => {
    expect(problemsOf(job(of))).toEqual({});
    expect(openings(of)).toEqual([expect.closeTo(opening, 12)]);
  });

  it("are held to seven openings by hand", () => expect(cases).toHaveLength(7));

  it("stand between posts that are the opening and a post apart, over random jobs", () => {
    fc.assert(
      fc.property(fc.oneof(randomPostJob, randomPostArena), (some) => {
        const pen = answered(() => penOf(some));
        if (!pen) return;
        const post = postSizes[choiceOf(some, "gate_post")].width / 12;
        const stand = piecesOnGround(pen, 0).filter(({ kind }) => kind === "gate");
        const gates = hungGates(some);
        expect(stand.map(({ hung }) => hung!.place).sort()).toEqual(gates.map(({ place }) => place));
        for (const { hung, from, to } of stand) {
          expect(hung!.opening).toBe(gateOpening(hung!));
          expect(distance(from, to)).toBeCloseTo(hung!.opening + post, 9);
        }
      }),
      { numRuns: 60 },
    );
  }); // prettier-ignore

  it("count every leaf, a drop rod where there are two, and hinges and latches where they are bought apart", () => {
    const two = { leaf_1: 8, leaf_2: 6, gates_of_two: 1 };
    expect(counts(two)).toMatchObject({ leaf_1: 2, leaf_2: 1, hinges: null, latches: null, drop_rods: 1 });
    expect(counts({ ...two, gate_hardware: "bought apart" })).toMatchObject({ hinges: 3, latches: 2, drop_rods: 1 }); // prettier-ignore
    const shared = { ...two, gate_hardware: "bought apart", gates_by_other: 1 };
    expect(counts(shared)).toMatchObject({ leaf_1: 0, leaf_2: 1, hinges: 1, latches: 1, drop_rods: null });
    expect(counts(shared).gate_posts).toBe(2);
    expect(counts({ leaf_1: 8 }).drop_rods).toBeNull();
  });

  it("are said with the leaves of each", () => {
    const two = { leaf_1: 8, leaf_2: 8, leaf_3: 6, gates_of_two: "1; 2" };
    expect(penSentence(penOf(job(two)))).toContain("one 6 ft gate and two gates of two 8 ft leaves:");
  });

  it("ask of a post what one leaf weighs: two of 8 ft where one of 16 ft is too much", () => {
    const cautions = (answers: Job) =>
      postCautions(job(answers), estimate(job(answers), examplePrices).work!).join(" ");
    const post = { gate_post: "6 in round" };
    expect(cautions({ ...post, leaf_1: 16 })).toMatch(/6 in post is marginal for a leaf of 16 ft/);
    expect(cautions({ ...post, leaf_1: 8, gates_of_two: 1 })).toBe("");
  });

  it("give way to panels that close the opening of both leaves", () => {
    const ways = waysUnder(job({ leaf_1: 4, gates_of_two: 1 }), examplePrices);
    const panels = ways.find(({ words }) => words === "a panel pen")!;
    expect(panels.made!.pen.gates).toEqual([8]);
  });
});

describe("the leaves of a gate", () => {
  it("are two from either post, whose tips meet over the latch room and strike nothing", () => {
    const { leaves } = found({ leaf_1: 8, gates_of_two: 1 });
    expect(leaves.map(({ gate }) => gate)).toEqual([1, 1]);
    const [right, left] = leaves.map(({ leaf }) => leaf);
    expect(distance(leafTip(right, 0), leafTip(left, 0))).toBeCloseTo(2 / 12, 9);
    expect(leaves.every(({ own, neighbors, gates }) => own === undefined && neighbors.length + gates.length === 0)).toBe(true); // prettier-ignore
  });

  it("reach half as far as one leaf, so that a wall that one strikes is out of their way", () => {
    const wall = { neighbor_1: "-50; -43; 50; -43", gate_swing: "out" };
    const said = (answers: Job) => siteSentences(found({ ...wall, ...answers }), 1).join();
    expect(said({ leaf_1: 16 })).toMatch(/leaf of gate 1 strikes fence nearby #1/);
    expect(said({ leaf_1: 8, gates_of_two: 1 })).not.toMatch(/leaf/);
  });

  it("say once what both strike alike, by the number of their gate in the estimate", () => {
    const wall = { neighbor_1: "-50; -38; 50; -38", gate_swing: "out" };
    const said = siteSentences(found({ ...wall, leaf_1: null, leaf_2: 8, gates_of_two: 2 }), 1).filter(
      (one) => /leaf/.test(one),
    );
    expect(said).toEqual([expect.stringMatching(/leaf of gate 2 strikes fence nearby #1/)]);
  });

  it.each(["in", "out"])("turn on the face of the posts where they hang on it, swung %s", (gate_swing) => {
    const answers = { leaf_1: 10, gates_on_face: 1, gate_post: "8x8", gate_swing };
    const [{ leaf }] = found(answers).leaves;
    const gate = piecesOnGround(penOf(job(answers)), 180).find(({ kind }) => kind === "gate")!;
    const off = Math.hypot(leaf.hinge.east - gate.from.east, leaf.hinge.north - gate.from.north);
    // American Softwood Lumber Standard PS 20: an 8x8 is 7 1/4 in at least. Half of it off the line, and a lap back from its edge.
    expect(off).toBeCloseTo(Math.hypot(7.25 / 2, 7.25 / 2 - 3) / 12, 9);
    const radius = ({ east, north }: { east: number; north: number }) => Math.hypot(east, north);
    expect(Math.sign(radius(leaf.hinge) - radius(gate.from))).toBe(gate_swing === "in" ? -1 : 1);
    const closed = leafTip(leaf, 0);
    expect(radius(leafTip(leaf, 90)) < radius(closed)).toBe(gate_swing === "in");
  });
});

function answered<T>(ask: () => T): T | undefined {
  try {
    return ask();
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}
