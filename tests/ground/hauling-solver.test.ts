import fc from "fast-check";
import loadHighs, { type Highs } from "highs";
import { loads, type Truck } from "../../src/ground/hauling";
import { costOf, deliveredBy, jobs, loadsOf, type Job } from "./jobs";

/** The least of an objective over whole counts, by a general integer solver; volumes count in quarter yards. */
function least(highs: Highs, objective: string[], constraints: string[], whole: readonly string[]): number {
  const problem = `Minimize\n obj: ${objective.join(" + ")}\nSubject To\n${constraints.map((one, k) => ` c${k}: ${one}`).join("\n")}\nGeneral\n ${whole.join(" ")}\nEnd\n`;
  const solution = highs.solve(problem, { mip_rel_gap: 0, mip_abs_gap: 0 });
  if (solution.Status !== "Optimal") throw new Error(`${solution.Status}: ${problem}`);
  return solution.ObjectiveValue;
}

const sum = (trucks: readonly Truck[], factor: (truck: Truck) => number) =>
  trucks.map((truck, k) => `${factor(truck)} n${k}`);

/** Least cost, then fewest loads at that cost, then the least distance from the need, each by a solve of its own. */
function solved(highs: Highs, { need, trucks, short }: Job): { cost: number; loads: number; miss: number } {
  const whole = trucks.map((_, k) => `n${k}`);
  const cost = sum(trucks, ({ price = 1 }) => price);
  const count = sum(trucks, () => 1);
  const volume = sum(trucks, ({ size }) => size * 4).join(" + ");
  const enough = `${volume} >= ${Math.ceil(need * 4 * (1 - short / 100) - 1e-9)}`;
  const cheapest = Math.round(least(highs, cost, [enough], whole));
  const atCost = [enough, `${cost.join(" + ")} <= ${cheapest}`];
  const fewest = Math.round(least(highs, count, atCost, whole));
  const nearest = [...atCost, `${count.join(" + ")} <= ${fewest}`, `${volume} - miss <= ${need * 4}`, `${volume} + miss >= ${need * 4}`];
  return { cost: cheapest, loads: fewest, miss: Math.round(least(highs, ["miss"], nearest, whole)) / 4 };
} // prettier-ignore

test("500 random jobs are loaded as well as a general integer solver loads them", async () => {
  const highs = await loadHighs();
  const random = fc.sample(jobs(400, 4), { numRuns: 500, seed: 42 });
  for (const job of random) {
    const counts = loads(job.need, job.trucks, job.short);
    expect({
      cost: costOf(job.trucks, counts),
      loads: loadsOf(counts),
      miss: Math.abs(deliveredBy(job.trucks, counts) - job.need),
    }).toEqual(solved(highs, job));
  }
  expect(random).toHaveLength(500);
});
