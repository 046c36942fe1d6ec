import { type PriceKind, type PricedItem } from "../../estimate/prices";
import { choiceOf, type Job } from "../../estimate/job";
import { postSizes, railStocks } from "../../estimate/post-choices";
import { fastenerLength, type Fastener } from "../../fence/fasteners";
import { inchesAlone } from "../../units/feet-inches";
import { call, expression, operate, text, when, type Expression } from "../expression";
import { entry, textEntry, type Entry } from "./entries";
import { type At } from "./rows";

/**
 * What a supplier has to know of an item beside its size, as entries of the request: common practice, no source. The
 * user writes what the job asks for; a blank one is not said.
 */
const entries: Record<string, Entry> = Object.fromEntries(
  [
    entry("Panels and gates: height, ft", "Altura de paneles, ft", {
      key: "panel_height", kind: "length", unit: "ft", range: [2, 12], default: 5,
    }),
    entry("Panels: rails", "Paneles: travesaños", { key: "panel_rails", kind: "count", range: [2, 12], default: 6 }),
    textEntry("panel_tube", "Panels: tube", "Paneles: tubo", "1 3/4 in round tube, 16 gauge"),
    entry("Panels: finish", "Paneles: acabado", {
      key: "panel_finish", kind: "choice", options: ["galvanized", "powder coated", "painted", "bare steel"], default: "galvanized",
    }),
    entry("Panels: connection", "Paneles: unión", {
      key: "panel_connection", kind: "choice", options: ["pins", "chains", "clamps"], default: "pins",
    }),
    textEntry("gate_swing", "Gates: swing", "Puertas: giro"),
    textEntry("gate_bow", "Gates: bow overhead", "Puertas: arco", "no bow"),
    textEntry("leaf_kind", "Gate leaves: kind", "Hojas de puerta: tipo", "tube gate with hinges and latch"),
    textEntry("hinge_kind", "Hinges: kind", "Bisagras: tipo", "adjustable, bolted through the post, galvanized"),
    textEntry("latch_kind", "Latches and drop rods: kind", "Pestillos y pasadores: tipo", "galvanized, no edge toward the horse"),
    textEntry("post_treatment", "Posts: treatment", "Postes: tratamiento", "treated for ground contact"),
    textEntry("rail_finish", "Rails: treatment or finish", "Travesaños: acabado"),
    textEntry("fastener_length", "Fasteners: length", "Sujetadores: largo"),
    textEntry("fastener_kind", "Fasteners: kind", "Sujetadores: tipo", "hot-dip galvanized"),
    textEntry("sand_kind", "Sand: kind", "Arena: tipo", "washed, hard, angular, no clay or stones"),
    textEntry("stone_kind", "Stone: kind", "Grava: tipo", "crushed, 3/4 in, washed"),
    textEntry("base_kind", "Base stone: kind", "Base: tipo", "crushed, 3/4 in and finer with its fines, compacts firm"),
    textEntry("fabric_kind", "Road fabric: kind", "Geotextil: tipo", "woven, for roads"),
    textEntry("haul_kind", "Loads: of what", "Viajes: de qué", "footing sand"),
    textEntry("paint_kind", "Paint: color", "Pintura: color", "white or pink"),
  ].map((one) => [one.key, one]),
); // prettier-ignore

/** One part of an item's specification: words, or what an entry says with words before and after it. Words come first. */
type Part = string | { key: string; before?: string; after?: string };

const panelParts: readonly Part[] = [
  { key: "panel_height", after: " ft high" },
  { key: "panel_rails", after: " rails" },
  { key: "panel_tube" },
  { key: "panel_finish" },
  { key: "panel_connection", before: "joined by " },
];

const fastenerParts: readonly Part[] = [{ key: "fastener_length", after: " long" }, { key: "fastener_kind" }];

