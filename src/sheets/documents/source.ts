import { type Bought } from "../../estimate/bought-items";
import { estimate, type Estimate } from "../../estimate/estimate";
import { fieldOf, fields, fieldsOf } from "../../estimate/fields";
import { readField, type Job } from "../../estimate/job";
import { type PriceRow } from "../../estimate/prices";
import { isError, type Cell } from "../../units/cell";
import { notAllowed, Refusal } from "../../units/refusal";
import { type Place } from "../address";
import { cell, type Expression } from "../expression";
import { isOutOfDate, isPlainCopy, readEstimate, type EstimateSheet, type Shown } from "../keyed";
import { type UsedInput } from "../used-inputs";
import { messages } from "./messages";

/** An estimate that a document is written over: its sheet with the keyed cells, its job, and what src makes of it. */
export interface EstimateSource {
  name: string;
  sheet: EstimateSheet;
  /** Every answer read, each in its field's unit. */
  job: Job;
  made: Estimate;
}

/** What a host reads of a sheet: what its cells show and say. */
export interface Content extends Shown {
  formulas: Cell[][];
}

/**
 * The source that an estimate's sheet makes, with the user's prices. Refuses a plain copy, a sheet that is out of date,
 * inputs that cannot be read, and a job without an answer; each sentence names the sheet.
 */
export function estimateSource(content: Content, prices: readonly PriceRow[]): EstimateSource {
  const sheet = readEstimate(content);
  const { name, structure } = sheet;
  if (isPlainCopy(sheet, content.formulas)) throw notAllowed(messages.isPlain(name));
  if (isOutOfDate(sheet)) throw notAllowed(messages.isOutOfDate(name));
  const asked = new Set(fieldsOf(structure).map(({ key }) => key));
  const job = Object.fromEntries(
    fields.map((field) => {
      if (!asked.has(field.key)) return [field.key, field.default];
      const why = (reason: string) => messages.badInput(name, field.label.en, reason);
      return [field.key, saying(why, () => readField(field, sheet.job[field.key]))];
    }),
  ) as Job;
  const made = saying(
    (why) => messages.noAnswer(name, why),
    () => estimate(job, prices, sheet.own),
  );
  return { name, sheet, job, made };
}

/** What work gives; what it refuses is said in the words of `told`. */
function saying<T>(told: (why: string) => string, work: () => T): T {
  try {
    return work();
  } catch (refusal) {
    if (refusal instanceof Refusal) throw new Refusal(refusal.kind, told(refusal.message));
    throw refusal;
  }
}

/** Where a keyed cell of the estimate stands, its sheet named. Refuses where the sheet has lost it. */
export function placeIn({ name, sheet }: EstimateSource, key: string): Place {
  const found = sheet.cells[key];
  if (!found) throw notAllowed(messages.lacks(name, key.replaceAll("_", " ")));
  return { sheet: name, row: found.row, column: found.column };
}

/** A keyed cell of the estimate, live. */
export const cellOf = (source: EstimateSource, key: string): Expression => cell(placeIn(source, key));

/** The total that the estimate's sheet shows. Refuses where it shows none: prices missing, or an error. */
export function totalShown({ name, sheet }: EstimateSource): number {
  const value = sheet.cells.total?.value ?? null;
  if (typeof value === "number") return value;
  throw notAllowed(messages.notPriced(name, isError(value) ? value.error : String(value ?? "")));
}

/** How many lines of some estimates stand on example prices. */
export const exampleLines = (sources: readonly EstimateSource[]) =>
  sources.reduce((sum, { made }) => sum + made.onExamples, 0);

/** Answers that change no fence, ground or gate: money, and what is said of the job and of its layout sheet. */
const aside = new Set<string>(["job", "layout", "supplies", "equipment", "labor", "charges"]);

/**
 * The inputs that words about what is built rest on, with the cells that hold them now. What is charged is not among
 * them, so that a document for a customer shows nothing of it.
 */
export function builtFrom(sources: readonly EstimateSource[]): UsedInput[] {
  return sources.flatMap((source) =>
    fieldsOf(source.sheet.structure)
      .filter(({ key, kind, section, settled }) =>
        kind !== "money" && !aside.has(section) && !settled && key in source.sheet.cells)
      .map((field): UsedInput => ({
        label: sources.length > 1 ? { en: `${source.name}: ${field.label.en}`, es: `${source.name}: ${field.label.es}` } : field.label,
        value: source.job[field.key],
        now: placeIn(source, field.key),
      })),
  );
} // prettier-ignore

/** The inputs of these keys, whatever their sections. */
export const usedOf = (source: EstimateSource, keys: readonly string[]): UsedInput[] =>
  keys.map((key) => ({ label: fieldOf(key).label, value: source.job[key], now: placeIn(source, key) }));

/**
 * What an estimate buys, with the quantities that its sheet shows, the user's own changes included. Refuses where the
 * sheet has lost the cell of a quantity, or shows an error there.
 */
export const boughtOf = (source: EstimateSource): Bought => ({
  takeoff: source.made.takeoff,
  quantityOf(key) {
    placeIn(source, `${key}_quantity`);
    const { value } = source.sheet.cells[`${key}_quantity`];
    if (isError(value))
      throw notAllowed(messages.badInput(source.name, key.replaceAll("_", " "), value.error));
    return typeof value === "number" ? value : undefined;
  },
});
