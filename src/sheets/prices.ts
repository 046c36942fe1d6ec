import { priceKinds, type PriceKind, type PriceRow } from "../estimate/prices";
import { type Cell } from "../units/cell";
import { call, cell, expression, minus, operate, when, type Term } from "./expression";
import { messages } from "./messages";
import { type PlanCell, type SheetPlan, type Validation } from "./plan";
import {
  newPricesLayout,
  oldBefore,
  pricesMark,
  pricesName,
  usableMark,
  type PriceColumn,
} from "./prices-layout";
import { type StyleName } from "./styles";

/** After how many days a price is old, unless the user sets another number. */
const usualDays = 90;

const { columns, headers } = newPricesLayout(pricesName);
const firstRow = headers + 1;
const place = (row: number, column: PriceColumn) => ({ row, column: columns[column]! });
const put = (row: number, column: PriceColumn, says: Term, style: StyleName): PlanCell => ({
  ...place(row, column),
  says: expression(says),
  style,
});
const input = (
  row: number,
  column: PriceColumn,
  value: Cell,
  style: StyleName,
  accepts?: Validation,
): PlanCell => ({ ...put(row, column, "", style), says: { kind: "constant", value }, input: true, accepts });
const oneOf = (options: string[], message: string): Validation => ({ kind: "list", options, message });
const number = (least: number, most: number): Validation => ({
  kind: "number",
  least,
  most,
  message: messages.between(least, most),
});
const yesOrNo = oneOf(["yes", "no"], messages.yesOrNo);
/** The days of 1970 to 2199. */
const day: Validation = { kind: "number", least: 25569, most: 109938, message: messages.dateOfPrice };

/** The sheet of the user's prices with these rows. An example mark is a formula that ends when another price is typed. */
export function pricesPlan(rows: readonly PriceRow[], name = pricesName): SheetPlan {
  return {
    name,
    cells: [
      put(0, "item", pricesMark, "key"),
      put(0, "name", messages.pricesTitle, "title"),
      { ...put(1, "name", messages.pricesHint, "caution"), across: 7 },
      ...settingCells(),
      ...messages.pricesHeaders.map((header, k): PlanCell => ({
        row: headers,
        column: k + 1,
        says: expression(header),
        style: headerStyles[k],
      })),
      ...rows.flatMap((row, k) => priceCells(row, firstRow + k)),
    ],
    columns: [20, 30, 9, 9, 12, 10, 9, 12, 22, 16, 11].map((width, k) => ({
      width,
      ...(k === 0 ? { hidden: true } : {}),
    })),
    hiddenRows: [],
    heights: { 0: 24, 1: 40 },
    frozenRows: firstRow,
    print: {
      area: { top: 0, left: 1, bottom: firstRow + rows.length - 1, right: columns.use! },
      landscape: false,
      pages: { wide: 1, tall: 0 },
      repeatRows: firstRow,
      footer: messages.footer,
    },
    pictures: [],
  };
}

/** How many days make a price old, and whether the cheapest counts where none is chosen: above the columns that they are of. */
function settingCells(): PlanCell[] {
  const layout = newPricesLayout(pricesName);
  const days = cell(place(headers - 1, "date"));
  const which = cell(place(headers - 1, "use"));
  return [
    put(headers - 1, "supplier", messages.daysUntilOld, "settingLabel"),
    input(headers - 1, "date", usualDays, "inputNumber", number(0, 10_000)),
    input(
      headers - 1,
      "use",
      "cheapest",
      "inputWord",
      oneOf(["cheapest", "chosen"], messages.cheapestOrChosen),
    ),
    {
      ...oldBefore(layout)!,
      says: when(operate(call("N", days), ">", 0), minus(call("TODAY"), days), 0),
      style: "limitDate",
    },
    { ...usableMark(layout)!, says: when(operate(which, "=", "chosen"), "yes", "<>no"), style: "unseen" },
  ];
}

const headerStyles = [
  "heading", "headingRight", "headingCenter", "headingRight", "headingRight", "headingCenter", "heading",
  "heading", "headingCenter", "headingCenter",
] as const; // prettier-ignore

/** The look of a size by its unit. */
const sizeStyles: Record<string, StyleName> = { ft: "inputFeet", "cu yd": "inputYards", lb: "inputPounds" };

function priceCells(row: PriceRow, at: number): PlanCell[] {
  const sizeStyle = sizeStyles[priceKinds[row.item as PriceKind].sized ?? ""] ?? "inputNumber";
  const use = row.use === null ? null : row.use ? "yes" : "no";
  const mark = when(operate(cell(place(at, "price")), "=", row.price ?? ""), "example", "");
  return [
    put(at, "item", row.item, "key"),
    input(at, "name", row.name, "inputText"),
    input(at, "size", row.size, sizeStyle, number(0, 1000)),
    input(at, "unit", row.unit, "inputWord"),
    input(at, "price", row.price, "inputMoney", number(0, 1_000_000)),
    input(at, "waste", row.waste || null, "inputNumber", number(0, 100)),
    input(at, "taxed", row.taxed ? "yes" : "no", "inputWord", yesOrNo),
    ...(row.example && row.price !== null ? [put(at, "example", mark, "note")] : []),
    input(at, "supplier", row.supplier || null, "inputText"),
    input(at, "date", row.date, "inputDate", day),
    input(at, "use", use, "inputWord", yesOrNo),
  ];
}
