import { Decimal } from "decimal.js";

/** Percentages that come on top of the lines, in percent: 5 is 5 %. */
export interface Rates {
  tax: number;
  contingency: number;
  overhead: number;
  profit: number;
  /** Whether the profit is a share of the cost (markup) or of the price (margin). */
  profitKind: "markup" | "margin";
}

/** The sums under the lines, each to the cent. */
export interface Charges {
  direct: Decimal;
  tax: Decimal;
  contingency: Decimal;
  overhead: Decimal;
  profit: Decimal;
  total: Decimal;
}

/** Money to the cent, half up. */
export const cents = (money: Decimal) => money.toDecimalPlaces(2, Decimal.ROUND_HALF_UP);

/**
 * The amount of one line: quantity times unit price, to the cent, half up. The quantity counts with the 15 digits
 * that a sheet shows, so that 349.9125 with the noise of its arithmetic under it does not lose a cent.
 */
export const lineAmount = (quantity: number, price: Decimal) => cents(price.times(quantity.toPrecision(15)));

/**
 * What comes on top of the lines. The tax is of the taxed lines, the contingency of lines and tax, the overhead of
 * lines, tax and contingency; a markup is of all before it, a margin of the price that it leads to (under 100 %).
 */
export function charge(direct: Decimal, taxed: Decimal, rates: Rates): Charges {
  const share = (base: Decimal, percent: number) => cents(base.times(percent).div(100));
  const tax = share(taxed, rates.tax);
  const contingency = share(direct.plus(tax), rates.contingency);
  const overhead = share(direct.plus(tax).plus(contingency), rates.overhead);
  const cost = direct.plus(tax).plus(contingency).plus(overhead);
  const profit =
    rates.profitKind === "margin"
      ? cents(cost.times(rates.profit).div(new Decimal(100).minus(rates.profit)))
      : share(cost, rates.profit);
  return { direct, tax, contingency, overhead, profit, total: cost.plus(profit) };
}
