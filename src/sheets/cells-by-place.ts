import { type Place } from "./address";
import { COLUMNS } from "./notation";
import { type Area } from "./precedents";

/** Cells found by sheet and place. A sheet's name is compared without regard to case, as spreadsheets do. */
export interface CellsByPlace<T> {
  at(sheet: string, place: Place): T | undefined;
  /** The cells that exist in an area. */
  within(area: Area): T[];
}

/** Cells of a workbook, to be found by place; of two cells in one place the later one counts. */
export function cellsByPlace<T extends { sheet: string; row: number; column: number }>(
  cells: T[],
): CellsByPlace<T> {
  const key = (row: number, column: number) => row * COLUMNS + column;
  const found = new Map<string, Map<number, T>>();
  for (const cell of cells) {
    const name = cell.sheet.toLowerCase();
    if (!found.has(name)) found.set(name, new Map());
    found.get(name)!.set(key(cell.row, cell.column), cell);
  }
  return {
    at: (sheet, { row, column }) => found.get(sheet.toLowerCase())?.get(key(row, column)),
    within({ sheet, top, left, bottom, right }) {
      const cells = found.get(sheet.toLowerCase());
      if (!cells) return [];
      if ((bottom - top + 1) * (right - left + 1) > cells.size)
        return [...cells.values()].filter(
          ({ row, column }) => row >= top && row <= bottom && column >= left && column <= right,
        );
      const inside: T[] = [];
      for (let row = top; row <= bottom; row++)
        for (let column = left; column <= right; column++) {
          const cell = cells.get(key(row, column));
          if (cell) inside.push(cell);
        }
      return inside;
    },
  };
}
