import { type Label } from "../estimate/fields";
import { ahead, distance, type Point } from "../geometry/point";
import { alongAndAcross } from "../geometry/rounded-outline";
import { type ArenaLayoutData, type LaidArenaStake } from "./arena-layout-data";
import { arenaLabels, sideLabels, triangleSentence } from "./arena-layout-words";
import { put } from "./estimate-cells";
import { cell, pen, plus, text, times, type Term } from "./expression";
import {
  cautionCells,
  cautionsFor,
  length as fact,
  said,
  section,
  titleCells,
  usedInputs,
  type Fact,
} from "./layout-head";
import { labels, northLabel, sentences } from "./layout-messages";
import { columns, factColumns, rows } from "./layout-places";
import { length, ruled } from "./layout-rows";
import { layoutMark } from "./layout-sheet";
import { type PlanCell, type SheetPlan } from "./plan";

/** Points of a row of the head, of a stake's row, and of a caution's line of so many letters. */
const heights = { fact: 17, stake: 18, line: 15, letters: 160 } as const;

/** Where an arena's rows have what a round pen's have not. */
const places = { along: columns.radius, across: columns.chord, chord: columns.tie1, tie: columns.tie2, on: columns.angle } as const; // prettier-ignore

/** The sheet that a crew sets the stakes of an arena from: corners and diagonals on top, then one row a stake. */
export function arenaLayoutPlan(data: ArenaLayoutData, name: string): SheetPlan {
  const facts = factsOf(data);
  const cautions = rows.top + Math.max(facts.length, Math.ceil(data.plan.height / heights.fact)) + 1;
  const how = cautions + cautionsFor(data).length;
  const [headers, first] = [how + 1, how + 3];
  const stakes = stakeCells(first, data);
  const last = Math.max(...stakes.map(({ row }) => row));
  const below = (from: number, to: number, height: number) =>
    Object.fromEntries(Array.from({ length: to - from + 1 }, (_, k) => [from + k, height]));
  return {
    name,
    cells: [
      put(rows.mark, columns.key, layoutMark, "key"),
      ...titleCells(data),
      ...facts.flatMap((one, k) => one(rows.top + k)),
      ...usedInputs(data),
      ...cautionCells(cautions, data),
      {
        ...put(how, columns.stake, arenaLabels.how[data.language], "crewNote"),
        across: columns.asSet + 1 - columns.stake,
      },
      ...headerCells(headers, data),
      ...stakes,
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
    },
    frozenRows: 0,
    print: {
      area: { top: rows.title, left: columns.stake, bottom: last, right: columns.asSet },
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
  const { language, pieces, sizes, references, triangles } = data;
  const say = (label: Label) => label[language];
  const [a, b] = references.map(({ bearing, distance }) => ahead({ east: 0, north: 0 }, bearing, distance));
  return [
    section(say(labels.laidOut)),
    ...pieces.map(({ what, count, length }) => said(sentences[language][what](count, length))),
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
    section(say(arenaLabels.square)),
    ...triangles.map((triangle) => said(triangleSentence[language](triangle))),
    section(say(arenaLabels.references)),
    fact(say(arenaLabels.far), references[0].distance),
    fact(say(arenaLabels.right), references[1].distance),
    fact(say(labels.apart), distance(a, b)),
    said(say(labels.resetCenter)),
  ];
}

/** The two header rows of the stakes; the lower one names the units. */
function headerCells(row: number, { language }: ArenaLayoutData): PlanCell[] {
  const head = (column: number, label: Label, units: string[]) => [
    {
      ...put(row, column, label[language], "crewHead"),
      ...(units.length > 1 ? { across: units.length } : {}),
    },
    ...units.map((unit, k) => put(row + 1, column + k, unit, "crewSubhead")),
  ];
  const feet = [labels.feetAndInches[language], labels.feet[language]];
  const inches = [labels.inches[language]];
  return [
    ...head(columns.stake, labels.stake, [""]),
    ...head(places.along, arenaLabels.along, feet),
    ...head(places.across, arenaLabels.across, feet),
    ...head(places.chord, labels.chord, feet),
    ...head(places.tie, labels.tie1, feet),
    ...head(columns.kind, labels.kind, [""]),
    ...head(columns.side, labels.side, [""]),
    ...head(columns.hole, labels.hole, inches),
    ...head(columns.holeDepth, labels.holeDepth, inches),
    ...head(places.on, arenaLabels.on, [""]),
    ...head(columns.running, labels.running, feet),
    ...head(columns.asSet, labels.asSet, [""]),
    { ...put(row, columns.bearing, labels.coordinates[language], "crewHead"), across: 3 },
    ...(["stakeBearing", "east", "north"] as const).map((name, k) =>
      put(row + 1, columns.bearing + k, labels[name][language], "crewSubhead"),
    ),
  ];
}

/** One row a stake, the way back to the first one, and what is staked beside the fence. */
function stakeCells(first: number, data: ArenaLayoutData): PlanCell[] {
  const { stakes, corners, arcCenters, references, language, apart } = data;
  const word = (label: Label) => label[language];
  const back = first + stakes.length;
  const others = [
    ...(apart ? corners.map((at, k) => ({ name: `C${k + 1}`, at, kind: word(labels.corner) })) : []),
    ...arcCenters.map((at, k) => ({ name: `P${k + 1}`, at, kind: word(labels["arc center"]) })),
    ...references.map(({ name, bearing, distance }) => ({
      name,
      at: ahead({ east: 0, north: 0 }, bearing, distance),
      kind: word(labels.reference),
    })),
  ];
  const chord = cell({ row: first, column: places.chord + 1 });
  const above = cell({ row: back - 1, column: columns.running + 1 });
  return [
    ...stakes.flatMap((stake, k) => stakeRow(first + k, first, stake, data)),
    ...ruled(back, [
      put(back, columns.stake, "→ 1", "crewStake"),
      ...length(back, places.chord, chord),
      ...length(back, columns.running, plus(above, chord)),
    ]),
    ...others.flatMap(({ name, at, kind }, k) => {
      const row = back + 1 + k;
      return ruled(row, [
        put(row, columns.stake, name, "crewStake"),
        ...offsets(row, at, data),
        ...length(row, places.tie, distance(stakes[0], at)),
        put(row, columns.kind, kind, "crewWord"),
        put(row, columns.east, at.east, "place"),
        put(row, columns.north, at.north, "place"),
      ]);
    }),
  ];
}

/** How far a place lies along the left side from the near left corner, and to the right of it. */
function offsets(row: number, at: Point, { corners, heading }: ArenaLayoutData): PlanCell[] {
  const { along, across } = alongAndAcross(corners[0], at, heading);
  return [...offset(row, places.along, tidy(along)), ...offset(row, places.across, tidy(across))];
}

/** A length that is under 0 where a place lies before the near left corner: in feet and inches after a minus. */
function offset(row: number, column: number, feet: number): PlanCell[] {
  if (feet >= 0) return length(row, column, feet);
  const inches = text("-", pen("FEET_INCHES", times(-1, cell({ row, column: column + 1 }))));
  return [put(row, column, inches, "crewLength"), put(row, column + 1, feet, "crewDecimal")];
}

/** A length whose rounding leaves less than a millionth of a foot is none. */
const tidy = (feet: number) => (Math.abs(feet) < 1e-6 ? 0 : feet);

function stakeRow(row: number, first: number, stake: LaidArenaStake, data: ArenaLayoutData): PlanCell[] {
  const { language } = data;
  const above = cell({ row: row - 1, column: columns.running + 1 });
  const orBlank = (inches?: number): Term => inches ?? "";
  return [
    put(row, columns.stake, stake.stake, "crewStake"),
    ...offsets(row, stake, data),
    ...length(row, places.chord, stake.chord),
    ...length(row, places.tie, stake.tie1),
    put(row, columns.kind, labels[stake.kind][language], "crewWord"),
    put(row, columns.side, stake.sides.map((side) => labels[side][language]).join(", "), "crewWord"),
    put(row, columns.hole, orBlank(stake.hole?.diameter), "crewInches"),
    put(row, columns.holeDepth, orBlank(stake.hole?.depth), "crewInches"),
    put(row, places.on, (stake.side ? sideLabels[stake.side] : arenaLabels.arc)[language], "crewWord"),
    ...length(row, columns.running, row === first ? 0 : plus(above, cell({ row, column: places.chord + 1 }))),
    put(row, columns.asSet, "", "crewBlank"),
    ...(["bearing", "east", "north"] as const).map((name) => put(row, columns[name], stake[name], "place")),
  ];
}

function columnsOf({ language, stakes }: ArenaLayoutData): SheetPlan["columns"] {
  const holes = stakes.some(({ hole }) => hole);
  const lengths = [places.along, places.across, places.chord, places.tie, columns.running];
  const wide: Record<number, number> = {
    [columns.stake]: 7,
    ...Object.fromEntries(lengths.flatMap((column) => [[column, 14], [column + 1, 7.5]])),
    [columns.kind]: language === "es" ? 17 : 13,
    [columns.side]: 10,
    [places.on]: 9,
    [columns.asSet]: language === "es" ? 16 : 13,
    [columns.gap]: 3,
    [columns.space]: 3,
    [columns.label]: 34,
    [columns.now]: 15,
  }; // prettier-ignore
  const ofRound = [columns.shot, columns.cutOrFill, columns.siteEast, columns.siteNorth];
  const unseen = [columns.key, ...ofRound, ...(holes ? [] : [columns.hole, columns.holeDepth])] as number[];
  return Array.from({ length: columns.changed + 1 }, (_, column) => ({
    width: wide[column] ?? (column === columns.hole || column === columns.holeDepth ? 7 : 11),
    ...(unseen.includes(column) ? { hidden: true } : {}),
  }));
}
