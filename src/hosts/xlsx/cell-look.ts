import { type Border, type Fill, type Style } from "exceljs";
import { type CellStyle } from "../../sheets/styles";

const line: Partial<Border> = { style: "thin", color: { argb: "FF7B8794" } };
const borders = {
  top: { top: line },
  bottom: { bottom: line },
  box: { top: line, bottom: line, left: line, right: line },
};

/** How a cell looks, in the file's terms. */
export function fileStyle(style: CellStyle): Partial<Style> {
  const { bold, italic, size = 11, color, fill, align, wrap, format } = style;
  return {
    font: {
      name: "Calibri",
      family: 2,
      size,
      bold,
      italic,
      ...(color ? { color: { argb: `FF${color}` } } : {}),
    },
    alignment: { vertical: wrap ? "top" : "middle", horizontal: align, wrapText: wrap },
    ...(fill ? { fill: { type: "pattern", pattern: "solid", fgColor: { argb: `FF${fill}` } } as Fill } : {}),
    ...(style.line ? { border: borders[style.line] } : {}),
    ...(format ? { numFmt: format } : {}),
  };
}

const rgb = (color: { argb?: string } | undefined) =>
  color?.argb ? color.argb.slice(-6).toUpperCase() : undefined;

/** The look of a file's cell in our terms, or undefined where nothing of it differs from a plain cell. */
export function styleFromFile(style: Partial<Style>): CellStyle | undefined {
  const { font = {}, fill, alignment = {}, border = {}, numFmt } = style;
  const { horizontal, wrapText } = alignment;
  const look: CellStyle = {};
  if (font.bold) look.bold = true;
  if (font.italic) look.italic = true;
  if (font.size && font.size !== 11) look.size = font.size;
  const color = rgb(font.color);
  if (color && color !== "000000") look.color = color;
  const back = fill?.type === "pattern" && fill.pattern === "solid" ? rgb(fill.fgColor) : undefined;
  if (back) look.fill = back;
  if (horizontal === "left" || horizontal === "center" || horizontal === "right") look.align = horizontal;
  if (wrapText) look.wrap = true;
  if (numFmt && numFmt !== "General") look.format = numFmt;
  const edge = border.left?.style && border.right?.style ? "box" : border.top?.style ? "top" : border.bottom?.style && "bottom"; // prettier-ignore
  if (edge) look.line = edge;
  return Object.keys(look).length ? look : undefined;
}
