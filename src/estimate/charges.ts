import { Decimal } from "decimal.js";
import { type CostKind } from "./cost-kinds";
import { roundings, type Rounding, type TaxBase } from "./fields";

/** Percentages that come on top of the lines, in percent (5 is 5 %), and how the price is brought to a round figure. */
export interface Rates {
  burden: number;
  tax: number;
  taxOn: TaxBase;
  contingency: number;
  overhead: number;
  markups: Partial<Record<CostKind, number>>;
  profit: number;
  /** Whether the profit is a share of the cost (markup) or of the price (margin). */
  profitKind: "markup" | "margin";
  /** The least price of a job, $. */
  minimum: number;
  rounding: Rounding;
}

/** The cost of a job's lines: all of them, those of each kind, and those that are taxed. */
export interface LineCost {
  direct: Decimal;
  taxed: Decimal;
  kinds: Record<CostKind, Decimal>;
}

/** The steps from the lines to the final price, each to the cent. */
export interface Charges {
  direct: Decimal;
  burden: Decimal;
  /** Tax on the cost of the taxed lines: part of the cost. */
  tax: Decimal;
  contingency: Decimal;
  overhead: Decimal;
  markup: Decimal;
  profit: Decimal;
  /** What brings the price to the least charge and to a round figure; less than nothing where it is rounded down. */
  adjustment: Decimal;
  /** Tax on the price: on top of it. */
  salesTax: Decimal;
  total: Decimal;
}

/** Money to the cent, half up. */
export const cents = (money: Decimal) => money.toDecimalPlaces(2, Decimal.ROUND_HALF_UP);

/**
 * The amount of one line: quantity times unit price, to the cent, half up. The product counts with the 15 digits that a
 * sheet rounds by, so that 349.9125 with the noise of its arithmetic under it does not lose a cent.
 */
export const lineAmount = (quantity: number, price: Decimal) =>
  cents(price.times(quantity).toSignificantDigits(15));

/** Money to the nearest of some dollars, half up. */
const nearest = (money: Decimal, dollars: number) =>
  cents(money.div(dollars).toDecimalPlaces(0, Decimal.ROUND_HALF_UP).times(dollars));

/**
 * The final price, step by step; each amount is rounded to the cent, half up, before the next step takes it.
 *
 * 1. Direct cost: the lines.
 * 2. Burden, of the labor lines.
 * 3. Tax, where it is on material cost: of the taxed lines.
 * 4. Contingency, of 1 to 3.
 * 5. Overhead, of 1 to 4.
 * 6. Markup by kind of cost: of material, of labor and its burden, of rental, of subcontracts.
 * 7. Profit: a markup is of 1 to 6, a margin of the price that it leads to (under 100 %).
 * 8. The sum of 1 to 7, or the least charge where that is more, to the nearest cent, dollar, 10, 50 or 100 dollars.
 * 9. Tax, where it is on the price: of all of it, or of the part of it that the taxed lines are of the lines.
 *
 * The total is 8 and 9. A job without lines has no part of them.
 */
export function charge({ direct, taxed, kinds }: LineCost, rates: Rates): Charges {
  const share = (base: Decimal, percent: number) => cents(base.times(percent).div(100));
  const burden = share(kinds.labor, rates.burden);
  const tax = rates.taxOn === "material cost" ? share(taxed, rates.tax) : new Decimal(0);
  const contingency = share(direct.plus(burden).plus(tax), rates.contingency);
  const overhead = share(direct.plus(burden).plus(tax).plus(contingency), rates.overhead);
  const markup = Object.entries({ ...kinds, labor: kinds.labor.plus(burden) })
    .map(([kind, cost]) => share(cost, rates.markups[kind as CostKind] ?? 0))
    .reduce((sum, one) => sum.plus(one));
  const cost = Decimal.sum(direct, burden, tax, contingency, overhead, markup);
  const profit =
    rates.profitKind === "margin"
      ? cents(cost.times(rates.profit).div(new Decimal(100).minus(rates.profit)))
      : share(cost, rates.profit);
  const figured = cost.plus(profit);
  const price = nearest(Decimal.max(figured, rates.minimum), roundings[rates.rounding]);
  const salesTax = share(taxedPrice(price, taxed, direct, rates.taxOn), rates.tax);
  return {
    direct,
    burden,
    tax,
    contingency,
    overhead,
    markup,
    profit,
    adjustment: price.minus(figured),
    salesTax,
    total: price.plus(salesTax),
  };
}

/** The part of the price that is taxed. */
function taxedPrice(price: Decimal, taxed: Decimal, direct: Decimal, taxOn: TaxBase): Decimal {
  if (taxOn === "whole price") return price;
  if (taxOn !== "items sold" || direct.isZero()) return new Decimal(0);
  return cents(price.times(taxed).div(direct));
}
