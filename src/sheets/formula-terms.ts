import { fieldOf, slotKeys, type SlotList } from "../estimate/fields";
import { type Structure } from "../estimate/structures";
import { type Place } from "./address";
import { columns } from "./estimate-layout";
import { type PricesLayout } from "./prices-layout";
import { call, cell, number, operate, plus, range, when, type Expression, type Term } from "./expression";

/** Where the keys of an estimate stand, and what surrounds it. */
export interface Sheet {
  places: Record<string, Place>;
  /** Where the sheet of prices holds what. */
  prices: PricesLayout;
  structure: Structure;
  /** First and last row of the sections of lines. */
  lines: { from: number; to: number };
}

/** The cells that the formulas name, by key. */
export function cellsOf({ places }: Sheet) {
  const at = (key: string) => cell(places[key]);
  const orDefault = (key: string) =>
    when(operate(number(at(key)), "=", 0), fieldOf(key).default as number, at(key));
  const column = (list: SlotList, name: keyof typeof columns) => {
    const [first, ...others] = slotKeys(list).map((key) => ({ ...places[key], column: columns[name] }));
    return range(first, others.at(-1)!);
  };
  return { at, orDefault, column };
}

/** Whether a gate, from 1, is among those that a field names; no gate's number has two digits. */
export const isAmong = ({ places }: Sheet, key: string, gate: number) =>
  call("ISNUMBER", call("FIND", gate, cell(places[key])));

/** The same of gates by other. */
export const isByOther = (sheet: Sheet, gate: number) => isAmong(sheet, "gates_by_other", gate);

/** Small terms of which the formulas of an estimate are made. */
export const isNumber = (term: Term) => call("ISNUMBER", term);
export const blankUnless = (test: Term, then: Term) => when(test, then, "");
export const above = (term: Term, limit: number) => operate(term, ">", limit);
export const sum = (terms: Expression[]) => plus(terms[0], ...terms.slice(1));
export const roundedUp = (term: Term) => call("ROUNDUP", call("ROUND", term, 6), 0);

/** The count of a slot: blank without its size, the user's own where there is one, else the best. */
export const slotCount = (size: Expression, use: Expression, best: Expression) =>
  when(operate(number(size), "=", 0), "", when(isNumber(use), use, best));

/** The user's own count of a line where there is one, else the count worked out. */
export const countOrOwn = ({ places }: Sheet, key: string, otherwise: Term) =>
  when(isNumber(cell(places[`${key}_use`])), cell(places[`${key}_use`]), otherwise);
