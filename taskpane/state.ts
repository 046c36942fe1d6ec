import { fields, fieldsOf, type FieldValue } from "../src/estimate/fields";
import { allProblemsOf, newJob, problemsOf, readField, structureOf, type Job } from "../src/estimate/job";
import { examplePrices, type PriceRow } from "../src/estimate/prices";
import { type SheetContent, type WorkbookView } from "../src/hosts/host";
import { isEstimate, readEstimate, type EstimateSheet } from "../src/sheets/keyed";
import { readPrices } from "../src/sheets/price-rows";

/** The estimate sheet that the fields belong to, as last read. */
export interface Source {
  name: string;
  content: SheetContent;
  sheet: EstimateSheet;
  /** What its inputs say, each in its field's unit; the default where a cell cannot be read. */
  job: Job;
  /** What is wrong with its inputs, by field. */
  problems: Record<string, string>;
}

/** The answers that were not written when another estimate was shown, and the estimate they belong to (none: a new job). */
export interface Aside {
  answers: Job;
  source?: string;
}

/** All that the panel knows. Nothing of it is kept anywhere but here and in the sheets. */
export interface PanelState {
  /** What the fields hold: values, or a text as it was typed. */
  answers: Job;
  /** Of each field the last answer that could be read. */
  good: Job;
  /** Why an answer cannot be taken, by field. */
  problems: Record<string, string>;
  source?: Source;
  view?: WorkbookView;
  prices: readonly PriceRow[];
  aside: readonly Aside[];
  /** The selected estimate that is not shown by itself, since the user chose otherwise; `quiet` no longer offers it. */
  passed?: { sheet: string; quiet: boolean };
  /** An estimate that is gone from the workbook while its answers are still here. */
  lost?: string;
}

/** A new job in a workbook not looked at yet. */
export const newState = (): PanelState => ({
  ...read(newJob()),
  prices: examplePrices,
  aside: [],
});

/** Answers as values in their fields' units; where one cannot be read, the value before it and why. */
export function read(
  answers: Job,
  before: Job = newJob(),
): Pick<PanelState, "answers" | "good" | "problems"> {
  const unreadable = allProblemsOf(answers);
  const good = Object.fromEntries(
    fields.map((field) => [
      field.key,
      field.key in unreadable ? before[field.key] : readField(field, answers[field.key]),
    ]),
  );
  return { answers, good, problems: problemsOf(answers) };
}

/** The state after some fields were answered. */
export const answered = (state: PanelState, changes: Job): PanelState => ({
  ...state,
  ...read({ ...state.answers, ...changes }, state.good),
});

/** What the fields would hold if nothing had been changed: what the sheet says, or a new job. */
export const baseOf = ({ source }: PanelState): Job => source?.job ?? newJob();

const same = (one: FieldValue, other: FieldValue) => (one ?? null) === (other ?? null);

/** Whether the fields are of another structure than the sheet they came from, which then stays as it is. */
export const isOther = ({ source, good }: PanelState) =>
  source !== undefined && structureOf(source.job) !== structureOf(good);

/** The fields of their structure whose answers are not in the sheet, or in no sheet yet. */
export function unwritten(state: PanelState): string[] {
  const base = baseOf(state);
  const typed = (key: string) => !same(state.answers[key], state.source?.sheet.job[key] ?? base[key]);
  return fieldsOf(structureOf(state.good))
    .map(({ key }) => key)
    .filter((key) => (key in state.problems ? typed(key) : !same(state.good[key], base[key])));
}

/** The estimate that is selected in the workbook and not shown in the panel. */
export function offered({ view, source, passed }: PanelState): string | undefined {
  if (!view || !isEstimate(view.active) || view.active.name === source?.name) return undefined;
  return passed?.sheet === view.active.name && passed.quiet ? undefined : view.active.name;
}

