import { type Cell } from "../units/cell";
import { liveFormula } from "./formula";
import { type PlanPicture, type PrintSetUp, type SheetPlan, type Validation } from "./plan";
import { styleOf, type CellStyle } from "./styles";

/** One cell that holds or looks like something. Rows and columns count from 0. */
export interface CellData {
  row: number;
  column: number;
  /** What the cell shows; null where it is blank and only styled. */
  value: Cell;
  /** The formula behind the value, with its equals sign; absent where the value was typed. */
  formula?: string;
  style?: CellStyle;
  accepts?: Validation;
  /** True on an input of the user's. */
  input?: boolean;
  /** A remark attached to the cell, which a host shows beside it on request. */
  note?: string;
}

/** A rectangle of cells merged into one, corners included. */
export interface Merge {
  top: number;
  left: number;
  bottom: number;
  right: number;
}

/** One sheet as plain data, in the units of a sheet plan. */
export interface SheetData {
  name: string;
  cells: CellData[];
  columns: { width: number; hidden?: boolean }[];
  hiddenRows: number[];
  heights: Record<number, number>;
  frozenRows: number;
  merges: Merge[];
  /** Absent on a sheet of the user's own that was never set up for printing. */
  print?: PrintSetUp;
  pictures: PlanPicture[];
  /** In sentences, what the sheet has that this does not; absent where nothing is missing. */
  lost?: string[];
}

/**
 * A whole workbook as plain data: what one host hands to another, and what a file of a workbook is made from. It
 * holds no formula of a host's own notation and nothing of a library.
 */
export interface WorkbookContent {
  sheets: SheetData[];
  /** The sheet in view; the first where it is absent. */
  activeSheet?: string;
}

/**
 * A sheet plan as content. Constants stand for themselves; every other cell carries the formula that `formula` makes
 * of its expression (the live one unless told) and the value that `values` knows for its place. Charts become pictures.
 */
export function contentOfPlan(
  plan: SheetPlan,
  values: (row: number, column: number) => Cell = () => null,
  formula: typeof liveFormula = liveFormula,
): SheetData {
  const { name, columns, hiddenRows, heights, frozenRows, print } = plan;
  const pictures = [...plan.pictures, ...(plan.charts ?? []).map(pictureOf)];
  const cells = plan.cells.map(({ row, column, says, style, accepts, input }) => {
    const cell: CellData = { row, column, value: null, style: styleOf(style) };
    if (says.kind === "constant") cell.value = says.value;
    else Object.assign(cell, { value: values(row, column), formula: formula(says) });
    if (accepts) cell.accepts = accepts;
    if (input || accepts) cell.input = true;
    return cell;
  });
  const merges = plan.cells
    .filter(({ across }) => across !== undefined && across > 1)
    .map(({ row, column, across }) => ({ top: row, left: column, bottom: row, right: column + across! - 1 }));
  return { name, cells, columns, hiddenRows, heights, frozenRows, merges, print, pictures };
}

const pictureOf = ({ row, column, width, height, svg, description }: PlanPicture): PlanPicture => ({
  row,
  column,
  width,
  height,
  svg,
  description,
});
