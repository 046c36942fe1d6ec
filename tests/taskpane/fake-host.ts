import { calls } from "../../functions/calls";
import { type Cell } from "../../src/units/cell";
import {
  HostError,
  type CellChange,
  type FilledCell,
  type IncomingFile,
  type RewrittenCell,
  type SheetContent,
  type WorkbookHost,
} from "../../src/hosts/host";
import { address } from "../../src/sheets/address";
import { calculate, type Worked } from "../../src/sheets/calculate";
import { expression, saying, type Expression } from "../../src/sheets/expression";
import { liveFormula } from "../../src/sheets/formula";
import { parseFormula } from "../../src/sheets/parse";
import { type SheetPlan } from "../../src/sheets/plan";
import { underFreeNames } from "../../src/sheets/renamed";
import { contentOfRead } from "../../src/sheets/replaced";
import { pricesMark } from "../../src/sheets/prices-layout";

interface Sheet {
  name: string;
  cells: Map<string, Worked>;
  /** The cells that carry the mark "fixed in this copy". */
  fixed?: Set<string>;
}

const at = (row: number, column: number) => `${row},${column}`;

/** A workbook in memory that works its formulas out, as a panel's host. `failing` makes the next call of that name fail. */
export class FakeHost implements WorkbookHost {
  readonly can: WorkbookHost["can"];
  sheets: Sheet[] = [{ name: "Sheet1", cells: new Map() }];
  active = "Sheet1";
  selected = { row: 0, column: 0 };
  /** The last row and column of the selection, where it is more than one cell. */
  reach: { bottom?: number; right?: number } = {};
  failing?: keyof WorkbookHost;
  /** The calls in order, by name. */
  asked: string[] = [];
  private listeners = new Set<() => void>();

  constructor(can: Partial<WorkbookHost["can"]> = {}) {
    this.can = { openCopy: false, selfCheck: false, ...can };
  }

  async look() {
    this.begin("look");
    const prices = this.sheets.find(({ cells }) => this.shows(cells.get(at(0, 0))) === pricesMark);
    return {
      sheetNames: this.sheets.map(({ name }) => name),
      active: this.shown(this.sheet(this.active)),
      ...(prices ? { prices: this.shown(prices) } : {}),
      selected: { sheet: this.active, ...this.selected },
    };
  }

  async read(sheets: string[]) {
    this.begin("read");
    return sheets.map((name) => this.shown(this.sheet(name)));
  }

  async fillCopy(sheet: string, name: string, cells: FilledCell[]) {
    this.begin("fillCopy");
    this.refuseName(name);
    const { cells: held, fixed } = this.sheet(sheet);
    this.sheets.push({ name, cells: new Map(held), fixed: new Set(fixed) });
    this.put(name, cells);
    this.activate(name);
    return [];
  }

  async insertSheets(file: IncomingFile) {
    this.begin("insertSheets");
    const { content, lost } = await file.content();
    const added = underFreeNames(
      content.sheets,
      this.sheets.map(({ name }) => name),
    );
    for (const { name, cells } of added) {
      this.sheets.push({ name, cells: new Map() });
      for (const { row, column, value, formula } of cells)
        this.type(name, row, column, formula ?? (value as string));
    }
    this.activate(added[0].name);
    return { names: added.map(({ name }) => name), lost };
  }

  async rewrite(sheet: string, cells: RewrittenCell[]) {
    this.begin("rewrite");
    for (const cell of cells) {
      const on = cell.sheet ?? sheet;
      this.put(on, [cell]);
      const fixed = (this.sheet(on).fixed ??= new Set());
      if (cell.style === "fixed") fixed.add(at(cell.row, cell.column));
      else if (cell.style === "live") fixed.delete(at(cell.row, cell.column));
    }
    this.heard();
  }

  async selection() {
    this.begin("selection");
    const { row, column } = this.selected;
    return { sheet: this.active, top: row, left: column, bottom: row, right: column, ...this.reach };
  }

  async content() {
    this.begin("content");
    return contentOfRead(this.sheets.map((sheet) => this.shown(sheet)));
  }

