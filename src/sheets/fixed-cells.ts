import { messages } from "./messages";
import { styles, type CellStyle } from "./styles";
import { type Located } from "./upstream";
import { type CellData, type SheetData } from "./workbook-content";

/**
 * A sheet of a plain copy: its fixed cells marked as such, and a line that says how many, below what is printed, so that
 * a page for a customer or a supplier has nothing of it.
 */
export function markFixed(sheet: SheetData, fixed: Located[]): SheetData {
  const places = new Set(fixed.filter((cell) => cell.sheet === sheet.name).map(place));
  if (!places.size) return sheet;
  const cells = sheet.cells.map((cell) => (places.has(place(cell)) ? fixedCell(cell) : cell));
  const { bottom = 0, right = Infinity } = sheet.print?.area ?? {};
  const beside = cells.filter(({ column }) => column <= right);
  const row = beside.reduce((last, cell) => Math.max(last, cell.row), bottom) + 2;
  const line: CellData = {
    row,
    column: firstVisible(sheet),
    value: messages.plainCopy(places.size),
    style: styles.note,
  };
  return { ...sheet, cells: [...cells, line] };
}

const place = ({ row, column }: { row: number; column: number }) => `${row},${column}`;

const firstVisible = ({ columns }: SheetData) => Math.max(0, columns.findIndex(({ hidden }) => !hidden)); // prettier-ignore

/** What was an input looks like any other cell, keeps its number format, and says that it is fixed. */
function fixedCell(cell: CellData): CellData {
  const fixed: CellData = { ...cell, note: messages.fixedInCopy };
  delete fixed.input;
  delete fixed.accepts;
  const { format, align = styles.fixed.align } = cell.style ?? {};
  const look: CellStyle = { ...styles.fixed, ...(format && { format }), align };
  return cell.input ? { ...fixed, style: look } : fixed;
}
