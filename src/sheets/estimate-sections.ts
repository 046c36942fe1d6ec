import { equipmentKeys } from "../estimate/equipment";
import { fieldOf, fieldsOf, slotKeys, type Section } from "../estimate/fields";
import { ownLineKeys, type LineSection } from "../estimate/own-lines";
import { fixedKeys } from "../estimate/fixed-keys";
import { type Structure } from "../estimate/structures";
import { sides } from "../geometry/rounded-outline";
import { messages } from "./messages";

/** What stands in the printed part of a row; `fixed`: a number of the time of writing stands behind it. */
export type Left =
  | { kind: "figure"; key: string; fixed?: boolean }
  | { kind: "line"; key: string; fixed?: boolean }
  | { kind: "own"; key: string; fixed?: undefined }
  | { kind: "warning"; key: string; across: number; fixed?: undefined };

/** What stands beside it: an input, a line's "use instead", how much of it is on hand, or more than one of these. */
export interface Right {
  field?: string;
  use?: string;
  hand?: string;
  /** What the field held at writing stands beside it, hidden. */
  written?: boolean;
}

/** One section: its heading and the rows under it, printed part and inputs side by side. */
export interface SectionLayout {
  title: string;
  section?: LineSection;
  left: Left[];
  right: Right[];
  /** Rows that the section takes at least, for a picture beside them. */
  leastRows?: number;
}

const figures = (...keys: string[]): Left[] => keys.map((key) => ({ kind: "figure", key }));
const lines = (...keys: string[]): Left[] => keys.map((key) => ({ kind: "line", key }));
const warning = (key: string, across = 7): Left => ({ kind: "warning", key, across });
const own = (section: LineSection): Left[] => ownLineKeys(section).map((key) => ({ kind: "own", key }));

/** A section before its inputs are put beside it. */
interface Draft {
  title: string;
  left: Left[];
  of: Section[];
  section?: LineSection;
  leastRows?: number;
}

const ofLines = (section: LineSection, ...left: Left[]): Draft => ({
  title: titles[section],
  left,
  of: [section],
  section,
});

const { sections: titles } = messages;

/** Rows beside the plan of the pen. */
export const planRows = 12;

const built = (...left: Left[]): Draft => ({
  title: titles.pen,
  left,
  of: ["job", "pen", "layout"],
  leastRows: planRows,
});

/** What a pen and an arena of posts have in common: fence, holes and gates. */
const ofPosts: Draft[] = [
  ofLines(
    "fence",
    ...lines("line_posts", "gate_posts", "rails", "kick", "fasteners"),
    ...figures("line_post_in", "gate_post_in", "rail_stock_length", "kick_stock_length"),
    ...own("fence"),
  ),
  ofLines(
    "holes",
    ...lines("holes", "bags", "stone"),
    ...figures("post_depth", "post_length", "post_bought", "line_hole", "gate_hole", "hole_depth"),
    ...own("holes"),
    warning("depth_warning"),
  ),
  ofLines("gates", ...lines(...slotKeys("leaf"), "hinges", "latches", "drop_rods"), ...own("gates"), warning("gate_warning")),
]; // prettier-ignore

const onSides = (word: string) => sides.map((side) => `${word}_${side}`);

