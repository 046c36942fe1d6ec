import { costKinds, costOfSection, strayLines, type CostKind } from "../estimate/cost-kinds";
import { roundings, type Rounding } from "../estimate/fields";
import { messages as estimateMessages } from "../estimate/messages";
import { lineSectionsOf } from "../estimate/own-lines";
import { columns } from "./estimate-layout";
import {
  call,
  minus,
  number,
  operate,
  over,
  plus,
  range,
  text,
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import { above, blankUnless, cellsOf, isNumber, sum, type Sheet } from "./formula-terms";
import { messages } from "./messages";
import { chosen, isWord } from "./post-terms";

const toTheCent = (money: Term) => call("ROUND", money, 2);
const percentOf = (base: Term, percent: Term) => toTheCent(over(times(base, number(percent)), 100));

/** The cost of the lines of one kind: the sums of its sections, and the lines that are of another kind than theirs. */
function costOfKind(sheet: Sheet, kind: CostKind): Expression {
  const { at } = cellsOf(sheet);
  const sections = lineSectionsOf(sheet.structure);
  const whole = sections
    .filter((section) => costOfSection[section] === kind)
    .map((section) => at(`sum_${section}`));
  const strays = Object.entries(strayLines).filter(([key]) => `${key}_amount` in sheet.places);
  const amounts = (some: typeof strays) => some.map(([key]) => number(at(`${key}_amount`)));
  const into = amounts(strays.filter(([, stray]) => stray.kind === kind));
  const outOf = amounts(strays.filter(([, { section }]) => costOfSection[section] === kind));
  // What is left of a difference is not to the cent by itself.
  return toTheCent(outOf.reduce((cost, line) => minus(cost, line), sum([...whole, ...into])));
}

/** The formulas of the steps from the lines to the final price, in the order that `charge` tells, by key. */
export function totalFormulas(sheet: Sheet): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const down = (name: keyof typeof columns) =>
    range({ row: sheet.lines.from, column: columns[name] }, { row: sheet.lines.to, column: columns[name] });
  const missing = call("COUNTIF", down("amount"), estimateMessages.priceMissing);
  const taxed = toTheCent(call("SUMIFS", down("amount"), down("taxed"), "yes"));
  const taxIsOn = (word: string) => isWord(at("tax_on"), word);
  const onCost = call("OR", taxIsOn("material cost"), taxIsOn(""));
  const direct = at("direct");
  const steps = ["direct", "burden_amount", "tax_amount", "contingency_amount", "overhead_amount", "markup_amount", "profit_amount"]; // prettier-ignore
  /** The steps before one, added up: they stand below each other. */
  const before = (key: string) => {
    const up = steps.slice(0, steps.indexOf(key));
    return call("SUM", range(sheet.places[up[0]], sheet.places[up[up.length - 1]]));
  };
  const figured = call("SUM", range(sheet.places.direct, sheet.places.profit_amount));
  const price = call("SUM", range(sheet.places.direct, sheet.places.adjustment));
  const profit = number(at("profit"));
  const total = at("total");
  const each = (units: Expression) => blankUnless(isNumber(total), over(total, units));
  const step = chosen(sheet, "rounding", (word) => roundings[word as Rounding]);
  const least = toTheCent(call("MAX", figured, number(at("minimum"))));
  const markups = costKinds
    .filter((kind) => `markup_${kind}` in sheet.places)
    .map((kind) => {
      const cost = costOfKind(sheet, kind);
      return percentOf(kind === "labor" ? plus(cost, at("burden_amount")) : cost, at(`markup_${kind}`));
    });
  const share = toTheCent(over(times(price, taxed), direct));
  return {
    direct: toTheCent(sum(lineSectionsOf(sheet.structure).map((section) => at(`sum_${section}`)))),
    burden_amount: percentOf(costOfKind(sheet, "labor"), at("burden")),
    tax_amount: when(onCost, percentOf(taxed, at("tax")), 0),
    contingency_amount: percentOf(before("contingency_amount"), at("contingency")),
    overhead_amount: percentOf(before("overhead_amount"), at("overhead")),
    markup_amount: sum(markups),
    profit_amount: when(
      operate(at("profit_kind"), "=", "margin"),
      toTheCent(over(times(before("profit_amount"), profit), minus(100, profit))),
      percentOf(before("profit_amount"), at("profit")),
    ),
    adjustment: toTheCent(minus(times(call("ROUND", over(least, step), 0), step), figured)),
    sales_tax_amount: when(
      taxIsOn("whole price"),
      percentOf(price, at("tax")),
      when(call("AND", taxIsOn("items sold"), operate(direct, "<>", 0)), percentOf(share, at("tax")), 0),
    ),
    total: when(
      above(missing, 0),
      text(missing, when(operate(missing, "=", 1), messages.priceIsMissing, messages.pricesAreMissing)),
      toTheCent(plus(price, at("sales_tax_amount"))),
    ),
    per_foot: each(at("distance_around")),
    per_square_foot: each(at("area")),
    budget_left: blankUnless(
      call("AND", isNumber(at("budget")), isNumber(total)),
      minus(at("budget"), total),
    ),
    example_warning: blankUnless(
      above(call("COUNTIF", down("note"), estimateMessages.examplePrice), 0),
      messages.onExamples,
    ),
  };
}
