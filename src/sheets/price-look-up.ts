import { messages as estimateMessages } from "../estimate/messages";
import { type Place } from "./address";
import { call, cell, number, range, text, when, type Expression, type Term } from "./expression";
import { isNumber } from "./formula-terms";
import { lastPriceRow, oldBefore, usableMark, type PriceColumn, type PricesLayout } from "./prices-layout";

/** What a line of another sheet asks the prices for, and its cells that other formulas of it rest on. */
export interface Asked {
  item: Term;
  size?: Term;
  /** The cell that says which rows may be used: `yes` where one is chosen. */
  pick: Expression;
  /** The cell of the price. */
  price: Expression;
}

/**
 * The formulas by which a line asks the prices for its item, by the same rule as `findPrice`. A sheet of prices of the
 * time before suppliers needs no `pick`, and says nothing of old prices.
 */
export function lookUp(prices: PricesLayout, { item, size, pick, price }: Asked) {
  const { sheet } = prices;
  const fixed = (at: Place): Place => ({ ...at, sheet, fixedRow: true });
  const has = (name: PriceColumn) => prices.columns[name] !== undefined;
  const of = (name: PriceColumn) => {
    const column = prices.columns[name]!;
    return range(fixed({ row: prices.headers + 1, column }), fixed({ row: lastPriceRow, column }));
  };
  const asked: Term[] = [of("item"), item, ...(size === undefined ? [] : [of("size"), size])];
  const usable = has("use") ? [...asked, of("use"), pick] : asked;
  const used = [...usable, of("price"), price];
  const unchosen = usableMark(prices);
  const before = oldBefore(prices);
  const old = before
    ? call("MAXIFS", of("date"), ...used, of("date"), text("<", call("N", cell(fixed(before)))))
    : "";
  return {
    pick: has("use")
      ? when(call("COUNTIFS", ...asked, of("use"), "yes"), "yes", unchosen ? cell(fixed(unchosen)) : "<>no")
      : undefined,
    price: when(
      call("COUNTIFS", ...usable, of("price"), ">=0"),
      call("MINIFS", of("price"), ...usable, of("price"), ">=0"),
      estimateMessages.priceMissing,
    ),
    // Without a price every row that may be used is asked: none of them costs 0. Blank cells are passed over, of which
    // the open grid makes no largest, and where nothing is left it gives a text, whose number is 0.
    waste: number(
      call(
        "MAXIFS",
        of("waste"),
        ...usable,
        of("price"),
        when(isNumber(price), price, "<>0"),
        of("waste"),
        ">0",
      ),
    ),
    taxed: when(call("COUNTIFS", ...used, of("taxed"), "yes"), "yes", ""),
    note: when(call("COUNTIFS", ...used, of("example"), "example"), estimateMessages.examplePrice, old),
  };
}
