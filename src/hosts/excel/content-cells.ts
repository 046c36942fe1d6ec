import { columnNumber } from "../../sheets/address";
import { isInputFill, type CellStyle } from "../../sheets/styles";
import { type CellData, type Merge } from "../../sheets/workbook-content";
import { type AskedCells } from "./content";
import { cellOf, type Entry } from "./entry";

/** The cells of a block that hold something or look like something. */
export function cellsOf({ range, at, looks }: AskedCells): CellData[] {
  const formulas = range.formulas as Entry[][];
  const formats = range.numberFormat as string[][];
  return (range.values as Entry[][]).flatMap((row, down) =>
    row.flatMap((shown, across) => {
      const value = cellOf(shown);
      const style = styleOfExcel(looks.value[down][across], formats[down][across]);
      if (value === null && !style.fill && !style.line) return [];
      const formula = formulas[down][across];
      // A text that only looks like a formula is given as both.
      const isFormula = typeof formula === "string" && formula.startsWith("=") && formula !== shown;
      const cell: CellData = { row: at.row + down, column: at.column + across, value, style };
      if (isFormula) cell.formula = formula;
      if (isInputFill(style.fill)) cell.input = true;
      return [cell];
    }),
  );
}

const aligned: Record<string, CellStyle["align"]> = { Left: "left", Center: "center", Right: "right" };

function styleOfExcel({ format = {} }: Excel.CellProperties, pattern: string): CellStyle {
  const { font = {}, fill, borders, horizontalAlignment = "General", wrapText } = format;
  const { bold, italic, size } = font;
  const color = colorOf(font.color, "000000");
  const filled = colorOf(fill?.color, "FFFFFF");
  const align = aligned[horizontalAlignment];
  const line = lineOf(borders);
  return {
    ...(bold && { bold }),
    ...(italic && { italic }),
    ...(size && { size }),
    ...(color && { color }),
    ...(filled && { fill: filled }),
    ...(align && { align }),
    ...(wrapText && { wrap: true }),
    ...(pattern && pattern !== "General" && { format: pattern }),
    ...(line && { line }),
  };
}

/** A color as RRGGBB; none where it is the usual one. */
function colorOf(color: string | undefined, usual: string): string | undefined {
  const plain = color?.replace("#", "").toUpperCase();
  return plain && plain !== usual ? plain : undefined;
}

function lineOf(borders: Excel.CellBorderCollection | undefined): CellStyle["line"] {
  const drawn = (edge: Excel.CellBorder | undefined) => edge?.style !== undefined && edge.style !== "None";
  const { top, bottom, left, right } = borders ?? {};
  if (drawn(top) && drawn(bottom) && drawn(left) && drawn(right)) return "box";
  return drawn(bottom) ? "bottom" : drawn(top) ? "top" : undefined;
}

/** The rectangles in an address of several areas. */
export const merges = (addresses: string): Merge[] =>
  [...addresses.matchAll(/\$?([A-Z]{1,3})\$?(\d+):\$?([A-Z]{1,3})\$?(\d+)/g)].map(([, left, top, right, bottom]) => ({
    top: Number(top) - 1,
    left: columnNumber(left),
    bottom: Number(bottom) - 1,
    right: columnNumber(right),
  })); // prettier-ignore
