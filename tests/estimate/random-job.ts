import fc from "fast-check";
import { newJob, type Job } from "../../src/estimate/job";
import { profitKinds, purposes, sandUnits, sizeMeanings, slotKeys } from "../../src/estimate/fields";
import { allOwnKeys } from "../../src/estimate/own-lines";
import { examplePrices, type PriceRow } from "../../src/estimate/prices";

const halves = (least: number, most: number) =>
  fc.integer({ min: least * 2, max: most * 2 }).map((n) => n / 2);
const maybe = <T>(some: fc.Arbitrary<T>, freq = 2) => fc.option(some, { freq });
const slotted = (
  list: "panel" | "gate" | "truck",
  first: fc.Arbitrary<number | null>,
  others: fc.Arbitrary<number | null>,
) => Object.fromEntries(slotKeys(list).map((key, k) => [key, k === 0 ? first : others]));
const uses = (keys: string[], most: number) =>
  Object.fromEntries(
    keys
      .map((key) => [`${key}_use`, fc.option(fc.integer({ min: 0, max: most }), { freq: 6 })])
      .map(([key, use]) => [key, (use as fc.Arbitrary<number | null>).map((n) => n ?? null)]),
  );

/** Jobs of every kind that the estimate takes; not all of them have an answer. */
export const randomJob: fc.Arbitrary<Job> = fc
  .record({
    size: halves(30, 150),
    size_means: fc.constantFrom(...sizeMeanings),
    purpose: fc.constantFrom(...purposes),
    pin_gap: fc.constantFrom(0, 0.5, -1, 1.25),
    budget: maybe(fc.integer({ min: 500, max: 20_000 })),
    ...slotted(
      "panel",
      halves(6, 20),
      maybe(halves(4, 20), 3).map((x) => x ?? null),
    ),
    ...slotted("gate", maybe(halves(4, 14)), maybe(halves(4, 14), 4)),
    ...slotted("truck", maybe(halves(5, 20), 8), maybe(halves(5, 20), 2)),
    ...uses([...slotKeys("panel"), ...slotKeys("truck"), "stakes", "line", "paint"], 24),
    depth: halves(0, 8),
    overrun: fc.constantFrom(0, 5, 12.5),
    settle: fc.constantFrom(0, 10, 15),
    sand_unit: fc.constantFrom(...sandUnits),
    tons_per_cy: fc.constantFrom(1.35, 1.45, null),
    short: fc.constantFrom(0, 5, 7.5),
    line_roll: fc.constantFrom(250, 500, null),
    paint_reach: fc.constantFrom(250, 120, null),
    tax: fc.constantFrom(0, 6, 8.25),
    contingency: fc.constantFrom(0, 5, 7.5),
    overhead: fc.constantFrom(0, 10, 12.5, null),
    profit: fc.constantFrom(0, 15, 33.333, null),
    profit_kind: fc.constantFrom(...profitKinds),
  })
  .map((answers) => ({ ...newJob(), ...answers }) as Job);

/** A line of the user's own as it is typed into the sheet. */
export interface TypedLine {
  key: string;
  quantity: number | null;
  price: number | null;
  taxed: boolean;
}

/** The user's own lines, most of them blank. */
export const randomOwn: fc.Arbitrary<TypedLine[]> = fc.tuple(
  ...allOwnKeys.map((key) =>
    fc.record({
      key: fc.constant(key),
      quantity: maybe(fc.integer({ min: -2, max: 40 }), 1),
      price: maybe(
        fc.integer({ min: -500, max: 50_000 }).map((n) => n / 100),
        4,
      ),
      taxed: fc.boolean(),
    }),
  ),
);

/** Prices with every size a job can ask for, some missing, some doubled, some free. */
export const randomPrices: fc.Arbitrary<PriceRow[]> = fc
  .tuple(
    fc.array(fc.integer({ min: 0, max: 40_000 }), { minLength: 60, maxLength: 60 }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([amounts, gaps]) => {
    const sizes = (item: "panel" | "gate" | "haul", least: number, most: number) =>
      Array.from({ length: (most - least) * 2 + 1 }, (_, k) => ({
        ...examplePrices.find((row) => row.item === item)!,
        size: least + k / 2,
      }));
    const rows = [
      ...sizes("panel", 4, 20),
      ...sizes("gate", 4, 14),
      ...sizes("haul", 5, 20),
      ...examplePrices.filter(({ size }) => size === null),
    ];
    return rows.map((row, k) => {
      const amount = amounts[k % 60];
      const price = gaps < 0.3 && amount % 17 === 0 ? null : amount / 100;
      return {
        ...row,
        price,
        waste: amount % 5 === 0 ? 7.5 : 0,
        taxed: amount % 3 !== 0,
        example: amount % 2 === 0,
      };
    });
  });
