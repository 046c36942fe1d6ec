import { slotKeys, type SlotList } from "../estimate/fields";
import { figureField, type FigureKind } from "../estimate/figure-list";
import { type Job } from "../estimate/job";
import { call, expression, pen, range, times, type Expression, type Term } from "./expression";
import { type EstimateSheet } from "./keyed";

/** One answer of a job, with the formula that works it out by itself in any cell. */
export interface SheetAnswer {
  key: string;
  label: string;
  unit: string;
  kind: FigureKind;
  value: number;
  says: Expression;
}

/** The filled places of a list of slots: each one's key, its size, and its place among those that a formula names. */
interface Listed {
  key: string;
  size: number;
  place: number;
}

/** An answer that is one of the estimate's figures. */
export function figureAnswer(key: string, value: number, says: Expression): SheetAnswer {
  const { label, unit, kind } = figureField(key);
  return { key, label: label.en, unit, kind, value, says };
}

/** What is counted of every place of a list, and the key of each count by that of its place. */
export interface Counted {
  list: SlotList;
  values: readonly (number | null)[];
  keyOf(slot: string): string;
}

/** The count of every place of a list: the user's own, else its place among the counts. */
export function eachOf(
  job: Job,
  { listed, several }: ListTerm,
  counts: Expression,
  { values, keyOf }: Counted,
  label: (size: number) => string,
): SheetAnswer[] {
  return listed.map(({ key: slot, size, place }) => {
    const key = keyOf(slot);
    const value = values[slotPlace(slot)]!;
    const says = isOwn(job, key) ? expression(value) : several ? call("INDEX", counts, place) : counts;
    return { key, label: label(size), unit: "", kind: "whole", value, says };
  });
}

/** True where the user's own count stands in the place of the computed one. */
const isOwn = (job: Job, key: string) => (job[`${key}_use`] ?? null) !== null;

const slotPlace = (key: string) => Number(key.split("_")[1]) - 1;

/** A number that a formula leaves out where it is blank or 0. */
export const amount = (job: Job, key: string) => Number(job[key] ?? 0) || undefined;

/** A function of this add-in without the arguments left out at its end. */
export function ask(name: string, ...terms: (Term | undefined)[]): Expression {
  const used = terms.map((term) => term !== undefined).lastIndexOf(true);
  return pen(name, ...terms.slice(0, used + 1));
}

export const arrayConstant = (values: readonly (number | string)[]): Term =>
  values.length === 1 && typeof values[0] === "number"
    ? values[0]
    : { kind: "verbatim", text: `{${values.join(";")}}` };

/** The cells of these keys in one column of the estimate, if that is how they stand. */
export function cellsOf(keys: readonly string[], written?: EstimateSheet): Expression | undefined {
  const cells = keys.map((key) => written?.cells[key]);
  const [first, last] = [cells[0], cells.at(-1)];
  if (!first || !last || !written) return undefined;
  const inOrder = cells.every((one, k) => one && one.column === first.column && one.row === first.row + k);
  const place = ({ row, column }: typeof first) => ({ sheet: written.name, row, column });
  return inOrder ? range(place(first), place(last)) : undefined;
}

/** The sizes of a list as a term of a formula. */
export interface ListTerm {
  /** Left out where the list is empty. */
  term?: Term;
  several: boolean;
  listed: Listed[];
}

/** The sizes of a list: the estimate's cells where it holds several, else numbers. */
export function listTerm(list: SlotList, job: Job, written?: EstimateSheet): ListTerm {
  const filled = slotKeys(list).filter((key) => job[key] !== null);
  const several = filled.length > 1;
  const cells = several ? cellsOf(slotKeys(list), written) : undefined;
  const listed = filled.map((key, k) => ({
    key,
    size: job[key] as number,
    place: cells ? slotPlace(key) + 1 : k + 1,
  }));
  if (filled.length === 0) return { several, listed };
  return { term: cells ?? arrayConstant(listed.map(({ size }) => size)), several, listed };
}

/** The counts beside a list: the best, or the user's own where there is one among them. */
export function countsTerm(
  job: Job,
  { list, values, keyOf }: Counted,
  best: Expression,
  written?: EstimateSheet,
): Expression {
  const keys = slotKeys(list);
  const filled = keys.filter((key) => job[key] !== null);
  if (!filled.some((key) => isOwn(job, keyOf(key)))) return best;
  const counts = keys.map((key) => `${keyOf(key)}_count`);
  const cells = filled.length > 1 && cellsOf(keys, written) ? cellsOf(counts, written) : undefined;
  return cells ?? expression(arrayConstant(filled.map((key) => values[slotPlace(key)] ?? 0)));
}

/** Sizes times counts, added up. */
export const total = ({ term, several }: ListTerm, counts: Expression): Expression =>
  several ? call("SUMPRODUCT", term, counts) : times(term!, counts);
