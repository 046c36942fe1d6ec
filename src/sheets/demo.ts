import { newJob, type Job } from "../estimate/job";
import { examplePrices } from "../estimate/prices";
import { estimatePlan } from "./estimate";
import { messages } from "./messages";
import { type SheetPlan } from "./plan";
import { pricesPlan } from "./prices";
import { pricesName } from "./prices-layout";
import { tryItPlan } from "./try-it";

/** An invented job to look at, marked as invented. */
export const exampleJob = (): Job => ({
  ...newJob(),
  job_name: messages.example.job,
  customer: messages.example.customer,
  site: messages.example.site,
  purpose: "cattle",
  size: 84,
  panel_1: 16,
  gate_1: 12,
  depth: 2.5,
  overrun: 5,
  truck_1: 14,
  truck_2: 8,
  short: 4,
  tax: 6,
  contingency: 5,
  budget: 6500,
});

/** The sheets of a new browser workbook: an example estimate, the functions to try, and the prices. */
export const demoPlans = (): SheetPlan[] => [
  estimatePlan(exampleJob(), messages.example.sheet, pricesName),
  tryItPlan(messages.tryIt.sheet),
  pricesPlan(examplePrices),
];
