import { slotKeys } from "../../estimate/fields";
import { baseLayer, layers } from "../../estimate/layers";
import { figureField } from "../../estimate/figure-list";
import { lineSectionsOf, type LineSection } from "../../estimate/own-lines";
import { inCommon } from "../../estimate/together";
import { columns, type ColumnName } from "../estimate-layout";
import { type Place } from "../address";
import { messages as sheetMessages } from "../messages";
import { messages } from "./messages";
import { type EstimateSource } from "./source";

/** A structure that has every section of lines, so that the lines of any estimate have a place. */
export const everySection = "post pen";

/** The lines that estimates priced as one share, in the order of their sections. */
export const sharedLines: Partial<Record<LineSection, readonly string[]>> = {
  base: ["base"],
  footing: ["sand"],
  hauling: slotKeys("truck"),
  equipment: ["mobilization"],
};

/** One row of the sheet: what it is called, and the keys of its cells by their columns. */
export interface TogetherRow {
  label: string;
  unit?: string;
  heading?: boolean;
  keys: Partial<Record<ColumnName, string>>;
  /** The key without which the row says nothing: a truck that no estimate has, an answer that is blank. */
  only?: string;
  /** An answer, which prints in the place of a quantity; words may reach over the columns beside it. */
  shows?: "figure" | "words";
}

const lineKeys = (key: string): TogetherRow["keys"] => ({
  quantity: `${key}_quantity`,
  price: `${key}_price`,
  amount: `${key}_amount`,
  taxed: `${key}_taxed`,
  note: `${key}_note`,
  count: `${key}_count`,
  pick: `${key}_pick`,
  kind: `${key}_kind`,
  size: `${key}_size`,
});

const figure = (key: string): TogetherRow => {
  const { label, unit, kind } = figureField(key);
  return { label: label.en, unit, keys: { [kind === "money" ? "amount" : "quantity"]: key } };
};

const shared: Record<string, string> = {
  base: sheetMessages.baseItem,
  sand: sheetMessages.sandItem,
  mobilization: messages.together.mobilization,
};

/** The key of a section's own lines of one estimate, by its place among them from 1. */
export const partKey = (section: string, place: number) => `${section}_of_${place}`;

/** The loads of base alone: the lines of the trucks count them with those of sand. */
const baseLoads = slotKeys("truck").map((key): TogetherRow => ({
  label: messages.together.baseLoads(key),
  keys: { quantity: `${baseLayer.loadsOf(key)}_count` },
}));

/** The rows of the sheet that prices these estimates as one. */
export function togetherRows(sources: readonly EstimateSource[]): TogetherRow[] {
  const each = (label: string, section: string, column: ColumnName): TogetherRow[] =>
    sources.map(({ name }, k) => ({
      label: `${name}: ${label}`,
      keys: { [column]: partKey(section, k + 1) },
    }));
  const { sections } = sheetMessages;
  const stocked = sources.filter(({ made }) => made.takeoff.some(({ onHand = 0 }) => onHand > 0)).length;
  const section = (name: LineSection): TogetherRow[] => [
    { label: sections[name], heading: true, keys: { amount: `sum_${name}` } },
    ...each(sections[name].toLowerCase(), name, "amount"),
    ...(sharedLines[name] ?? []).map((key) => ({
      label: shared[key] ?? messages.together.loads(key),
      keys: lineKeys(key),
      ...(key in shared ? {} : { only: key }),
    })),
    ...(name === "fence" && stocked > 1 ? [{ label: messages.together.onHand, keys: {} }] : []),
    ...(name === "holes" ? [{ label: messages.together.holes, keys: { price: "holes_amount" } }] : []),
  ];
  return [
    { label: "", keys: { item: "differs" } },
    ...layers.flatMap(({ material }) => [
      { label: messages.together.ofAll(material), heading: true, keys: {} },
      ...each(messages.together.need(material), `${material}_need`, "quantity"),
      ...[`${material}_need`, `${material}_delivered`].map(figure),
      ...(material === "base" ? baseLoads : []),
    ]),
    ...lineSectionsOf(everySection).flatMap(section),
    { label: messages.together.taxed, heading: true, keys: {} },
    ...sources.map(({ name }, k) => ({
      label: name,
      keys: { amount: partKey("taxed", k + 1), taxed: partKey("mark", k + 1) },
    })),
    { label: sections.total, heading: true, keys: {} },
    ...[
      "direct", "burden_amount", "tax_amount", "contingency_amount", "overhead_amount", "markup_amount", "profit_amount",
      "adjustment", "sales_tax_amount", "total",
    ].map(figure),
    { label: messages.together.common, heading: true, keys: {} },
    ...inCommon.map(({ key, label, unit, kind }): TogetherRow => ({
      label: label.en, unit, keys: { input: key }, only: key, shows: kind === "choice" ? "words" : "figure",
    })),
  ]; // prettier-ignore
}

/** The first row under the headers. */
export const firstRow = 3;

/** Where every key of those rows stands. */
export const placesIn = (rows: readonly TogetherRow[]): Record<string, Place> =>
  Object.fromEntries(
    rows.flatMap(({ keys }, k) =>
      Object.entries(keys).map(([name, key]) => [
        key,
        { row: firstRow + k, column: columns[name as ColumnName] },
      ]),
    ),
  );