  async write(plans: SheetPlan[]) {
    this.begin("write");
    for (const { name, cells } of plans) {
      this.refuseName(name);
      this.sheets.push({
        name,
        cells: new Map(cells.map((cell) => [at(cell.row, cell.column), { ...cell }])),
      });
    }
    this.active = plans.at(-1)!.name;
    this.heard();
  }

  async update(sheet: string, changes: CellChange[]) {
    this.begin("update");
    for (const { row, column, value } of changes) this.type(sheet, row, column, value);
  }

  async append(sheet: string, rows: Cell[][]) {
    this.begin("append");
    const first = this.shown(this.sheet(sheet)).values.length;
    rows.forEach((cells, down) =>
      cells.forEach((value, column) => this.type(sheet, first + down, column, value as number)),
    );
  }

  async putFormula(formula: string) {
    this.begin("putFormula");
    const { row, column } = this.selected;
    if (this.sheet(this.active).cells.has(at(row, column)))
      throw new HostError(`The cell ${address(this.selected)} holds something.`);
    this.sheet(this.active).cells.set(at(row, column), { row, column, says: parseFormula(formula) });
    this.heard();
    return { sheet: this.active, address: address(this.selected) };
  }

  async show(sheet: string) {
    this.begin("show");
    this.activate(sheet);
  }

  watch(changed: () => void) {
    this.listeners.add(changed);
    return () => void this.listeners.delete(changed);
  }

  /** The user selects a sheet. */
  activate(sheet: string) {
    this.active = this.sheet(sheet).name;
    this.heard();
  }

  /** The user types into a cell; a text that begins with = is a formula. */
  type(sheet: string, row: number, column: number, value: CellChange["value"]) {
    const says: Expression =
      typeof value === "string" && value.startsWith("=") ? parseFormula(value) : expression(value as string);
    const { cells } = this.sheet(sheet);
    if (value === null || value === "") cells.delete(at(row, column));
    else cells.set(at(row, column), { row, column, says });
    this.heard();
  }

  /** The user takes a whole row out of a sheet, without its formulas being adjusted. */
  clearRow(sheet: string, row: number) {
    for (const [place, cell] of this.sheet(sheet).cells)
      if (cell.row === row) this.sheet(sheet).cells.delete(place);
    this.heard();
  }

  /** What a cell shows. */
  value(sheet: string, row: number, column: number): Cell {
    return this.shown(this.sheet(sheet)).values[row]?.[column] ?? null;
  }

  sheet(name: string): Sheet {
    const found = this.sheets.find((sheet) => sheet.name === name);
    if (!found) throw new HostError(`There is no sheet "${name}".`);
    return found;
  }

  private refuseName(name: string) {
    if (this.sheets.some((sheet) => sheet.name === name)) throw new HostError(`"${name}" is there already.`);
  }

  private put(sheet: string, cells: FilledCell[]) {
    const held = this.sheet(sheet).cells;
    for (const { row, column, says } of cells) held.set(at(row, column), { row, column, says: saying(says) });
  }

  private begin(call: keyof WorkbookHost) {
    this.asked.push(call);
    if (this.failing !== call) return;
    this.failing = undefined;
    throw new HostError("The workbook is protected. Take the protection off, then try again.");
  }

  private heard() {
    for (const listener of this.listeners) listener();
  }

  private shows(cell: Worked | undefined): Cell {
    return cell?.says.kind === "constant" ? cell.says.value : null;
  }

  private shown({ name, cells }: Sheet): SheetContent {
    const books = this.sheets.map((sheet) => ({ name: sheet.name, cells: [...sheet.cells.values()] }));
    const valueAt = calculate(books, (called) => calls[called]);
    const held = [...cells.values()].filter(({ says }) => says.kind !== "constant" || says.value !== null);
    const rows = Math.max(-1, ...held.map(({ row }) => row)) + 1;
    const columns = Math.max(-1, ...held.map(({ column }) => column)) + 1;
    const each = <T>(of: (row: number, column: number) => T) =>
      Array.from({ length: rows }, (_, row) =>
        Array.from({ length: columns }, (_, column) => of(row, column)),
      );
    return {
      name,
      values: each((row, column) => valueAt(name, row, column)),
      formulas: each((row, column) => {
        const cell = cells.get(at(row, column));
        return cell && cell.says.kind !== "constant" ? liveFormula(cell.says) : this.shows(cell);
      }),
    };
  }
}
