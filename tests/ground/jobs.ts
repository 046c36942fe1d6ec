import fc from "fast-check";
import { type Truck } from "../../src/ground/hauling";

/** A hauling job. Sizes and need come in quarter yards and prices in whole dollars, so that a solver meets them exactly. */
export interface Job {
  need: number;
  trucks: Required<Truck>[] | Truck[];
  short: number;
}

const quarters = (least: number, most: number) =>
  fc.integer({ min: least * 4, max: most * 4 }).map((x) => x / 4);

/** Random jobs of one to so many trucks, every other one with prices. */
export const jobs = (mostNeed: number, mostTrucks: number): fc.Arbitrary<Job> =>
  fc.boolean().chain((priced) =>
    fc.record({
      need: quarters(1, mostNeed),
      trucks: fc.array(
        fc
          .record({ size: quarters(3, 24), price: fc.integer({ min: 60, max: 600 }) })
          .map(({ size, price }) => (priced ? { size, price } : { size })),
        { minLength: 1, maxLength: mostTrucks },
      ),
      short: fc.constantFrom(0, 0, 4, 5, 12.5),
    }),
  );

/** What a way costs, where a load without a price costs 1. */
export const costOf = (trucks: readonly Truck[], counts: readonly number[]) =>
  trucks.reduce((sum, { price = 1 }, k) => sum + price * counts[k], 0);

/** The cubic yards that a way delivers. */
export const deliveredBy = (trucks: readonly Truck[], counts: readonly number[]) =>
  trucks.reduce((sum, { size }, k) => sum + size * counts[k], 0);

/** The number of loads of a way. */
export const loadsOf = (counts: readonly number[]) => counts.reduce((sum, count) => sum + count, 0);