/** The parts of an item's specification, in the order in which they are said. */
function partsOf({ item, size }: PricedItem): readonly Part[] {
  const kind = item as PriceKind;
  if (kind === "panel") return [`${size} ft pin to pin`, ...panelParts];
  if (kind === "gate")
    return [`frame ${size} ft pin to pin`, { key: "gate_swing" }, { key: "gate_bow" }, ...panelParts];
  if (kind === "hung_gate") return [`leaf ${size} ft wide`, { key: "gate_swing" }, { key: "leaf_kind" }];
  if (kind.startsWith("post ")) return [`${size} ft long`, { key: "post_treatment" }];
  if (kind.startsWith("kick ")) return [`${size} ft long`, "treated for ground contact"];
  if (kind.startsWith("rail ")) return [`${size} ft long`, { key: "rail_finish" }];
  const others: Partial<Record<PriceKind, readonly Part[]>> = {
    hinge_set: ["two to a leaf", { key: "hinge_kind" }],
    latch: [{ key: "latch_kind" }],
    drop_rod: ["with its keeper in the ground", { key: "latch_kind" }],
    fastener: ["exterior wood screw", ...fastenerParts],
    nail: ["ring-shank", ...fastenerParts],
    bolt: ["carriage bolt through post and rail, with nut and washer", ...fastenerParts],
    sand_ton: ["loose, by the ton", { key: "sand_kind" }],
    sand_yard: ["loose, by the cubic yard", { key: "sand_kind" }],
    base_ton: ["loose, by the ton", { key: "base_kind" }],
    base_yard: ["loose, by the cubic yard", { key: "base_kind" }],
    fabric: [{ key: "fabric_kind" }],
    stone: [{ key: "stone_kind" }],
    haul: [`truck of ${size} cu yd`, { key: "haul_kind" }],
    paint: [{ key: "paint_kind" }],
  };
  return others[kind] ?? [];
}

const keysOf = (item: PricedItem) =>
  partsOf(item).flatMap((part) => (typeof part === "string" ? [] : [part.key]));

/** The entries that these items ask for, each once. */
export function specEntries(items: readonly PricedItem[]): Entry[] {
  const asked = new Set(items.flatMap(keysOf));
  return Object.values(entries).filter(({ key }) => asked.has(key));
}

/** How long a job's fasteners are, in words. */
function fastenerOf(job: Job): string {
  const post = postSizes[choiceOf(job, "line_post")];
  const { thickness } = railStocks[choiceOf(job, "rail_stock")];
  return inchesAlone(fastenerLength(choiceOf(job, "fastener") as Fastener, thickness, post), 2, "words");
}

/** What the entries say until the user says otherwise: what the jobs know of it, else what is common. */
export function specDefaults(
  items: readonly PricedItem[],
  jobs: readonly Job[],
): Record<string, Entry["default"]> {
  const hands = [...new Set(jobs.map(({ gate_hand }) => String(gate_hand ?? "")))].filter(Boolean);
  const apart = jobs.length > 0 && jobs.every(({ gate_hardware }) => gate_hardware === "bought apart");
  const paired = jobs.some(({ gates_of_two }) => (gates_of_two ?? null) !== null);
  const lengths = new Set(jobs.filter((job) => job.rail_stock).map(fastenerOf));
  const pipes = items.some(({ item }) => item.startsWith("rail ") && item.endsWith("pipe"));
  const hasBase = items.some(({ item }) => item.startsWith("base_"));
  const known: Record<string, string> = {
    ...(hasBase && { haul_kind: "base stone and footing sand, each on its own truck" }),
    ...(apart && { leaf_kind: "tube gate" }),
    gate_swing:
      hands.length === 1 && !paired ? `hinges ${hands[0]}, seen from outside` : "right and left hand",
    fastener_length: lengths.size === 1 ? [...lengths][0] : "",
    rail_finish: pipes ? "galvanized" : "treated for use above ground",
  };
  return Object.fromEntries(specEntries(items).map(({ key, default: usual }) => [key, known[key] ?? usual]));
}

/** An item's specification as a live text on the request's entries; a blank entry is passed over with its comma. */
export function specTerm(item: PricedItem, at: At): Expression {
  const said = partsOf(item).map((part, k): Expression => {
    const comma = k > 0 ? ", " : "";
    if (typeof part === "string") return expression(comma + part);
    const { key, before = "", after = "" } = part;
    const filled = operate(call("LEN", at(key)), ">", 0);
    return when(filled, text(`${comma}${before}`, at(key), after), "");
  });
  return said.length > 0 ? text(said[0], ...said.slice(1)) : expression("");
}

/** The same in words, for entries that say `answers`. */
export function specWords(item: PricedItem, answers: Readonly<Record<string, Entry["default"]>>): string {
  return partsOf(item)
    .map((part, k) => {
      const comma = k > 0 ? ", " : "";
      if (typeof part === "string") return comma + part;
      const answer = answers[part.key] ?? "";
      return answer === "" ? "" : `${comma}${part.before ?? ""}${answer}${part.after ?? ""}`;
    })
    .join("");
}
