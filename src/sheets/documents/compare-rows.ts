import { columnChartDrawing } from "../../drawing/column-chart";
import { ownCountsOf } from "../../estimate/compare";
import { figureField } from "../../estimate/figure-list";
import { figuresOf } from "../../estimate/figures";
import { feetInches } from "../../units/feet-inches";
import { put } from "../estimate-cells";
import { call, cell, minus, operate, over, range, when, type Expression, type Term } from "../expression";
import { blankUnless, isNumber } from "../formula-terms";
import { type StyleName } from "../styles";
import { type Compared } from "./compare";
import { compareWords as words } from "./compare-words";
import {
  columns,
  gap,
  headingRow,
  LINE,
  linesOf,
  saidRow,
  sentenceRow,
  titleRow,
  type At,
  type Row,
} from "./rows";
import { cellOf, exampleLines, type EstimateSource } from "./source";

/** What is said of each size as it is built, where it has any of it. */
const builtKeys = ["built_length", "built_width", "pin_circle", "post_circle", "inside_clear", "clear_length", "clear_width", "distance_around", "area", "posts", "base_delivered", "sand_delivered"]; // prettier-ignore

/** The first column of the sizes. */
const first = columns.item + 1;

/** The rows of a comparison: the sizes, the prices against the budget, a chart, and what would bring dear sizes down. */
export function compareRows(source: EstimateSource, all: Compared, date: string): Row[] {
  return [
    titleRow(words.title),
    sentenceRow(words.of(source.name, date), "letterSmall"),
    ...(exampleLines([source]) > 0 ? [sentenceRow(words.examples, "letterStrong")] : []),
    gap(),
    ...sizeRows(all, source),
    saidRow((at) => when(isNumber(at("budget")), "", words.noBudget), "letterStrong"),
    gap(),
    chartRow(all),
    gap(),
    headingRow(words.waysTitle),
    ...waysRows(all),
    gap(),
    ...noteRows(source, all),
  ];
}

/** How the column of the largest size that fits is told from the others. */
const shaded: Partial<Record<StyleName, StyleName>> = {
  sizeHead: "sizeFitsHead",
  sizePrice: "sizeFitsPrice",
  sizeWord: "sizeFitsWord",
};

/** One row under the sizes: its label, and what stands under each of them. */
function sizeRow(label: string, style: StyleName, says: (k: number, row: number, at: At) => Term | undefined, { largest, sizes }: Compared, key?: string): Row {
  return {
    ...(key ? { keys: { words: key } } : {}),
    height: 17,
    cells: (row, at) => [
      put(row, columns.item, label, "letterFact"),
      ...sizes.flatMap((_, k) => {
        const term = says(k, row, at);
        return [put(row, first + k, term ?? "", k === largest ? (shaded[style] ?? style) : style)];
      }),
    ],
  };
} // prettier-ignore

/** The cell under size k in the row whose first size has this key. */
const under = (at: At, key: string, k: number): Expression => {
  const found = at(key);
  if (found.kind !== "cell") throw new Error(`${key} is no cell.`);
  return cell({ ...found.place, column: first + k });
};

function sizeRows(all: Compared, source: EstimateSource): Row[] {
  const { sizes, found } = all;
  const { job } = source;
  const budgetCell = cellOf(source, "budget");
  const figures = found.map(({ made, answers }) => (made ? figuresOf({ ...job, ...answers }, made) : {}));
  const figure = (key: string) => (k: number) => figures[k][key] ?? "";
  const shown = builtKeys.filter((key) => figures.some((some) => Boolean(some[key])));
  const price = (at: At, k: number) => under(at, "price", k);
  const priced = (at: At, k: number, then: Term) => blankUnless(isNumber(price(at, k)), then);
  const budget = (at: At) => at("budget");
  const both = (at: At, k: number) => call("AND", isNumber(budget(at)), isNumber(price(at, k)));
  const within = (at: At, k: number) => under(at, "within", k);
  const areas = (at: At) => range(placeOf(within(at, 0)), placeOf(within(at, sizes.length - 1)));
  return [
    sizeRow(words.asked, "sizeHead", (k) => sizes[k].label, all, "asked"),
    ...shown.map((key) => {
      const { label, unit, kind } = figureField(key);
      if (kind === "feet")
        return sizeRow(label.en, "sizeText", (k) => inFeet(figures[k][key]), all);
      return sizeRow(`${label.en}, ${unit}`, kind === "whole" ? "sizeCount" : "sizeFigure", figure(key), all, key);
    }),
    sizeRow(words.price, "sizePrice", (k) => found[k].price ?? undefined, all, "price"),
    sizeRow(words.budget, "sizeMoney", () => when(isNumber(budgetCell), budgetCell, ""), all, "budget"),
    sizeRow(words.left, "sizeMoney", (k, _, at) => blankUnless(both(at, k), minus(budget(at), price(at, k))), all),
    sizeRow(words.perFoot, "sizeMoney", (k, _, at) => priced(at, k, over(price(at, k), around(figures[k]))), all),
    sizeRow(words.perSquareFoot, "sizeMoney", (k, _, at) => priced(at, k, over(price(at, k), under(at, "area", k))), all),
    sizeRow(words.within, "sizeFigure", (k, _, at) => blankUnless(both(at, k), blankUnless(operate(price(at, k), "<=", budget(at)), under(at, "area", k))), all, "within"),
    sizeRow(words.verdict, "sizeWord", (k, _, at) =>
      found[k].made === undefined
        ? words.noPen
        : when(
            isNumber(price(at, k)),
            blankUnless(isNumber(budget(at)), when(isNumber(within(at, k)), when(operate(within(at, k), "=", call("MAX", areas(at))), words.largest, words.fits), words.isOver)),
            words.noPrice,
          ), all),
  ];
} // prettier-ignore

