import { Decimal } from "decimal.js";
import { cents } from "./charges";

/** Amounts, $, added to the cent. */
const sumOf = (amounts: readonly number[]) =>
  amounts.reduce((sum, amount) => sum.plus(cents(new Decimal(amount))), new Decimal(0));

/** What a contract comes to, $: the price of its bid, and the signed changes, each plus or minus. */
export const contractTotal = (price: number, changes: readonly number[]) =>
  sumOf([price, ...changes]).toNumber();

/** What an invoice is figured from: amounts in $, the retainage in percent of what is billed (0 to 100). */
export interface Billing {
  draws: readonly { amount: number; billed: boolean }[];
  changes: readonly number[];
  retainage: number;
  paid: number;
}

/** What is billed to date, what of it is held back until the end, and what is due now, $; less than 0 where too much was paid. */
export function billing({ draws, changes, retainage, paid }: Billing): {
  billed: number;
  retained: number;
  due: number;
} {
  const billed = sumOf([...draws.filter((draw) => draw.billed).map(({ amount }) => amount), ...changes]);
  const retained = cents(billed.times(retainage).div(100));
  const due = billed.minus(retained).minus(cents(new Decimal(paid)));
  return { billed: dollars(billed), retained: dollars(retained), due: dollars(due) };
}

/** An amount as a plain number; what rounds to nothing from below is 0, never minus 0. */
const dollars = (money: Decimal) => money.toNumber() + 0;
