import fc from "fast-check";
import { estimate, totalOf } from "../../src/estimate/estimate";
import { newJob, type Job } from "../../src/estimate/job";
import { noOwnMix, panelMixes } from "../../src/estimate/panel-mixes";
import { panelPen } from "../../src/estimate/panel-pen";
import { examplePrices } from "../../src/estimate/prices";
import { onHandSentence } from "../../src/estimate/sentences";
import { Refusal } from "../../src/units/refusal";
import { randomPanelJob, randomPrices } from "./random-job";

const job = (answers: Partial<Job>): Job => ({ ...newJob(), ...answers }) as Job;
const mixes = (answers: Partial<Job>) => panelMixes(job(answers), examplePrices);
const counts = (found: ReturnType<typeof mixes>) => found.best.map(({ pen }) => pen.counts.slice(0, 2));

describe("the best mixes of panels", () => {
  it("are three, the first the one that the job takes by itself, each nearer to the size than the next", () => {
    const { best } = mixes({ panel_2: 10 });
    expect(best).toHaveLength(3);
    expect(best[0].pen).toEqual(panelPen(job({ panel_2: 10 })));
    expect(best.map(({ isNow }) => isNow)).toEqual([true, false, false]);
    const off = best.map(({ pen }) => Math.abs(pen.distanceAround / Math.PI - 66));
    expect(off).toEqual([...off].sort((a, b) => a - b));
  });

  it("are the same whatever counts the user set, and say which of them the job has", () => {
    const [, second] = mixes({ panel_2: 10 }).best;
    const used = mixes({ panel_2: 10, ...second.answers });
    expect(counts(used)).toEqual(counts(mixes({ panel_2: 10 })));
    expect(used.best.map(({ isNow }) => isNow)).toEqual([false, true, false]);
  });

  it("make the job the pen and the price that they tell, over random jobs and prices", () => {
    let told = 0;
    fc.assert(
      fc.property(randomPanelJob, randomPrices, (random, prices) => {
        const own = [{ key: "own_fence_1", quantity: 2, price: 35.25, taxed: true }];
        let found;
        try {
          found = panelMixes(random, prices, own);
        } catch (refusal) {
          if (refusal instanceof Refusal) return;
          throw refusal;
        }
        for (const { answers, pen, price } of [...found.best, found.fewer, found.more].filter(
          (one) => !!one,
        )) {
          const made = estimate({ ...random, ...answers }, prices, own);
          expect(made.pen).toEqual(pen);
          expect(totalOf(made)).toBe(price);
          told++;
        }
        // A mix that the fence by other does not fit is not told.
        if (found.best.length === 0 || random.fence_by_other !== null) return;
        const byItself = panelPen({ ...random, ...found.best[0].answers, ...noOwnMix });
        expect(byItself).toEqual(found.best[0].pen);
      }),
      { numRuns: 150 },
    );
    expect(told).toBeGreaterThan(100);
  });

  it("keep to the panels on hand where no others are used, and tell what is left of them", () => {
    const hand = { panel_2: 10, panel_1_stock: 9, panel_2_stock: 30, beyond_stock: "not used" };
    const { best } = mixes(hand);
    for (const { pen } of best) expect(pen.counts[0]).toBeLessThanOrEqual(9);
    expect(onHandSentence(best[0].pen)).toMatch(/left over/);
    expect(mixes({ ...hand, ...best[0].answers, panel_1_use: 9 }).more).toBeUndefined();
  });

  it("are offered although the counts that the user set close nothing", () => {
    const found = mixes({ panel_1_use: 1 });
    expect(found.best[0].pen.counts[0]).toBe(17);
    expect([found.fewer, found.more]).toEqual([undefined, undefined]);
  });

  it("say why nothing closes", () => {
    expect(() => mixes({ gate_1: 40, size: 9 })).toThrow(/gates? alone/);
    expect(() => mixes({ panel_1_stock: 1, beyond_stock: "not used" })).toThrow(/close no pen/);
  });
});

describe("the pens beside the one that the job has", () => {
  it("have one panel of the first length fewer and more, and another price", () => {
    const now = panelPen(job({}));
    const { best, fewer, more } = mixes({});
    expect([fewer!.pen.pinCircle, more!.pen.pinCircle]).toEqual([now.oneUnder, now.oneOver]);
    expect(Number(fewer!.price)).toBeLessThan(Number(best[0].price));
    expect(Number(more!.price)).toBeGreaterThan(Number(best[0].price));
    const next = panelMixes(job({ ...more!.answers }), examplePrices);
    expect(next.fewer!.pen.counts).toEqual(now.counts);
  });

  it("are none where a panel fewer leaves none", () => {
    const none = { panel_2: 10, panel_1_use: 0, panel_2_use: 20 };
    expect(mixes(none).fewer).toBeUndefined();
  });

  it("keep the counts of other lines that the user set", () => {
    const { answers } = mixes({ stakes_use: 50 }).more!;
    const made = estimate(job({ stakes_use: 50, ...answers }), examplePrices);
    expect(mixes({ stakes_use: 50 }).more!.price).toBe(totalOf(made));
  });
});
