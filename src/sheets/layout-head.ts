import { type Label } from "../estimate/fields";
import { usualLine } from "../fence/radius-line";
import { ahead, distance, type Point } from "../geometry/point";
import { INCHES_PER_FOOT } from "../units/conversion";
import { put } from "./estimate-cells";
import { cell, over, pen, plus, times, when, type Term } from "./expression";
import { type LayoutData } from "./layout-data";
import { labels, layoutCautions, northLabel, piecesInWords, sentences } from "./layout-messages";
import { columns, factColumns, rows } from "./layout-places";
import { type PlanCell } from "./plan";
import { hasMovedOn, usedCells, type UsedTable } from "./used-inputs"; // prettier-ignore

/** What stands in one row of the head. */
export type Fact = (row: number) => PlanCell[];

/** What was laid out, the radius line and the reference stakes, one under the other from the top row. */
export function factCells(data: LayoutData): PlanCell[] {
  return facts(data).flatMap((fact, k) => fact(rows.top + k));
}

/** How many rows they take. */
export const factRows = (data: LayoutData) => facts(data).length;

function facts(data: LayoutData): Fact[] {
  const { language, pieces, sizes, references, measuredTo } = data;
  const say = (label: Label) => label[language];
  const words = sentences[language];
  const [a, b] = references.map(({ bearing, distance }) => ahead({ east: 0, north: 0 }, bearing, distance));
  const from = references.map(({ name, turn }) => `${name} ${words.clockwise(turn, data.hasGate)}`);
  const center = labels[measuredTo];
  return [
    section(say(labels.laidOut)),
    ...pieces.map((piece) => said(piecesInWords(piece, language))),
    ...sizes.map(({ label, feet }) => length(say(label), feet)),
    (row) => [
      put(row, factColumns.label, say(labels.measuredTo), "crewLabel"),
      { ...put(row, factColumns.shown, say(center), "crewWords"), across: 4 },
    ],
    (row) => [
      put(row, factColumns.label, say(data.hasGate ? labels.bearing : labels.firstBearing), "crewLabel"),
      put(row, factColumns.figure, data.bearing, "crewDegrees"),
      put(row, factColumns.words, `° ${say(northLabel(data.north))}`, "crewUnit"),
    ],
    ...(data.center === undefined ? [] : gateFirstFacts(data, data.center)),
    ...(data.radius === undefined ? [] : lineFacts(data, data.radius)),
    section(say(labels.references)),
    length(say(labels.fromCenter), references[0].distance),
    length(say(labels.apart), distance(a, b)),
    ...from.map(said),
    said(say(labels.resetCenter)),
  ];
}

export const section =
  (title: string): Fact =>
  (row) => [
    {
      ...put(row, factColumns.label, title, "crewSection"),
      across: factColumns.words + 2 - factColumns.label,
    },
  ];

export const said =
  (sentence: string): Fact =>
  (row) => [put(row, factColumns.label, sentence, "crewLabel")];

export const length =
  (label: string, feet: Term): Fact =>
  (row) => [
    put(row, factColumns.label, label, "crewLabel"),
    put(row, factColumns.shown, pen("FEET_INCHES", cell({ row, column: factColumns.figure })), "crewSize"),
    put(row, factColumns.figure, feet, "crewFigure"),
  ];

/** Where the center stake comes to stand from the gate's posts or pins, how well these fit the gate, and where other places lie. */
export function gateFirstFacts(
  { language, radius, over = 0 }: LayoutData,
  { east, north }: Point,
  others: readonly { name: string; at: Point }[] = [],
): Fact[] {
  const say = (label: Label) => label[language];
  const { fromMark, offGate } = sentences[language];
  return [
    section(say(labels.gateFirst)),
    length(say(east < 0 ? labels.centerWest : labels.centerEast), Math.abs(east)),
    length(say(north < 0 ? labels.centerSouth : labels.centerNorth), Math.abs(north)),
    ...others.map(({ name, at }) => said(fromMark(name, at.east + east, at.north + north))),
    said(offGate(over)),
    ...(radius === undefined ? [] : [said(say(labels.bothRadii))]),
  ];
}

/** The radius line: what it goes around can be typed over, and its two lengths follow. */
function lineFacts({ language }: LayoutData, radius: Term): Fact[] {
  const say = (label: Label) => label[language];
  const message = sentences[language].inputFrom(0, 60);
  const input =
    (label: Label, inches: number): Fact =>
    (row) => [
      put(row, factColumns.label, say(label), "crewLabel"),
      {
        ...put(row, factColumns.figure, inches, "inputNumber"),
        input: true,
        accepts: { kind: "number", least: 0, most: 60, message },
      },
      put(row, factColumns.words, say(labels.inches), "crewUnit"),
    ];
  const up = (row: number, by: number) => cell({ row: row - by, column: factColumns.figure });
  const inFeet = (inches: Term) => over(inches, INCHES_PER_FOOT);
  return [
    section(say(labels.line)),
    input(labels.centerStake, usualLine.centerStake),
    input(labels.can, usualLine.can),
    input(labels.loop, usualLine.loop),
    (row) => length(say(labels.tight), plus(radius, over(inFeet(plus(up(row, 3), up(row, 2))), 2)))(row),
    (row) => length(say(labels.cut), plus(up(row, 1), times(2, inFeet(up(row, 2)))))(row),
  ];
}

/** What the crew has to mind: what was found on the site, then the cautions of every layout. */
export const cautionsFor = ({ language, notes }: LayoutData): string[] => [
  ...notes,
  ...layoutCautions.map((caution) => caution[language]),
];

/** The same across the page, from `row` down. */
export const cautionCells = (row: number, data: LayoutData): PlanCell[] =>
  cautionsFor(data).map((caution, k) => ({
    ...put(row + k, columns.stake, caution, "crewCaution"),
    across: columns.asSet + 1 - columns.stake,
  }));

/** The inputs that the layout was figured from, each beside what the estimate has now, and whether they part. */
export const usedInputs = (data: LayoutData): PlanCell[] => usedCells(data.used, usedTable(data));

const usedTable = ({ language }: LayoutData): UsedTable => ({
  top: rows.top,
  columns,
  language,
  labels,
});

/** The head of the sheet: title, revision and date, the job, and whether the estimate has moved on. */
export function titleCells(data: LayoutData): PlanCell[] {
  const { language, title, revision, date, used } = data;
  const wide = columns.asSet + 1 - columns.stake;
  const moved = hasMovedOn(used, usedTable(data));
  return [
    put(rows.title, columns.stake, labels.title[language], "crewTitle"),
    {
      ...put(rows.title, columns.kind, sentences[language].issued(revision, date), "crewIssued"),
      across: columns.asSet + 1 - columns.kind,
    },
    { ...put(rows.job, columns.stake, title, "crewJob"), across: wide },
    {
      ...put(rows.warning, columns.stake, when(moved, labels.outOfDate[language], ""), "crewWarning"),
      across: wide,
    },
  ];
}
