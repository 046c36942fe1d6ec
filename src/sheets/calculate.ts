import { type Cell } from "../units/cell";
import { type Place } from "./address";
import { cellsByPlace } from "./cells-by-place";
import { evaluate, Unknown, type PenFunction } from "./evaluate";
import { type Expression } from "./expression";
import { messages } from "./messages";
import { type SheetPlan } from "./plan";
import { precedents, type Area } from "./precedents";
import { single } from "./value";
import { contentOfPlan, type WorkbookContent } from "./workbook-content";

/** A cell to be worked out: what it says, and what to show where only a spreadsheet can work that out. */
export interface Worked {
  row: number;
  column: number;
  says: Expression;
  shown?: Cell;
}

const keyOf = ({ sheet, top, left, bottom, right }: Area) => `${sheet}!${top},${left},${bottom},${right}`;

const cycle: Cell = { error: "#VALUE!", message: messages.dependsOnItself };

/**
 * Works out whole sheets at once: a function that gives the value of any cell by sheet and place. Each cell is
 * worked out once, after those it looks at, so a column of running sums may be as long as it likes; a cell that
 * depends on itself is #VALUE!, and what only a spreadsheet can work out is `shown`, else #N/A.
 */
export function calculate(
  sheets: { name: string; cells: Worked[] }[],
  pen: (name: string) => PenFunction,
): (sheet: string, row: number, column: number) => Cell {
  type Located = Worked & { sheet: string };
  const book = cellsByPlace(
    sheets.flatMap(({ name, cells }) => cells.map((cell): Located => ({ ...cell, sheet: name }))),
  );
  const known = new Map<Located, Cell>();
  const busy = new Set<Located>();

  const lookAt = (cell: Located | undefined): Cell => {
    if (!cell) return null;
    if (!known.has(cell)) known.set(cell, busy.has(cell) ? cycle : work(cell));
    return known.get(cell)!;
  };

  const ranges = new Map<string, Cell[][]>();

  const settled = new Set<string>();

  /** True once every cell of an area is worked out, which is looked up once where many formulas look at it. */
  const isSettled = (area: Area): boolean => {
    const key = keyOf(area);
    if (!settled.has(key) && book.within(area).every((cell) => known.has(cell))) settled.add(key);
    return settled.has(key);
  };

  /** A rectangle that many formulas look at is read once, as soon as all its cells are worked out. */
  const rangeOn = (sheet: string, from: Place, to: Place, read: () => Cell[][]): Cell[][] => {
    const area = { sheet, top: from.row, left: from.column, bottom: to.row, right: to.column };
    const key = keyOf(area);
    const found = ranges.get(key) ?? read();
    if (!ranges.has(key) && isSettled(area)) ranges.set(key, found);
    return found;
  };

  function work(cell: Located): Cell {
    busy.add(cell);
    const cellAt = (place: { sheet?: string; row: number; column: number }) =>
      lookAt(book.at(place.sheet ?? cell.sheet, place));
    try {
      const value = single(
        evaluate(cell.says, {
          cell: cellAt,
          range: (from, to, read) => rangeOn(from.sheet ?? cell.sheet, from, to, read),
          pen,
        }),
      );
      // A formula that gives a blank cell shows 0.
      return value === null && cell.says.kind !== "constant" ? 0 : value;
    } catch (reason) {
      if (!(reason instanceof Unknown)) throw reason;
      return cell.shown ?? { error: "#N/A", message: messages.onlySpreadsheet };
    } finally {
      busy.delete(cell);
    }
  }

  /** Precedents first, by a list instead of by recursion; cells that form a ring are left to `lookAt`. */
  function settle(first: Located): void {
    const opened = new Set<Located>();
    for (const waiting = [first]; waiting.length;) {
      const cell = waiting[waiting.length - 1];
      const areas = known.has(cell) || opened.has(cell) ? [] : precedents(cell.says, cell.sheet);
      const open = areas === "anything" ? [] : areas.filter((area) => !isSettled(area)).flatMap(book.within);
      const before = open.filter((one) => !known.has(one) && !opened.has(one) && one !== cell);
      if (opened.has(cell) || !before.length) {
        waiting.pop();
        lookAt(cell);
      }
      opened.add(cell);
      for (const one of before) waiting.push(one);
    }
  }

  return (sheet, row, column) => {
    const cell = book.at(sheet, { row, column });
    if (cell && !known.has(cell)) settle(cell);
    return lookAt(cell);
  };
}

/**
 * Sheet plans as content with every value worked out, across sheets. Cells of `existing` sheets that the plans look
 * at count with the value they show.
 */
export function contentOfPlans(
  plans: SheetPlan[],
  pen: (name: string) => PenFunction,
  existing: WorkbookContent = { sheets: [] },
): WorkbookContent {
  const constants = existing.sheets.map(({ name, cells }) => ({
    name,
    cells: cells.map(({ row, column, value }) => ({
      row,
      column,
      says: { kind: "constant" as const, value },
    })),
  }));
  const valueAt = calculate([...constants, ...plans], pen);
  return {
    sheets: plans.map((plan) => contentOfPlan(plan, (row, column) => valueAt(plan.name, row, column))),
  };
}
