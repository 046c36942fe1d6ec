import { type Cell } from "../units/cell";
import { type Content } from "./expression";
import { type Shown } from "./keyed-cells";
import { type CellData, type WorkbookContent } from "./workbook-content";

/** A cell that a command will rewrite: what it says now as the sheet writes it, and what it is to say then. */
export interface Replaced {
  sheet: string;
  row: number;
  column: number;
  now: string;
  says: Content;
  style?: "fixed" | "live";
}

/** A sheet as a host reads it: what each cell shows, and its formula or content, from A1. */
export interface Read extends Shown {
  formulas: Cell[][];
}

/** What sheets show and say as the content of a workbook. A text that only begins like a formula shows what it says. */
export function contentOfRead(sheets: Read[]): WorkbookContent {
  const bare = { columns: [], hiddenRows: [], heights: {}, frozenRows: 0, merges: [], pictures: [] };
  return {
    sheets: sheets.map(({ name, values, formulas }) => ({
      ...bare,
      name,
      cells: values.flatMap((across, row) =>
        across.flatMap((value, column): CellData[] => {
          const says = formulas[row]?.[column] ?? null;
          const formula =
            typeof says === "string" && says.startsWith("=") && says !== value ? says : undefined;
          if (value === null && formula === undefined) return [];
          return [{ row, column, value, ...(formula === undefined ? {} : { formula }) }];
        }),
      ),
    })),
  };
}

/** True for a cell inside an area of its sheet. */
export const isWithin = (
  cell: { sheet: string; row: number; column: number },
  area: { sheet: string; top: number; left: number; bottom: number; right: number },
) =>
  cell.sheet === area.sheet &&
  cell.row >= area.top &&
  cell.row <= area.bottom &&
  cell.column >= area.left &&
  cell.column <= area.right;
