import { type FieldValue } from "../../estimate/fields";
import { put } from "../estimate-cells";
import {
  call,
  cell,
  minus,
  number,
  operate,
  plus,
  range,
  text,
  when,
  type Expression,
  type Term,
} from "../expression";
import { type PlanCell, type SheetPlan } from "../plan";
import { type StyleName } from "../styles";
import { factsEach, layerFacts, layersIn, type LayerFact } from "./close-out-layers";
import { ticketSums, type CloseOutItem } from "./close-out-lines";
import { closeOutWords as say } from "./close-out-words";
import { moneyEntry, textEntry, type Entry } from "./entries";
import { marks } from "./marks";
import { entryCell } from "./rows";
import { cellOf, type EstimateSource } from "./source";
import { type TicketLog, ticketRange } from "./tickets"; // prettier-ignore

/** The columns of a close-out. */
export const closeOutColumns = {
  key: 0, item: 1, unit: 2, bid: 3, ordered: 4, delivered: 5, more: 6,
  bidMoney: 7, orderedMoney: 8, ticketMoney: 9, billedMoney: 10, moreMoney: 11,
} as const; // prettier-ignore
const columns = closeOutColumns;

const rows = { mark: 0, title: 1, job: 2, note: 3, heads: 4, first: 5 } as const;

/** What the user says of the contract; a blank one counts 0. */
export const closeOutEntries: readonly Entry[] = [
  textEntry("closed_on", "Date", "Fecha"),
  moneyEntry("contract", say.contract, "Contrato"),
  moneyEntry("changes", say.changes, "Cambios firmados", -10_000_000),
  moneyEntry("extras", say.extras, "Extras a precio unitario", -10_000_000),
  moneyEntry("paid", say.paid, "Facturado o pagado"),
];

/** What a close-out is written from. */
export interface CloseOut {
  sources: readonly EstimateSource[];
  items: readonly CloseOutItem[];
  log: TicketLog;
  entries: Readonly<Record<string, FieldValue>>;
}

const at = (row: number, column: number) => cell({ row, column });
const cents = (money: Expression) => call("ROUND", money, 2);

/**
 * The sheet that settles a job: each item's bid, orders, tickets and invoices beside one another, the depth that
 * each delivered layer gave, and what is left to bill. Every figure follows its estimates, orders and tickets.
 */
export function closeOutPlan({ sources, items, log, entries }: CloseOut, name: string): SheetPlan {
  const afterItems = rows.first + items.length;
  const blocks = afterItems + 3;
  const shown = layersIn(items);
  const blockOf = (k: number) => blocks + k * (factsEach + 2);
  const factorOf = ({ material }: CloseOutItem) =>
    at(blockOf(Math.max(0, shown.findIndex((layer) => layer.material === material))) + 1, columns.bid);
  const lines = items.flatMap((item, k) => itemCells(rows.first + k, item, log, factorOf(item)));
  const came = items.map((item, k) => ({ item, delivered: at(rows.first + k, columns.delivered) }));
  const facts = shown.map((layer, k) =>
    layerFacts(layer, sources, came, (place) => at(blockOf(k) + 1 + place, columns.bid)));
  const bill = billFacts(entries, blocks + 1, afterItems + 1);
  const [closedOn] = closeOutEntries;
  return {
    name,
    cells: [
      put(rows.mark, columns.key, marks["close-out"], "key"),
      put(rows.mark, columns.bid, "figure", "key"),
      put(rows.mark, columns.moreMoney, "money", "key"),
      { ...put(rows.title, columns.item, say.closeOut, "title"), across: 4 },
      put(rows.title, columns.key, `money=${closedOn.key}`, "key"),
      entryCell(rows.title, columns.moreMoney, closedOn, entries[closedOn.key] ?? null),
      { ...put(rows.job, columns.item, jobsOf(sources), "text"), across: 10 },
      { ...put(rows.note, columns.item, say.inHouse, "note"), across: 6 },
      ...say.heads.map((head, k) => put(rows.heads, k + 1, head, k === 0 ? "heading" : k === 1 ? "headingCenter" : "headingRight")),
      ...lines,
      ...totalCells(afterItems, log),
      { ...put(blocks, columns.bidMoney, say.bill, "section"), across: 5 },
      ...facts.flatMap((some, k) => layerCells(some, say[shown[k].material], blockOf(k))),
      ...bill,
      ...keyCells(facts, blockOf),
    ],
    columns: [14, 28, 7, 10, 10, 10, 11, 13, 12, 12, 12, 14].map((width, k) => ({
      width, ...(k === 0 ? { hidden: true } : {}),
    })),
    hiddenRows: [rows.mark],
    heights: { [rows.title]: 24 },
    frozenRows: rows.first,
    print: {
      area: { top: rows.title, left: columns.item, bottom: blockOf(shown.length) - 2, right: columns.moreMoney },
      landscape: true,
      pages: { wide: 1, tall: 2 },
      repeatRows: 1,
      repeatFrom: rows.heads,
      footer: say.footer,
    },
    pictures: [],
  };
} // prettier-ignore

