import { type Label } from "../estimate/fields";
import { ahead, distance } from "../geometry/point";
import { type ArenaLayoutData } from "./arena-layout-data";
import { arenaLabels, cornerLabels, triangleSentence } from "./arena-layout-words";
import { headerCells, places, stakeCells, stakedBeside } from "./arena-layout-rows";
import { cutCells, cutHeights, cutRowCount } from "./cut-list-cells";
import { put } from "./estimate-cells";
import {
  cautionCells,
  cautionsFor,
  gateFirstFacts,
  length as fact,
  said,
  section,
  titleCells,
  usedInputs,
  type Fact,
} from "./layout-head";
import { labels, northLabel, piecesInWords, sentences } from "./layout-messages";
import { columns, factColumns, rows } from "./layout-places";
import { GRADE_ROWS, gradeCells } from "./layout-grade";
import { layoutMark } from "./layout-sheet";
import { type SheetPlan } from "./plan";

/** Points of a row of the head, of a stake's row, and of a caution's line of so many letters. */
const heights = { fact: 16, stake: 17, line: 15, letters: 200 } as const;

/** The rows of an arena's layout sheet, which follow from what it shows. */
export function arenaLayoutRows(data: ArenaLayoutData) {
  const head = Math.max(factsOf(data).length, Math.ceil(data.plan.height / heights.fact));
  const cautions = rows.top + head + 1;
  const how = cautions + cautionsFor(data).length;
  const [headers, first] = [how + 1, how + 3];
  const last = first + data.stakes.length + stakedBeside(data).length;
  const grade = last + 2;
  const cuts = grade + GRADE_ROWS;
  return { cautions, how, headers, first, last, grade, cuts, end: cuts + cutRowCount(data) - 1 };
}

/** The sheet that a crew sets the stakes of an arena from: corners and diagonals on top, then one row a stake. */
export function arenaLayoutPlan(data: ArenaLayoutData, name: string): SheetPlan {
  const { cautions, how, headers, first, last, grade, cuts, end } = arenaLayoutRows(data);
  const below = (from: number, to: number, height: number) =>
    Object.fromEntries(Array.from({ length: to - from + 1 }, (_, k) => [from + k, height]));
  return {
    name,
    cells: [
      put(rows.mark, columns.key, layoutMark, "key"),
      ...titleCells(data),
      ...factsOf(data).flatMap((one, k) => one(rows.top + k)),
      ...usedInputs(data),
      ...cautionCells(cautions, data),
      {
        ...put(how, columns.stake, arenaLabels.how[data.language], "crewNote"),
        across: columns.asSet + 1 - columns.stake,
      },
      ...headerCells(headers, data),
      ...stakeCells(first, data, grade),
      ...gradeCells(grade, data, arenaLabels.crown),
      ...cutCells(cuts, data),
    ],
    columns: columnsOf(data),
    hiddenRows: [rows.mark],
    heights: {
      [rows.title]: 28,
      ...below(rows.job, cautions - 1, heights.fact),
      ...Object.fromEntries(
        cautionsFor(data).map((words, k) => [
          cautions + k,
          2 + heights.line * Math.ceil(words.length / heights.letters),
        ]),
      ),
      [how]: 28,
      [headers]: heights.stake,
      [headers + 1]: 14,
      ...below(first, last, heights.stake),
      [last + 1]: 8,
      ...below(grade, cuts - 1, heights.fact),
      ...cutHeights(cuts, data),
    },
    frozenRows: 0,
    print: {
      area: { top: rows.title, left: columns.stake, bottom: end, right: columns.asSet },
      landscape: true,
      pages: { wide: 1, tall: 0 },
      repeatRows: 2,
      repeatFrom: headers,
      footer: sentences[data.language].footer(name),
    },
    pictures: [{ ...data.plan, row: rows.top, column: columns.kind }],
  };
}

/** What was laid out, how its corners are squared, and the reference stakes, one under the other. */
function factsOf(data: ArenaLayoutData): Fact[] {
  const { language, pieces, sizes, references, triangles, center } = data;
  const say = (label: Label) => label[language];
  const [a, b] = references.map(({ bearing, distance }) => ahead({ east: 0, north: 0 }, bearing, distance));
  return [
    section(say(labels.laidOut)),
    ...pieces.map((piece) => said(piecesInWords(piece, language))),
    ...sizes.map(({ label, feet }) => fact(say(label), feet)),
    (row) => [
      put(row, factColumns.label, say(labels.measuredTo), "crewLabel"),
      { ...put(row, factColumns.shown, say(labels[data.measuredTo]), "crewWords"), across: 4 },
    ],
    (row) => [
      put(row, factColumns.label, say(arenaLabels.bearing), "crewLabel"),
      put(row, factColumns.figure, data.heading, "crewDegrees"),
      put(row, factColumns.words, `° ${say(northLabel(data.north))}`, "crewUnit"),
    ],
    ...(center ? gateFirstFacts(data, center, cornersOf(data)) : []),
    section(say(arenaLabels.square)),
    ...triangles.map((triangle) => said(triangleSentence[language](triangle))),
    section(say(arenaLabels.references)),
    fact(say(arenaLabels.far), references[0].distance),
    fact(say(arenaLabels.right), references[1].distance),
    fact(say(labels.apart), distance(a, b)),
    said(say(labels.resetCenter)),
  ];
}

/** The corners by name; rounded ones are staked apart from the fence. */
const cornersOf = ({ corners, language, apart }: ArenaLayoutData) =>
  corners.map((at, k) => ({ name: `${apart ? `C${k + 1}, ` : ""}${cornerLabels[k][language]}`, at }));

function columnsOf({ language, stakes, center }: ArenaLayoutData): SheetPlan["columns"] {
  const holes = stakes.some(({ hole }) => hole);
  const lengths = [places.along, places.across, places.chord, places.tie, columns.running];
  const wide: Record<number, number> = {
    [columns.stake]: 7,
    ...Object.fromEntries(lengths.flatMap((column) => [[column, 14], [column + 1, 7.5]])),
    [columns.kind]: language === "es" ? 17 : 13,
    [columns.side]: 10,
    [places.on]: 9,
    [columns.shot]: 9,
    [columns.cutOrFill]: language === "es" ? 15 : 11,
    [columns.asSet]: language === "es" ? 16 : 13,
    [columns.gap]: 3,
    [columns.space]: 3,
    [columns.label]: 34,
    [columns.now]: 15,
  }; // prettier-ignore
  const fromMark = center ? [] : [columns.siteEast, columns.siteNorth];
  const unseen = [columns.key, ...fromMark, ...(holes ? [] : [columns.hole, columns.holeDepth])] as number[];
  return Array.from({ length: columns.changed + 1 }, (_, column) => ({
    width: wide[column] ?? (column === columns.hole || column === columns.holeDepth ? 7 : 11),
    ...(unseen.includes(column) ? { hidden: true } : {}),
  }));
}
