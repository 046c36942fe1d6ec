import { type Structure } from "../estimate/structures";
import { type Place } from "./address";
import { columns } from "./estimate-layout";
import { messages } from "./messages";

const widths = [14, 29, 10, 8, 12, 12, 6, 15, 2, 27, 13, 10, 16, 11, 10, 10, 10, 9, 9, 9, 9, 9, 12, 12];

/** The widths of an estimate's columns. Posts are chosen by longer words, and hidden columns hold what they were figured from. */
export const widthsOf = (structure: Structure) =>
  structure === "panel pen"
    ? widths.slice(0, columns.limit + 1)
    : widths.map((width, column) => (column === columns.input ? 18 : width));

const { key, hand, left: leftOver, fewer, more, pick, kind, limit, written, fixed } = columns;
const behind: number[] = [key, fewer, more, pick, kind, limit, written, fixed];

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

/**
 * What stands hidden beside a line's count: which rows of the prices it may use, and beside a panel's the counts with
 * one fewer and one more, and the stock that may be used; beside a hole, the least diameter that its post needs; beside the
 * room for hinges, what they take.
 */
export function besideCounts(places: Record<string, Place>): Record<string, Place> {
  const beside = (key: string, name: "fewer" | "more" | "pick" | "kind" | "limit") =>
    [key.replace(/_count$/, `_${name}`), { ...places[key], column: columns[name] }] as const;
  const counts = Object.keys(places).filter((key) => key.endsWith("_count"));
  const panels = counts.filter((key) => key.startsWith("panel_"));
  const hinges = "hinge_room" in places ? [["hinge_room_used", { ...places.hinge_room, column: columns.more }] as const] : []; // prettier-ignore
  const holes = ["line_hole", "gate_hole"].filter((key) => key in places);
  return Object.fromEntries([
    ...hinges,
    ...holes.map((key) => [`${key}_least`, { ...places[key], column: columns.pick }] as const),
    ...counts.map((key) => beside(key, "pick")),
    ...counts.map((key) => beside(key, "kind")),
    ...panels.flatMap((key) => [beside(key, "fewer"), beside(key, "more"), beside(key, "limit")]),
  ]);
}
