import fc from "fast-check";
import { newJob, type Job } from "../../src/estimate/job";
import {
  beyondStock,
  fieldOf,
  profitKinds,
  purposes,
  bulkUnits,
  sizeMeanings,
  slotKeys,
  type SlotList,
} from "../../src/estimate/fields";
import { type Structure } from "../../src/estimate/structures";
import { allOwnKeys, lineSectionsOf, sectionOfOwn } from "../../src/estimate/own-lines";
import { structureOf } from "../../src/estimate/job";
import {
  examplePrices,
  priceKinds,
  unpricedRow,
  type PriceKind,
  type PriceRow,
} from "../../src/estimate/prices";
import { POST_LENGTHS } from "../../src/fence/post-depth";
import { STOCK_LENGTHS } from "../../src/fence/rails";

const halves = (least: number, most: number) =>
  fc.integer({ min: least * 2, max: most * 2 }).map((n) => n / 2);
const maybe = <T>(some: fc.Arbitrary<T>, freq = 2) => fc.option(some, { freq });
const slotted = (list: SlotList, first: fc.Arbitrary<number | null>, others: fc.Arbitrary<number | null>) =>
  Object.fromEntries(slotKeys(list).map((key, k) => [key, k === 0 ? first : others]));
const uses = (keys: string[], most: number) =>
  Object.fromEntries(
    keys
      .map((key) => [`${key}_use`, fc.option(fc.integer({ min: 0, max: most }), { freq: 6 })])
      .map(([key, use]) => [key, (use as fc.Arbitrary<number | null>).map((n) => n ?? null)]),
  );

/** The answers that a job of panels has alone. */
const panelAnswers = {
  pin_gap: fc.constantFrom(0, 0.5, -1, 1.25),
  hours_panel: fc.constantFrom(0.25, 0.3, null),
  ...slotted(
    "panel",
    halves(6, 20),
    maybe(halves(4, 20), 3).map((x) => x ?? null),
  ),
  ...slotted("gate", maybe(halves(4, 14)), maybe(halves(4, 14), 4)),
  ...uses(slotKeys("panel"), 24),
};

/** The answers that a round pen of panels has alone. */
const panelFrameAnswers = {
  panel_thickness: fc.constantFrom(0, 1.75, 2, null),
  beyond_stock: fc.oneof(
    { weight: 7, arbitrary: fc.constantFrom(beyondStock[0], null) },
    fc.constant(beyondStock[1]),
  ),
  frame_less_opening: fc.constantFrom(4, 0, 5.5, null),
  bow_height: fc.constantFrom(8, 9.5, null),
  ...Object.fromEntries(
    slotKeys("panel").map((key) => [
      `${key}_stock`,
      fc.option(fc.integer({ min: 0, max: 40 }), { freq: 2 }).map((n) => n ?? null),
    ]),
  ),
};

const choice = (key: string) => fc.constantFrom(...fieldOf(key).options!, null);

/** The answers that an arena has alone: where its gates stand among them. */
const arenaAnswers = {
  arena_length: halves(60, 300),
  arena_width: halves(50, 200),
  ...Object.fromEntries(
    [1, 2, 3, 4].flatMap((place) => [
      [`gate_side_${place}`, choice(`gate_side_${place}`)],
      [`gate_at_${place}`, maybe(halves(0, 60), 1).map((x) => x ?? null)],
    ]),
  ),
};

