import { type Cell } from "../../units/cell";
import { type Place } from "../address";
import { put } from "../estimate-cells";
import { call, cell, operate, range, when, type Expression } from "../expression";
import { type Shown } from "../keyed-cells";
import { messages } from "../messages";
import { type PlanCell, type SheetPlan, type Validation } from "../plan";
import { type StyleName } from "../styles";
import { closeOutWords as say } from "./close-out-words";
import { marks } from "./marks";

/** The columns of the ticket log. */
export const ticketColumns = {
  key: 0, date: 1, ticket: 2, supplier: 3, item: 4, quantity: 5, unit: 6, amount: 7, invoice: 8, running: 9, check: 10,
} as const; // prettier-ignore

/** Where tickets stand: under the heads, in rows that print on two pages. */
export const ticketRows = { heads: 3, first: 4, count: 40 } as const;

/** The column, right of what is printed, that lists what tickets may call an item. */
const LIST = 12;

/** The units that tickets count in. */
const units = ["ton", "cu yd", "each", "load", "bag", "roll", "can"];

/** A list of choices longer than this cannot stand in a spreadsheet's rule. */
const LONGEST_LIST = 250;

/** What tickets call an item: its name without commas, which part the choices of a list. */
export const ticketName = (name: string) => name.replaceAll(",", "").replace(/\s+/g, " ").trim();

/** A ticket log as its sheet stands: its tickets are in the rows from `first` to `last`, from 0. */
export interface TicketLog {
  sheet: string;
  first: number;
  last: number;
}

/** The log that `ticketsPlan` writes under that name. */
export const newLog = (sheet: string): TicketLog => ({
  sheet,
  first: ticketRows.first,
  last: ticketRows.first + ticketRows.count - 1,
});

/** A log that stands, its rows found by its heads and by its running total, so that rows may have been put in. */
export function logOf({ name, values, formulas }: Shown & { formulas: Cell[][] }): TicketLog | undefined {
  const heads = values.findIndex(
    (row) => row.includes(say.ticketHeads[1]) && row.includes(say.ticketHeads[8]),
  );
  const column = values[heads]?.indexOf(say.ticketHeads[8]) ?? -1;
  const last = formulas.reduce((at, row, k) => (String(row[column] ?? "").startsWith("=") ? k : at), -1);
  const unmoved = column === ticketColumns.running;
  return heads >= 0 && unmoved && last > heads ? { sheet: name, first: heads + 1, last } : undefined;
}

/** A column of the tickets of a log, as a range of its sheet. */
export function ticketRange(
  { sheet, first, last }: TicketLog,
  column: keyof typeof ticketColumns,
): Expression {
  const place = (row: number): Place => ({
    sheet, row, column: ticketColumns[column], fixedRow: true, fixedColumn: true,
  }); // prettier-ignore
  return range(place(first), place(last));
}

const headStyles: readonly StyleName[] = [
  "headingCenter", "heading", "heading", "heading", "headingRight", "headingCenter", "headingRight", "headingCenter",
  "headingRight", "heading",
]; // prettier-ignore

/** The log of a job's tickets, blank, for these items and suppliers; its running total follows what is written. */
export function ticketsPlan(items: readonly string[], suppliers: readonly string[], name: string): SheetPlan {
  const last = ticketRows.first + ticketRows.count - 1;
  return {
    name,
    cells: [
      put(0, 0, marks.tickets, "key"),
      put(1, ticketColumns.date, say.tickets, "title"),
      { ...put(2, ticketColumns.date, say.ticketHint, "note"), across: 9 },
      ...say.ticketHeads.map((head, k) => put(ticketRows.heads, k + 1, head, headStyles[k])),
      ...Array.from({ length: ticketRows.count }, (_, k) =>
        ticketRow(ticketRows.first + k, items, suppliers),
      ).flat(),
      put(ticketRows.heads, LIST, say.listHead, "heading"),
      ...[...items, say.other].map((item, k) => put(ticketRows.first + k, LIST, item, "label")),
    ],
    columns: [14, 12, 12, 20, 26, 11, 8, 13, 13, 14, 14, 3, 26].map((width, k) => ({
      width,
      ...(k === 0 ? { hidden: true } : {}),
    })),
    hiddenRows: [0],
    heights: { 1: 24, 2: 15 },
    frozenRows: ticketRows.first,
    print: {
      area: { top: 1, left: 1, bottom: last, right: ticketColumns.check },
      landscape: true,
      pages: { wide: 1, tall: 2 },
      repeatRows: 1,
      repeatFrom: ticketRows.heads,
      footer: say.ticketsFooter,
    },
    pictures: [],
  };
}

/** A choice among words, where a spreadsheet's rule can hold them all; else anything. */
function choiceOf(options: readonly string[], message: string): Validation | undefined {
  const canBeListed = options.every((option) => !/[",]/.test(option));
  const fits = options.length > 0 && canBeListed && options.join(",").length <= LONGEST_LIST;
  return fits ? { kind: "list", options: [...options], message } : undefined;
}

const amount = (least: number, most: number): Validation => ({
  kind: "number",
  least,
  most,
  message: messages.between(least, most),
});

/** The days from 1970 to 2199 as a spreadsheet counts them. */
const days: Validation = { kind: "number", least: 25_569, most: 109_938, message: say.dateNeeded };

function ticketRow(row: number, items: readonly string[], suppliers: readonly string[]): PlanCell[] {
  const input = (column: keyof typeof ticketColumns, style: StyleName, accepts?: Validation): PlanCell => ({
    row, column: ticketColumns[column], says: { kind: "constant", value: null }, style, input: true, accepts,
  }); // prettier-ignore
  const own = (column: keyof typeof ticketColumns) => cell({ row, column: ticketColumns[column] });
  const filled = operate(call("LEN", own("amount")), ">", 0);
  const first = { row: ticketRows.first, column: ticketColumns.amount, fixedRow: true };
  const listed = { row: ticketRows.first, column: LIST, fixedRow: true, fixedColumn: true };
  const known = call(
    "COUNTIF",
    range(listed, { ...listed, row: ticketRows.first + items.length }),
    own("item"),
  );
  return [
    input("date", "inputDate", days),
    input("ticket", "inputText"),
    input("supplier", "inputText", choiceOf(suppliers.map(ticketName), messages.oneOf(suppliers))),
    input("item", "inputText", choiceOf([...items, say.other], say.itemNeeded)),
    input("quantity", "inputMoney", amount(-100_000, 100_000)),
    input("unit", "inputWord", { kind: "list", options: units, message: messages.oneOf(units) }),
    input("amount", "inputMoney", amount(-1_000_000, 1_000_000)),
    input("invoice", "inputText"),
    put(
      row,
      ticketColumns.running,
      when(filled, call("SUM", range(first, { row, column: ticketColumns.amount })), ""),
      "money",
    ),
    put(
      row,
      ticketColumns.check,
      when(operate(call("LEN", own("item")), "=", 0), "", when(operate(known, "=", 0), say.notOrdered, "")),
      "note",
    ),
  ];
}
