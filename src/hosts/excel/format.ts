import { type PlanCell } from "../../sheets/plan";
import { styleOf, type CellStyle } from "../../sheets/styles";
import {
  areaAddress,
  groupBy,
  joinAddresses,
  rectangles,
  rowRuns,
  singles,
  type Area,
  type Spot,
} from "./areas";
import { once } from "./session";

type Content = string | number | boolean;

/** One side of a look: which value a style gives it, how Excel is told, and how its cells are joined. */
interface Side {
  of(style: CellStyle): Content | undefined;
  tell(format: Excel.RangeFormat, value: Content): void;
  /** Told to the whole block in its commonest value first, so that blank cells and the user's own match. */
  ground?: boolean;
  join?: Record<string, (spots: Spot[]) => Area[]>;
}

const edges: Record<string, Excel.BorderIndex[]> = {
  top: ["EdgeTop" as Excel.BorderIndex],
  bottom: ["EdgeBottom" as Excel.BorderIndex],
  box: ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"] as Excel.BorderIndex[],
};

const alignments = { left: "Left", center: "Center", right: "Right" } as const;

// Told side by side and not style by style: neighbors of different styles share most sides, so the areas are few.
const sides: Side[] = [
  { of: ({ bold }) => bold, tell: (format) => (format.font.bold = true) },
  { of: ({ italic }) => italic, tell: (format) => (format.font.italic = true) },
  { of: ({ size }) => size, tell: (format, size) => (format.font.size = size as number), ground: true },
  { of: ({ color }) => color, tell: (format, color) => (format.font.color = `#${color}`), ground: true },
  { of: ({ fill }) => fill, tell: (format, fill) => (format.fill.color = `#${fill}`) },
  {
    of: ({ align }) => align,
    tell: (format, align) => (format.horizontalAlignment = alignments[align as "left"]),
  },
  { of: ({ wrap }) => wrap, tell: (format) => (format.wrapText = true) },
  {
    of: ({ line }) => line,
    tell: (format, line) => {
      for (const edge of edges[line as string]) format.borders.getItem(edge).style = "Continuous";
    },
    // An edge is drawn around an area, not around each of its cells.
    join: { top: rowRuns, bottom: rowRuns, box: singles },
  },
];

/** The places that a cell covers: more than one where it is merged. */
export const covered = ({ row, column, across = 1 }: PlanCell): Spot[] =>
  Array.from({ length: across }, (_, k) => ({ row, column: column + k }));

/** Gives the cells of a new sheet their looks. */
export function formatCells(sheet: Excel.Worksheet, cells: PlanCell[]): void {
  if (cells.length === 0) return;
  // Sides that go over the same areas, such as bold and filled, share one object: that halves what is sent for them.
  const formats = new Map<string, Excel.RangeFormat>();
  const formatOf = (addresses: string) => {
    const format = formats.get(addresses) ?? once(sheet.getRanges(addresses)).format;
    formats.set(addresses, format);
    return format;
  };
  const block: Area = {
    top: 0,
    left: 0,
    bottom: Math.max(...cells.map(({ row }) => row)),
    right: Math.max(...cells.flatMap(covered).map(({ column }) => column)),
  };
  for (const { of, tell, join, ground } of sides) {
    const groups = groupBy(cells, ({ style }) => of(styleOf(style)));
    const commonest = [...groups].sort(([, a], [, b]) => b.length - a.length)[0]?.[0];
    if (ground && commonest !== undefined) {
      tell(formatOf(areaAddress(block)), commonest);
      groups.delete(commonest);
    }
    for (const [value, alike] of groups) {
      const areas = (join?.[String(value)] ?? rectangles)(alike.flatMap(covered));
      for (const addresses of joinAddresses(areas.map(areaAddress))) tell(formatOf(addresses), value);
    }
  }
}
