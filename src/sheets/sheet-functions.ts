import { Decimal } from "decimal.js";
import { isError, type Cell } from "../units/cell";
import { dayOf } from "../units/day";
import { single, toNumber, toText, type Value } from "./value";

type Work = (terms: (() => Value)[]) => Value;

const valueError: Cell = { error: "#VALUE!" };

/** The cells of a term in reading order, and whether each came out of a range (where texts and blanks are passed over). */
function* cells(terms: (() => Value)[]): Generator<{ value: Cell; ranged: boolean }> {
  for (const term of terms) {
    const value = term();
    if (Array.isArray(value))
      for (const row of value) for (const one of row) yield { value: one, ranged: true };
    else yield { value, ranged: false };
  }
}

/** The numbers that SUM, MAX and MIN see, or the first error among the terms. */
function numbers(terms: (() => Value)[]): number[] | Cell {
  const found: number[] = [];
  for (const { value, ranged } of cells(terms)) {
    if (isError(value)) return value;
    if (ranged && typeof value !== "number") continue;
    const read = toNumber(value);
    if (isError(read)) return read;
    found.push(read);
  }
  return found;
}

const over =
  (fold: (found: number[]) => number): Work =>
  (terms) => {
    const found = numbers(terms);
    return Array.isArray(found) ? fold(found) : found;
  };

/** A function of numbers alone: an error or a text among the terms is the result. */
const numeric =
  (work: (...terms: number[]) => number): Work =>
  (terms) => {
    const read = terms.map((term) => toNumber(single(term())));
    const wrong = read.find(isError);
    if (wrong) return wrong;
    const result = work(...(read as number[]));
    return Number.isFinite(result) ? result : { error: "#NUM!" };
  };

/**
 * Rounds the number that a spreadsheet shows (15 significant digits) and not its binary neighbor, so that 1.005 to
 * the cent is 1.01 as in every spreadsheet.
 */
function rounded(mode: Decimal.Rounding) {
  return (x: number, places = 0) =>
    new Decimal(x.toPrecision(15)).toNearest(new Decimal(10).pow(-places), mode).toNumber();
}

const halfUp = rounded(Decimal.ROUND_HALF_UP);

const truth = (terms: (() => Value)[], fold: (found: boolean[]) => boolean): Cell => {
  const found: boolean[] = [];
  for (const { value, ranged } of cells(terms)) {
    if (isError(value)) return value;
    if (typeof value === "string" && !ranged) return valueError;
    if (typeof value === "string" || (ranged && value === null)) continue;
    found.push(Boolean(value));
  }
  return found.length ? fold(found) : valueError;
};

const flat = new WeakMap<Cell[][], Cell[]>();

/** The cells of a value in reading order; a rectangle that many formulas look at is laid out once. */
function inOrder(value: Value): readonly Cell[] {
  if (!Array.isArray(value)) return [value];
  const found = flat.get(value) ?? value.flat();
  flat.set(value, found);
  return found;
}

/** Pairs of range and criterion, as COUNTIFS takes them: which places, from 0, fulfil all. Where none is left, the others are not looked at. */
function fulfilled(terms: (() => Value)[]): number[] {
  let met: number[] | undefined;
  for (let k = 0; k + 1 < terms.length && met?.length !== 0; k += 2) {
    const tested = inOrder(terms[k]());
    const fits = criterion(single(terms[k + 1]()));
    met = (met ?? [...tested.keys()]).filter((place) => fits(tested[place] ?? null));
  }
  return met ?? [];
}

/** A function of the numbers in its first range beside which all criteria are fulfilled. */
const ofThoseThatFit =
  (fold: (found: number[]) => number): Work =>
  ([folded, ...pairs]) => {
    const met = fulfilled(pairs);
    const found = inOrder(folded());
    return fold(met.map((place) => found[place]).filter((value) => typeof value === "number"));
  };

/** What a criterion asks of a cell. */
function criterion(wanted: Cell): (value: Cell) => boolean {
  if (typeof wanted === "number") return (value) => value === wanted;
  const asked = String(wanted ?? "");
  const [, operator, rest] = /^(<>|<=|>=|<|>|=)?(.*)$/s.exec(asked)!;
  const limit = rest === "" ? NaN : Number(rest);
  if (operator && operator !== "=" && operator !== "<>")
    return (value) =>
      typeof value === "number" && { "<": value < limit, ">": value > limit, "<=": value <= limit, ">=": value >= limit }[operator]!; // prettier-ignore
  const text = rest.toLowerCase();
  return (value) => (String(value ?? "").toLowerCase() === text) === (operator !== "<>");
}

