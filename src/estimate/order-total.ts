import { Decimal } from "decimal.js";
import { cents, lineAmount } from "./charges";

/** Whether a seller puts sales tax on an order. */
export const taxStatuses = [
  "taxed",
  "exempt: certificate attached",
  "for resale: certificate attached",
] as const;

/** One line of an order; a price of null is not agreed yet. */
export interface OrderLine {
  quantity: number | null;
  price: number | null;
  taxed: boolean;
}

/** What an order comes to, each sum to the cent. */
export interface OrderTotal {
  amounts: Decimal[];
  lines: Decimal;
  tax: Decimal;
  total: Decimal;
}

/**
 * An order's sums: each line to the cent, half up; the tax, in percent, of its taxed lines where the order is taxed at
 * all; the freight beside them. Lines without a quantity or a price count nothing.
 */
export function orderTotal(
  lines: readonly OrderLine[],
  { freight, tax, status }: { freight: number; tax: number; status: string },
): OrderTotal {
  const sum = (some: Decimal[]) => some.reduce((all, one) => all.plus(one), new Decimal(0));
  const amounts = lines.map(({ quantity, price }) => lineAmount(quantity ?? 0, new Decimal(price ?? 0)));
  const taxed = sum(amounts.filter((_, k) => lines[k].taxed));
  const due = status === taxStatuses[0] ? cents(taxed.times(tax).div(100)) : new Decimal(0);
  return { amounts, lines: sum(amounts), tax: due, total: sum(amounts).plus(freight).plus(due) };
}
