import { lengthRange, LONGEST_FT } from "../src/units/range";
import { type Quantity } from "./arguments";

const length = (name: string): Quantity => ({ name, ...lengthRange(name.endsWith("_in") ? "in" : "ft") });
const percent = (name: string, most: number): Quantity => ({ name, least: 0, most });
const over0 = (name: string, most: number): Quantity => ({ name, least: 0, over: true, most });

/** Every number that the worksheet functions take: its name in the sheet, its unit, what it may be. */
export const quantities = {
  diameter: length("diameter_ft"),
  length: length("length_ft"),
  width: length("width_ft"),
  cornerRadius: length("corner_radius_ft"),
  diagonal1: length("diagonal_1_ft"),
  diagonal2: length("diagonal_2_ft"),
  panel: length("panel_ft"),
  panels: length("panels_ft"),
  gates: length("gates_ft"),
  pinGap: { name: "pin_gap_in", unit: "in", least: -12, most: 12 },
  spacing: length("spacing_ft"),
  gatePost: { ...length("gate_post_in"), over: false },
  bearing: { name: "bearing_deg", least: -360, most: 360 },
  tolerance: length("tolerance_ft"),
  stock: { name: "stock", least: 0, most: 100_000, whole: true },
  counts: { name: "counts", least: 0, most: 10_000, whole: true },
  depth: { ...length("depth_in"), over: false },
  overrun: percent("overrun_pct", 200),
  settle: percent("settle_pct", 90),
  short: percent("short_pct", 50),
  area: over0("area_sqft", LONGEST_FT ** 2),
  cubicYards: { name: "cubic_yards", least: 0, most: 1_000_000 },
  trucks: { name: "trucks_cy", least: 0.01, most: 200 },
  prices: over0("prices", 1_000_000),
  body: over0("body_cy", 200),
  payload: over0("payload_tons", 200),
  tonsPerYard: { name: "tons_per_cy", least: 0.1, most: 10 },
  hole: length("hole_in"),
  post: { ...length("post_in"), over: false },
  gravel: { ...length("gravel_in"), over: false },
  cubicFeet: { name: "cubic_feet", least: 0, most: 1_000_000 },
  bagPounds: { name: "bag_lb", least: 1, most: 5000 },
  waste: percent("waste_pct", 100),
  anyLength: length("length"),
  feet: length("feet"),
  denominator: { name: "denominator", least: 1, most: 64, whole: true },
} satisfies Record<string, Quantity>;
