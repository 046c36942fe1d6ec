import { type CutAlike } from "../estimate/cut-list";
import { type Label } from "../estimate/fields";
import { feetInches } from "../units/feet-inches";
import { cutHeading, cutLabels, cutSentences, piecesWords } from "./cut-list-words";
import { put } from "./estimate-cells";
import { type LayoutData } from "./layout-data";
import { columns } from "./layout-places";
import { type PlanCell } from "./plan";
import { type StyleName } from "./styles";

/** Columns that every layout sheet shows, and how many each part of a cut goes over. */
const parts = {
  count: { column: columns.stake, across: 1 },
  stock: { column: columns.radius, across: 2 },
  cutInto: { column: columns.chord, across: columns.angle - columns.chord },
  left: { column: columns.angle, across: 2 },
} as const;

const wide = columns.asSet + 1 - columns.stake;

/** Points of a row, and of a sentence's line of so many letters across the page. */
const heights = { row: 18, line: 14, letters: 190 } as const;

/** One row of the block: its cells where it stands on a row, and its height in points. */
interface CutRow {
  cells(row: number): PlanCell[];
  height: number;
}

/** The cut lists of a layout's boards, from a title down to what decided the pieces; none of a fence without boards. */
function cutRows({ cutLists, language }: LayoutData): CutRow[] {
  if (cutLists.length === 0) return [];
  const say = (label: Label) => label[language];
  const over = (words: string, style: StyleName, height: number = heights.row): CutRow => ({
    cells: (row) => [{ ...put(row, columns.stake, words, style), across: wide }],
    height,
  });
  const part = (name: keyof typeof parts, words: string | number, style: StyleName) => (row: number) => {
    const { column, across } = parts[name];
    return { ...put(row, column, words, style), ...(across > 1 ? { across } : {}) };
  };
  const row = (...some: ((row: number) => PlanCell)[]): CutRow => ({
    cells: (at) => some.map((one) => one(at)),
    height: heights.row,
  });
  const names = (["count", "stock", "cutInto", "left"] as const).map((name) =>
    part(name, say(cutLabels[name]), "crewHead"),
  );
  const cut = (alike: CutAlike, stock: number) =>
    row(
      part("count", alike.count, "crewStake"),
      part("stock", feetInches(stock), "crewStake"),
      part("cutInto", piecesWords[language](alike), "crewCut"),
      part("left", feetInches(alike.left), "crewInches"),
    );
  return [
    over(say(cutLabels.title), "crewSection"),
    ...cutLists.flatMap((list) => [
      over(cutHeading(list, language), "crewWords"),
      row(...names),
      ...list.cuts.map((alike) => cut(alike, list.stock)),
    ]),
    ...cutSentences(cutLists, language).map((words) =>
      over(words, "crewNote", 4 + heights.line * Math.ceil(words.length / heights.letters)),
    ),
  ];
}

/** How many rows the cut lists take, with an empty one above them; 0 without any. */
export const cutRowCount = (data: LayoutData) => {
  const { length } = cutRows(data);
  return length === 0 ? 0 : length + 1;
};

/** The cut lists, below a row that is left empty. */
export const cutCells = (row: number, data: LayoutData): PlanCell[] =>
  cutRows(data).flatMap(({ cells }, k) => cells(row + 1 + k));

/** The heights of those rows. */
export const cutHeights = (row: number, data: LayoutData): Record<number, number> =>
  Object.fromEntries(cutRows(data).map(({ height }, k) => [row + 1 + k, height]));
