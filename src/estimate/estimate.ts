import { Decimal } from "decimal.js";
import { roundUp } from "../units/rounding";
import { charge, lineAmount, type Charges, type LineCost, type Rates } from "./charges";
import { costKinds, costOf, type CostKind } from "./cost-kinds";
import { type Rounding, type TaxBase } from "./fields";
import { choiceOf, type Job } from "./job";
import { messages } from "./messages";
import { lineSections, sectionOfOwn, type LineSection, type OwnLine } from "./own-lines";
import { isPosted, penOf, type Pen } from "./pen";
import { postWork, type PostWork } from "./post-work";
import { findPrice, type PricedItem, type PriceRow } from "./prices";
import { baseLayer, footingLayer, laid, type LaidLayer } from "./layers";
import { takeoff } from "./takeoff";
import { toBuy, type TakeoffLine } from "./takeoff-line";

/** A line with its price: the quantity bought, waste included, and the amount to the cent. */
export interface PricedLine {
  key: string;
  section: LineSection;
  quantity: number;
  price: Decimal | null;
  amount: Decimal | null;
  taxed: boolean;
  example: boolean;
  /** The day of its price where that is old. */
  oldSince: number | null;
}

/** A whole estimate as figures. */
export interface Estimate {
  pen: Pen;
  /** How the posts are set and what the rails take; of a pen of posts only. */
  work?: PostWork;
  base: LaidLayer;
  sand: LaidLayer;
  takeoff: TakeoffLine[];
  lines: PricedLine[];
  sums: Record<LineSection, Decimal>;
  charges: Charges;
  /** Items that a line needs and the prices do not have, or do not let it use. */
  missing: PricedItem[];
  /** How many lines have no price; the total then is not one. */
  pricesMissing: number;
  /** How many lines stand on example prices. */
  onExamples: number;
  /** How many lines stand on old prices. */
  onOldPrices: number;
}

/**
 * The estimate of a job on the user's prices and own lines. Throws a Refusal where the job has no answer: no pen
 * closes, or no truck serves.
 */
export function estimate(job: Job, prices: readonly PriceRow[], own: readonly OwnLine[] = []): Estimate {
  const pen = penOf(job);
  const ground = { base: laid(job, baseLayer, pen.area), sand: laid(job, footingLayer, pen.area) };
  const work = isPosted(pen) ? postWork(job, pen) : undefined;
  const counted = takeoff(job, pen, ground, work);
  const used = counted.filter((line) => toBuy(line) !== 0);
  const lines = [
    ...used.map((line) => priced(line, prices)),
    ...own.filter(({ quantity }) => quantity !== null).map(ownPriced),
  ];
  const sums = Object.fromEntries(
    lineSections.map((section) => [section, total(lines.filter((line) => line.section === section))]),
  ) as Record<LineSection, Decimal>;
  return {
    pen,
    work,
    ...ground,
    takeoff: counted,
    lines,
    sums,
    charges: charge(costOfLines(lines), ratesOf(job)),
    missing: used.filter((line) => findPrice(prices, line).price === null),
    pricesMissing: lines.filter(({ price }) => price === null).length,
    onExamples: lines.filter(({ example }) => example).length,
    onOldPrices: lines.filter(({ oldSince }) => oldSince !== null).length,
  };
}

const total = (some: readonly PricedLine[]) =>
  some.reduce((sum, { amount }) => sum.plus(amount ?? 0), new Decimal(0));

/** The cost of some lines, by what it is for; a line without a price counts as nothing. */
export const costOfLines = (lines: readonly PricedLine[]): LineCost => ({
  direct: total(lines),
  taxed: total(lines.filter(({ taxed }) => taxed)),
  kinds: Object.fromEntries(
    costKinds.map((kind) => [kind, total(lines.filter((line) => costOf(line) === kind))]),
  ) as Record<CostKind, Decimal>,
});

/** What a job's answers put on top of its lines. */
export function ratesOf(job: Job): Rates {
  const percent = (key: string) => Number(job[key] ?? 0);
  return {
    burden: percent("burden"),
    tax: percent("tax"),
    taxOn: choiceOf(job, "tax_on") as TaxBase,
    contingency: percent("contingency"),
    overhead: percent("overhead"),
    markups: {
      material: percent("markup_material"),
      labor: percent("markup_labor"),
      rental: percent("markup_rental"),
      sub: percent("markup_sub"),
    },
    profit: percent("profit"),
    profitKind: job.profit_kind === "margin" ? "margin" : "markup",
    minimum: percent("minimum"),
    rounding: choiceOf(job, "rounding") as Rounding,
  };
}

/** The total as the estimate says it: money, or how many prices it still waits for. */
export function totalOf({
  charges,
  pricesMissing,
}: Pick<Estimate, "charges" | "pricesMissing">): number | string {
  return pricesMissing > 0 ? messages.pricesMissing(pricesMissing) : charges.total.toNumber();
}

/** A line of the takeoff on these prices, its waste bought on top. */
export function priced(line: TakeoffLine, prices: readonly PriceRow[]): PricedLine {
  const { price, waste, taxed, example, oldSince } = findPrice(prices, line);
  const bought = toBuy(line) * (1 + waste / 100);
  const quantity = line.whole ? roundUp(bought) : bought;
  return {
    key: line.key,
    section: line.section,
    quantity,
    price,
    amount: price && lineAmount(quantity, price),
    taxed,
    example,
    oldSince,
  };
}

function ownPriced({ key, quantity, price, taxed }: OwnLine): PricedLine {
  const money = price === null ? null : new Decimal(price);
  const amount = money && lineAmount(quantity!, money);
  return {
    key,
    section: sectionOfOwn(key),
    quantity: quantity!,
    price: money,
    amount,
    taxed,
    example: false,
    oldSince: null,
  };
}
