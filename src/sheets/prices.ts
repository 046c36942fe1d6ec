import { messages as estimateMessages } from "../estimate/messages";
import { priceKinds, type PriceKind, type PriceRow } from "../estimate/prices";
import { isError, type Cell } from "../units/cell";
import { type Place } from "./address";
import { call, cell, expression, operate, range, when, type Expression, type Term } from "./expression";
import { messages } from "./messages";
import { type PlanCell, type SheetPlan } from "./plan";
import { type StyleName } from "./styles";

/** What A1 of the prices says, by which a host finds the sheet whatever its name. */
export const pricesMark = "penstake prices 1";

/** The name that the sheet of prices starts with. */
export const pricesName = "Prices";

const columns = { item: 0, name: 1, size: 2, unit: 3, price: 4, waste: 5, taxed: 6, example: 7 } as const;
const firstRow = 3;
/** Lookups reach this far down, so that rows added below are found. */
const lastRow = 499;

type Column = keyof typeof columns;

const whole = (sheet: string, column: Column): Expression => {
  const place = (row: number): Place => ({
    sheet,
    row,
    column: columns[column],
    fixedRow: true,
    fixedColumn: true,
  });
  return range(place(firstRow), place(lastRow));
};

/** The formulas by which a line of another sheet asks the prices for its item. */
export function lookUp(sheet: string, item: Term, size?: Term) {
  const of = (column: Column) => whole(sheet, column);
  const asked: Term[] = [of("item"), item, ...(size === undefined ? [] : [of("size"), size])];
  const has = (column: Column, wanted: string) => call("COUNTIFS", ...asked, of(column), wanted);
  return {
    price: when(
      operate(has("price", ">=0"), "=", 1),
      call("SUMIFS", of("price"), ...asked),
      estimateMessages.priceMissing,
    ),
    waste: call("SUMIFS", of("waste"), ...asked),
    taxed: when(operate(has("taxed", "yes"), ">", 0), "yes", ""),
    example: when(operate(has("example", "example"), ">", 0), estimateMessages.examplePrice, ""),
  };
}

/** The sheet of the user's prices with these rows. An example mark is a formula that ends when another price is typed. */
export function pricesPlan(rows: readonly PriceRow[], name = pricesName): SheetPlan {
  const put = (row: number, column: number, says: Term | Expression, style: StyleName): PlanCell => ({
    row,
    column,
    says: expression(says),
    style,
  });
  const headers = ["Item", "Size", "Unit", "Unit price", "Waste %", "Taxed", "Mark"];
  return {
    name,
    cells: [
      put(0, 0, pricesMark, "key"),
      put(0, 1, messages.pricesTitle, "title"),
      { ...put(1, 1, messages.pricesHint, "note"), across: 7 },
      ...headers.map((header, k) => put(2, k + 1, header, headerStyles[k])),
      ...rows.flatMap((row, k) => priceCells(row, firstRow + k)),
    ],
    columns: [20, 30, 9, 9, 12, 10, 9, 12].map((width, k) => ({
      width,
      ...(k === 0 ? { hidden: true } : {}),
    })),
    hiddenRows: [],
    heights: { 0: 24 },
    frozenRows: firstRow,
    print: {
      area: { top: 0, left: 1, bottom: firstRow + rows.length - 1, right: columns.example },
      landscape: false,
      pages: { wide: 1, tall: 0 },
      repeatRows: firstRow,
      footer: messages.footer,
    },
    pictures: [],
  };
}

const headerStyles = [
  "heading", "headingRight", "headingCenter", "headingRight", "headingRight", "headingCenter", "heading",
] as const; // prettier-ignore

/** The look of a size by its unit. */
const sizeStyles: Record<string, StyleName> = { ft: "inputFeet", "cu yd": "inputYards", lb: "inputPounds" };

function priceCells(row: PriceRow, at: number): PlanCell[] {
  const place = (column: Column) => ({ row: at, column: columns[column] });
  const number = (least: number, most: number) =>
    ({ kind: "number", least, most, message: messages.between(least, most) }) as const;
  const input = (column: Column, value: Cell, style: StyleName, accepts?: PlanCell["accepts"]): PlanCell => ({
    ...place(column),
    says: { kind: "constant", value },
    style,
    input: true,
    accepts,
  });
  return [
    { ...place("item"), says: expression(row.item), style: "key" },
    input("name", row.name, "inputText"),
    input(
      "size",
      row.size,
      sizeStyles[priceKinds[row.item as PriceKind].sized ?? ""] ?? "inputNumber",
      number(0, 1000),
    ),
    input("unit", row.unit, "inputWord"),
    input("price", row.price, "inputMoney", number(0, 1_000_000)),
    input("waste", row.waste || null, "inputNumber", number(0, 100)),
    input("taxed", row.taxed ? "yes" : "no", "inputWord", {
      kind: "list",
      options: ["yes", "no"],
      message: messages.yesOrNo,
    }),
    ...(row.example && row.price !== null
      ? [
          {
            ...place("example"),
            says: when(operate(cell(place("price")), "=", row.price), "example", ""),
            style: "note",
          } as PlanCell,
        ]
      : []),
  ];
}

/** The cells of a row to add below the others, in the order of the sheet's columns. */
export const appendedRow = (row: PriceRow): Cell[] => [
  row.item, row.name, row.size, row.unit, row.price, row.waste || null, row.taxed ? "yes" : "no", null,
]; // prettier-ignore

/** The rows that a sheet of prices holds, read from what its cells show. */
export function readPrices(values: Cell[][]): PriceRow[] {
  const rows: PriceRow[] = [];
  for (const cells of values.slice(firstRow, lastRow + 1)) {
    const at = (column: Column): Cell => cells[columns[column]] ?? null;
    const item = at("item");
    if (typeof item !== "string" || !(item in priceKinds)) continue;
    const amount = (column: Column) => (typeof at(column) === "number" ? (at(column) as number) : null);
    const word = (column: Column) => (isError(at(column)) ? "" : String(at(column) ?? "").toLowerCase());
    rows.push({
      item,
      name: String(at("name") ?? ""),
      size: amount("size"),
      unit: String(at("unit") ?? ""),
      price: amount("price"),
      waste: amount("waste") ?? 0,
      taxed: word("taxed") === "yes",
      example: word("example") === "example",
    });
  }
  return rows;
}
