import { isError, type Cell } from "../../units/cell";
import { notAllowed } from "../../units/refusal";
import { type Content as CellContent } from "../expression";
import { keyedCells, keyList, keyPairs } from "../keyed-cells";
import { marks } from "./marks";
import { messages } from "./messages";
import { columns } from "./rows";
import { type Content } from "./source";

/** One cell of the copy and what it is to say. */
export interface IssuedCell {
  row: number;
  column: number;
  says: CellContent;
}

/** The keys that an issued bid keeps: what a change order or an invoice asks it for. Nothing ever writes to them. */
const kept =
  /^(bid_(number|date|for|site|job)|business|business_lines|license|insurance|price|draw_\d+(_words)?|state)$/;

/**
 * What the copy of a bid's sheet is to say so that nothing moves it: every formula becomes what it shows, the keys of
 * what could be written to go, and the inputs that it was written from with them. Its mark and its foot say that it is
 * issued. Refuses a bid that is out of date, without a price, without a number, or with an error in it.
 */
export function issuedCells({ name, values, formulas }: Content, day: string): IssuedCell[] {
  const keyed = keyedCells(values);
  const price = keyed.price?.value;
  const number = keyed.bid_number?.value;
  if (values.some((row) => row.includes(messages.outOfDate))) throw notAllowed(messages.bid.moved(name));
  if (typeof price !== "number") throw notAllowed(messages.notPriced(name, isError(price) ? price.error : String(price ?? ""))); // prettier-ignore
  if (typeof number !== "number") throw notAllowed(messages.bid.noNumber(name));
  const broken = values.flat().find(isError);
  if (broken) throw notAllowed(messages.bid.broken(name, broken.error));
  const right = usedFrom(values);
  const cells = values.flatMap((row, at) =>
    row.map((value, column) => ({ row: at, column, says: issued(value, formulas[at]?.[column] ?? null) })),
  );
  const state = keyed.state && { ...keyed.state, says: messages.bid.issued(String(number), day) };
  return [
    ...cells
      .filter(({ row, column }) => column !== columns.key && (right === undefined || column < right || row === 0))
      .flatMap(({ row, column, says }) => (says === undefined ? [] : [{ row, column, says }])),
    ...cells.filter(({ column }) => right !== undefined && column >= right).map(({ row, column }) => ({ row, column, says: null })),
    ...values.map(([key], row) => ({ row, column: columns.key, says: row === 0 ? marks.issued : keysKept(key) })),
    ...(state ? [{ row: state.row, column: state.column, says: state.says }] : []),
  ];
} // prettier-ignore

/** What a cell of the copy has to say in the place of a formula; undefined where it says that already. */
function issued(value: Cell, formula: Cell): CellContent | undefined {
  if (typeof formula !== "string" || !formula.startsWith("=") || formula === value) return undefined;
  return isError(value) ? null : value;
}

/** The keys of a row that an issued bid keeps. */
function keysKept(pairs: Cell): CellContent {
  const left = keyPairs(String(pairs ?? "")).filter(([, key]) => kept.test(key));
  return left.length > 0 ? keyList(left) : null;
}

/** The first column of the inputs that a document was written from, right of what is printed. */
function usedFrom(values: Cell[][]): number | undefined {
  const { inputs } = messages.used;
  const found = values.map((row) => row.indexOf(inputs.en)).filter((column) => column >= 0);
  return found.length > 0 ? found[0] : undefined;
}