/** The answers that a job of posts has alone. */
const postAnswers = {
  spacing: halves(4, 12),
  hours_post: fc.constantFrom(0.5, 0.6, null),
  hours_rail: fc.constantFrom(0.02, 0.015, null),
  line_post: choice("line_post"),
  gate_post: choice("gate_post"),
  rail_stock: choice("rail_stock"),
  rail_rows: fc.constantFrom(1, 3, 4, 5, null),
  rail_side: choice("rail_side"),
  rail_length: fc.constantFrom(null, null, 16, 20),
  rail_waste: fc.constantFrom(0, 5, 12.5, null),
  fastener: choice("fastener"),
  kick_board: choice("kick_board"),
  fasteners_each: fc.constantFrom(0, 2, 3, null),
  post_height: fc.constantFrom(4, 4.5, 5, 6, null),
  setting: choice("setting"),
  depth_rule: choice("depth_rule"),
  frost: fc.constantFrom(0, 0, 30, 42, null),
  room_round: fc.constantFrom(2, 3, 1.5, null),
  hole_gravel: fc.constantFrom(0, 4, 6, null),
  bag_size: fc.constantFrom(80, 60, null),
  side_push: fc.constantFrom(200, 350),
  push_height: fc.constantFrom(4, 5, null),
  soil: fc.constantFrom(150, 200, null),
  ...slotted("leaf", maybe(halves(3, 14)), maybe(halves(3, 14), 3)),
  gate_room: fc.constantFrom(4, 0, 6, null),
  hinge_room: fc.constantFrom<unknown[]>(null, null, 0, 1.5, 8),
  gates_of_two: fc.constantFrom<unknown[]>(null, null, 1, 2, "1; 3"),
  gates_on_face: fc.constantFrom<unknown[]>(null, null, 1, "2; 4"),
  gate_lap: fc.constantFrom(3, 0, 2.5, null),
  gate_hardware: choice("gate_hardware"),
  ...uses(["line_posts", "gate_posts", "rails", "kick", "fasteners", "holes", "bags"], 60),
};

/** The answers that a job of any structure has. */
const anyAnswers = {
  gates_by_other: fc.constantFrom<unknown[]>(null, null, null, 1, 2, "1; 3", "1; 2; 3; 4"),
  fence_by_other: fc.constantFrom(null, null, null, null, "2; 4", "4; 6; 7; 9", "3; 1"),
  budget: maybe(fc.integer({ min: 500, max: 20_000 })),
  ...slotted("truck", maybe(halves(5, 20), 8), maybe(halves(5, 20), 2)),
  ...uses(
    [...slotKeys("truck"), ...slotKeys("truck").map((key) => `base_${key}`), "stakes", "line", "paint"],
    24,
  ),
  base_depth: fc.oneof(fc.constantFrom(0, null), halves(1, 9)),
  base_overrun: fc.constantFrom(0, 4, null),
  base_settle: fc.constantFrom(0, 12.5, null),
  base_unit: choice("base_unit"),
  base_tons_per_cy: fc.constantFrom(1.4, 1.5, null),
  fabric: choice("fabric"),
  depth: halves(0, 8),
  overrun: fc.constantFrom(0, 5, 12.5),
  settle: fc.constantFrom(0, 10, 15),
  sand_unit: fc.constantFrom(...bulkUnits),
  tons_per_cy: fc.constantFrom(1.35, 1.45, null),
  short: fc.constantFrom(0, 5, 7.5),
  line_roll: fc.constantFrom(250, 500, null),
  paint_reach: fc.constantFrom(250, 120, null),
  mobilization: fc.constantFrom(1, 0, 2, null),
  auger: fc.constantFrom(null, 1, 1.5),
  loader: fc.constantFrom(null, 0.5, 3),
  compactor: fc.constantFrom(null, 1, 2.5),
  burden: fc.constantFrom(0, 28, 31.5, null),
  labor_use: fc.constantFrom(null, null, 40, 12.5),
  hours_gate: fc.constantFrom(1.5, 2, null),
  hours_yard: fc.constantFrom(0.1, 0.08, null),
  tax: fc.constantFrom(0, 6, 8.25),
  tax_on: choice("tax_on"),
  markup_material: fc.constantFrom(0, 12.5, null),
  markup_labor: fc.constantFrom(0, 15, 33.3),
  markup_rental: fc.constantFrom(0, 10),
  markup_sub: fc.constantFrom(0, 7.5),
  minimum: fc.constantFrom(null, null, 0, 6500),
  rounding: choice("rounding"),
  contingency: fc.constantFrom(0, 5, 7.5),
  overhead: fc.constantFrom(0, 10, 12.5, null),
  profit: fc.constantFrom(0, 15, 33.333, null),
  profit_kind: fc.constantFrom(...profitKinds),
};

