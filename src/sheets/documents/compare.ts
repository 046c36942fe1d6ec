import { largestWithin, repriced, withoutOwnCounts, type Repriced } from "../../estimate/compare";
import { figureField } from "../../estimate/figure-list";
import { type PriceRow } from "../../estimate/prices";
import { type SizeAsked } from "../../estimate/sizes-asked";
import { waysUnder, type Way } from "../../estimate/ways-under";
import { type SheetPlan } from "../plan";
import { noAnswer } from "../../units/refusal";
import { compareRows } from "./compare-rows";
import { compareWords as words } from "./compare-words";
import { documentPlan } from "./document";
import { marks } from "./marks";
import { builtFrom, placeIn, type EstimateSource } from "./source";

/** Sizes priced each as a job of its own, and what would bring those over the budget under it. */
export interface Compared {
  sizes: readonly SizeAsked[];
  found: Repriced[];
  /** The place of the largest within the budget; -1 where none is, or there is no budget. */
  largest: number;
  /** For each size over the budget the changes that save something; none for the others. */
  ways: Way[][];
  budget: number | null;
}

/** Prices the sizes of an estimate on the user's prices. */
export function compareSizes(
  { job, sheet }: Pick<EstimateSource, "job" | "sheet">,
  prices: readonly PriceRow[],
  sizes: readonly SizeAsked[],
): Compared {
  const budget = job.budget === null ? null : Number(job.budget);
  const found = sizes.map(({ answers }) => repriced(job, answers, prices, sheet.own));
  const isOver = ({ price }: Repriced) => budget !== null && price !== null && price > budget;
  return {
    sizes,
    found,
    budget,
    largest: budget === null ? -1 : largestWithin(found, budget),
    ways: found.map((one) =>
      isOver(one) ? waysUnder({ ...withoutOwnCounts(job), ...one.answers }, prices, sheet.own) : [],
    ),
  };
}

/**
 * Sizes of an estimate side by side against its budget, three to eight of them. Prices are those of the time of
 * writing; what is left of the budget, and the words under it, follow the budget's own cell. Its top says OUT OF DATE
 * once the estimate builds or costs something else. Refuses sizes of which none can be built.
 */
export function comparePlan(
  source: EstimateSource,
  prices: readonly PriceRow[],
  sizes: readonly SizeAsked[],
  name: string,
  date: string,
): SheetPlan {
  const compared = compareSizes(source, prices, sizes);
  if (compared.found.every(({ made }) => !made))
    throw noAnswer(words.none(words.why(sizes[0].label, compared.found[0].refusal ?? "")));
  const total = {
    label: figureField("total").label,
    value: source.sheet.cells.total?.value ?? null,
    now: placeIn(source, "total"),
  };
  const plan = documentPlan({
    mark: marks.compare,
    name,
    rows: compareRows(source, compared, date),
    footer: words.footer(name, source.name),
    widths: [14, 34, ...sizes.map(() => 16)],
    used: [...builtFrom([source]), total],
    tall: 1,
  });
  return { ...plan, print: { ...plan.print, landscape: true } };
}