/** The fewest terms of the functions that need more than one, or none. */
export const leastTerms: Record<string, number | undefined> = {
  PI: 0, IF: 2, IFERROR: 2, INDEX: 2, COUNTIF: 2, COUNTIFS: 2, FIND: 2, SUMIFS: 3, MINIFS: 3, MAXIFS: 3, TODAY: 0, ROUND: 2, ROUNDUP: 2, ROUNDDOWN: 2,
}; // prettier-ignore

/** The functions of the spreadsheet that documents use. Terms are evaluated on demand, so IF looks only where it must. */
export const sheetFunctions: Record<string, Work | undefined> = {
  IF: (terms) => {
    const test = single(terms[0]());
    if (isError(test)) return test;
    if (typeof test === "string") return valueError;
    return test ? terms[1]() : terms.length > 2 ? terms[2]() : false;
  },
  IFERROR: (terms) => {
    const value = single(terms[0]());
    return isError(value) ? terms[1]() : value;
  },
  AND: (terms) => truth(terms, (found) => found.every(Boolean)),
  OR: (terms) => truth(terms, (found) => found.some(Boolean)),
  NOT: ([term]) => {
    const value = single(term());
    if (isError(value)) return value;
    return typeof value === "string" ? valueError : !value;
  },
  ISNUMBER: ([term]) => typeof single(term()) === "number",
  ISERROR: ([term]) => isError(single(term())),
  N: ([term]) => {
    const value = single(term());
    return isError(value) ? value : typeof value === "string" ? 0 : Number(value);
  },
  SUM: over((found) => found.reduce((sum, x) => sum + x, 0)),
  MAX: over((found) => (found.length ? found.reduce((a, b) => Math.max(a, b)) : 0)),
  MIN: over((found) => (found.length ? found.reduce((a, b) => Math.min(a, b)) : 0)),
  COUNT: (terms) => [...cells(terms)].filter(({ value }) => typeof value === "number").length,
  COUNTIF: (terms) => fulfilled(terms).length,
  FIND: (terms) => {
    const [part, whole] = terms.map((term) => toText(single(term())));
    if (isError(part)) return part;
    if (isError(whole)) return whole;
    const at = whole.indexOf(part);
    return at < 0 ? valueError : at + 1;
  },
  COUNTIFS: (terms) => fulfilled(terms).length,
  SUMIFS: ofThoseThatFit((found) => found.reduce((sum, x) => sum + x, 0)),
  MINIFS: ofThoseThatFit((found) => (found.length ? found.reduce((a, b) => Math.min(a, b)) : 0)),
  MAXIFS: ofThoseThatFit((found) => (found.length ? found.reduce((a, b) => Math.max(a, b)) : 0)),
  ROWS: ([term]) => {
    const value = term();
    return Array.isArray(value) ? value.length : 1;
  },
  TODAY: () => dayOf(new Date()),
  INDEX: (terms) => {
    const value = terms[0]();
    const [first, second = 1] = terms.slice(1).map((term) => toNumber(single(term())));
    if (isError(value)) return value;
    if (isError(first)) return first;
    if (isError(second)) return second;
    const rows = Array.isArray(value) ? value : [[value]];
    const [r, c] = (terms.length > 2 || rows.length > 1 ? [first, second] : [1, first]).map(Math.trunc);
    if (r < 1 || c < 1) return valueError;
    return rows[r - 1]?.[c - 1] ?? (r <= rows.length && c <= rows[0].length ? null : { error: "#REF!" });
  },
  ABS: numeric(Math.abs),
  SQRT: numeric((x) => Math.sqrt(x)),
  SIN: numeric(Math.sin),
  ASIN: numeric(Math.asin),
  PI: () => Math.PI,
  ROUND: numeric(halfUp),
  ROUNDUP: numeric(rounded(Decimal.ROUND_UP)),
  ROUNDDOWN: numeric(rounded(Decimal.ROUND_DOWN)),
  FIXED: (terms) => {
    const read = terms.map((term) => toNumber(single(term())));
    const wrong = read.find(isError);
    if (wrong) return wrong;
    const [value, places = 2, plain = 0] = read as number[];
    const digits = Math.trunc(places);
    const shown = new Decimal(halfUp(value, digits)).toFixed(Math.max(0, digits));
    return plain ? shown : shown.replace(/\B(?=(\d{3})+(?!\d))(?<!\.\d*)/g, ",");
  },
  /** Signs beyond the plain ones differ from system to system; documents write none by number. */
  CHAR: ([term]) => {
    const code = toNumber(single(term()));
    if (isError(code)) return code;
    return code >= 32 && code < 127 ? String.fromCharCode(code) : { error: "#VALUE!" };
  },
  LEN: ([term]) => {
    const value = toText(single(term()));
    return isError(value) ? value : value.length;
  },
};
