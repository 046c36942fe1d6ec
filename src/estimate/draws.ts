import { Decimal } from "decimal.js";
import { notAllowed } from "../units/refusal";
import { cents } from "./charges";
import { messages } from "./messages";

/** A part of the price that falls due at a milestone, in percent of the price. */
export interface Draw {
  name: string;
  percent: number;
}

/** What is paid before the work starts: a percentage of the price, or dollars. */
export type Deposit = { percent: number } | { amount: number };

/** An amount that falls due, $ to the cent. */
export interface Due {
  name: string;
  amount: number;
}

/**
 * What falls due: the deposit, then each draw, together exactly the price ($, 0 and up). Each is its percentage of the
 * price, to the cent, half up; the last draw takes what is left, whatever its percentage. A deposit of nothing is not
 * listed. Refuses percentages outside 0 to 100, an empty list of draws, and parts that come to more than the price.
 */
export function draws(
  total: number,
  deposit: Deposit,
  milestones: readonly Draw[],
  depositName = "Deposit",
): Due[] {
  const price = cents(new Decimal(total));
  const percents = [
    ...milestones.map(({ percent }) => percent),
    ...("percent" in deposit ? [deposit.percent] : []),
  ];
  if (!percents.every((percent) => percent >= 0 && percent <= 100)) throw notAllowed(messages.drawPercent);
  if ("amount" in deposit && !(deposit.amount >= 0 && price.gte(deposit.amount)))
    throw notAllowed(messages.depositTooMuch);
  if (milestones.length === 0) throw notAllowed(messages.noDraw);
  const part = (percent: number) => cents(price.times(percent).div(100));
  const first = "amount" in deposit ? cents(new Decimal(deposit.amount)) : part(deposit.percent);
  const upToLast = milestones.slice(0, -1).map(({ name, percent }) => ({ name, amount: part(percent) }));
  const rest = upToLast.reduce((left, { amount }) => left.minus(amount), price.minus(first));
  if (rest.isNegative()) throw notAllowed(messages.drawsTooMuch);
  const all = [
    ...(first.isZero() ? [] : [{ name: depositName, amount: first }]),
    ...upToLast,
    { name: milestones[milestones.length - 1].name, amount: rest },
  ];
  return all.map(({ name, amount }) => ({ name, amount: amount.toNumber() }));
}
