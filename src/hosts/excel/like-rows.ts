import { liveFormula } from "../../sheets/formula";
import { movedDown } from "../../sheets/moved";
import { type PlanCell } from "../../sheets/plan";
import { type Area } from "./areas";

/** What a request to copy takes in bytes, about: copies that save less are not worth one. */
const costOfCopy = 350;

/** A row below every document, to which formulas are moved to see which are alike. */
const farDown = 100_000;

/** An area whose every row says of its place what the same cells of a row further up say of theirs. */
export interface LikeRows {
  area: Area;
  /** That row of cells, which Excel copies. */
  from: Area;
}

/**
 * The areas whose formulas Excel can copy from a row above them: rows alike, which differ in nothing but their place,
 * also where others stand between them. Only where a copy is shorter than the formulas.
 */
export function likeRows(cells: PlanCell[]): LikeRows[] {
  const rows = new Map<number, Map<number, Formula>>();
  for (const { row, column, says } of [...cells].sort((a, b) => a.row - b.row)) {
    const anywhere = says.kind === "constant" ? undefined : movedDown(says, farDown - row);
    if (!anywhere) continue;
    const formulas = rows.get(row) ?? new Map<number, Formula>();
    rows.set(row, formulas.set(column, { like: liveFormula(anywhere), bytes: liveFormula(says).length }));
  }
  const found: (LikeRows & { bytes: number })[] = [];
  for (const [row, formulas] of rows) {
    const left = new Map(formulas);
    for (let best = longestRun(rows, row, left); best; best = longestRun(rows, row, left)) {
      const { columns, from, bytes } = best;
      columns.forEach((column) => left.delete(column));
      const [first, last] = [columns[0], columns.at(-1)!];
      const above = found.find(
        ({ area, from: { top } }) =>
          area.bottom === row - 1 && area.left === first && area.right === last && top === from,
      );
      if (above) {
        above.area.bottom = row;
        above.bytes += bytes;
      } else
        found.push({
          area: { top: row, left: first, bottom: row, right: last },
          from: { top: from, left: first, bottom: from, right: last },
          bytes,
        });
    }
  }
  return found.filter(({ bytes }) => bytes > costOfCopy).map(({ area, from }) => ({ area, from }));
}

/** A formula as it would stand far down, and how long it is. */
interface Formula {
  like: string;
  bytes: number;
}

/** The neighboring cells of a row that save most by a copy, and the first row above that says the same in all of them. */
function longestRun(rows: Map<number, Map<number, Formula>>, row: number, left: Map<number, Formula>) {
  let best: { columns: number[]; from: number; bytes: number } | undefined;
  for (const [from, others] of rows) {
    if (from >= row) break;
    let run: { columns: number[]; bytes: number } = { columns: [], bytes: 0 };
    for (const [column, { like, bytes }] of [...left].sort(([a], [b]) => a - b)) {
      if (others.get(column)?.like !== like) continue;
      if (run.columns.at(-1) !== column - 1) run = { columns: [], bytes: 0 };
      run.columns.push(column);
      run.bytes += bytes;
      if (run.bytes > (best?.bytes ?? 0)) best = { columns: [...run.columns], from, bytes: run.bytes };
    }
  }
  return best;
}
