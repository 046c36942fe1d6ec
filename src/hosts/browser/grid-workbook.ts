import { CommandType, IUndoRedoService, LocaleType, type IWorkbookData } from "@univerjs/core";
import { type FWorkbook, type FWorksheet } from "@univerjs/preset-sheets-core";
import { address } from "../../sheets/address";
import { type SheetData, type WorkbookContent } from "../../sheets/workbook-content";
import { type CellMessages } from "./cell-messages";
import { sheetContent } from "./content-of-sheet";
import { drawn, type Grid } from "./grid";
import { errorMeaning, noSheet } from "./messages";
import { furnish, gridSheet, selectFirst } from "./sheet-of-content";

const watched = /^sheet\.operation\.set-(selections|worksheet-active)/;

/** The one workbook in the page's grid: finding its parts, keeping it, replacing it. */
export class GridWorkbook {
  private locked = false;

  constructor(
    readonly grid: Grid,
    /** Why cells show errors. */
    readonly messages: CellMessages,
  ) {}

  get book(): FWorkbook {
    return this.grid.getActiveWorkbook()!;
  }

  /** True where another tab holds this workbook: looking is allowed, changing is not. */
  get readOnly(): boolean {
    return this.locked;
  }

  set readOnly(locked: boolean) {
    this.locked = locked;
    this.grid.getActiveWorkbook()?.setEditable(!locked);
  }

  /** The selected cell's top left corner. */
  get selected() {
    const sheet = this.book.getActiveSheet();
    const range = sheet.getActiveCell() ?? sheet.getActiveRange();
    return { sheet: sheet.getSheetName(), row: range?.getRow() ?? 0, column: range?.getColumn() ?? 0 };
  }

  /** The sheet of that name. Throws a HostError where there is none. */
  sheet(name: string): FWorksheet {
    const found = this.book.getSheetByName(name);
    if (!found) throw noSheet(name);
    return found;
  }

  /** Calls back, once for many changes in a row, after a cell has changed or, where asked for, the selection. */
  watch(changed: () => void, selections: boolean, pause: number): () => void {
    let waiting: ReturnType<typeof setTimeout> | undefined;
    const heard = this.grid.onCommandExecuted(({ id, type }) => {
      if (type !== CommandType.MUTATION && !(selections && watched.test(id))) return;
      clearTimeout(waiting);
      waiting = setTimeout(changed, pause);
    });
    return () => {
      clearTimeout(waiting);
      heard.dispose();
    };
  }

  /** Why the selected cell shows an error, or the remark that it carries, after its address; nothing where neither is so. */
  explain(): string | undefined {
    const { sheet, row, column } = this.selected;
    const worksheet = this.sheet(sheet);
    const range = worksheet.getRange(row, column);
    const place = address({ row, column });
    const raw = range.getRawValue() ?? range.getValue();
    if (typeof raw === "string" && raw in errorMeaning) {
      const said = this.messages.find({ sheet: worksheet.getSheetId(), row, column }, raw);
      // A cell that a formula's result spills into has no formula of its own, but a message.
      if (said || range.getFormula() !== "") return `${place} ${raw} ${said ?? errorMeaning[raw]}`;
    }
    const note = worksheet.getSheet().getCellRaw(row, column)?.custom?.note as unknown;
    return typeof note === "string" && note !== "" ? `${place} ${note}` : undefined;
  }

  /** The whole workbook as plain data, for another host. */
  snapshot(): WorkbookContent {
    const sheets = this.book.getSheets().map((sheet) => sheetContent(sheet, this.messages));
    return { sheets, activeSheet: this.book.getActiveSheet().getSheetName() };
  }

  /** The active sheet as plain data and as each of its cells is shown. */
  activeSheet(): { sheet: SheetData; shown: (row: number, column: number) => string } {
    const worksheet = this.book.getActiveSheet();
    const shown = (row: number, column: number) => worksheet.getRange(row, column).getDisplayValue();
    return { sheet: sheetContent(worksheet, this.messages), shown };
  }

  /** The whole workbook with everything that the grid itself knows, for keeping and for a file of its own. */
  save(): IWorkbookData {
    return { ...this.book.save(), custom: { activeSheet: this.book.getActiveSheet().getSheetName() } };
  }

  /** Replaces the workbook by one that was saved. Where that fails the present one stays, and the failure is thrown. */
  async restore(saved: IWorkbookData): Promise<void> {
    await this.replace(saved, async (book) =>
      activate(book, saved.custom?.activeSheet as string | undefined),
    );
  }

  /** Replaces the workbook by content that came from elsewhere. Where that fails the present one stays. */
  async load({ sheets, activeSheet }: WorkbookContent, name = ""): Promise<void> {
    const ids = sheets.map((_, index) => `sheet-${index + 1}`);
    const entries = sheets.map((sheet, index) => [ids[index], { id: ids[index], ...gridSheet(sheet) }]);
    const data = { name, appVersion: "", locale: LocaleType.EN_US, styles: {} };
    await this.replace(
      { ...data, id: "", sheetOrder: ids, sheets: Object.fromEntries(entries) },
      async (book) => {
        for (const sheet of sheets) await furnish(this.grid, book.getSheetByName(sheet.name)!, sheet);
        activate(book, activeSheet);
      },
    );
  }

  /** Works out every formula, as after loading, when the grid shows what was saved. */
  async recalculate(): Promise<void> {
    await drawn(this.grid);
    this.messages.clear();
    const ended = this.grid.getFormula().onCalculationEnd();
    this.grid.getFormula().executeCalculation();
    await ended;
    await this.computed();
  }

  /** Settles when the engine has worked out what the last change asks for. */
  async computed(): Promise<void> {
    await this.grid
      .getFormula()
      .onCalculationResultApplied(10_000)
      .catch(() => undefined);
  }

  /** Everything that the work changes is undone by one step. */
  async asOneStep(work: () => Promise<void>): Promise<void> {
    const batch = this.undoSteps(this.book).__tempBatchingUndoRedo(this.book.getId());
    await work().finally(() => batch.dispose());
  }

  private async replace(data: IWorkbookData, finish: (book: FWorkbook) => Promise<void>): Promise<void> {
    const before = this.grid.getActiveWorkbook();
    const id = `workbook-${crypto.randomUUID()}`;
    try {
      const book = this.grid.createWorkbook(withId(data, id));
      await finish(book);
      this.undoSteps(book).clearUndoRedo(id);
    } catch (error) {
      if (this.grid.getWorkbook(id)) this.grid.disposeUnit(id);
      throw error;
    }
    if (before) this.grid.disposeUnit(before.getId());
    this.readOnly = this.locked;
    await this.recalculate();
  }

  private undoSteps(book: FWorkbook): IUndoRedoService {
    return book.getActiveSheet().getInject().get(IUndoRedoService);
  }
}

/** Shows the sheet of that name, else the first, with its first cell in view selected. */
function activate(book: FWorkbook, name: string | undefined): void {
  selectFirst(book.setActiveSheet((name && book.getSheetByName(name)) || book.getSheets()[0]));
}

/** The same workbook under another id, which pictures and rules carry too. */
function withId(data: IWorkbookData, id: string): IWorkbookData {
  const renamed = (text: string) =>
    JSON.stringify(JSON.parse(text, (key, value: unknown) => (key === "unitId" ? id : value)));
  const resources = data.resources?.map(({ name, data: text }) => ({ name, data: text && renamed(text) }));
  return { ...data, id, resources };
}
