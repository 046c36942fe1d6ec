import { pricedAlternates } from "../../src/estimate/alternates";
import { estimate, totalOf } from "../../src/estimate/estimate";
import { fieldOf } from "../../src/estimate/fields";
import { newJob, type Job } from "../../src/estimate/job";
import { messages } from "../../src/estimate/messages";
import { examplePrices } from "../../src/estimate/prices";
import { together } from "../../src/estimate/together";

const job = newJob();
const priceOf = (one: Job) => totalOf(estimate(one, examplePrices)) as number;
const own = [{ key: "own_subcontract_1", quantity: 1, price: 400, taxed: false }];

describe("alternates of a job", () => {
  it("are priced by pricing the whole job again", () => {
    const alternates: { name: string; answers: Job }[] = [
      { name: "A wider gate", answers: { gate_1: 12 } },
      { name: "Deeper sand", answers: { depth: 4 } },
      { name: "No sand", answers: { depth: 0 } },
    ];
    const priced = pricedAlternates({ job }, alternates, examplePrices);
    expect(priced.map(({ name }) => name)).toEqual(["A wider gate", "Deeper sand", "No sand"]);
    alternates.forEach(({ answers }, k) => {
      const price = priceOf({ ...job, ...answers });
      expect(priced[k].price).toBe(price);
      expect(priced[k].difference).toBeCloseTo(price - priceOf(job), 6);
    });
    expect(priced[1].difference).toBeGreaterThan(0);
    expect(priced[2].difference).toBeLessThan(0);
  });

  it("keep the user's own lines and counts on both sides of the difference", () => {
    const counted = { ...job, stakes_use: 40 };
    const [same] = pricedAlternates(
      { job: counted, own },
      [{ name: "The same", answers: {} }],
      examplePrices,
    );
    expect(same).toEqual({
      name: "The same",
      price: totalOf(estimate(counted, examplePrices, own)),
      difference: 0,
    });
  });

  it("add a second pen for less than it costs alone, since loads and the mobilization are shared", () => {
    const beside = { job: { ...job, size: 40 } };
    const [second] = pricedAlternates({ job }, [{ name: "A second pen", beside }], examplePrices);
    expect(second.price).toBe(totalOf(together([{ job }, beside], examplePrices)));
    expect(second.difference).toBeGreaterThan(0);
    expect(second.difference).toBeLessThan(priceOf(beside.job));
  });

  it("without an answer say why, each for itself", () => {
    const [tooLong, outside, differing, fine] = pricedAlternates(
      { job },
      [
        { name: "Gates alone", answers: { size: 8, gate_1: 40 } },
        { name: "Too deep", answers: { depth: 90 } },
        { name: "Another pit", beside: { job: { ...job, sand_unit: "cu yd" } } },
        { name: "Deeper sand", answers: { depth: 4 } },
      ],
      examplePrices,
    );
    expect(tooLong).toMatchObject({ price: null, difference: null });
    expect(tooLong.refusal).toBeTruthy();
    expect(outside.refusal).toBe(`${fieldOf("depth").label.en}: ${messages.within(fieldOf("depth"))}`);
    expect(differing.refusal).toBe(messages.answersDiffer([fieldOf("sand_unit").label.en]));
    expect(fine.refusal).toBeUndefined();
  });

  it("wait for missing prices as the job itself does", () => {
    const without = examplePrices.filter(({ item, size }) => item !== "gate" || size !== 12);
    const [wider] = pricedAlternates({ job }, [{ name: "A wider gate", answers: { gate_1: 12 } }], without);
    expect(wider).toEqual({
      name: "A wider gate",
      price: null,
      difference: null,
      refusal: "1 price missing",
    });
  });
});
