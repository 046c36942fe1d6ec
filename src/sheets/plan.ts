import { type Expression } from "./expression";
import { type StyleName } from "./styles";

/** What an input cell accepts; the message is shown where something else is typed. */
export type Validation =
  | { kind: "number"; least: number; most: number; whole?: boolean; message: string }
  | { kind: "list"; options: string[]; message: string };

/** One cell of a document: one expression, how it looks, and what may be typed over it. */
export interface PlanCell {
  row: number;
  column: number;
  says: Expression;
  style: StyleName;
  /** Present on an input of the user's: what may be typed. Text inputs have `accepts: undefined` and `input: true`. */
  input?: boolean;
  accepts?: Validation;
  /** How many columns to the right this cell is merged over, itself included. */
  across?: number;
}

/** A picture of a document: an SVG text, the cell at its top left corner, and its size in points. */
export interface PlanPicture {
  row: number;
  column: number;
  width: number;
  height: number;
  svg: string;
  /** What the picture shows, for a reader who cannot see it. */
  description: string;
}

/** A rectangle of cells of the same sheet, counted from 0; the last row and column are included. */
export interface PlanArea {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** Numbers of a chart, in a row or a column: one upright column or lying bar each, all of one color. */
export interface PlanSeries {
  name: string;
  values: PlanArea;
}

/** A chart of a document, with its top left corner at a cell and its size in points. `svg` stands for it where a host draws no charts. */
export interface PlanChart extends PlanPicture {
  kind: "column" | "bar";
  title: string;
  /** What stands along the axes, with its unit. */
  axes: { categories: string; values: string };
  /** What the numbers are called: as many cells as each series has. */
  categories: PlanArea;
  series: [PlanSeries, ...PlanSeries[]];
}

/** How a document prints. Rows and columns count from 0; the last ones are included. */
export interface PrintSetUp {
  area: PlanArea;
  landscape: boolean;
  /** Pages wide and tall to fit on; a height of 0 takes as many as it needs. */
  pages: { wide: number; tall: number };
  /** How many header rows are repeated on every page; 0 for none. */
  repeatRows: number;
  /** The first of them, where that is not the top row; on the pages above it they do not show. */
  repeatFrom?: number;
  /** Plain text at the left of every page's foot; the host puts the page number at the right. */
  footer: string;
}

/** A whole sheet as plain data: what the three hosts write, each its own way. Cells count from 0. */
export interface SheetPlan {
  name: string;
  cells: PlanCell[];
  /** Widths in characters, as spreadsheets count them. */
  columns: { width: number; hidden?: boolean }[];
  /** Rows that are hidden, and rows whose height (points) is not the default. */
  hiddenRows: number[];
  heights: Record<number, number>;
  /** Rows above this one stay in view; 0 freezes none. */
  frozenRows: number;
  print: PrintSetUp;
  pictures: PlanPicture[];
  charts?: PlanChart[];
}

/** The header rows that are repeated on every page, as a spreadsheet counts them from 1; none where there are none. */
export function repeatedRows({
  repeatRows,
  repeatFrom = 0,
}: PrintSetUp): [first: number, last: number] | undefined {
  return repeatRows > 0 ? [repeatFrom + 1, repeatFrom + repeatRows] : undefined;
}
