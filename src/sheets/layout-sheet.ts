import { cutCells, cutHeights, cutRowCount } from "./cut-list-cells";
import { columns, rows } from "./layout-places";
import { cautionCells, cautionsFor, factCells, factRows, titleCells, usedInputs } from "./layout-head";
import { put } from "./estimate-cells";
import { type LayoutData } from "./layout-data";
import { GRADE_ROWS, gradeCells } from "./layout-grade";
import { labels, sentences } from "./layout-messages";
import { headerCells, stakeCells } from "./layout-rows";
import { type SheetPlan } from "./plan";

/** What A1 of a layout sheet says, by which it can be found. */
export const layoutMark = "penstake layout 1";

/** Points of a row of the head. */
const FACT_HEIGHT = 16;

/** Points of a stake's row: so that two dozen print under the plan on one page. */
const STAKE_HEIGHT = 17;

/** Points of an empty row between two parts. */
const GAP = 8;

/** As high as its lines across the page, of so many letters at the size of a caution or of the note under them. */
const cautionHeight = (words: string) => 2 + 15 * Math.ceil(words.length / 200);
const noteHeight = (words: string) => 3 + 13 * Math.ceil(words.length / 260);

/** Up to so many stakes the sheet prints on two pages or one; beyond, on as many as it needs. */
const STAKES_ON_TWO_PAGES = 60;

/** The rows of a layout sheet, which follow from what it shows. */
export function layoutRows(data: LayoutData) {
  const pictureRows = Math.ceil(data.plan.height / FACT_HEIGHT);
  const cautions = rows.top + Math.max(factRows(data), pictureRows) + 1;
  const how = cautions + cautionsFor(data).length;
  const headers = how + 1;
  const first = headers + 2;
  const last = first + data.stakes.length + data.references.length;
  const grade = last + 2;
  const cuts = grade + GRADE_ROWS;
  return { cautions, how, headers, first, last, grade, cuts, end: cuts + cutRowCount(data) - 1 };
}

/**
 * The sheet that a crew sets stakes from: on top what was laid out, the radius line, the reference stakes, the plan and
 * the cautions, then one row a stake. Its top says so when the estimate's inputs are no longer those it was figured
 * from.
 */
export function layoutSheetPlan(data: LayoutData, name: string): SheetPlan {
  const at = layoutRows(data);
  const below = (from: number, to: number, height: number) =>
    Object.fromEntries(Array.from({ length: to - from + 1 }, (_, k) => [from + k, height]));
  const wide = columns.asSet + 1 - columns.stake;
  return {
    name,
    cells: [
      put(rows.mark, columns.key, layoutMark, "key"),
      ...titleCells(data),
      ...factCells(data),
      ...usedInputs(data),
      ...cautionCells(at.cautions, data),
      { ...put(at.how, columns.stake, labels.how[data.language], "crewNote"), across: wide },
      ...headerCells(at.headers, data),
      ...stakeCells(at.first, data, at.grade),
      ...gradeCells(at.grade, data),
      ...cutCells(at.cuts, data),
    ],
    columns: columnWidths(data),
    hiddenRows: [rows.mark],
    heights: {
      [rows.title]: 28,
      ...below(rows.job, at.cautions - 2, FACT_HEIGHT),
      [at.cautions - 1]: GAP,
      ...Object.fromEntries(cautionsFor(data).map((words, k) => [at.cautions + k, cautionHeight(words)])),
      [at.how]: noteHeight(labels.how[data.language]),
      [at.headers]: 18,
      [at.headers + 1]: 14,
      ...below(at.first, at.last, STAKE_HEIGHT),
      [at.last + 1]: GAP,
      ...below(at.grade, at.cuts - 1, FACT_HEIGHT),
      ...cutHeights(at.cuts, data),
    },
    frozenRows: 0,
    print: {
      area: { top: rows.title, left: columns.stake, bottom: at.end, right: columns.asSet },
      landscape: true,
      pages: { wide: 1, tall: data.stakes.length <= STAKES_ON_TWO_PAGES ? 2 : 0 },
      repeatRows: 2,
      repeatFrom: at.headers,
      footer: sentences[data.language].footer(name),
    },
    pictures: [{ ...data.plan, row: rows.top, column: columns.kind }],
  };
}

function columnWidths({ language, stakes, center }: LayoutData): SheetPlan["columns"] {
  const holes = stakes.some(({ hole }) => hole);
  const inHoles = { width: 7, ...(holes ? {} : { hidden: true }) };
  const [feet, decimal] = [{ width: 14 }, { width: 7.5 }];
  const [kind, side, asSet, cut] = language === "es" ? [15, 10, 16, 15] : [10, 9, 13, 11];
  const fromMark = { width: 11, ...(center ? {} : { hidden: true }) };
  return [
    { width: 16, hidden: true },
    { width: 7 },
    ...[feet, decimal, feet, decimal, feet, decimal, feet, decimal],
    { width: kind },
    { width: side },
    inHoles,
    inHoles,
    { width: 8 },
    { width: 14.5 },
    decimal,
    { width: 9 },
    { width: cut },
    { width: asSet },
    { width: 3 },
    ...[{ width: 11 }, { width: 11 }, { width: 11 }],
    ...[fromMark, fromMark],
    { width: 3 },
    ...[{ width: 34 }, { width: 11 }, { width: 15 }, { width: 11 }],
  ];
}
