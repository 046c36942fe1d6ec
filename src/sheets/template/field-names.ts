import { fieldOf, fields, slotKeys, type SlotList } from "../../estimate/fields";
import { figureFields } from "../../estimate/figure-list";
import { baseLayer } from "../../estimate/layers";
import { structures } from "../../estimate/structures";
import { laidOut, placesOf } from "../estimate-layout";

/** How a field of a template reads in the middle of a sentence. */
export type Reading = "text" | "number" | "money";

/** A field that a template can name in braces, and the cells of an estimate that give it. */
export interface TemplateField {
  /** What stands between the braces: plain words in lower case. */
  name: string;
  /** What it is, with its unit, for the list in the panel. */
  label: string;
  reading: Reading;
  /** How its cells become one value: the cell itself, in feet and inches, their sum, or how many are filled. */
  from: "cell" | "feet and inches" | "sum" | "filled" | "product" | "sheet name";
  /** Keys of the cells; those that an estimate lacks are passed over where there are several. */
  keys: readonly string[];
}

const withUnit = (label: string, unit: string) => (unit ? `${label}, ${unit}` : label);

/** Keys that no template needs: numbers of the time of writing, and what stands in the place of a count. */
const isInner = (key: string) => /_(written|fixed|use)$/.test(key);

/** Each key of an estimate in words: `panel_1_count` is "panel 1 count", `sum_fence` is "fence sum". */
const nameOf = (key: string) => key.replace(/^sum_(.*)$/, "$1_sum").replaceAll("_", " ");

const capital = (words: string) => words[0].toUpperCase() + words.slice(1);

function byKey(key: string): TemplateField[] {
  const name = nameOf(key);
  const cell = (label: string, reading: Reading): TemplateField => ({ name, label, reading, from: "cell", keys: [key] });
  const field = fields.find((one) => one.key === key) ?? figureFields.find((one) => one.key === key);
  if (!field) return [cell(capital(name), readingOfPart(key))];
  const one = cell(withUnit(field.label.en, field.unit), readingOfKind(field.kind));
  if (field.unit !== "ft" || field.kind === "numbers") return [one];
  const label = withUnit(field.label.en, feetAndInches);
  return [one, { ...one, name: `${name} in ${feetAndInches}`, label, reading: "text", from: feetAndInches }];
} // prettier-ignore

const feetAndInches = "feet and inches";

const readingOfKind = (kind: string): Reading =>
  kind === "money" ? "money"
  : kind === "text" || kind === "choice" || kind === "numbers" ? "text"
    : "number"; // prettier-ignore

function readingOfPart(key: string): Reading {
  if (key.startsWith("sum_") || /_(amount|price)$/.test(key)) return "money";
  return /_(quantity|count|left|opening)$/.test(key) ? "number" : "text";
}

const counts = (list: SlotList) => slotKeys(list).map((key) => `${key}_count`);

const baseLoads = counts("truck").map(baseLayer.loadsOf);

/** Fields that take several cells together. */
const together: TemplateField[] = [
  { name: "estimate", label: "Name of the estimate's sheet", reading: "text", from: "sheet name", keys: [] },
  { name: "panels", label: "Panels, all lengths", reading: "number", from: "sum", keys: counts("panel") },
  { name: "gates", label: "Gates, all kinds", reading: "number", from: "filled", keys: [...slotKeys("gate"), ...slotKeys("leaf")] },
  { name: "loads", label: "Truck loads of sand", reading: "number", from: "sum", keys: counts("truck") },
  { name: "base loads", label: "Truck loads of base", reading: "number", from: "sum", keys: baseLoads },
  { name: "all loads", label: "Truck loads of base and sand", reading: "number", from: "sum", keys: [...counts("truck"), ...baseLoads] },
  { name: "base yards", label: "Base delivered, cu yd", reading: "number", from: "cell", keys: ["base_delivered"] },
  { name: "base tons", label: "Base delivered, tons", reading: "number", from: "product", keys: ["base_delivered", "base_tons_per_cy"] },
  { name: "sand yards", label: "Sand delivered, cu yd", reading: "number", from: "cell", keys: ["sand_delivered"] },
  { name: "sand tons", label: "Sand delivered, tons", reading: "number", from: "product", keys: ["sand_delivered", "tons_per_cy"] },
]; // prettier-ignore

/**
 * Every field that a template can name, by its name. It derives from the fields, figures and lines of the estimates of
 * all structures; a name once published keeps its meaning.
 */
export const templateFields: ReadonlyMap<string, TemplateField> = new Map(
  [
    ...together,
    ...[...new Set(structures.flatMap((one) => Object.keys(placesOf(laidOut(one).sections))))]
      .filter((key) => !isInner(key))
      .flatMap(byKey),
    ...byKey(fieldOf("job_name").key),
  ].map((field) => [field.name, field]),
);