/** The state after a look at the workbook. Answers that are not written stay; all others follow the sheet. */
export function looked(before: PanelState, view: WorkbookView): PanelState {
  const { active, sheetNames } = view;
  let state: PanelState = { ...before, view, prices: pricesIn(view) };
  if (state.passed?.sheet !== active.name) delete state.passed;
  const { source } = state;
  if (source && isEstimate(active) && (active.name === source.name || isRenamed(before, view)))
    state = refreshed(state, source, active);
  else if (source && (!sheetNames.includes(source.name) || active.name === source.name))
    state =
      unwritten(before).length > 0 ? { ...state, source: undefined, lost: source.name } : emptied(state);
  const mayShow = isEstimate(active) && active.name !== state.source?.name && !state.passed;
  return mayShow && unwritten(state).length === 0 ? shown(state, active) : state;
}

const pricesIn = ({ prices }: WorkbookView) => (prices ? readPrices(prices.values) : examplePrices);

/** True where the sheet shown is gone by its name and a name that was not there is selected. */
function isRenamed({ source, view }: PanelState, { sheetNames, active }: WorkbookView): boolean {
  return !sheetNames.includes(source!.name) && view !== undefined && !view.sheetNames.includes(active.name);
}

function sourceOf(content: SheetContent): Source {
  const sheet = readEstimate(content);
  const { good, problems } = read(sheet.job);
  return { name: content.name, content, sheet, job: good, problems };
}

function refreshed(state: PanelState, old: Source, content: SheetContent): PanelState {
  const source = sourceOf(content);
  const own = new Set(unwritten(state));
  const answers = Object.fromEntries(
    fields.map(({ key }) => {
      const stays = own.has(key) || same(old.sheet.job[key], source.sheet.job[key]);
      return [key, stays ? state.answers[key] : source.sheet.job[key]];
    }),
  );
  return { ...state, source, ...read(answers, state.good) };
}

/** The state that shows an estimate and nothing else of what was in the fields. */
export function shown(state: PanelState, content: SheetContent): PanelState {
  const source = sourceOf(content);
  return { ...state, source, lost: undefined, ...read(source.sheet.job) };
}

/** The state after answers were written into a sheet; what was typed since then stays in the fields. */
export function nowIn(state: PanelState, content: SheetContent, written: Job): PanelState {
  const since = Object.entries(state.answers).filter(([key, answer]) => answer !== written[key]);
  return answered(shown(state, content), Object.fromEntries(since));
}

/** The state that shows the selected estimate; answers that are not written are set aside and not lost. */
export const showSelected = (state: PanelState): PanelState =>
  shown({ ...state, aside: withAside(state), passed: undefined }, state.view!.active);

/** The state with the last answers set aside back in the fields, in their estimate where that is selected. */
export function takenBack(state: PanelState): PanelState {
  const last = state.aside.at(-1)!;
  const active = state.view?.active;
  const others = withAside({ ...state, aside: state.aside.slice(0, -1) });
  const found = active && active.name === last.source && isEstimate(active);
  const base = found ? shown(state, active) : { ...newJobIn(state), lost: last.source };
  return answered({ ...base, aside: others }, last.answers);
}

function withAside(state: PanelState): readonly Aside[] {
  const keys = unwritten(state);
  const answers = Object.fromEntries(keys.map((key) => [key, state.answers[key]]));
  return keys.length > 0 ? [...state.aside, { answers, source: state.source?.name }] : state.aside;
}

/** The state after its estimate is gone with nothing unwritten: as if none had been shown. */
const emptied = (state: PanelState): PanelState => ({
  ...state,
  ...read(newJob()),
  source: undefined,
  lost: undefined,
});

/** A new job; the estimate that is selected is not shown by itself. */
export function newJobIn(state: PanelState): PanelState {
  const active = state.view?.active;
  const passed = active && isEstimate(active) ? { sheet: active.name, quiet: false } : undefined;
  return { ...state, ...read(newJob()), source: undefined, lost: undefined, passed };
}
