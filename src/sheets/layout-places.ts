import { type Place } from "./address";

/** The columns of a layout sheet. What follows the gap is not printed. */
export const columns = {
  key: 0, stake: 1, radius: 2, chord: 4, tie1: 6, tie2: 8, kind: 10, side: 11, hole: 12, holeDepth: 13, angle: 14,
  running: 15, shot: 17, cutOrFill: 18, asSet: 19, gap: 20, bearing: 21, east: 22, north: 23, siteEast: 24, siteNorth: 25,
  space: 26, label: 27, used: 28, now: 29, changed: 30,
} as const; // prettier-ignore

/** Rows above the sizes: the hidden mark, the title, the job, the warning. */
export const rows = { mark: 0, title: 1, job: 2, warning: 3, top: 4 } as const;

/** Where the facts at the top have their feet and inches, their decimal, and what is said behind it. */
export const factColumns = { label: columns.stake, shown: columns.tie1, figure: columns.tie1 + 1, words: columns.tie2 } as const; // prettier-ignore

/** Where an input that the layout was figured from stands, by its place in their list, from 0. */
export const usedPlace = (k: number): Place => ({ row: rows.top + 1 + k, column: columns.used });
