import { slotKeys } from "../../estimate/fields";
import { layers, type Layer, type Material } from "../../estimate/layers";
import { lineSectionsOf } from "../../estimate/own-lines";
import { inCommon } from "../../estimate/together";
import { columns, type ColumnName } from "../estimate-layout";
import { put } from "../estimate-cells";
import { lineFormulas } from "../estimate-formulas";
import { haulFormulas } from "../layer-formulas";
import {
  call, cell, expression, minus, number, operate, over, plus, range, when, type Expression, type Term,
} from "../expression"; // prettier-ignore
import { above, blankUnless, cellsOf, isNumber, sum, type Sheet } from "../formula-terms";
import { type PlanCell, type SheetPlan } from "../plan";
import { type PricesLayout } from "../prices-layout";
import { type StyleName } from "../styles";
import { totalFormulas } from "../total-formulas";
import { marks } from "./marks";
import { messages } from "./messages";
import { cellOf, placeIn, type EstimateSource } from "./source";
import { everySection, firstRow, partKey, placesIn, sharedLines, togetherRows } from "./together-rows";

const allShared = Object.values(sharedLines).flat();

/**
 * The sheet that prices several estimates as one, for the house alone: the base and the sand that all need in loads counted once, one
 * mobilization, and the charges laid on the lines of all of them once. Everything is live: what is not shared is what
 * the estimates' own sections come to without it.
 */
export function togetherPlan(
  sources: readonly EstimateSource[],
  prices: PricesLayout,
  name: string,
): SheetPlan {
  const rows = togetherRows(sources);
  const places = placesIn(rows);
  const last = firstRow + rows.length - 1;
  const sheet: Sheet = {
    places,
    prices,
    structure: everySection,
    lines: { from: firstRow, to: places.direct.row - 1 },
  };
  const says = formulas(sheet, sources);
  const styles: Partial<Record<ColumnName, StyleName>> = {
    item: "warning", quantity: "figure", price: "money", amount: "money", taxed: "mark", note: "priceNote", input: "fixed", count: "figure", pick: "key", kind: "key", size: "key",
  }; // prettier-ignore
  const cells = rows.flatMap(({ label, unit = "", heading, keys, only, shows }, k): PlanCell[] => {
    const row = firstRow + k;
    const named = (word: string): Term => (only === undefined ? word : when(operate(cell(places[only]), "=", ""), "", word));
    const pairs = Object.entries(keys).filter(([, key]) => key in says);
    const isTotal = keys.amount === "total";
    return [
      ...(pairs.length > 0
        ? [put(row, columns.key, pairs.map(([column, key]) => `${column}=${key}`).join(" "), "key")]
        : []),
      ...(label ? [put(row, columns.item, named(label), heading ? "section" : isTotal ? "totalLabel" : "label")] : []),
      ...(unit ? [put(row, columns.unit, named(unit), "unit")] : []),
      ...pairs.map(([column, key]) =>
        put(row, columns[column as ColumnName], says[key], heading ? "sectionSum" : isTotal ? "total" : styles[column as ColumnName]!)),
      ...(only && shows ? [put(row, columns.quantity, says[only], shows === "words" ? "text" : "fixed")] : []),
    ];
  }); // prettier-ignore
  const named = [...new Set(rows.flatMap(({ keys }) => Object.keys(keys)))] as ColumnName[];
  const widths = [
    14,
    44,
    11,
    8,
    11,
    13,
    6,
    14,
    ...Array.from({ length: columns.size - columns.note }, () => 9),
  ];
  const hidden: number[] = [
    columns.key,
    columns.input,
    columns.count,
    columns.pick,
    columns.kind,
    columns.size,
  ];
  return {
    name,
    cells: [
      put(0, columns.key, marks.together, "key"),
      ...named.map((column) => put(0, columns[column], column, "key")),
      put(1, columns.item, messages.together.title, "title"),
      {
        ...put(2, columns.item, messages.together.over(sources.map((one) => one.name)), "subtitle"),
        across: 7,
      },
      ...Object.entries(messages.together.heads).map(([column, head]) =>
        put(
          firstRow,
          columns[column as ColumnName],
          head,
          column === "unit" || column === "taxed" ? "headingCenter" : "headingRight",
        ),
      ),
      ...cells,
    ],
    columns: widths.map((width, k) => ({ width, ...(hidden.includes(k) ? { hidden: true } : {}) })),
    hiddenRows: [0],
    heights: { 1: 26 },
    frozenRows: 0,
    print: {
      area: { top: 1, left: columns.item, bottom: last, right: columns.note },
      landscape: false,
      pages: { wide: 1, tall: 1 },
      repeatRows: 0,
      footer: messages.together.inHouse,
    },
    pictures: [],
  };
}

/** The cell of the total on the sheet of that name that prices these estimates as one. */
export const totalIn = (sources: readonly EstimateSource[], name: string): Expression =>
  cell({ ...placesIn(togetherRows(sources)).total, sheet: name });

