import { type Structure } from "../estimate/structures";
import { type Place } from "./address";
import { columns } from "./estimate-layout";
import { messages } from "./messages";

const widths = [14, 29, 10, 8, 12, 12, 6, 15, 2, 27, 13, 10, 16, 11, 10, 10, 10, 9, 9, 9, 9, 9, 12, 12, 9];

/** The widths of an estimate's columns. Posts are chosen by longer words. */
export const widthsOf = (structure: Structure) =>
  structure === "panel pen" ? widths : widths.map((width, column) => (column === columns.input ? 18 : width));

const { key, hand, left: leftOver, fewer, more, pick, kind, limit, written, fixed, size } = columns;
const behind: number[] = [key, fewer, more, pick, kind, limit, written, fixed, size];

/** The columns that only hold what others are worked out from; of stock on hand there is none but of a pen's panels. */
export const hiddenIn = (structure: Structure) =>
  structure === "panel pen" ? behind : [...behind, hand, leftOver];

const [left, right, center] = ["heading", "headingRight", "headingCenter"] as const;

/** The headers of an estimate by column, standing as the cells under them do. */
export function headersOf(structure: Structure) {
  const styles = [left, right, center, right, right, center, left];
  const inputStyles = [left, right, center, right, right, right, right, right];
  const inputs =
    structure === "panel pen" ? [...messages.inputHeaders, ...messages.handHeaders] : messages.inputHeaders;
  return [
    ...messages.headers.map((header, k) => ({ column: columns.item + k, header, style: styles[k] })),
    ...inputs.map((header, k) => ({ column: columns.label + k, header, style: inputStyles[k] })),
  ];
}

/** What stands hidden beside a figure because several formulas rest on it: the figure, and the key of that cell. */
export const behindFigures: Record<string, string> = {
  line_hole: "line_hole_least",
  gate_hole: "gate_hole_least",
  hole_depth: "filled_around",
  rail_stock_length: "rail_thickness",
};

/**
 * What stands hidden beside a line's count: the size that it asks the prices for, which rows of them it may use, and
 * beside a panel's the counts with one fewer and one more, and the stock that may be used; beside the room for hinges,
 * what they take.
 */
export function besideCounts(places: Record<string, Place>): Record<string, Place> {
  const beside = (key: string, name: "fewer" | "more" | "pick" | "kind" | "limit" | "size") =>
    [key.replace(/_count$/, `_${name}`), { ...places[key], column: columns[name] }] as const;
  const counts = Object.keys(places).filter((key) => key.endsWith("_count"));
  const panels = counts.filter((key) => key.startsWith("panel_"));
  const hinges = "hinge_room" in places ? [["hinge_room_used", { ...places.hinge_room, column: columns.more }] as const] : []; // prettier-ignore
  return Object.fromEntries([
    ...hinges,
    ...Object.entries(behindFigures).flatMap(([figure, key]) =>
      figure in places ? [[key, { ...places[figure], column: columns.pick }] as const] : [],
    ),
    ...counts.map((key) => beside(key, "pick")),
    ...counts.map((key) => beside(key, "kind")),
    ...counts.map((key) => beside(key, "size")),
    ...panels.flatMap((key) => [beside(key, "fewer"), beside(key, "more"), beside(key, "limit")]),
  ]);
}
