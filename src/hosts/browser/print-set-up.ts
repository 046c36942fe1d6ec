import { type IRange } from "@univerjs/core";
import { type FWorksheet } from "@univerjs/preset-sheets-core";
import { type PrintSetUp } from "../../sheets/plan";
import { type Grid } from "./grid";

/** How a sheet prints, kept with the sheet because the grid has no notion of it. Absent on a sheet of the user's own. */
export function printSetUp(worksheet: FWorksheet): PrintSetUp | undefined {
  return (worksheet.getCustomMetadata()?.print as PrintSetUp | null | undefined) ?? undefined;
}

interface Moved {
  subUnitId: string;
  range: IRange;
}

/** Lets the print area grow and shrink with the rows and columns that a user puts into it or takes out of it. */
export function followRows(grid: Grid): void {
  grid.onCommandExecuted(({ id, params }) => {
    const change = /^sheet\.mutation\.(insert-row|remove-rows|insert-col|remove-col)$/.exec(id)?.[1];
    if (!change) return;
    const { subUnitId, range } = params as Moved;
    const worksheet = grid.getActiveWorkbook()?.getSheetBySheetId(subUnitId);
    const set = worksheet && printSetUp(worksheet);
    if (!set) return;
    const { top, left, bottom, right } = set.area;
    const sign = change.startsWith("insert") ? 1 : -1;
    const rows = sign * (range.endRow - range.startRow + 1);
    const columns = sign * (range.endColumn - range.startColumn + 1);
    const { repeatFrom } = set;
    const from =
      change.includes("row") && repeatFrom !== undefined
        ? { repeatFrom: moved(repeatFrom, range.startRow, rows) }
        : {};
    const area = change.includes("row")
      ? { left, right, top: moved(top, range.startRow, rows), bottom: moved(bottom, range.startRow, rows) }
      : {
          top,
          bottom,
          left: moved(left, range.startColumn, columns),
          right: moved(right, range.startColumn, columns),
        };
    worksheet.setCustomMetadata({ ...worksheet.getCustomMetadata(), print: { ...set, ...from, area } });
  });
}

/** Where an edge lies after `count` lines came in at `start`, or went from there where `count` is negative. */
const moved = (edge: number, start: number, count: number) =>
  edge < start || (edge === 0 && count > 0) ? edge : Math.max(start + Math.min(0, count) * 0, edge + count);
