import { liveFormula } from "../../sheets/formula";
import { movedDown } from "../../sheets/moved";
import { type PlanCell } from "../../sheets/plan";
import { groupBy, placeOf, rowRuns, spotsIn, type Area, type Spot } from "./areas";

/** What a spread takes in bytes, about: its first row sent alone, and the request to copy it. */
const costOfSpread = 600;

/** What a place takes among the formulas sent afterwards: `null,` where it is to stay, `"",` where it is to be blank again. */
const costOfPlace = { kept: 5, cleared: 3 };

/** A row below every document, to which formulas are moved to see which are alike. */
const farDown = 100_000;

/** Formulas of one row, and the rows below over which Excel copies them before anything else is written there. */
export interface Spread {
  from: Area;
  area: Area;
}

interface Formula extends Spot {
  /** What it says, moved far down. */
  like: string;
  bytes: number;
  /** The first and the last row of those in its column that differ in nothing but their place. */
  first: number;
  last: number;
  /** Whether the spreads chosen so far bring it. */
  done: boolean;
}

type Formulas = Map<number, Formula[]>;

/**
 * The formulas that are sent once and copied down by Excel over all rows to a last like one, whatever stands between:
 * that is written afterwards. In the order in which they are copied, a later one over earlier ones, and each only where
 * it takes fewer bytes than to send its formulas one by one. `done` has the places that then say what they are to say.
 */
export function spreads(cells: PlanCell[]): { chosen: Spread[]; done: Set<string> } {
  const formulas = formulasOf(cells);
  const possible = possibleSpreads(formulas);
  const chosen: Spread[] = [];
  for (;;) {
    const gains = possible.map((spread) => gainOf(spread, formulas));
    const most = Math.max(0, ...gains);
    if (most === 0) break;
    const spread = possible[gains.indexOf(most)];
    chosen.push(spread);
    for (const { formula, brought } of reached(spread, formulas)) if (formula) formula.done = brought;
  }
  const done = [...formulas.values()].flat().filter((formula) => formula?.done);
  return { chosen, done: new Set(done.map(placeOf)) };
}

/** The formulas that Excel can copy, by column and row. */
function formulasOf(cells: PlanCell[]): Formulas {
  const all = [...cells].sort((a, b) => a.row - b.row).flatMap(({ row, column, says }): Formula[] => {
    const anywhere = says.kind === "constant" ? undefined : movedDown(says, farDown - row);
    if (!anywhere) return [];
    return [{ row, column, like: liveFormula(anywhere), bytes: liveFormula(says).length, first: row, last: row, done: false }];
  });
  for (const alike of groupBy(all, ({ column, like }) => `${column} ${like}`).values())
    for (const formula of alike) [formula.first, formula.last] = [alike[0].row, alike.at(-1)!.row];
  const columns: Formulas = new Map();
  for (const formula of all) {
    const column = columns.get(formula.column) ?? [];
    column[formula.row] = formula;
    columns.set(formula.column, column);
  }
  return columns;
} // prettier-ignore

/** Every run of neighbors in a row that have like ones below, one of them the first of its own, down to each last like one. */
function possibleSpreads(formulas: Formulas): Spread[] {
  const repeated = [...formulas.values()].flat().filter((formula) => formula && formula.last > formula.row);
  return rowRuns(repeated).flatMap(({ top, left, right }) => {
    const at = (column: number) => formulas.get(column)![top];
    return spotsIn({ top: left, left, bottom: right, right }).flatMap(({ row: from, column: to }) => {
      const run = Array.from({ length: Math.max(0, to - from + 1) }, (_, k) => at(from + k));
      if (!run.some(({ first }) => first === top)) return [];
      return [...new Set(run.map(({ last }) => last))].map((bottom) => ({
        from: { top, left: from, bottom: top, right: to },
        area: { top: top + 1, left: from, bottom, right: to },
      }));
    });
  });
}

/** The places that a spread reaches, its first row included, and whether it brings what is to stand there. */
function reached({ from, area }: Spread, formulas: Formulas) {
  return spotsIn({ ...area, top: from.top }).map(({ row, column }) => {
    const formula = formulas.get(column)![row] as Formula | undefined;
    return { formula, isFirst: row === from.top, brought: formula?.like === formulas.get(column)![from.top].like };
  });
} // prettier-ignore

/** How many bytes fewer are sent with one more spread, about. */
function gainOf(spread: Spread, formulas: Formulas): number {
  return reached(spread, formulas).reduce((gain, { formula, isFirst, brought }) => {
    if (!formula) return gain - costOfPlace.cleared;
    const saved = formula.bytes - costOfPlace.kept;
    if (isFirst) return formula.done ? gain - saved : gain;
    return formula.done === brought ? gain : brought ? gain + saved : gain - saved;
  }, -costOfSpread);
}
