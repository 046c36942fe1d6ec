import { type FieldValue } from "../../estimate/fields";
import { put } from "../estimate-cells";
import { call, number, plus } from "../expression";
import { type SheetPlan } from "../plan";
import { cellIn, contractRows, letterRows, signerOf, type Contract } from "./contract";
import { documentPlan } from "./document";
import { answered, entry, moneyEntry, numberEntry, textEntry, type Entry } from "./entries";
import { headedRows } from "./letter-head";
import { marks } from "./marks";
import { messages } from "./messages";
import {
  across, columns, entryCell, entryRow, factRow, gap, headingRow, moneyRow, numberedRow, signatureRows, type At, type Row,
} from "./rows"; // prettier-ignore

/** What a change order says of itself. */
export const changeEntries = {
  number: numberEntry("change_number", "Change order number", "Número"),
  date: textEntry("change_date", "Date", "Fecha"),
  what: textEntry("change_what", "What changes", "Qué cambia"),
  why: textEntry("change_why", "Why", "Por qué"),
  days: entry("Days plus or minus", "Días más o menos", {
    key: "change_days", kind: "number", range: [-365, 365], default: 0,
  }),
  signed: textEntry("change_signed", "Signed on", "Firmada el"),
}; // prettier-ignore

/** Lines of money that a change order holds at most. */
const LINES = 4;

/** The lines of a change order: what for, and how much plus or minus. */
export const changeLines: readonly { words: Entry; amount: Entry }[] = Array.from(
  { length: LINES },
  (_, k) => ({
    words: textEntry(`change_${k + 1}_words`, `Line ${k + 1}: what for`, `Partida ${k + 1}: por qué`),
    amount: moneyEntry(
      `change_${k + 1}_amount`,
      `Line ${k + 1}: plus or minus`,
      `Partida ${k + 1}: más o menos`,
      -10_000_000,
    ),
  }),
);

/** What the panel asks before a change order is written. */
export const changeAsked: readonly Entry[] = [
  changeEntries.number,
  changeEntries.date,
  changeEntries.what,
  changeEntries.why,
  ...changeLines.flatMap(({ words, amount }) => [words, amount]),
  changeEntries.days,
];

type Answers = Readonly<Record<string, FieldValue>>;

const say = messages.contract;

/**
 * A change order to an issued bid: what changes and why, its lines plus or minus (all of them, blank, where none was
 * answered), the contract before and after, the days, and the signatures. It counts in later documents once the day on which it was signed is typed in.
 */
export function changeOrderPlan(contract: Contract, answers: Answers, name: string): SheetPlan {
  const { number: no, date, what, why, days, signed } = changeEntries;
  const value = ({ key, default: usual }: Entry) => answers[key] ?? usual;
  const filled = changeLines.filter(({ words, amount }) => answered([words, amount], answers).length > 0);
  const lines = filled.length > 0 ? filled : changeLines;
  const sum = (at: At) => call("ROUND", plus(0, ...lines.map(({ amount }) => number(at(amount.key)))), 2);
  const rows: Row[] = [
    numberedRow(say.changeOrder, no, value(no)),
    ...letterRows(contract),
    ...answered([date], answers).map((entry) => entryRow(entry, answers[entry.key])),
    {
      ...factRow(say.toBid, () => cellIn(contract.bid, "bid_number")),
      keys: { words: "change_of" },
    },
    ...answered([what, why], answers).flatMap((entry) => headedRows(entry, answers)),
    headingRow(say.lines),
    ...lines.map(({ words, amount }) => lineRow(words, amount, answers)),
    moneyRow(say.net, sum, { key: "change_net" }),
    headingRow(say.contract),
    ...contractRows(contract, "contract_before", say.before),
    moneyRow(say.net, (at) => plus(at("change_net"), 0)),
    moneyRow(say.after, (at) => call("ROUND", plus(at("contract_before"), at("change_net")), 2), {
      key: "contract_after",
      total: true,
    }),
    gap(6),
    entryRow(days, value(days)),
    entryRow(signed, value(signed)),
    ...signatureRows([signerOf(contract), messages.bid.customerSigns], messages.bid.day),
  ];
  return documentPlan({ mark: marks["change order"], name, rows, footer: name, tall: 1 });
}

const lineRow = (words: Entry, amount: Entry, answers: Answers): Row => ({
  keys: { item: words.key, amount: amount.key },
  height: 16,
  cells: (row) => [
    { ...entryCell(row, columns.item, words, answers[words.key] ?? null), across: across - 2 },
    put(row, columns.price, "", "letterWords"),
    { ...entryCell(row, columns.amount, amount, answers[amount.key] ?? null), style: "letterChange" },
  ],
});
