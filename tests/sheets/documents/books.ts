import { calls } from "../../../functions/calls";
import { type Job } from "../../../src/estimate/job";
import { examplePrices, type PriceRow } from "../../../src/estimate/prices";
import { contentOfPlans } from "../../../src/sheets/calculate";
import { estimateSource, type EstimateSource } from "../../../src/sheets/documents/source";
import { estimatePlan } from "../../../src/sheets/estimate";
import { type SheetPlan } from "../../../src/sheets/plan";
import { pricesPlan } from "../../../src/sheets/prices";
import { pricesName } from "../../../src/sheets/prices-layout";
import { type SheetData } from "../../../src/sheets/workbook-content";
import { shownBy } from "../shown";

export const pen = (name: string) => calls[name];

/** The prices of the examples, as the user's own. */
export const ownPrices: PriceRow[] = examplePrices.map((row) => ({ ...row, example: false }));

/** The estimates of some jobs and their prices, as sheet plans. */
export const estimatePlans = (jobs: readonly Job[], prices = ownPrices): SheetPlan[] => [
  ...jobs.map((job, k) => estimatePlan(job, k === 0 ? "Estimate" : `Estimate ${k + 1}`, pricesName)),
  pricesPlan(prices),
];

/** A sheet as a host reads it: what its cells show, and what they say. */
export function contentBy(sheet: SheetData) {
  const said = {
    ...sheet,
    cells: sheet.cells.map((cell) => ({ ...cell, value: cell.formula ?? cell.value })),
  };
  return { ...shownBy(sheet), formulas: shownBy(said).values };
}

/** The estimates of some jobs as sources of documents, and the plans they were read from. */
export function sourcesOf(
  jobs: readonly Job[],
  prices = ownPrices,
): { plans: SheetPlan[]; sources: EstimateSource[] } {
  const plans = estimatePlans(jobs, prices);
  const { sheets } = contentOfPlans(plans, pen);
  return {
    plans,
    sources: sheets.slice(0, jobs.length).map((sheet) => estimateSource(contentBy(sheet), prices)),
  };
}

/** A document's sheet worked out beside the estimates it points at. */
export const worked = (plans: SheetPlan[], document: SheetPlan): SheetData =>
  contentOfPlans([...plans, document], pen).sheets.at(-1)!;

/** Every text that a sheet shows. */
export const wordsOf = ({ cells }: SheetData) => cells.map(({ value }) => String(value ?? "")).join("\n");
