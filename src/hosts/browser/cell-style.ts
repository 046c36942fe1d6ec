import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
} from "@univerjs/core";
import { type CellStyle } from "../../sheets/styles";

const aligned = { left: HorizontalAlign.LEFT, center: HorizontalAlign.CENTER, right: HorizontalAlign.RIGHT };
const edges: Record<NonNullable<CellStyle["line"]>, (keyof IBorderData)[]> = {
  top: ["t"],
  bottom: ["b"],
  box: ["t", "r", "b", "l"],
};

/** A look as the grid keeps it. */
export function gridStyle(style: CellStyle): IStyleData {
  const made: IStyleData = {};
  if (style.bold) made.bl = BooleanNumber.TRUE;
  if (style.italic) made.it = BooleanNumber.TRUE;
  if (style.size) made.fs = style.size;
  if (style.color) made.cl = { rgb: `#${style.color}` };
  if (style.fill) made.bg = { rgb: `#${style.fill}` };
  if (style.align) made.ht = aligned[style.align];
  if (style.wrap) made.tb = WrapStrategy.WRAP;
  if (style.format) made.n = { pattern: style.format };
  if (style.line) {
    const line = { s: BorderStyleTypes.THIN, cl: { rgb: "#9AA5B1" } };
    made.bd = Object.fromEntries(edges[style.line].map((edge) => [edge, line]));
  }
  return made;
}

/** What of the grid's look every host can carry. */
export function plainStyle(style: IStyleData): CellStyle {
  const made: CellStyle = {};
  if (style.bl) made.bold = true;
  if (style.it) made.italic = true;
  if (style.fs) made.size = style.fs;
  const [color, fill] = [hex(style.cl?.rgb), hex(style.bg?.rgb)];
  if (color) made.color = color;
  if (fill) made.fill = fill;
  const align = (["left", "center", "right"] as const).find((name) => aligned[name] === style.ht);
  if (align) made.align = align;
  if (style.tb === WrapStrategy.WRAP) made.wrap = true;
  if (style.n?.pattern) made.format = style.n.pattern;
  const { t, b, l, r } = style.bd ?? {};
  if (l && r && t && b) made.line = "box";
  else if (t) made.line = "top";
  else if (b) made.line = "bottom";
  return made;
}

/** RRGGBB of a color written #rgb, #rrggbb or rgb(r, g, b). */
function hex(color: unknown): string | undefined {
  if (typeof color !== "string") return undefined;
  const long = /^#([0-9a-f]{6})$/i.exec(color);
  if (long) return long[1].toUpperCase();
  const short = /^#([0-9a-f])([0-9a-f])([0-9a-f])$/i.exec(color);
  if (short) return short.slice(1).map((digit) => digit + digit).join("").toUpperCase(); // prettier-ignore
  const mixed = /^rgba?\((\d+), ?(\d+), ?(\d+)/.exec(color);
  return mixed?.slice(1, 4).map((part) => Number(part).toString(16).padStart(2, "0")).join("").toUpperCase(); // prettier-ignore
}