/** The sections that come before the base, by structure. */
const fences: Record<Structure, Draft[]> = {
  "panel pen": [
    built(
      ...figures(
        "pin_circle",
        "inside_clear",
        "outside_size",
        "distance_around",
        "area",
        "one_under",
        "one_over",
      ),
      warning("plan_warning", 4),
      warning("stale_warning", 4),
    ),
    ofLines("fence", ...lines(...slotKeys("panel")), ...own("fence")),
    ofLines("gates", ...lines(...slotKeys("gate")), ...own("gates"), warning("gate_warning")),
  ],
  "post pen": [
    built(
      ...figures("post_circle", "inside_clear", "outside_size", "distance_around", "area"),
      ...figures("posts", "bay", "bay_fewer", "bay_more"),
      warning("plan_warning", 4),
      warning("stale_warning", 4),
    ),
    ...ofPosts,
  ],
  "panel arena": [
    built(
      ...figures("built_length", "built_width", "right_side", "near_end", "length_over", "width_over"),
      ...figures("distance_around", "area", "diagonal_1", "diagonal_2", "diagonal_asked"),
      ...figures(...onSides("panels")),
      warning("plan_warning", 4),
      warning("stale_warning", 4),
    ),
    ofLines("fence", ...lines("panel_1"), ...own("fence")),
    ofLines("gates", ...lines(...slotKeys("gate")), ...own("gates")),
  ],
  "post arena": [
    built(
      ...figures("built_length", "built_width", "built_radius", "clear_length", "clear_width"),
      ...figures("outside_length", "outside_width", "distance_around", "area", "diagonal_1"),
      ...figures("posts", "bay_longest", ...onSides("bays"), "bays_arcs"),
      warning("plan_warning", 4),
      warning("stale_warning", 4),
    ),
    ...ofPosts,
  ],
};

const others: Draft[] = [
  ofLines(
    "base",
    ...figures("base_need", "base_delivered", "base_depth_settled"),
    ...lines("fabric", "base"),
    ...own("base"),
  ),
  ofLines(
    "footing",
    ...figures("sand_need", "sand_delivered", "sand_over", "depth_loose", "depth_settled"),
    ...lines("sand"),
    ...own("footing"),
    warning("footing_warning"),
  ),
  ofLines("hauling", ...lines(...slotKeys("truck")), ...own("hauling")),
  ofLines("supplies", ...lines("stakes", "line", "paint"), ...own("supplies")),
  ofLines("equipment", ...lines(...equipmentKeys), ...own("equipment")),
  ofLines("labor", ...lines("labor"), ...own("labor")),
  ofLines("subcontract", ...own("subcontract")),
  {
    title: titles.total,
    left: [
      ...figures("direct", "burden_amount", "tax_amount", "contingency_amount", "overhead_amount"),
      ...figures("markup_amount", "profit_amount", "adjustment", "sales_tax_amount"),
      ...figures("total", "per_foot", "per_square_foot", "budget_left"),
      warning("example_warning"),
    ],
    of: ["charges", "site"],
  },
];

/** The inputs of a section's fields: those of a line beside it, the others below or beside what has none. */
function inputsBeside(left: Left[], sections: Section[], structure: Structure): Right[] {
  const here = fieldsOf(structure).filter(({ section }) => sections.includes(section));
  const withLine = left.map(({ kind, key }): Right | undefined => {
    if (kind !== "line") return undefined;
    const field = here.find((one) => one.key === key || one.beside === key)?.key;
    const use = here.some((one) => one.insteadOf === `${key}_count`) ? key : undefined;
    const hand = here.some((one) => one.onHandOf === key) ? key : undefined;
    return field || use ? { ...(field && { field }), ...(use && { use }), ...(hand && { hand }) } : undefined;
  });
  const placed = new Set(
    withLine.flatMap((right) => [
      right?.field,
      right?.use && `${right.use}_use`,
      right?.hand && `${right.hand}_stock`,
    ]),
  );
  const rest = here
    .filter(({ key }) => !placed.has(key))
    .map(({ key, insteadOf }): Right =>
      insteadOf ? { use: insteadOf.replace("_count", "") } : { field: key },
    );
  const right = [...withLine.map((one) => one ?? rest.shift() ?? {}), ...rest];
  const rests = (key: string) =>
    structure === "panel pen" ? key === "fence_by_other" : fieldOf(key).decides;
  return right.map((one) => (one.field && rests(one.field) ? { ...one, written: true } : one));
}

/** The sections of an estimate of this structure, in order. */
export const layoutOf = (structure: Structure): SectionLayout[] =>
  [...fences[structure], ...others].map(({ of, ...section }) => ({
    ...section,
    left: section.left.map((one) => (fixedKeys[structure].includes(one.key) ? asFixed(one) : one)),
    right: inputsBeside(section.left, of, structure),
  }));

const asFixed = (one: Left): Left =>
  one.kind === "figure" || one.kind === "line" ? { ...one, fixed: true } : one;
