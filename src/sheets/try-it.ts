import { fieldOf } from "../estimate/fields";
import { type Place } from "./address";
import { put } from "./estimate-cells";
import { blank, call, cell, pen, range, when, operate, type Expression, type Term } from "./expression";
import { messages } from "./messages";
import { type PlanCell, type SheetPlan, type Validation } from "./plan";
import { type StyleName } from "./styles";

const { tryIt: words } = messages;

/** Sizes to start from, across in ft, and what a pen of each size is built of. All of it can be typed over. */
const sizes = [44, 56, 72, 84, 96];
const given = { panel: 12, gate: 10, depth: 2.5, bigTruck: 14, smallTruck: 8 };

const labels = { ...words.given, depth: fieldOf("depth").label.en };

const first = { row: 4, column: 1 };
const width = sizes.length;
const inputs = Object.keys(given) as (keyof typeof given)[];

/** Where the common inputs stand: a column of their own, above the row of sizes. */
const inputPlace = (key: keyof typeof given): Place => ({
  row: first.row + inputs.indexOf(key),
  column: first.column,
  fixedRow: true,
  fixedColumn: true,
});
const sizeRow = first.row + inputs.length + 1;

/** One row of answers: its label, its unit, its look, and the formula under a size. */
interface Answer {
  label: string;
  unit: string;
  style: StyleName;
  says(size: Expression, row: (label: string) => Expression): Expression;
}

const at = (key: keyof typeof given) => cell(inputPlace(key));
const trucks = range(inputPlace("bigTruck"), inputPlace("smallTruck"));
const truckLoads = (yards: Expression, k: number) => call("INDEX", pen("LOADS", yards, trucks), k);

const answers: Answer[] = [
  { label: words.around, unit: "ft", style: "figure", says: (size) => pen("CIRCUMFERENCE", size) },
  { label: words.area, unit: "sq ft", style: "figure", says: (size) => pen("AREA", size) },
  { label: words.panels, unit: "", style: "count", says: (size) => pen("PANELS", size, at("panel"), at("gate")) },
  { label: words.pinCircle, unit: "ft", style: "figure", says: (_, row) => pen("PIN_CIRCLE", at("panel"), row(words.panels), at("gate")) },
  { label: words.pinCircleShown, unit: "", style: "feetInches", says: (_, row) => pen("FEET_INCHES", row(words.pinCircle)) },
  { label: words.insideClear, unit: "ft", style: "figure", says: (_, row) => pen("INSIDE_CLEAR", at("panel"), row(words.panels), at("gate")) },
  { label: words.insideArea, unit: "sq ft", style: "figure", says: (_, row) => pen("INSIDE_AREA", at("panel"), row(words.panels), at("gate")) },
  { label: words.sand, unit: "cu yd", style: "figure", says: (_, row) => pen("FILL", row(words.insideArea), at("depth")) },
  { label: words.tons, unit: "tons", style: "figure", says: (_, row) => pen("TONS", row(words.sand)) },
  { label: words.bigLoads, unit: "loads", style: "count", says: (_, row) => truckLoads(row(words.sand), 1) },
  { label: words.smallLoads, unit: "loads", style: "count", says: (_, row) => truckLoads(row(words.sand), 2) },
  {
    label: words.depth, unit: "in", style: "figure",
    says: (_, row) => {
      const yards = call("SUM", ...[[words.bigLoads, "bigTruck"], [words.smallLoads, "smallTruck"]].map(([label, key]) => times(row(label), at(key as "bigTruck"))));
      return pen("DEPTH", yards, row(words.insideArea));
    },
  },
]; // prettier-ignore

const times = (left: Expression, right: Expression) => operate(left, "*", right);

/** A sheet to try the functions on: a row of sizes, and under each what a pen of that size takes. */
export function tryItPlan(name: string): SheetPlan {
  const rowOf = (label: string) => sizeRow + 1 + answers.findIndex((answer) => answer.label === label);
  const arenaRow = sizeRow + answers.length + 2;
  const columns = sizes.map((_, k) => first.column + k);
  return {
    name,
    cells: [
      put(0, 0, words.title, "title"),
      { ...put(1, 0, words.hint, "note"), across: width + 2 },
      ...inputs.flatMap((key) => inputRow(inputPlace(key), labels[key], words.units[key], given[key])),
      put(sizeRow, 0, fieldOf("size").label.en, "heading"),
      ...sizes.map((size, k) => input({ row: sizeRow, column: columns[k] }, size)),
      put(sizeRow, first.column + width, "ft", "unit"),
      ...answers.flatMap(({ label, unit, style, says }) => [
        put(rowOf(label), 0, label, "label"),
        ...columns.map((column) => {
          const size = cell({ row: sizeRow, column });
          const row = (other: string) => cell({ row: rowOf(other), column });
          return put(rowOf(label), column, blankWithout(size, says(size, row)), style);
        }),
        put(rowOf(label), first.column + width, unit, "unit"),
      ]),
      ...arenaCells(arenaRow),
    ],
    columns: [38, ...sizes.map(() => 12), 9].map((wide) => ({ width: wide })),
    hiddenRows: [],
    heights: { 0: 24 },
    frozenRows: 0,
    print: {
      area: { top: 0, left: 0, bottom: arenaRow + 5, right: first.column + width },
      landscape: true,
      pages: { wide: 1, tall: 0 },
      repeatRows: 0,
      footer: messages.footer,
    },
    pictures: [],
  };
}

const blankWithout = (size: Expression, then: Expression) => when(operate(call("N", size), "=", 0), "", then);

const lengths: Validation = { kind: "number", least: 0, most: 5000, message: messages.between(0, 5000) };

const input = (place: Place, value: number): PlanCell => ({
  row: place.row,
  column: place.column,
  says: { ...blank, value } as Expression,
  style: "inputNumber",
  input: true,
  accepts: lengths,
});

const inputRow = (place: Place, label: string, unit: string, value: number): PlanCell[] => [
  put(place.row, 0, label, "label"),
  input(place, value),
  put(place.row, place.column + 1, unit, "unit"),
];

function arenaCells(row: number): PlanCell[] {
  const length = { row: row + 1, column: first.column };
  const wide = { row: row + 2, column: first.column };
  const figure = (name: string): Term => pen(name, cell(length), cell(wide));
  return [
    put(row, 0, words.arena, "heading"),
    ...inputRow(length, words.arenaLength, "ft", 180),
    ...inputRow(wide, words.arenaWidth, "ft", 90),
    ...[["ARENA_PERIMETER", words.around, "ft"], ["ARENA_AREA", words.area, "sq ft"], ["DIAGONAL", words.diagonal, "ft"]].flatMap(
      ([name, label, unit], k) => [
        put(row + 3 + k, 0, label, "label"),
        put(row + 3 + k, first.column, figure(name), "figure"),
        put(row + 3 + k, first.column + 1, unit, "unit"),
      ],
    ),
  ];
} // prettier-ignore
