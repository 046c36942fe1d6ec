import { type Cell, type Value } from "../src/units/cell";
import { allowed, isWithin, LONGEST_FT, readQuantity, readWithin, type Range } from "../src/units/range";
import { notAllowed, Refusal } from "../src/units/refusal";
import { cellsOf, content, mapCells, onlyCell } from "./cells";
import { messages } from "./messages";

/** A number that a function takes: its name in the sheet, and what it may be. Where 0 is not in its range, it counts as blank. */
export interface Quantity extends Range {
  name: string;
}

/** One number of a cell, 0 where it is blank. The message of a refusal starts with the argument's name. */
export function read(cell: unknown, quantity: Quantity): number {
  return about(quantity.name, () => {
    const given = content(cell, quantity.unit ? messages.notALength : messages.notANumber);
    if (given === 0 || (typeof given === "string" && readQuantity(given, quantity) === 0)) return 0;
    return readWithin(given, quantity);
  });
}

/** The number of a scalar argument. Refuses a blank where 0 is not in its range. */
export function required(term: Value | undefined, quantity: Quantity): number {
  const number = read(scalar(term, quantity.name), quantity);
  if (number === 0 && !isWithin(0, quantity))
    throw notAllowed(messages.about(quantity.name, messages.needed(allowed(quantity))));
  return number;
}

/** The number of a scalar argument, its default where it is blank or left out. */
export function optional(term: Value | undefined, quantity: Quantity, otherwise: number): number {
  return read(scalar(term, quantity.name), quantity) || otherwise;
}

/** The numbers of a range in reading order, 0 where a cell is blank. */
export function numbers(term: Value | undefined, quantity: Quantity): number[] {
  return cellsOf(term).map((cell) => read(cell, quantity));
}

/** Two ranges that belong together, the second as numbers, one for each cell of the first. */
export function beside(
  first: readonly number[],
  name: string,
  term: Value | undefined,
  quantity: Quantity,
): number[] {
  const others = numbers(term, quantity);
  if (others.length !== first.length)
    throw notAllowed(messages.about(quantity.name, messages.sameCells(name, first.length)));
  return others;
}

/** One of the options of a scalar argument, without regard to case; the first where it is blank or left out. */
export function option<Option extends string>(
  term: Value | undefined,
  name: string,
  options: readonly Option[],
): Option {
  return about(name, () => {
    const given = content(onlyCell(term), messages.oneOf(options));
    if (given === 0) return options[0];
    const found = options.find((one) => one === String(given).toLowerCase().replace(/\s+/g, " "));
    if (found === undefined) throw notAllowed(messages.oneOf(options));
    return found;
  });
}

/**
 * A result for each cell of the first argument, in its shape: blank cells give `blank`, bad ones their own error.
 * Numbers within the range are not read, which keeps a call on ten thousand of them under a millisecond.
 */
export function shaped(
  term: Value | undefined,
  quantity: Quantity,
  result: (number: number) => Cell,
  blank: Cell = "",
): Value {
  const most = quantity.unit ? Math.min(quantity.most, LONGEST_FT) : quantity.most;
  return mapCells(term, (cell) => {
    if (typeof cell === "number" && cell > 0 && cell >= quantity.least && cell <= most) return result(cell);
    const number = read(cell, quantity);
    return number === 0 ? blank : result(number);
  });
}

const scalar = (term: Value | undefined, name: string) => about(name, () => onlyCell(term));

function about<Result>(name: string, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    throw error instanceof Refusal && error.kind === "value"
      ? notAllowed(messages.about(name, error.message))
      : error;
  }
}