/** The yards that are delivered for each yard needed, by the sheet of that name that prices these estimates as one. */
export function sharesIn(sources: readonly EstimateSource[], name: string): Record<Material, Expression> {
  const places = placesIn(togetherRows(sources));
  const share = (material: Material) => {
    const [delivered, need] = ["delivered", "need"].map((what) => places[`${material}_${what}`]);
    return over(cell({ ...delivered, sheet: name }), cell({ ...need, sheet: name }));
  };
  return { base: share("base"), sand: share("sand") };
}

/** What every keyed cell says. */
function formulas(sheet: Sheet, sources: readonly EstimateSource[]): Record<string, Expression> {
  const totals = totalFormulas(sheet);
  const own = sources.map((source) => cellOf(source, "total"));
  const total = own.reduceRight((then, one) => when(isNumber(one), then, one), totals.total);
  return {
    ...common(sources),
    ...groundOfAll(sheet, sources),
    ...linesOfEach(sources),
    ...Object.fromEntries(
      lineSectionsOf(everySection).map((section) => [`sum_${section}`, sectionSum(sheet, section, sources.length)]),
    ),
    ...totals,
    total,
  };
} // prettier-ignore

/** What all must have alike, from the first estimate, and a warning where another differs. */
function common(sources: readonly EstimateSource[]): Record<string, Expression> {
  const [first, ...others] = sources;
  const differ = others.flatMap((other) =>
    inCommon.map(({ key }) => operate(cellOf(first, key), "<>", cellOf(other, key))),
  );
  const answers = inCommon.map(({ key }) => [key, blankUnless(operate(cellOf(first, key), "<>", ""), cellOf(first, key))]); // prettier-ignore
  return {
    ...Object.fromEntries(answers),
    differs:
      differ.length > 0 ? blankUnless(call("OR", ...differ), messages.together.differ) : expression(""),
  };
}

/** The base and the sand of all, the loads that bring them, and the lines that are shared. */
function groundOfAll(sheet: Sheet, sources: readonly EstimateSource[]): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const trips = call("MAX", ...sources.map((source) => number(cellOf(source, "mobilization"))));
  const ofLayer = (layer: Layer) => {
    const need = `${layer.material}_need`;
    return {
      ...Object.fromEntries(sources.map((source, k) => [partKey(need, k + 1), cellOf(source, need)])),
      [need]: sum(sources.map((_, k) => at(partKey(need, k + 1)))),
      ...haulFormulas(sheet, layer),
    };
  };
  return {
    ...layers.reduce((all, layer) => ({ ...all, ...ofLayer(layer) }), {}),
    mobilization_count: blankUnless(above(trips, 0), trips),
    ...slotKeys("truck").reduce((all, key) => ({ ...all, ...lineFormulas(sheet, key, true, "haul", at(key)) }), {}),
    ...lineFormulas(sheet, "mobilization", true, "mobilization"),
  };
} // prettier-ignore

/** What each estimate's sections come to without what is shared, its holes, and what of that is taxed. */
function linesOfEach(sources: readonly EstimateSource[]): Record<string, Expression> {
  const cents = (money: Expression) => call("ROUND", money, 2);
  const has = ({ sheet }: EstimateSource, key: string) => key in sheet.cells;
  const parts = sources.flatMap((source, k) => {
    const sections = lineSectionsOf(source.sheet.structure);
    const sums = lineSectionsOf(everySection).map((section) => {
      const taken = (sharedLines[section] ?? []).map((key) => number(cellOf(source, `${key}_amount`)));
      const whole = sections.includes(section) ? cellOf(source, `sum_${section}`) : expression(0);
      return [partKey(section, k + 1), cents(taken.length > 0 ? minus(whole, ...taken) : plus(whole, 0))];
    });
    const taxedShared = allShared.map((key) =>
      when(operate(cellOf(source, `${key}_taxed`), "=", "yes"), number(cellOf(source, `${key}_amount`)), 0),
    );
    const down = (key: string) => {
      const rows = [`sum_${sections[0]}`, "direct"].map((one) => placeIn(source, one).row);
      const { column } = placeIn(source, key);
      return range({ sheet: source.name, row: rows[0], column }, { row: rows[1] - 1, column });
    };
    const taxed = call("SUMIFS", down("sand_amount"), down("sand_taxed"), "yes");
    return [...sums, [partKey("taxed", k + 1), cents(minus(taxed, ...taxedShared))], [partKey("mark", k + 1), expression("yes")]];
  }); // prettier-ignore
  const holes = sources.filter((source) => has(source, "holes_amount")).map((source) => number(cellOf(source, "holes_amount")));
  return { ...Object.fromEntries(parts), holes_amount: holes.length > 0 ? sum(holes) : expression(0) };
} // prettier-ignore

/** The lines of one section added up. */
function sectionSum({ places }: Sheet, section: string, count: number): Expression {
  const shared = (sharedLines as Record<string, readonly string[] | undefined>)[section] ?? [];
  const last = shared.length > 0 ? `${shared[shared.length - 1]}_amount` : partKey(section, count);
  return call("SUM", range(places[partKey(section, 1)], places[last]));
}
