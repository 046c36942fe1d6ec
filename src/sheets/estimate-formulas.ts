import { slotKeys } from "../estimate/fields";
import { messages as estimateMessages } from "../estimate/messages";
import { extraStakes, lineBeyond, lineToTieOff } from "../estimate/supplies";
import {
  call,
  expression,
  minus,
  number,
  operate,
  over,
  pen,
  plus,
  text,
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import {
  above,
  blankUnless,
  cellsOf,
  countOrOwn,
  isNumber,
  roundedUp,
  slotCount,
  sum,
  type Sheet,
} from "./formula-terms";
import { messages } from "./messages";
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

/** The formulas of the footing and its loads, by key. */
export function sandFormulas(sheet: Sheet): Record<string, Expression> {
  const { at, column, orDefault } = cellsOf(sheet);
  const trucks = column("truck", "input");
  const need = at("sand_need");
  const byYard = operate(at("sand_unit"), "=", "cu yd");
  const delivered = sum(slotKeys("truck").map((key) => times(number(at(key)), number(at(`${key}_count`)))));
  const much = above(number(at("sand_over")), 10);
  const deepest = call("MAX", number(at("depth")), number(at("depth_loose")));
  const deep = above(deepest, 6);
  const found: Record<string, Expression> = {
    sand_need: pen("FILL", at("area"), at("depth"), at("overrun"), at("settle")),
    sand_delivered: when(operate(call("COUNTIF", trucks, ">0"), "=", 0), need, delivered),
    sand_over: blankUnless(above(need, 0), times(minus(over(at("sand_delivered"), need), 1), 100)),
    depth_loose: over(times(at("sand_delivered"), 324), at("area")),
    depth_settled: times(at("depth_loose"), minus(1, over(number(at("settle")), 100))),
    sand_count: when(byYard, at("sand_delivered"), times(at("sand_delivered"), orDefault("tons_per_cy"))),
    sand_unit_shown: when(byYard, "cu yd", "ton"),
    footing_warning: text(
      blankUnless(deep, estimateMessages.deepFooting),
      blankUnless(much, text(blankUnless(deep, " · "), estimateMessages.tooMuchSand)),
    ),
  };
  slotKeys("truck").forEach((key, k) => {
    const best = call("INDEX", pen("LOADS", need, trucks, at("short")), k + 1);
    found[`${key}_count`] = slotCount(at(key), at(`${key}_use`), best);
    found[`${key}_item`] = blankUnless(above(number(at(key)), 0), text(messages.haulItem, at(key), " cu yd"));
  });
  return found;
}

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
  const hand = `${key}_stock` in sheet.places ? number(at(`${key}_stock`)) : undefined;
  const used = (then: Term) =>
    when(hand ? operate(number(count), "<=", hand) : operate(number(count), "=", 0), "", then);
  const price = at(`${key}_price`);
  const found = lookUp(sheet.prices, {
    item: at(`${key}_kind`),
    size: size && at(`${key}_size`),
    pick: at(`${key}_pick`),
    price,
  });
  const bought = times(hand ? minus(count, hand) : count, plus(1, over(found.waste, 100)));
  return {
    [`${key}_kind`]: expression(item),
    ...(size !== undefined && { [`${key}_size`]: expression(size) }),
    ...(found.pick && { [`${key}_pick`]: found.pick }),
    [`${key}_quantity`]: used(whole ? roundedUp(bought) : bought),
    [`${key}_price`]: used(found.price),
    [`${key}_amount`]: used(
      when(
        isNumber(price),
        call("ROUND", times(at(`${key}_quantity`), price), 2),
        estimateMessages.priceMissing,
      ),
    ),
    [`${key}_taxed`]: used(found.taxed),
    [`${key}_note`]: used(found.note),
  };
}

/** The amount of one of the user's own lines: blank until it has a quantity. */
export function ownAmount(sheet: Sheet, key: string): Expression {
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
