import { type PrintSetUp } from "../../sheets/plan";
import { type SheetData } from "../../sheets/workbook-content";
import { areasIn } from "./content-cells";

/** Excel's usual column, in characters and in points, for a hidden one whose width it does not tell. */
const usual = { characters: 8.43, points: 48 };

/** A width in Excel's points as characters of the standard font: 7 dots each and 5 of margin, 96 dots an inch. */
const charactersOf = (points: number) => Math.max(0, ((points * 96) / 72 - 5) / 7);

/** Sizes and hidden lines of a sheet, and where each column and row ends, in points from the sheet's corner. */
export function linesOf(
  columns: Excel.ColumnProperties[],
  rows: Excel.RowProperties[],
  standardHeight: number,
  count: { rows: number; columns: number },
) {
  const widthOf = ({ format }: Excel.ColumnProperties) => format?.columnWidth ?? usual.points;
  const heightOf = ({ format }: Excel.RowProperties) => format?.rowHeight ?? standardHeight;
  const own = rows.map((row, k) => [k, heightOf(row)] as const).slice(0, count.rows);
  return {
    columns: columns.slice(0, count.columns).map((column) => ({
      width: widthOf(column) > 0 ? charactersOf(widthOf(column)) : usual.characters,
      ...(column.columnHidden ? { hidden: true } : {}),
    })),
    hiddenRows: rows.flatMap(({ rowHidden }, k) => (rowHidden ? [k] : [])),
    heights: Object.fromEntries(own.filter(([k, height]) => !rows[k].rowHidden && height !== standardHeight)),
    left: ends(columns.map((column) => (column.columnHidden ? 0 : widthOf(column)))),
    top: ends(rows.map((row) => (row.rowHidden ? 0 : heightOf(row)))),
  };
}

function ends(sizes: number[]): number[] {
  let end = 0;
  return sizes.map((size) => (end += size));
}

/** The row or column in which a place lies, in points from the sheet's corner; half a point is within rounding. */
export function spotOf(points: number, end: number[]): number {
  const found = end.findIndex((edge) => edge > points + 0.5);
  return found < 0 ? end.length : found;
}

/** How a sheet prints, where it has a print area. */
export function printOf(asked: {
  page: Excel.PageLayout;
  footer: Excel.HeaderFooter;
  area: Excel.RangeAreas;
  titles: Excel.Range;
}): Pick<SheetData, "print"> {
  const { page, footer, area, titles } = asked;
  const [printed] = area.isNullObject ? [] : areasIn(area.address);
  if (!printed) return {};
  const { horizontalFitToPages: wide, verticalFitToPages: tall } = page.zoom;
  const [first, repeatRows] = titles.isNullObject ? [0, 0] : [titles.rowIndex, titles.rowCount];
  const print: PrintSetUp = {
    area: printed,
    landscape: page.orientation === "Landscape",
    pages: { wide: wide ?? 1, tall: tall ?? 0 },
    repeatRows,
    ...(first > 0 ? { repeatFrom: first } : {}),
    // Without the code for its size, and an ampersand once.
    footer: footer.leftFooter.replace(/&\d+ ?/g, "").replace(/&&/g, "&"),
  };
  return { print };
}
