import { estimate, type Estimate } from "../src/estimate/estimate";
import { fields } from "../src/estimate/fields";
import { figuresOf, type Figure } from "../src/estimate/figures";
import { type Job } from "../src/estimate/job";
import { missingPrices, type MissingPrice } from "../src/estimate/missing-prices";
import { type OwnLine } from "../src/estimate/own-lines";
import { type PriceRow } from "../src/estimate/prices";
import { isOutOfDate, ownChanges, type OwnChange } from "../src/sheets/keyed";
import { Refusal } from "../src/units/refusal";
import { type PanelState, type Source } from "./state";

/** What a job leads to. */
export interface Result {
  job: Job;
  made: Estimate;
  figures: Record<string, Figure>;
  missing: MissingPrice[];
}

/** A result, or why there is none. */
export type Answer = { result: Result } | { refusal: string };

/** What the panel shows of the fields and of the sheet. */
export interface Figured {
  /** Of the fields as they stand; where they lead to nothing, the last good one. */
  result?: Result;
  /** The result is not of the fields as they stand. */
  old: boolean;
  /** Why the fields lead to nothing, where each for itself is allowed. */
  refusal?: string;
  /** The cells of the sheet whose figures the user changed. */
  own: OwnChange[];
}

/** The answers that figures depend on: names and other texts change none. */
const figuring = fields.filter(({ kind }) => kind !== "text").map(({ key }) => key);

function answer(job: Job, prices: readonly PriceRow[], own: readonly OwnLine[]): Answer {
  try {
    const made = estimate(job, prices, own);
    return {
      result: { job, made, figures: figuresOf(job, made), missing: missingPrices(made.missing, prices) },
    };
  } catch (refusal) {
    if (refusal instanceof Refusal) return { refusal: refusal.message };
    throw refusal;
  }
}

/** What figures the fields of a panel. */
export type Figurer = ReturnType<typeof figurer>;

/** Figures jobs, and keeps the last few so that nothing is figured twice in a row. */
export function figurer() {
  const kept = new Map<string, Answer>();
  const most = 24;

  function figure(job: Job, prices: readonly PriceRow[], own: readonly OwnLine[] = []): Answer {
    const key = JSON.stringify([figuring.map((field) => job[field]), prices, own]);
    const found = kept.get(key) ?? answer(job, prices, own);
    kept.delete(key);
    kept.set(key, found);
    if (kept.size > most) kept.delete(kept.keys().next().value!);
    return found;
  }

  /** What the sheet's own inputs lead to, beside what it shows; nothing while one of them cannot be told or the whole is out of date. */
  function changesIn({ sheet, job, problems }: Source, prices: readonly PriceRow[]): OwnChange[] {
    if (Object.keys(problems).length > 0 || sheet.missing.length > 0 || isOutOfDate(sheet)) return [];
    const figured = figure(job, prices, sheet.own);
    return "result" in figured ? ownChanges(sheet, figured.result.figures) : [];
  }

  /** What to show of a state; `last` is the last good result. */
  function figured(state: PanelState, last?: Result): Figured {
    const { good, problems, prices, source } = state;
    const own = source ? changesIn(source, prices) : [];
    if (Object.keys(problems).length > 0) return { result: last, old: true, own };
    const found = figure(good, prices, source?.sheet.own);
    return "result" in found
      ? { result: found.result, old: false, own }
      : { result: last, old: true, refusal: found.refusal, own };
  }

  /** What a count would be without the user's own in its place. */
  function counted(state: PanelState, use: string, figureKey: string): Figure {
    const found = figure({ ...state.good, [use]: null }, state.prices, state.source?.sheet.own);
    return "result" in found ? found.result.figures[figureKey] : "";
  }

  return { figured, counted };
}
