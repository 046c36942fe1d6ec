import fc from "fast-check";
import { cutLists, type CutList } from "../../src/estimate/cut-list";
import { estimate } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { isPosted, penOf } from "../../src/estimate/pen";
import { postWork, type PostWork } from "../../src/estimate/post-work";
import { examplePrices } from "../../src/estimate/prices";
import { Refusal } from "../../src/units/refusal";
import { randomPostArena, randomPostJob } from "./random-job";

const job = (answers: Job): Job => ({ ...newJob(), structure: "post pen", ...answers });
const listsOf = (answers: Job) => cutLists(job(answers), estimate(job(answers), examplePrices).work!);

const total = (all: readonly number[]) => all.reduce((sum, one) => sum + one, 0);
const piecesOf = ({ cuts }: CutList) => total(cuts.map(({ count, pieces }) => count * total(pieces.map((piece) => piece.count)))); // prettier-ignore

function workOf(some: Job): PostWork | undefined {
  try {
    const pen = penOf(some);
    return isPosted(pen) ? postWork(some, pen) : undefined;
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
}

describe("a cut list", () => {
  it("says of every length of stock its pieces and what is left, as many as are bought before waste, over random jobs", () => {
    let held = 0;
    fc.assert(
      fc.property(fc.oneof(randomPostJob, randomPostArena), (some) => {
        const work = workOf(some);
        if (!work) return;
        const lists = cutLists(some, work);
        const takeoffs = [work.rails, ...(work.kick ? [work.kick] : [])];
        expect(lists).toHaveLength(takeoffs.length);
        lists.forEach((list, k) => {
          const { stock, cut, pieces } = takeoffs[k];
          expect(list.stock).toBe(stock);
          expect(total(list.cuts.map(({ count }) => count))).toBe(cut);
          expect(piecesOf(list)).toBe(pieces);
          for (const { pieces: some, left } of list.cuts) {
            const used = total(some.map(({ count, length }) => count * length));
            // Pieces that print alike stand under the first of them, each within a sixteenth of an inch of it.
            expect(Math.abs(used + left - stock)).toBeLessThan(
              total(some.map(({ count }) => count)) / 16 / 12,
            );
            expect(left).toBeGreaterThanOrEqual(0);
          }
          held++;
        });
      }),
      { numRuns: 80 },
    );
    expect(held).toBeGreaterThan(20);
  });

  it("cuts one bay a piece of 2x on a pen's curve, both ends off square by half the angle of a bay", () => {
    const [rails, ...others] = listsOf({ leaf_1: null, rail_length: 16 });
    expect(others).toEqual([]);
    // 26 bays in 4 rows, two to a length. Inside 6 in posts the long face of a bay is 2 (33 - 1/4) sin(pi / 26).
    const long = 2 * (33 - 3 / 12) * Math.sin(Math.PI / 26);
    expect(rails).toMatchObject({ of: "rails", size: "2x6 board", stock: 16, cut: 52, pieces: 104, straight: false });
    expect(rails.cuts).toEqual([{ count: 52, pieces: [{ count: 2, length: expect.closeTo(long, 9) }], left: expect.closeTo(16 - 2 * long, 9) }]);
    expect(rails.bends.map(({ bends }) => bends)).toEqual([false]);
    const short = long - 2 * (1.5 / 12) * Math.tan(Math.PI / 26);
    expect(rails.beveled).toEqual([{ long: expect.closeTo(long, 9), short: expect.closeTo(short, 9), bevel: expect.closeTo(180 / 26, 9) }]);
  }); // prettier-ignore

  it("lets stock that bends run over several bays, and says so", () => {
    const [rails] = listsOf({ leaf_1: null, rail_stock: "1x6 board", rail_length: 16, size: 100 });
    expect(rails.bends.map(({ bends }) => bends)).toEqual([true]);
    expect(rails.beveled).toEqual([]);
    expect(rails.cuts.some(({ pieces }) => pieces[0].length > 15)).toBe(true);
  });

  it("lists the kick board by itself, and knows straights from curves in an arena", () => {
    const arena = { structure: "post arena", corner_radius: 20, kick_board: "2x10" };
    const [rails, kick] = listsOf(arena);
    expect([kick.of, kick.size]).toEqual(["kick board", "2x10"]);
    expect([rails.straight, rails.bends.length, rails.beveled.length]).toEqual([true, 1, 1]);
    const [square] = listsOf({ ...arena, corner_radius: 0 });
    expect([square.straight, square.bends, square.beveled]).toEqual([true, [], []]);
  });
});
