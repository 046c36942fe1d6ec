import { type Entry } from "./entries";
import { type FieldValue } from "../../estimate/fields";
import { put, validationOf } from "../estimate-cells";
import { cell, type Expression, type Term } from "../expression";
import { type PlanCell, type PlanChart, type PlanPicture } from "../plan";
import { type StyleName } from "../styles";

/** The columns of a document over estimates: its keys, hidden; what is printed, in some with one more column; an entry beside the page. */
export const columns = {
  key: 0,
  item: 1,
  words: 2,
  quantity: 3,
  unit: 4,
  price: 5,
  amount: 6,
  more: 7,
  beside: 15,
} as const;

/** A column by its name: what key cells write before each key. */
export type ColumnName = keyof typeof columns;

/** Widths of the columns, in characters. */
export const widths = [14, 23, 37, 11, 9, 13, 17];

/** How many columns are printed, and how many letters of running text fit across them. */
export const across = columns.amount + 1 - columns.item;
const LETTERS = 118;

/** Points of a line of running text. */
export const LINE = 13.5;

/** The cell that holds one of the document's own keys. */
export type At = (key: string) => Expression;

/** One row of a document, before it has its place. */
export interface Row {
  /** The keys of its cells, by their columns. */
  keys?: Partial<Record<ColumnName, string>>;
  /** Points; the spreadsheet's own where it says none. */
  height?: number;
  /** A picture whose top left corner is in this row. */
  picture?: Omit<PlanPicture, "row">;
  /** A chart of the document's cells whose top left corner is in this row. */
  chart?: (at: At) => Omit<PlanChart, "row">;
  cells(row: number, at: At): PlanCell[];
}

/** How many lines a text takes where a line holds so many letters and ends between words; a word may take several. */
export const linesOf = (words: string, letters = LETTERS) =>
  words.split("\n").reduce((lines, line) => lines + linesIn(line.split(" "), letters), 0);

function linesIn(words: readonly string[], letters: number): number {
  let [lines, used] = [0, letters];
  for (const { length } of words) {
    if (lines > 0 && used + 1 + length <= letters) used += 1 + length;
    else [lines, used] = [lines + Math.max(1, Math.ceil(length / letters)), length > 0 ? ((length - 1) % letters) + 1 : 0];
  }
  return lines;
} // prettier-ignore

/** A row without anything, so many points high. */
export const gap = (height = 8): Row => ({ height, cells: () => [] });

/** The name of the document, and at the right what tells it from others of its kind. */
export const titleRow = (title: string, right?: (at: At) => Term): Row => ({
  height: 30,
  cells: (row, at) => [
    { ...put(row, columns.item, title, "letterTitle"), across: 3 },
    ...(right ? [{ ...put(row, columns.unit, right(at), "letterNumber"), across: 3 }] : []),
  ],
});

/** The name of the document, and at the right its number, which the user may change. */
export const numberedRow = (title: string, entry: Entry, value: FieldValue): Row => ({
  ...titleRow(title),
  keys: { unit: entry.key },
  cells: (row, at) => [
    ...titleRow(title).cells(row, at),
    { ...entryCell(row, columns.unit, entry, value), style: "letterOwnNumber", across: 3 },
  ],
});

/** A heading across the page. */
export const headingRow = (title: string): Row => ({
  height: 23,
  cells: (row) => [{ ...put(row, columns.item, title, "letterHeading"), across }],
});

/** A sentence across the page that is not the user's to change. */
export const sentenceRow = (words: string, style: StyleName = "letterWords"): Row => ({
  height: 2 + LINE * linesOf(words),
  cells: (row) => [{ ...put(row, columns.item, words, style), across }],
});

/** A live text across the page; blank where there is nothing to say. */
export const saidRow = (says: (at: At) => Term, style: StyleName, height = 17): Row => ({
  height,
  cells: (row, at) => [{ ...put(row, columns.item, says(at), style), across }],
});

/** How a row stands on the page: across how many columns, in which look, and how high where its text does not say. */
export interface Look {
  across?: number;
  style?: StyleName;
  height?: number;
}

/** An entry that is a paragraph across the page; the user may write it anew. */
export const paragraphRow = (entry: Entry, value: FieldValue = entry.default, look: Look = {}): Row => ({
  keys: { item: entry.key },
  height: look.height ?? 2 + LINE * linesOf(String(value ?? ""), lettersIn(look.across)),
  cells: (row) => [
    {
      ...entryCell(row, columns.item, entry, value),
      across: look.across ?? across,
      ...(look.style ? { style: look.style } : {}),
    },
  ],
});

/** How many letters fit across so many columns from the first printed one. */
const lettersIn = (count = across) => {
  const wide = (some: readonly number[]) => some.reduce((sum, one) => sum + one, 0);
  return Math.floor((LETTERS * wide(widths.slice(1, 1 + count))) / wide(widths.slice(1)));
};

/** An entry beside its label. */
export const entryRow = (entry: Entry, value: FieldValue = entry.default): Row => ({
  keys: { words: entry.key },
  height: Math.max(15, 2 + LINE * linesOf(String(value ?? ""), 84)),
  cells: (row) => [
    put(row, columns.item, entry.label.en, "letterLabel"),
    { ...entryCell(row, columns.words, entry, value), across: across - 1 },
  ],
});

/** The cell of an entry: an input that accepts what the entry allows. */
export const entryCell = (row: number, column: number, entry: Entry, value: FieldValue): PlanCell => ({
  row,
  column,
  says: { kind: "constant", value },
  style: entry.kind === "money" ? "letterOwnMoney" : "letterOwn",
  input: true,
  accepts: validationOf(entry),
});

/** A label and what is said of it, live or not. */
export const factRow = (label: Term, says: (at: At) => Term, look: Look = {}): Row => ({
  height: look.height ?? 15,
  cells: (row, at) => [
    put(row, columns.item, label, "letterLabel"),
    {
      ...put(row, columns.words, says(at), look.style ?? "letterFact"),
      across: (look.across ?? across) - 1,
    },
  ],
});

/** A sum at the right of its label, both across the page. */
export const moneyRow = (
  label: Term,
  says: (at: At) => Term,
  { key, total = false }: { key?: string; total?: boolean } = {},
): Row => ({
  ...(key ? { keys: { amount: key } } : {}),
  height: total ? 22 : 16,
  cells: (row, at) => [
    { ...put(row, columns.item, label, total ? "letterTotalLabel" : "letterWords"), across: across - 1 },
    put(row, columns.amount, says(at), total ? "letterTotal" : "letterMoney"),
  ],
});

/** A sum of the user's own at the right of its label. */
export const moneyEntryRow = (entry: Entry, value: FieldValue = entry.default): Row => ({
  keys: { amount: entry.key },
  height: 16,
  cells: (row) => [
    { ...put(row, columns.item, entry.label.en, "letterWords"), across: across - 1 },
    entryCell(row, columns.amount, entry, value),
  ],
});

/** Lines to sign on, one for each of those who sign, with a line for the day. */
export const signatureRows = (signers: readonly string[], day: string): Row[] =>
  signers.flatMap((signer) => [
    { height: 24, cells: () => [] },
    {
      height: 15,
      cells: (row: number) => [
        { ...put(row, columns.item, signer, "letterSigned"), across: 2 },
        { ...put(row, columns.unit, day, "letterSigned"), across: 3 },
      ],
    },
  ]);

/** The cell of a key's place, as a term. */
export const cellAt =
  (places: Readonly<Record<string, { row: number; column: number }>>): At =>
  (key) => {
    if (!(key in places)) throw new Error(`No key ${key} in this document.`);
    return cell(places[key]);
  };
