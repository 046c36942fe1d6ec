import { type FWorksheet } from "@univerjs/preset-sheets-core";
import { isError, type Cell } from "../../units/cell";
import { address, isSheetName } from "../../sheets/address";
import { type SheetPlan } from "../../sheets/plan";
import { pricesMark } from "../../sheets/prices-layout";
import { underFreeNames } from "../../sheets/renamed";
import { contentOfPlan, type WorkbookContent } from "../../sheets/workbook-content";
import {
  type CellChange,
  type FilledCell,
  type IncomingFile,
  type InsertedSheets,
  type RewrittenCell,
  type SelectedArea,
  type SheetContent,
  type WorkbookHost,
  type WorkbookView,
} from "../host";
import { addSheets } from "./added-sheets";
import { type GridWorkbook } from "./grid-workbook";
import { cellHolds, nameRefused, nameTaken, readOnly } from "./messages";
import { filledCopy } from "./filled-copy";
import { rewriteCells } from "./put-cells";
import { gridValue } from "./sheet-of-content";
import { usedCells } from "./used-cells";

/** The workbook in the page's grid, as the panel sees it. */
export class BrowserHost implements WorkbookHost {
  readonly can = { openCopy: false, selfCheck: true };

  constructor(private readonly workbook: GridWorkbook) {}

  async look(): Promise<WorkbookView> {
    const { book, selected } = this.workbook;
    const sheets = book.getSheets();
    const prices = sheets.find((sheet) => sheet.getSheet().getCellRaw(0, 0)?.v === pricesMark);
    return {
      sheetNames: sheets.map((sheet) => sheet.getSheetName()),
      active: this.shown(book.getActiveSheet()),
      ...(prices ? { prices: this.shown(prices) } : {}),
      selected,
    };
  }

  async write(plans: SheetPlan[]): Promise<void> {
    this.mayChange();
    const contents = plans.map((plan) => contentOfPlan(plan));
    this.refuseNames(contents.map(({ name }) => name));
    await addSheets(this.workbook, contents, "last");
    await this.workbook.computed();
  }

  async read(sheets: string[]): Promise<SheetContent[]> {
    return sheets.map((name) => this.shown(this.workbook.sheet(name)));
  }

  async fillCopy(sheet: string, name: string, cells: FilledCell[]): Promise<string[]> {
    this.mayChange();
    const source = this.workbook.sheet(sheet);
    this.refuseNames([name]);
    const lost = await filledCopy(this.workbook, source, name, cells);
    await this.workbook.computed();
    return lost;
  }

  async insertSheets(file: IncomingFile): Promise<InsertedSheets> {
    this.mayChange();
    const { content, lost } = await file.content();
    const taken = this.workbook.book.getSheets().map((sheet) => sheet.getSheetName());
    const sheets = underFreeNames(content.sheets, taken);
    this.refuseNames(sheets.map(({ name }) => name));
    await addSheets(this.workbook, sheets, "first");
    // A sheet of the file may look at one that came after it.
    await this.workbook.recalculate();
    return { names: sheets.map(({ name }) => name), lost };
  }

  async rewrite(sheet: string, cells: RewrittenCell[]): Promise<void> {
    this.mayChange();
    const on = [...new Set([sheet, ...cells.flatMap((cell) => cell.sheet ?? [])])];
    const sheets = new Map(on.map((name) => [name, this.workbook.sheet(name)]));
    await rewriteCells(this.workbook, cells, (cell) => sheets.get(cell.sheet ?? sheet)!);
    await this.workbook.computed();
  }

  async selection(): Promise<SelectedArea> {
    const sheet = this.workbook.book.getActiveSheet();
    const range = sheet.getActiveRange()?.getRange();
    const { row, column } = this.workbook.selected;
    const { startRow = row, startColumn = column, endRow = row, endColumn = column } = range ?? {};
    return {
      sheet: sheet.getSheetName(),
      top: startRow,
      left: startColumn,
      bottom: endRow,
      right: endColumn,
    };
  }

  async content(): Promise<WorkbookContent> {
    return this.workbook.snapshot();
  }

  async update(sheet: string, changes: CellChange[]): Promise<void> {
    this.mayChange();
    const worksheet = this.workbook.sheet(sheet);
    await this.workbook.asOneStep(async () => {
      const rows = 1 + Math.max(-1, ...changes.map(({ row }) => row));
      if (rows > worksheet.getMaxRows()) worksheet.setRowCount(rows);
      for (const { row, column, value, format } of changes)
        worksheet.getRange(row, column).setValue({
          ...gridValue(value),
          ...(format !== undefined && { s: { n: { pattern: format } } }),
          f: null,
          si: null,
          p: null,
        });
    });
    await this.workbook.computed();
  }

  async append(sheet: string, rows: Cell[][]): Promise<void> {
    this.mayChange();
    const worksheet = this.workbook.sheet(sheet);
    const first = usedCells(worksheet, this.workbook.messages).length;
    const changes = rows.flatMap((cells, down) =>
      cells.map((value, column) => ({
        row: first + down,
        column,
        value: isError(value) ? value.error : value,
      })),
    );
    await this.update(sheet, changes);
  }

  async putFormula(formula: string): Promise<{ sheet: string; address: string }> {
    this.mayChange();
    const { sheet, row, column } = this.workbook.selected;
    const worksheet = this.workbook.sheet(sheet);
    const held = usedCells(worksheet, this.workbook.messages)[row]?.[column];
    if (held && (held.value !== null || held.formula !== ""))
      throw cellHolds(address({ sheet, row, column }));
    worksheet.getRange(row, column).setValue({ f: formula });
    await this.workbook.computed();
    return { sheet, address: address({ row, column }) };
  }

  async show(sheet: string): Promise<void> {
    this.workbook.sheet(sheet).activate();
  }

  watch(changed: () => void): () => void {
    return this.workbook.watch(changed, true, 60);
  }

  private shown(worksheet: FWorksheet): SheetContent {
    const cells = usedCells(worksheet, this.workbook.messages);
    return {
      name: worksheet.getSheetName(),
      values: cells.map((row) => row.map(({ value }) => value)),
      formulas: cells.map((row) => row.map(({ value, formula }) => formula || value)),
    };
  }

  private mayChange(): void {
    if (this.workbook.readOnly) throw readOnly();
  }

  private refuseNames(names: string[]): void {
    const taken = new Set(this.workbook.book.getSheets().map((sheet) => sheet.getSheetName().toLowerCase()));
    for (const name of names) {
      if (!isSheetName(name)) throw nameRefused(name);
      if (taken.has(name.toLowerCase())) throw nameTaken(name);
      taken.add(name.toLowerCase());
    }
  }
}
