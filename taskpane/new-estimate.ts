import { type Job } from "../src/estimate/job";
import { rowsToAdd, type MissingPrice } from "../src/estimate/missing-prices";
import { examplePrices } from "../src/estimate/prices";
import { type WorkbookView } from "../src/hosts/host";
import { estimatePlan } from "../src/sheets/estimate";
import { type SheetPlan } from "../src/sheets/plan";
import { pricesPlan } from "../src/sheets/prices";
import { pricesName } from "../src/sheets/prices-layout";
import { newPricesLayout, pricesLayoutOf } from "../src/sheets/prices-layout";
import { messages } from "./messages";
import { freeName } from "./names";

export { typedInto } from "../src/sheets/estimate";

/** The sheets of a new estimate under a free name; with the first one of a workbook, its prices. */
export function newEstimate(
  { sheetNames, prices }: WorkbookView,
  job: Job,
  missing: readonly MissingPrice[],
): { name: string; plans: SheetPlan[] } {
  const name = freeName(messages.estimateSheet, sheetNames);
  const pricesSheet = prices?.name ?? freeName(pricesName, sheetNames);
  const first = prices ? [] : [pricesPlan([...examplePrices, ...rowsToAdd(missing)], pricesSheet)];
  const layout = prices ? pricesLayoutOf(pricesSheet, prices.values) : newPricesLayout(pricesSheet);
  return { name, plans: [...first, estimatePlan(job, name, layout)] };
}