const jobOf = (answers: Record<string, fc.Arbitrary<unknown>>): fc.Arbitrary<Job> =>
  fc.record({ ...answers, ...anyAnswers }).map((some) => ({ ...newJob(), ...some }) as Job);

/** The answers that a round pen has alone. */
const roundAnswers = { size: halves(30, 150), purpose: fc.constantFrom(...purposes) };

/** A pen of panels or of posts. */
const panelPenAnswers = {
  structure: fc.constant("panel pen"),
  size_means: fc.constantFrom(...sizeMeanings),
  ...roundAnswers,
  ...panelAnswers,
  ...panelFrameAnswers,
};
const postPenAnswers = {
  structure: fc.constant("post pen"),
  ...roundAnswers,
  post_size_means: choice("post_size_means"),
  ...postAnswers,
};

/** An arena of panels or of posts. */
const panelArenaAnswers = {
  structure: fc.constant("panel arena"),
  ...panelAnswers,
  ...Object.fromEntries(
    [2, 3, 4, 5, 6].flatMap((place) =>
      [`panel_${place}`, `panel_${place}_use`].map((key) => [key, fc.constant(null)]),
    ),
  ),
  ...arenaAnswers,
};
const postArenaAnswers = {
  structure: fc.constant("post arena"),
  ...postAnswers,
  ...arenaAnswers,
  corner_radius: fc.constantFrom(0, 0, 10, 20, 25, null),
  arena_size_means: choice("arena_size_means"),
};

/** Jobs of every kind that the estimate takes; not all of them have an answer. */
export const randomPanelJob = jobOf(panelPenAnswers);
export const randomPostJob = jobOf(postPenAnswers);
export const randomPanelArena = jobOf(panelArenaAnswers);
export const randomPostArena = jobOf(postArenaAnswers);
/** The same by structure, in the order of their list. */
export const randomJobOf: Record<Structure, fc.Arbitrary<Job>> = {
  "panel pen": randomPanelJob,
  "post pen": randomPostJob,
  "panel arena": randomPanelArena,
  "post arena": randomPostArena,
};
export const randomJob = fc.oneof(randomPanelJob, randomPostJob, randomPanelArena, randomPostArena);

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

/** Those of the user's own lines that the sheet of this job has room for. */
export const ownFor = (job: Job, own: TypedLine[]) =>
  own.filter(({ key }) => lineSectionsOf(structureOf(job)).includes(sectionOfOwn(key)));

/** Prices with every size a job can ask for, some missing, some doubled, some free. */
export const randomPrices: fc.Arbitrary<PriceRow[]> = fc
  .tuple(
    fc.array(fc.integer({ min: 0, max: 40_000 }), { minLength: 60, maxLength: 60 }),
    fc.double({ min: 0, max: 1, noNaN: true }),
  )
  .map(([amounts, gaps]) => {
    const sizes = (item: "panel" | "gate" | "hung_gate" | "haul", least: number, most: number) =>
      Array.from({ length: (most - least) * 2 + 1 }, (_, k) => ({
        ...examplePrices.find((row) => row.item === item)!,
        size: least + k / 2,
      }));
    const kinds = (word: "post" | "rail" | "kick", lengths: readonly number[]) =>
      (Object.keys(priceKinds) as PriceKind[])
        .filter((kind) => kind.startsWith(`${word} `))
        .flatMap((item) => lengths.map((size) => ({ ...unpricedRow({ item, size }), price: 0 })));
    const rows = [
      ...kinds("post", POST_LENGTHS),
      ...kinds("kick", STOCK_LENGTHS),
      ...kinds("rail", [...STOCK_LENGTHS, 21, 24, 32]),
      ...examplePrices.filter(({ item }) => item === "bag"),
      ...sizes("panel", 4, 20),
      ...sizes("gate", 4, 14),
      ...sizes("hung_gate", 3, 14),
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
