import { notAllowed } from "../../units/refusal";
import { type Place } from "../address";
import { call, cell, plus, text, type Expression } from "../expression";
import { type Shown } from "../keyed-cells";
import { businessEntries } from "./bid-entries";
import { textOf } from "./letter-head";
import { isOfKind } from "./marks";
import { messages } from "./messages";
import { readDocument, shownNumber, type DocumentSheet } from "./read";
import { factRow, moneyRow, sentenceRow, type Row } from "./rows";

/** An issued bid, and the change orders to it that were signed. */
export interface Contract {
  bid: DocumentSheet;
  number: number;
  changes: DocumentSheet[];
}

/** The contract of an issued bid, with the signed change orders among the sheets of its workbook. Refuses a sheet without price or number. */
export function contractOf(issued: Shown, sheets: readonly Shown[]): Contract {
  const bid = readDocument(issued, []);
  const [number, price] = ["bid_number", "price"].map((key) => shownNumber(bid, key));
  if (number === undefined || price === undefined) throw notAllowed(messages.contract.broken(issued.name));
  const changes = changesTo(number, sheets).filter(isSigned);
  return { bid, number, changes };
}

/** The change orders to the bid of that number, signed or not, in the order of their numbers. */
export const changesTo = (number: number, sheets: readonly Shown[]): DocumentSheet[] =>
  sheets
    .filter((sheet) => isOfKind(sheet, "change order"))
    .map((sheet) => readDocument(sheet, []))
    .filter((change) => shownNumber(change, "change_of") === number)
    .sort((a, b) => (shownNumber(a, "change_number") ?? 0) - (shownNumber(b, "change_number") ?? 0));

/** True for a change order that holds a day on which it was signed. */
const isSigned = ({ cells }: DocumentSheet) => String(cells.change_signed?.value ?? "").trim() !== "";

/** A keyed cell of another document, live. */
export const cellIn = ({ name, cells }: DocumentSheet, key: string): Expression =>
  cell(placeIn(name, cells, key));

const placeIn = (sheet: string, cells: DocumentSheet["cells"], key: string): Place => {
  if (!cells[key]) throw notAllowed(messages.lacks(sheet, key.replaceAll("_", " ")));
  return { sheet, row: cells[key].row, column: cells[key].column };
};

const say = messages.contract;

/** Who signs for the contractor: the business that the bid names. */
export const signerOf = ({ bid }: Contract): string =>
  String(bid.cells[businessEntries[0].key]?.value ?? "") || messages.bid.contractorSigns;

/** Who writes it, and for whom and where, as the bid says. */
export const letterRows = ({ bid }: Contract): Row[] => [
  ...businessEntries
    .filter(({ key }) => bid.cells[key]?.value)
    .map((entry, k) => sentenceRowOf(textOf(cellIn(bid, entry.key)), k === 0)),
  ...(["for", "site", "job"] as const)
    .filter((key) => bid.cells[`bid_${key}`]?.value)
    .map((key) => factRow(messages.bid[key], () => textOf(cellIn(bid, `bid_${key}`)))),
];

const sentenceRowOf = (says: Expression, first: boolean): Row => {
  const row = sentenceRow("", first ? "letterBusiness" : "letterSmall");
  return { ...row, cells: (at, keys) => row.cells(at, keys).map((one) => ({ ...one, says })) };
};

/** The contract so far: the bid, each signed change order, and their sum under this key. */
export const contractRows = (contract: Contract, key: string, label: string): Row[] => {
  const { bid, changes } = contract;
  const before = [cellIn(bid, "price"), ...changes.map((change) => cellIn(change, "change_net"))];
  return [
    moneyRow(text(say.bid, cellIn(bid, "bid_number"), say.of, textOf(cellIn(bid, "bid_date"))), () => plus(before[0], 0)),
    ...changes.map((change) =>
      moneyRow(text(say.change, cellIn(change, "change_number")), () => cellIn(change, "change_net"))),
    moneyRow(label, () => call("ROUND", plus(before[0], ...before.slice(1)), 2), { key }),
  ];
}; // prettier-ignore
