import { boughtItems, type BoughtItem } from "../../../src/estimate/bought-items";
import { type FieldValue } from "../../../src/estimate/fields";
import { type Job } from "../../../src/estimate/job";
import { deliveryDefaults } from "../../../src/sheets/documents/delivery-entries";
import { priceRequestPlan } from "../../../src/sheets/documents/price-request";
import { specDefaults } from "../../../src/sheets/documents/request-specs";
import { boughtOf, type EstimateSource } from "../../../src/sheets/documents/source";
import { type SheetPlan } from "../../../src/sheets/plan";
import { type SheetData } from "../../../src/sheets/workbook-content";
import { type Cell } from "../../../src/units/cell";
import { shownBy } from "../shown";
import { ownPrices, sourcesOf, worked } from "./books";

/** What the user writes into a request that no job knows. */
export const asked: Record<string, FieldValue> = {
  number: 3,
  supplier: "Invented Supply",
  business: "Invented Pens",
  contact: "555-0100",
  date: "2026-11-25",
  answer_by: "2026-12-02",
  job_number: "J-17",
  site_phone: "555-0101",
  opening: 14,
  dump_at: "Left of the barn, on the gravel",
  unloads: "we do with a machine",
  from_day: "2026-12-10",
  to_day: "2026-12-14",
};

export interface Made {
  plans: SheetPlan[];
  sources: EstimateSource[];
  items: BoughtItem[];
  entries: Record<string, FieldValue>;
  request: SheetPlan;
  sheet: SheetData;
}

/** The request over some jobs, with every cell worked out. */
export function requestOf(jobs: readonly Job[], more: Record<string, FieldValue> = {}): Made {
  const { plans, sources } = sourcesOf(jobs, oddPrices);
  const items = boughtItems(sources.map(boughtOf));
  const known = sources.map(({ job }) => job);
  const entries = { ...specDefaults(items, known), ...deliveryDefaults(known), ...asked, ...more };
  const request = priceRequestPlan({ sources, items, entries }, "Price request");
  return { plans, sources, items, entries, request, sheet: worked(plans, request) };
}

/** Prices whose cents nothing else on a sheet shows. */
const oddPrices = ownPrices.map((row) => ({ ...row, price: row.price === null ? null : row.price + 0.37 }));

/** What a sheet shows, with other values typed into it. */
export function filledIn(sheet: SheetData, typed: readonly { row: number; column: number; value: Cell }[]) {
  const shown = shownBy(sheet);
  for (const { row, column, value } of typed) shown.values[row][column] = value;
  return shown;
}
