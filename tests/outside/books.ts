import { calculate } from "../../src/sheets/calculate";
import { type PenFunction } from "../../src/sheets/evaluate";
import { parseFormula } from "../../src/sheets/parse";
import { type CellData, type SheetData, type WorkbookContent } from "../../src/sheets/workbook-content";
import { isError, type Cell } from "../../src/units/cell";

/** A sheet of cells alone. */
export const sheetOf = (name: string, cells: CellData[]): SheetData => ({
  name, cells, columns: [], hiddenRows: [], heights: {}, frozenRows: 0, merges: [], pictures: [],
}); // prettier-ignore

/** A workbook's values and formulas without any looks: LibreOffice works out the same figures in a third of the time. */
export const bare = ({ sheets }: WorkbookContent): WorkbookContent => ({
  sheets: sheets.map(({ name, cells }) =>
    sheetOf(
      name,
      cells
        .filter(({ value, formula }) => formula !== undefined || (value ?? "") !== "")
        .map(({ row, column, value, formula }) => ({ row, column, value, ...(formula && { formula }) })),
    ),
  ),
});

/** Says of a workbook without functions of this add-in that it asks none. */
export const noPen = (name: string): PenFunction => {
  throw new Error(`asked for ${name}`);
};

/** The workbook's values by our own evaluation, every formula read from its text. */
export const ourValues = ({ sheets }: WorkbookContent, pen: (name: string) => PenFunction = noPen) =>
  calculate(
    sheets.map(({ name, cells }) => ({
      name,
      cells: cells.map(({ row, column, value, formula }) => ({
        row, column, says: formula ? parseFormula(formula) : ({ kind: "constant", value } as const),
      })), // prettier-ignore
    })),
    pen,
  );

/** Equal as two spreadsheets agree: numbers to 1e-12 relative, errors by their code, an empty text as a blank. */
export function agree(a: Cell, b: Cell): boolean {
  if (typeof a === "number" && typeof b === "number")
    return Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(a), Math.abs(b));
  if ((a ?? "") === "" && (b ?? "") === "") return true;
  return isError(a) && isError(b) ? a.error === b.error : a === b;
}

/** A cell as a failure message shows it. */
export const told = (cell: Cell) => (isError(cell) ? cell.error : JSON.stringify(cell));
