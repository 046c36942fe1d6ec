import { columnNumber } from "../../sheets/address";
import { isInputFill, type CellStyle } from "../../sheets/styles";
import { type CellData, type Merge } from "../../sheets/workbook-content";
import { type AskedCells } from "./content";
import { type Ruled } from "./content-rules";
import { cellOf, type Entry } from "./entry";

/** The cells of a block that hold something, look like something, or accept only something. */
export function cellsOf({ range, at, looks }: AskedCells, rules: Map<string, Ruled>): CellData[] {
  const formulas = range.formulas as Entry[][];
  const formats = range.numberFormat as string[][];
  return (range.values as Entry[][]).flatMap((row, down) =>
    row.flatMap((shown, across) => {
      const value = cellOf(shown);
      const style = styleOfExcel(looks.value[down][across], formats[down][across]);
      const ruled = rules.get(`${at.row + down} ${at.column + across}`);
      if (value === null && !style.fill && !style.line && !ruled) return [];
      const formula = formulas[down][across];
      // A text that only looks like a formula is given as both.
      const isFormula = typeof formula === "string" && formula.startsWith("=") && formula !== shown;
      const cell: CellData = { row: at.row + down, column: at.column + across, value, style, ...ruled };
      if (isFormula) cell.formula = formula;
      if (isInputFill(style.fill) || ruled?.accepts) cell.input = true;
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

/** The last row and column that a sheet has, counted from 0. */
const end = { row: 1_048_575, column: 16_383 };

/** The rectangles in an address of several areas, each with the sheet's name before it; whole rows and columns too. */
export const areasIn = (addresses: string): Merge[] =>
  addresses
    .replace(/'(?:[^']|'')*'!|[^,!]*!|\$/g, "")
    .split(",")
    .map((address) => {
      const [from, to = from] = address.split(":").map((corner) => /^ *([A-Z]*)(\d*)$/.exec(corner)!);
      return {
        top: from[2] ? Number(from[2]) - 1 : 0,
        left: from[1] ? columnNumber(from[1]) : 0,
        bottom: to[2] ? Number(to[2]) - 1 : end.row,
        right: to[1] ? columnNumber(to[1]) : end.column,
      };
    });
