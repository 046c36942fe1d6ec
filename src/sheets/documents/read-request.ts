import { type FieldValue } from "../../estimate/fields";
import { readField } from "../../estimate/job";
import { isError, type Cell } from "../../units/cell";
import { readNumber } from "../../units/number-text";
import { notAllowed, Refusal } from "../../units/refusal";
import { type Shown } from "../keyed-cells";
import { addressEntries } from "./delivery-entries";
import { type Entry } from "./entries";
import { readDocument } from "./read";
import { itemHeads, purchaseWords as say } from "./purchase-words";

/** One line of a filled-in price request, as the supplier sent it back. */
export interface FilledLine {
  /** The row of its sheet, from 0. */
  row: number;
  item: string;
  words: string;
  quantity: number | null;
  unit: string;
  /** Null where none was filled in, or none that can be read. */
  price: number | null;
  lead: string;
  available: string;
}

/** A filled-in price request: its lines in the order they stand now, and a sentence for each that was not understood. */
export interface FilledRequest {
  lines: FilledLine[];
  /** Where its heads stand now. */
  columns: Partial<Record<Head, number>>;
  notUnderstood: string[];
}

type Head = "item" | "words" | "quantity" | "unit" | "price" | "lead" | "available";
const heads: readonly Head[] = ["item", "words", "quantity", "unit", "price", "lead", "available"];

const textOf = (cell: Cell | undefined): string => (isError(cell) ? cell.error : String(cell ?? "").trim());

/** The columns of the lines, by head; nothing where this row is no row of heads. */
function headsIn(row: readonly Cell[]): Partial<Record<Head, number>> | undefined {
  const words = row.map((cell) => textOf(cell).toLowerCase());
  const found = heads.map((head) => [head, words.indexOf(itemHeads[head].toLowerCase())] as const);
  const columns = Object.fromEntries(found.filter(([, column]) => column >= 0));
  return "item" in columns && "price" in columns ? columns : undefined;
}

/** The unit that a supplier may write behind a number: each, /ea, per ton, cu yd. */
const unitBehind =
  /\s*(?:(?:\/|per|a)\s*)?(?:each|ea|tons?|(?:cu\.? ?)?(?:yds?|yards?)|loads?|bags?|rolls?|cans?|pieces?|pcs?)\.?$/i;

/** A number as a supplier writes it: 1234.5, $1,234.50, 12.50 each, 43.2 tons. Undefined where it is none. */
function readAmount(cell: Cell): number | undefined {
  if (typeof cell === "number") return cell;
  const written = textOf(cell).replace(/^\$\s*/, "").replace(unitBehind, "");
  if (written.includes("%")) return undefined;
  const grouped = /^\d{1,3}(,\d{3})+(\.\d+)?$/.test(written);
  try {
    return readNumber(grouped ? written.replace(/,/g, "") : written);
  } catch (refusal) {
    if (refusal instanceof Refusal) return undefined;
    throw refusal;
  }
} // prettier-ignore

/**
 * Reads a filled-in price request from what its sheet shows, wherever its rows and columns stand now and whatever else
 * was written round them: every row below the heads with a quantity or a price is a line. Refuses a sheet
 * without the heads, or without a line under them.
 */
export function readRequest({ values }: Pick<Shown, "values">): FilledRequest {
  const at = values.findIndex((row) => headsIn(row));
  if (at < 0) throw notAllowed(say.noHeads);
  const columns = headsIn(values[at])!;
  const notUnderstood: string[] = [];
  const lines = values.slice(at + 1).flatMap((cells, below): FilledLine[] => {
    const of = (head: Head): Cell => (columns[head] === undefined ? null : (cells[columns[head]!] ?? null));
    const filled = (head: Head) => textOf(of(head)) !== "";
    if (headsIn(cells) || !(filled("quantity") || filled("price"))) return [];
    const row = at + 1 + below;
    const item = textOf(of("item"));
    if (item === "") {
      notUnderstood.push(say.noItem(row + 1));
      return [];
    }
    const amount = (head: "quantity" | "price", told: (item: string, written: string) => string) => {
      if (!filled(head)) return null;
      const read = readAmount(of(head));
      if (read !== undefined && Number.isFinite(read) && read >= 0) return read;
      notUnderstood.push(told(item, textOf(of(head))));
      return null;
    };
    const quantity = amount("quantity", say.notAmount);
    const price = amount("price", say.notMoney);
    if (!filled("price")) notUnderstood.push(say.noPrice(item));
    return [
      {
        row, item, words: textOf(of("words")), quantity, unit: textOf(of("unit")), price,
        lead: textOf(of("lead")), available: textOf(of("available")),
      },
    ]; // prettier-ignore
  });
  if (lines.length === 0) throw notAllowed(say.noLines);
  return { lines, columns, notUnderstood };
}

/**
 * What a request's entries say: by their keys, and in a copy without keys by what stands beside their labels, its number
 * beside its title. An entry
 * that cannot be read is blank.
 */
export function requestAnswers(sheet: Shown, asked: readonly Entry[]): Record<string, FieldValue> {
  const { cells, entries } = readDocument(sheet, asked);
  const beside = ({ key, label }: Entry) => {
    const called = key === addressEntries.number.key ? say.request : label.en;
    const row = sheet.values.find((one) => one.some((cell) => textOf(cell) === called)) ?? [];
    const at = row.findIndex((cell) => textOf(cell) === called);
    return row.slice(at + 1).find((cell) => textOf(cell) !== "") ?? null;
  };
  return Object.fromEntries(
    asked.map((entry) => [entry.key, entry.key in cells ? entries[entry.key] : readOr(entry, beside(entry))]),
  );
}

function readOr(entry: Entry, cell: Cell): FieldValue {
  try {
    return readField(entry, isError(cell) ? null : cell);
  } catch (refusal) {
    if (refusal instanceof Refusal) return null;
    throw refusal;
  }
}