const placeOf = (term: Expression) => {
  if (term.kind !== "cell") throw new Error("A cell is wanted.");
  return term.place;
};

const inFeet = (value: unknown) => (typeof value === "number" ? feetInches(value) : "");

const around = (figures: Record<string, unknown>) => Number(figures.distance_around);

/** The size of the chart, points. */
const points = { width: 540, height: 189 };

/** The prices and the budget as columns: Excel's own chart, a picture elsewhere. */
function chartRow({ sizes, found, largest, budget }: Compared): Row {
  const dollars = (value: number) => `$${Math.round(value).toLocaleString("en-US")}`;
  const last = first + sizes.length - 1;
  const across = (term: Expression) => ({ top: placeOf(term).row, bottom: placeOf(term).row, left: first, right: last });
  return {
    height: points.height + 4,
    cells: () => [],
    chart: (at) => ({
      column: columns.item,
      ...points,
      kind: "column",
      title: words.chart,
      axes: { categories: words.asked, values: words.priceAxis },
      categories: across(at("asked")),
      series: [
        { name: words.price, values: across(at("price")) },
        ...(budget === null ? [] : [{ name: words.budget, values: across(at("budget")) }]),
      ],
      description: sizes
        .map(({ label }, k) => `${label}: ${found[k].price === null ? words.noPrice : dollars(found[k].price!)}`)
        .join(", "),
      svg: columnChartDrawing({
        title: words.chart,
        axis: words.priceAxis,
        columns: sizes.map(({ label }, k) => ({ label, value: found[k].price, marked: k === largest })),
        ...(budget === null ? {} : { line: { label: `${words.budget} ${dollars(budget)}`, value: budget } }),
        width: points.width / 0.75,
        height: points.height / 0.75,
        write: dollars,
      }),
    }),
  };
} // prettier-ignore

function waysRows({ sizes, ways, found, budget }: Compared): Row[] {
  const dear = sizes.flatMap(({ label }, k) => {
    const price = found[k].price;
    if (budget === null || price === null || price <= budget) return [];
    return [{ label, k, ways: ways[k] }];
  });
  if (dear.length === 0) return [sentenceRow(words.nothingOver)];
  const { size, change, price, saves, left } = words.waysHead;
  const head: Row = {
    height: 15,
    cells: (row) => [
      put(row, columns.item, `${size}, ${change.toLowerCase()}`, "letterHead"),
      ...[price, saves, left].map((word, k) => put(row, first + k, word, "letterHeadRight")),
    ],
  };
  return [
    head,
    ...dear.flatMap(({ label, ways: some }) =>
      some.length === 0
        ? [sentenceRow(`${label}: ${words.noWay}`)]
        : some.map((way): Row => ({
            height: 15,
            cells: (row, at) => [
              put(row, columns.item, `${label} with ${way.words}`, "letterFact"),
              put(row, first, way.price!, "letterMoney"),
              put(row, first + 1, way.saves!, "letterMoney"),
              put(row, first + 2, minus(at("budget"), cell({ row, column: first })), "letterMoney"),
            ],
          })),
    ),
  ];
}

function noteRows({ job }: EstimateSource, { sizes, found }: Compared): Row[] {
  const refused = found.flatMap(({ refusal }, k) => (refusal ? [words.why(sizes[k].label, refusal)] : []));
  const notes = [...refused, words.repriced, ...(ownCountsOf(job).length > 0 ? [words.ownCounts] : [])];
  return notes.map((note) => ({ ...sentenceRow(note, "letterSmall"), height: 2 + LINE * linesOf(note) }));
}
