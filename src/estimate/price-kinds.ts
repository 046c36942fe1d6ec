import { type Fastener } from "../fence/fasteners";
import { kickBoards, postSizes, railStocks } from "./post-choices";

/** A kind of item: how it is called, its unit, whether sales tax usually falls on it, and the unit of its size. */
interface KindOfItem {
  name: string;
  unit: string;
  taxed: boolean;
  sized?: string;
}

const each = (name: string, sized?: string): KindOfItem => ({ name, unit: "each", taxed: true, sized });

const otherKinds = {
  panel: each("Panel", "ft"),
  gate: each("Gate in its frame", "ft"),
  hung_gate: each("Gate leaf to hang", "ft"),
  hinge_set: each("Hinges of a gate leaf, a set"),
  latch: each("Latch of a gate"),
  drop_rod: each("Drop rod for two leaves"),
  fastener: each("Screw for rails"),
  nail: each("Nail for rails"),
  bolt: each("Bolt for rails, with nut and washer"),
  hole: { name: "Hole augered", unit: "each", taxed: false },
  drive: { name: "Post driven", unit: "each", taxed: false },
  bag: { name: "Bag of concrete", unit: "bag", taxed: true, sized: "lb" },
  stone: { name: "Crushed stone", unit: "cu yd", taxed: true },
  sand_ton: { name: "Sand, by the ton", unit: "ton", taxed: true },
  sand_yard: { name: "Sand, by the cubic yard", unit: "cu yd", taxed: true },
  base_ton: { name: "Base stone, by the ton", unit: "ton", taxed: true },
  base_yard: { name: "Base stone, by the cubic yard", unit: "cu yd", taxed: true },
  fabric: { name: "Road fabric", unit: "sq ft", taxed: true },
  haul: { name: "Truck load hauled", unit: "load", taxed: false, sized: "cu yd" },
  stake: each("Layout stake"),
  line: { name: "Mason's line", unit: "roll", taxed: true },
  paint: { name: "Marking paint", unit: "can", taxed: true },
  mobilization: { name: "Mobilization of crew and machines", unit: "each", taxed: false },
  auger_day: { name: "Auger, rented", unit: "day", taxed: true },
  loader_day: { name: "Loader, rented", unit: "day", taxed: true },
  compactor_day: { name: "Compactor, rented", unit: "day", taxed: true },
  labor_hour: { name: "Labor hour", unit: "hour", taxed: false },
} satisfies Record<string, KindOfItem>;

/** The key of a kind of item; a post's, a rail's and a kick board's say which. */
export type PriceKind = keyof typeof otherKinds | `post ${string}` | `rail ${string}` | `kick ${string}`;

const kindsOf = (word: "post" | "rail" | "kick", name: string, some: readonly string[]) =>
  Object.fromEntries(some.map((one) => [`${word} ${one}`, each(`${name}, ${one}`, "ft")]));

/** The kinds of item that lines ask for. */
export const priceKinds: Readonly<Record<PriceKind, KindOfItem>> = {
  ...kindsOf("post", "Post", Object.keys(postSizes)),
  ...kindsOf("rail", "Rail", Object.keys(railStocks)),
  ...kindsOf("kick", "Kick board", kickBoards),
  ...otherKinds,
};

/** The item of each kind of fastener. */
export const fastenerItems = { screws: "fastener", nails: "nail", bolts: "bolt" } as const satisfies Record<
  Fastener,
  PriceKind
>;
