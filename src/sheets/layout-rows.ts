import { type Label, type Language } from "../estimate/fields";
import { ahead, distance, type Point } from "../geometry/point";
import { type Place } from "./address";
import { put } from "./estimate-cells";
import {
  blank,
  call,
  cell,
  expression,
  minus,
  operate,
  pen,
  plus,
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import { type LaidReference, type LaidStake, type LayoutData } from "./layout-data";
import { cutOrFill } from "./layout-grade";
import { labels, sentences } from "./layout-messages";
import { columns } from "./layout-places";
import { type PlanCell } from "./plan";
import { type StyleName } from "./styles"; // prettier-ignore

/** The columns of a layout function's table, from 1; its header is row 1. */
const asked = { chord: 3, tie1: 4, tie2: 5, bearing: 6, east: 7, north: 8 } as const;

const ORIGIN: Point = { east: 0, north: 0 };

/** In feet and inches to the sixteenth; of nothing, 0 is written, where the function gives a blank. */
const feetInches = (place: Place) =>
  when(operate(cell(place), "=", 0), "0'", pen("FEET_INCHES", cell(place)));

/** A length as the crew reads it: feet and inches to the sixteenth, and the decimal beside it. */
export const length = (row: number, column: number, feet: Term): PlanCell[] => [
  put(row, column, feetInches({ row, column: column + 1 }), "crewLength"),
  put(row, column + 1, feet, "crewDecimal"),
];

const places = [
  ["bearing", "stakeBearing"], ["east", "east"], ["north", "north"], ["siteEast", "east"], ["siteNorth", "north"],
] as const; // prettier-ignore

/** The two header rows of the stakes; the lower one names the units. */
export function headerCells(row: number, { language }: LayoutData): PlanCell[] {
  const say = (label: Label) => label[language];
  const head = (column: number, label: Label, across = 1) => ({
    ...put(row, column, say(label), "crewHead"),
    ...(across > 1 ? { across } : {}),
  });
  const unit = (column: number, words: string) => put(row + 1, column, words, "crewSubhead");
  const lengths = ["radius", "chord", "tie1", "tie2", "running"] as const;
  const inches = ["hole", "holeDepth"] as const;
  const words = ["stake", "kind", "side", "asSet"] as const;
  const heights = ["shot", "cutOrFill"] as const;
  return [
    ...lengths.flatMap((name) => [
      head(columns[name], labels[name], 2),
      unit(columns[name], say(labels.feetAndInches)),
      unit(columns[name] + 1, say(labels.feet)),
    ]),
    ...inches.flatMap((name) => [head(columns[name], labels[name]), unit(columns[name], say(labels.inches))]),
    ...words.flatMap((name) => [head(columns[name], labels[name]), unit(columns[name], "")]),
    ...heights.flatMap((name) => [head(columns[name], labels[name]), unit(columns[name], say(labels.feet))]),
    head(columns.angle, labels.angle),
    unit(columns.angle, "°"),
    ...places.map(([name, label]) => put(row + 1, columns[name], say(labels[label]), "crewSubhead")),
    { ...put(row, columns.bearing, say(labels.coordinates), "crewHead"), across: 3 },
    { ...put(row, columns.siteEast, say(labels.fromMark), "crewHead"), across: 2 },
  ];
} // prettier-ignore

/** The rows of the stakes, from `row` down; behind the last one the way back to the first, and the reference stakes. */
export function stakeCells(row: number, data: LayoutData, gradeRow: number): PlanCell[] {
  const { stakes, references } = data;
  const first = row;
  const back = row + stakes.length;
  return [
    ...stakes.flatMap((stake, k) => stakeRow(row + k, first, stake, data, gradeRow)),
    ...backRow(back, first),
    ...references.flatMap((reference, k) => referenceRow(back + 1 + k, first, reference, data)),
  ];
}

function stakeRow(
  row: number,
  first: number,
  stake: LaidStake,
  { language, asks, center }: LayoutData,
  gradeRow: number,
): PlanCell[] {
  const figure = (name: keyof typeof asked): Term =>
    asks ? call("INDEX", asks, stake.stake + 1, asked[name]) : stake[name];
  const at = (name: "bearing" | "east" | "north", on = row) => cell({ row: on, column: columns[name] });
  const radius = call("SQRT", plus(times(at("east"), at("east")), times(at("north"), at("north"))));
  const above = cell({ row: row - 1, column: columns.running + 1 });
  const chord = cell({ row, column: columns.chord + 1 });
  return [
    put(row, columns.stake, stake.stake, "crewStake"),
    ...length(row, columns.radius, radius),
    ...(["chord", "tie1", "tie2"] as const).flatMap((name) => length(row, columns[name], figure(name))),
    put(row, columns.kind, labels[stake.kind][language], "crewWord"),
    put(row, columns.side, stake.sides.map((side) => labels[side][language]).join(", "), "crewWord"),
    put(row, columns.hole, orBlank(stake.hole?.diameter), "crewInches"),
    put(row, columns.holeDepth, orBlank(stake.hole?.depth), "crewInches"),
    put(row, columns.angle, turn(at("bearing"), at("bearing", first)), "crewAngle"),
    ...length(row, columns.running, row === first ? 0 : plus(above, chord)),
    ...heightCells(row, radius, gradeRow, language),
    asSetCell(row, stake, language),
    ...(["bearing", "east", "north"] as const).map((name) => put(row, columns[name], figure(name), "place")),
    ...(center
      ? [
          put(row, columns.siteEast, plus(at("east"), center.east), "place"),
          put(row, columns.siteNorth, plus(at("north"), center.north), "place"),
        ]
      : []),
  ];
}

/** Where the crew writes what it set; a stake by other is there already, or is set by the others. */
export const asSetCell = (row: number, { byOther }: LaidStake, language: Language): PlanCell =>
  put(row, columns.asSet, byOther ? labels.byOther[language] : "", byOther ? "crewWord" : "crewBlank");

/** Where the crew writes the height that it takes at a stake, and what to dig or fill there by it; `off` as in cutOrFill. */
export function heightCells(row: number, off: Expression, gradeRow: number, language: Language): PlanCell[] {
  const message = sentences[language].height;
  return [
    {
      row,
      column: columns.shot,
      says: blank,
      style: "inputHeight",
      input: true,
      accepts: { kind: "number", least: -10_000, most: 20_000, message },
    },
    put(row, columns.cutOrFill, cutOrFill(row, off, gradeRow, language), "crewHeight"),
  ];
}

const orBlank = (inches?: number): Term => inches ?? "";

/** How far one bearing lies clockwise from another, degrees from 0 to under 360. */
const turn = (bearing: Expression, from: Expression) =>
  when(operate(plus(bearing, 1e-9), "<", from), plus(minus(bearing, from), 360), minus(bearing, from));

/** From the last stake back to the first: the chord that closes the walk, and the whole distance around. */
function backRow(row: number, first: number): PlanCell[] {
  const chord = cell({ row: first, column: columns.chord + 1 });
  const above = cell({ row: row - 1, column: columns.running + 1 });
  return ruled(row, [
    put(row, columns.stake, "→ 1", "crewStake"),
    ...length(row, columns.chord, chord),
    ...length(row, columns.running, plus(above, chord)),
  ]);
}

function referenceRow(
  row: number,
  first: number,
  { name, bearing, distance: off }: LaidReference,
  { stakes, language }: LayoutData,
): PlanCell[] {
  const place = ahead(ORIGIN, bearing, off);
  const at = (on: number) => cell({ row: on, column: columns.bearing });
  return ruled(row, [
    put(row, columns.stake, name, "crewStake"),
    ...length(row, columns.radius, off),
    ...length(row, columns.tie1, distance(stakes[0], place)),
    ...length(row, columns.tie2, distance(stakes[1], place)),
    put(row, columns.kind, labels.reference[language], "crewWord"),
    put(row, columns.angle, turn(at(row), at(first)), "crewAngle"),
    put(row, columns.bearing, bearing, "place"),
    put(row, columns.east, place.east, "place"),
    put(row, columns.north, place.north, "place"),
  ]);
}

/** A row whose blank places are ruled like the others, with its place for what was set. */
export function ruled(row: number, cells: PlanCell[]): PlanCell[] {
  const filled = new Set(cells.map(({ column }) => column));
  const blanks = Array.from({ length: columns.asSet - columns.stake }, (_, k) => columns.stake + k);
  return [
    ...cells,
    ...blanks
      .filter((column) => !filled.has(column))
      .map((column): PlanCell => ({ row, column, says: expression(""), style: "crewWord" as StyleName })),
    put(row, columns.asSet, "", "crewBlank"),
  ];
}
