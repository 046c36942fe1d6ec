import { baseLayer } from "../estimate/layers";
import { messages as estimateMessages } from "../estimate/messages";
import { extraStakes, lineBeyond, lineToTieOff } from "../estimate/supplies";
import {
  call,
  expression,
  minus,
  number,
  operate,
  over,
  plus,
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import { blankUnless, cellsOf, countOrOwn, isNumber, roundedUp, type Sheet } from "./formula-terms";
import { lookUp } from "./price-look-up";

/** The stakes: those at joints or posts, and others. */
export const stakesCount = (sheet: Sheet, onFence: Expression, others: Term = extraStakes) =>
  countOrOwn(sheet, "stakes", plus(onFence, others));

/** The feet of line that a round pen takes, by its circle. */
export const circleLine = (circle: Expression) => plus(over(circle, 2), lineToTieOff, circle, lineBeyond);

/** The formulas of line and paint, by the feet of line. */
export function suppliesFormulas(sheet: Sheet, length: Expression): Record<string, Expression> {
  const { at, orDefault } = cellsOf(sheet);
  return {
    line_count: countOrOwn(sheet, "line", roundedUp(over(length, orDefault("line_roll")))),
    paint_count: countOrOwn(sheet, "paint", roundedUp(over(at("distance_around"), orDefault("paint_reach")))),
  };
}

/** What a line without a size asks of the sizes among the prices, so that the lines of every kind ask alike. */
const anySize = "<>no";

/** The formulas of one priced line: what it looks for in the prices decides price, waste, tax and mark. */
export function lineFormulas(
  sheet: Sheet,
  key: string,
  whole: boolean,
  item: Term,
  size?: Term,
): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const count = at(`${key}_count`);
  const isThere = (other: string) => other in sheet.places;
  const less = isThere(`${key}_stock`) ? plus(at(`${key}_fixed`), number(at(`${key}_stock`))) : undefined;
  const also = `${baseLayer.loadsOf(key)}_count`;
  const ofBoth = isThere(also) && plus(number(count), number(at(also)));
  const isNone = less ? operate(number(count), "<=", less) : operate(ofBoth || number(count), "=", 0);
  const used = (then: Term) => when(isNone, "", then);
  const price = at(`${key}_price`);
  const found = lookUp(sheet.prices, {
    item: at(`${key}_kind`),
    size: at(`${key}_size`),
    pick: at(`${key}_pick`),
    price,
  });
  const bought = times(less ? minus(count, less) : ofBoth || count, plus(1, over(found.waste, 100)));
  const isBought = isNumber(at(`${key}_quantity`));
  return {
    [`${key}_kind`]: expression(item),
    [`${key}_size`]: expression(size ?? anySize),
    ...(found.pick && { [`${key}_pick`]: found.pick }),
    [`${key}_quantity`]: used(whole ? roundedUp(bought) : bought),
    [`${key}_price`]: used(found.price),
    [`${key}_amount`]: lineAmount(sheet, key),
    [`${key}_taxed`]: blankUnless(isBought, found.taxed),
    [`${key}_note`]: blankUnless(isBought, found.note),
  };
}

/** The amount of a line, also of the user's own: blank until it has a quantity. */
export function lineAmount(sheet: Sheet, key: string): Expression {
  const { at } = cellsOf(sheet);
  const quantity = at(`${key}_quantity`);
  const price = at(`${key}_price`);
  const amount = when(
    isNumber(price),
    call("ROUND", times(quantity, price), 2),
    estimateMessages.priceMissing,
  );
  return blankUnless(isNumber(quantity), amount);
}
