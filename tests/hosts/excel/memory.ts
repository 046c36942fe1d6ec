import { columnNumber } from "../../../src/sheets/address";

/** What a cell of the stand-in holds: what it shows, and its formula where it has one. */
export interface StoredCell {
  value: number | string | boolean;
  formula: number | string | boolean;
}

/** A sheet of the stand-in: cells by "row column", looks by the same, and everything else that was set, by name. */
export interface StoredSheet {
  name: string;
  cells: Map<string, StoredCell>;
  looks: Map<string, Record<string, unknown>>;
  set: Record<string, unknown>;
  pictures: Record<string, unknown>[];
  charts: Record<string, unknown>[];
}

export interface Area {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

export const newSheet = (name: string): StoredSheet => ({
  name,
  cells: new Map(),
  looks: new Map(),
  set: {},
  pictures: [],
  charts: [],
});

/**
 * What Excel makes of content that is put into a cell through its API; a formula's result is not worked out. In a cell
 * formatted as text everything is text.
 */
export function entered(content: number | string | boolean, asText = false): StoredCell {
  if (typeof content === "string" && content.startsWith("'"))
    return { value: content.slice(1), formula: content.slice(1) };
  if (asText) return { value: String(content), formula: String(content) };
  if (typeof content !== "string") return { value: content, formula: content };
  if (/^[=+@-]./.test(content) && !Number.isFinite(Number(content)))
    return { value: 0, formula: content.startsWith("=") ? content : `=${content}` };
  const read = /^(true|false)$/i.test(content)
    ? content.toLowerCase() === "true"
    : content.trim() !== "" && Number.isFinite(Number(content))
      ? Number(content)
      : /^\d+[-/]\d+/.test(content)
        ? 45000
        : content;
  return { value: read, formula: read };
}

/** The rectangles of an address such as A1:B2,D4 or A:C or 2:4; whole rows and columns end at a far edge. */
export function areasOf(addresses: string): Area[] {
  if (addresses.length > 255) throw new Error("Excel refuses an address of over 255 characters.");
  return addresses.split(",").map((one) => {
    const [from, to = from] = one.split(":");
    const corner = (text: string, edge: number) => {
      const [, letters, digits] = /^([A-Z]*)(\d*)$/.exec(text)!;
      return { row: digits ? Number(digits) - 1 : edge, column: letters ? columnNumber(letters) : edge };
    };
    const start = corner(from, 0);
    const end = corner(to, 99);
    return { top: start.row, left: start.column, bottom: end.row, right: end.column };
  });
}

/** The keys of an area's cells, row by row. */
export function keysOf({ top, left, bottom, right }: Area): string[][] {
  const rows: string[][] = [];
  for (let row = top; row <= bottom; row++) {
    rows.push([]);
    for (let column = left; column <= right; column++) rows[row - top].push(`${row} ${column}`);
  }
  return rows;
}

/** The rectangle around the cells that hold something, or undefined on an empty sheet. */
export function usedArea(sheet: StoredSheet): Area | undefined {
  const places = [...sheet.cells.keys()].map((key) => key.split(" ").map(Number));
  if (places.length === 0) return undefined;
  const [rows, columns] = [places.map(([row]) => row), places.map(([, column]) => column)];
  return {
    top: Math.min(...rows),
    left: Math.min(...columns),
    bottom: Math.max(...rows),
    right: Math.max(...columns),
  };
}
