import { type Cell } from "../units/cell";
import { type Content } from "../sheets/expression";
import { type PlanArea, type SheetPlan } from "../sheets/plan";
import { type WorkbookContent } from "../sheets/workbook-content";

/** A sheet as it stands: what each cell shows and what it says (a formula with its =, else the content), from A1. */
export interface SheetContent {
  name: string;
  values: Cell[][];
  formulas: Cell[][];
}

/** What the panel sees of a workbook in one look. */
export interface WorkbookView {
  sheetNames: string[];
  active: SheetContent;
  /** The sheet of the user's prices, found by what its A1 says; absent before the first estimate. */
  prices?: SheetContent;
  /** The selected cell's top left corner. */
  selected: { sheet: string; row: number; column: number };
}

/** New content of one cell, counted from 0. A text is written as text, never taken for a formula. */
export interface CellChange {
  row: number;
  column: number;
  value: number | string | boolean | null;
  /** A number format in the spreadsheet's English notation, where the cell is to get one. */
  format?: string;
}

/** A selected rectangle of cells, counted from 0. */
export interface SelectedArea extends PlanArea {
  sheet: string;
}

/** What one cell of a copied sheet is to say, counted from 0. A text is written as text, never taken for a formula. */
export interface FilledCell {
  row: number;
  column: number;
  says: Content;
}

/**
 * What one cell is to say in the place of what it says now. `fixed` takes the look and the rule of an input away and
 * marks the cell as fixed in this copy; `live` takes that mark away; without either its look stays.
 */
export interface RewrittenCell extends FilledCell {
  /** The sheet of the cell, where it is another than the one named beside. */
  sheet?: string;
  style?: "fixed" | "live";
}

/** A workbook file that came in: each host takes the form that it needs, and only when it needs it. */
export interface IncomingFile {
  /** The file itself, in base64. */
  base64(): string;
  /** What it holds, and in sentences what of it could not be read. Throws a HostError where it is no sound .xlsx file. */
  content(): Promise<{ content: WorkbookContent; lost: string[] }>;
}

/** The names that the sheets of a file got, in its order, and in sentences what could not be carried over. */
export interface InsertedSheets {
  names: string[];
  lost: string[];
}

/**
 * A workbook that the panel works in. Every refusal is a HostError whose message says what happened, why, and what
 * to do next. Nothing is ever written over a cell that holds something, except the cells that `update` and `rewrite`
 * name.
 */
export interface WorkbookHost {
  /** What this host can do beside the common part, so the panel shows no button that fails. */
  readonly can: { openCopy: boolean; selfCheck: boolean };
  /** One read: names, the active sheet's used cells, the prices, the selected cell. */
  look(): Promise<WorkbookView>;
  /** One read of several sheets, in the order asked for. Refuses a name that no sheet has. */
  read(sheets: string[]): Promise<SheetContent[]>;
  /** Writes new sheets, all or none, and shows the one named last. Refuses a name that exists. */
  write(plans: SheetPlan[]): Promise<void>;
  /** Writes inputs of an existing sheet; nothing else on it is touched. */
  update(sheet: string, changes: CellChange[]): Promise<void>;
  /**
   * Copies a sheet with all it holds under a new name, puts content into cells of the copy, and shows it: all or
   * nothing. Says in sentences what this host could not carry over. Refuses a name that exists.
   */
  fillCopy(sheet: string, name: string, cells: FilledCell[]): Promise<string[]>;
  /** Adds the sheets of a file under names that are free, and shows the first: all of them or none. */
  insertSheets(file: IncomingFile): Promise<InsertedSheets>;
  /** Replaces what the named cells hold, in one step of undo: all of them, or the workbook stays as it was. */
  rewrite(sheet: string, cells: RewrittenCell[]): Promise<void>;
  /** Opens a workbook file, given in base64, as a new workbook beside the present one; present where `can` says so. */
  openCopy?(base64: string): Promise<void>;
  /** The selected rectangle of cells. Refuses a selection of several. */
  selection(): Promise<SelectedArea>;
  /** The whole workbook as plain data, with everything that a file can carry, to make a copy of; where a host can. */
  content?(): Promise<WorkbookContent>;
  /** Adds rows below the used cells of a sheet. */
  append(sheet: string, rows: Cell[][]): Promise<void>;
  /** Puts a formula into the selected cell when it is empty; says where it went. */
  putFormula(formula: string): Promise<{ sheet: string; address: string }>;
  /** Shows a sheet. */
  show(sheet: string): Promise<void>;
  /** Calls back after the selection, the active sheet or a cell has changed. Returns how to stop. */
  watch(changed: () => void): () => void;
}

/** A refusal by a host, in a sentence for the user. */
export class HostError extends Error {
  constructor(message: string) {
    super(message);
    this.name = "HostError";
  }
}
