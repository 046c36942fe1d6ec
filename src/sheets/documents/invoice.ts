import { type FieldValue } from "../../estimate/fields";
import { put } from "../estimate-cells";
import {
  call,
  minus,
  number,
  operate,
  over,
  plus,
  times,
  when,
  type Expression,
  type Term,
} from "../expression";
import { type SheetPlan } from "../plan";
import { cellIn, contractRows, letterRows, type Contract } from "./contract";
import { documentPlan } from "./document";
import { answered, entry, moneyEntry, numberEntry, textEntry, type Entry } from "./entries";
import { headedRows, textOf } from "./letter-head";
import { marks } from "./marks";
import { messages } from "./messages";
import { columns, entryCell, entryRow, headingRow, moneyEntryRow, moneyRow, numberedRow, type At, type Row } from "./rows"; // prettier-ignore

/** What an invoice says of itself. */
export const invoiceEntries = {
  number: numberEntry("invoice_number", "Invoice number", "Número"),
  date: textEntry("invoice_date", "Date", "Fecha"),
  due: textEntry("invoice_due", "Due", "Vence"),
  paid: moneyEntry("invoice_paid", "Paid so far", "Pagado"),
  retainage: entry("Held back, of what is billed", "Retención", {
    key: "invoice_retainage", kind: "number", unit: "%", range: [0, 100], default: 0,
  }),
  pay: textEntry("invoice_pay", "How to pay", "Cómo pagar"),
}; // prettier-ignore

/** Whether the draw of that number, from 1, is billed by now. */
export const billedEntry = (k: number): Entry =>
  entry(`Draw ${k} is billed`, `Pago ${k} cobrado`, {
    key: `billed_${k}`,
    kind: "choice",
    options: ["yes", "no"],
    default: "no",
  });

/** The numbers, from 1, of the draws that an issued bid lists. */
export const drawsIn = ({ bid }: Contract): number[] =>
  Object.keys(bid.cells)
    .flatMap((key) => /^draw_(\d+)$/.exec(key)?.[1] ?? [])
    .map(Number)
    .sort((a, b) => a - b);

/** What the panel asks before an invoice is written. */
export const invoiceAsked = (contract: Contract): readonly Entry[] => [
  invoiceEntries.number,
  invoiceEntries.date,
  invoiceEntries.due,
  ...drawsIn(contract).map((k) => ({
    ...billedEntry(k),
    label: named(contract.bid.cells[`draw_${k}_words`]?.value, k),
  })),
  invoiceEntries.paid,
  invoiceEntries.retainage,
  invoiceEntries.pay,
];

const named = (words: unknown, k: number) =>
  typeof words === "string" && words
    ? { en: `Billed: ${words}`, es: `Cobrado: ${words}` }
    : billedEntry(k).label;

const say = messages.contract;

/**
 * An invoice on an issued bid: the contract with its signed changes, the draws that are billed by now and all signed
 * changes, less what is held back and what was paid, each where there is any. With every draw billed it comes to contract and changes, less paid
 * and held back.
 */
export function invoicePlan(
  contract: Contract,
  answers: Readonly<Record<string, FieldValue>>,
  name: string,
): SheetPlan {
  const { number: no, date, due, paid, retainage, pay } = invoiceEntries;
  const value = ({ key, default: usual }: Entry) => answers[key] ?? usual;
  const changes = contract.changes.map((change) => cellIn(change, "change_net"));
  const billed = (at: At) =>
    cents(plus(0, ...drawsIn(contract).map((k) => billedOf(contract, k, at, 0)), ...changes));
  const isHeldBack = Number(value(retainage)) > 0;
  const isPaid = answered([paid], answers).length > 0;
  const less = (at: At) => [
    ...(isHeldBack ? [at("invoice_retained")] : []),
    ...(isPaid ? [number(at(paid.key))] : []),
  ];
  const rows: Row[] = [
    numberedRow(say.invoice, no, value(no)),
    ...letterRows(contract),
    ...answered([date, due], answers).map((entry) => entryRow(entry, answers[entry.key])),
    headingRow(say.contract),
    ...contractRows(contract, "contract_total", say.total),
    headingRow(say.draws),
    drawHeads,
    ...drawsIn(contract).map((k) => drawRow(contract, k, value(billedEntry(k)))),
    ...(changes.length > 0 ? [moneyRow(say.changes, () => plus(0, ...changes))] : []),
    moneyRow(say.billed, billed, { key: "invoice_billed" }),
    ...(isHeldBack ? retainedRows(retainage, value(retainage)) : []),
    ...(isPaid ? [moneyEntryRow(paid, value(paid))] : []),
    moneyRow(say.due, (at) => cents(minus(at("invoice_billed"), ...less(at))), {
      key: "invoice_amount_due",
      total: true,
    }),
    ...answered([pay], answers).flatMap((entry) => headedRows(entry, answers)),
  ];
  return documentPlan({ mark: marks.invoice, name, rows, footer: name, tall: 1 });
}

const cents = (money: Expression) => call("ROUND", money, 2);

/** What a draw of the bid brings once it is billed, else this. */
const billedOf = ({ bid }: Contract, k: number, at: At, open: Term) =>
  when(operate(at(billedEntry(k).key), "=", "yes"), cellIn(bid, `draw_${k}`), open);

const drawHeads: Row = {
  height: 16,
  cells: (row) => [
    { ...put(row, columns.item, say.drawHeads.draw, "letterHead"), across: 2 },
    { ...put(row, columns.quantity, say.drawHeads.agreed, "letterHeadRight"), across: 2 },
    put(row, columns.price, say.drawHeads.billed, "letterHeadCenter"),
    put(row, columns.amount, say.drawHeads.amount, "letterHeadRight"),
  ],
};

/** A draw of the bid, its amount, whether it is billed, and what is billed of it. */
const drawRow = (contract: Contract, k: number, value: FieldValue): Row => ({
  keys: { price: billedEntry(k).key },
  height: 16,
  cells: (row, at) => [
    { ...put(row, columns.item, textOf(cellIn(contract.bid, `draw_${k}_words`)), "letterWords"), across: 2 },
    { ...put(row, columns.quantity, plus(cellIn(contract.bid, `draw_${k}`), 0), "letterMoney"), across: 2 },
    { ...entryCell(row, columns.price, billedEntry(k), value), style: "letterOwnWord" },
    put(row, columns.amount, billedOf(contract, k, at, ""), "letterMoney"),
  ],
});

/** What is held back: the percent, which the user may change, and the amount. */
const retainedRows = (asked: Entry, value: FieldValue): Row[] => [
  {
    keys: { amount: asked.key },
    height: 16,
    cells: (row) => [
      { ...put(row, columns.item, asked.label.en, "letterWords"), across: 5 },
      { ...entryCell(row, columns.amount, asked, value), style: "letterOwnPercent" },
    ],
  },
  moneyRow(say.retained, (at) => cents(over(times(at("invoice_billed"), number(at(asked.key))), 100)), {
    key: "invoice_retained",
  }),
];