/** The jobs that are settled, by name; one without a name by its estimate's. */
const jobsOf = (sources: readonly EstimateSource[]): Expression =>
  text(
    ...(sources.flatMap((source, k) => {
      const name = cellOf(source, "job_name");
      return [...(k > 0 ? ["; "] : []), when(operate(name, "=", ""), source.name, name)];
    }) as [Term, ...Term[]]),
  );

function itemCells(row: number, item: CloseOutItem, log: TicketLog, factor: Expression): PlanCell[] {
  const { name, unit, bid, ordered } = item;
  const { delivered, money, billed } = ticketSums(log, item, at(row, columns.item), factor);
  return [
    put(row, columns.item, name, "label"),
    put(row, columns.unit, unit, "unit"),
    put(row, columns.bid, bid.quantity, "figure"),
    put(row, columns.ordered, ordered.quantity, "figure"),
    put(row, columns.delivered, delivered, "figure"),
    put(row, columns.more, minus(at(row, columns.delivered), at(row, columns.bid)), "figure"),
    put(row, columns.bidMoney, bid.money, "money"),
    put(row, columns.orderedMoney, ordered.money, "money"),
    put(row, columns.ticketMoney, cents(money), "money"),
    put(row, columns.billedMoney, cents(billed), "money"),
    put(row, columns.moreMoney, cents(minus(at(row, columns.ticketMoney), at(row, columns.bidMoney))), "money"),
  ];
} // prettier-ignore

/** Tickets for anything that is no item here, and under them the sums of all money. */
function totalCells(row: number, log: TicketLog): PlanCell[] {
  const column = (one: number, to: number) => range({ row: rows.first, column: one }, { row: to, column: one });
  const rest = (all: Expression, one: number) => cents(minus(all, call("SUM", column(one, row - 1))));
  const amounts = ticketRange(log, "amount");
  const sums = [columns.bidMoney, columns.orderedMoney, columns.ticketMoney, columns.billedMoney, columns.moreMoney];
  const ruled = Array.from({ length: columns.more }, (_, k) => put(row + 1, columns.item + k, k === 0 ? say.all : "", "totalLabel"));
  return [
    put(row, columns.item, say.otherTickets, "label"),
    put(row, columns.ticketMoney, rest(call("SUM", amounts), columns.ticketMoney), "money"),
    put(row, columns.billedMoney, rest(call("SUMIFS", amounts, ticketRange(log, "invoice"), "<>"), columns.billedMoney), "money"),
    put(row, columns.moreMoney, at(row, columns.ticketMoney), "money"),
    ...ruled,
    ...sums.map((one) => put(row + 1, one, cents(call("SUM", column(one, row))), "total")),
  ];
} // prettier-ignore

/** The keys of what is billed, by the rows beside the first layer's figures. */
const billKeys = ["contract", "changes", "extras", "paid", "left", "unbilled", "cost_more"];

const keyCells = (facts: readonly LayerFact[][], blockOf: (k: number) => number): PlanCell[] =>
  facts.flatMap((some, k) =>
    some.map(({ key }, place) => {
      const money = k === 0 ? ` money=${billKeys[place]}` : "";
      return put(blockOf(k) + 1 + place, columns.key, `figure=${key}${money}`, "key");
    }),
  );

/** A layer's figures under its name. */
const layerCells = (facts: readonly LayerFact[], name: string, row: number): PlanCell[] => [
  { ...put(row, columns.item, name, "section"), across: 3 },
  ...facts.flatMap(({ label, says }, k) => [
    { ...put(row + 1 + k, columns.item, label, "label"), across: 2 },
    put(row + 1 + k, columns.bid, says, "figure"),
  ]),
];

/** Contract, changes and what was paid, what is left to bill, and what the material came to. */
function billFacts(entries: CloseOut["entries"], row: number, totals: number): PlanCell[] {
  const label = (k: number, words: string, style: StyleName = "label") => ({
    ...put(row + k, columns.bidMoney, words, style),
    across: 4,
  });
  const own = (k: number) => number(at(row + k, columns.moreMoney));
  const asked = closeOutEntries.slice(1);
  const sum = (k: number, words: string, says: Expression, style: StyleName = "money"): PlanCell[] => [
    label(k, words, style === "total" ? "totalLabel" : "label"),
    put(row + k, columns.moreMoney, cents(says), style),
  ];
  return [
    ...asked.flatMap((entry, k) => [
      label(k, entry.label.en),
      { ...entryCell(row + k, columns.moreMoney, entry, entries[entry.key] ?? null), style: "inputMoney" as const },
    ]),
    ...sum(4, say.left, minus(plus(own(0), own(1), own(2)), own(3)), "total"),
    ...sum(5, say.unbilled, minus(at(totals, columns.ticketMoney), at(totals, columns.billedMoney))),
    ...sum(6, say.costMore, at(totals, columns.moreMoney)),
  ];
} // prettier-ignore
