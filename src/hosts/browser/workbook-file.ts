import { type IWorkbookData, type IWorksheetData, type LocaleType } from "@univerjs/core";
import { HostError } from "../host";
import { fileTooLarge, fileTooNew, notOurFile } from "./messages";
import { isOwnPicture } from "./picture";

/** The ending of a whole-workbook file. */
export const fileEnding = ".penstake";

const version = 1;
const mostMegabytes = 50;
const mostRows = 100_000;
const mostColumns = 2_000;
/** What the grid keeps beside the cells, by its own names, and how an entry of each must look to be taken over. */
const beside: Record<string, (entry: unknown) => boolean> = {
  SHEET_DATA_VALIDATION_PLUGIN: isRules,
  SHEET_DRAWING_PLUGIN: isDrawings,
  SHEET_DEFINED_NAME_PLUGIN: isDefinedName,
};

/** A whole workbook as the text of a file. */
export const fileText = (workbook: IWorkbookData) => JSON.stringify({ penstake: version, workbook });

/**
 * The workbook in the text of a file. Only what a workbook is made of is taken over, each part in the form it must
 * have; anything else is left behind. Throws a HostError where it is no such file.
 */
export function readFile(text: string): IWorkbookData {
  if (text.length > mostMegabytes * 1e6) throw fileTooLarge(mostMegabytes);
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch {
    throw notOurFile();
  }
  if (!isRecord(file) || typeof file.penstake !== "number" || !isRecord(file.workbook)) throw notOurFile();
  if (file.penstake > version) throw fileTooNew();
  try {
    return checkedWorkbook(file.workbook);
  } catch (reason) {
    // Data nested without end is no workbook either.
    throw reason instanceof HostError ? reason : notOurFile();
  }
}

type Fields = Record<string, unknown>;

const isRecord = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);
const isCount = (value: unknown, most: number): value is number =>
  Number.isInteger(value) && (value as number) >= 0 && (value as number) <= most;
const isRange = (value: unknown): value is Fields =>
  isRecord(value) &&
  isCount(value.startRow, mostRows) &&
  isCount(value.endRow, mostRows) &&
  isCount(value.startColumn, mostColumns) &&
  isCount(value.endColumn, mostColumns);

/** A workbook's data in the form it must have. Throws a HostError where it has no sheets. */
export function checkedWorkbook(data: unknown): IWorkbookData {
  if (!isRecord(data) || !isRecord(data.sheets) || !Array.isArray(data.sheetOrder)) throw notOurFile();
  const found = data.sheets;
  const order = [...new Set(data.sheetOrder as unknown[])].filter(
    (id): id is string => typeof id === "string" && isRecord(found[id]),
  );
  const names = new Set(order.map((id) => String((found[id] as Fields).name).toLowerCase()));
  if (order.length === 0 || names.size < order.length) throw notOurFile();
  const resources = Array.isArray(data.resources) ? (data.resources as unknown[]) : [];
  return {
    id: typeof data.id === "string" ? data.id : "workbook",
    name: typeof data.name === "string" ? data.name : "",
    appVersion: "",
    locale: "enUS" as LocaleType,
    styles: isRecord(data.styles) ? (plain(data.styles) as IWorkbookData["styles"]) : {},
    sheetOrder: order,
    sheets: Object.fromEntries(order.map((id) => [id, checkedSheet(id, found[id] as Fields)])),
    custom:
      isRecord(data.custom) && typeof data.custom.activeSheet === "string"
        ? { activeSheet: data.custom.activeSheet }
        : {},
    resources: Object.entries(beside).map(([name, fits]) => checkedResource(resources, name, fits)),
  };
}

function checkedSheet(id: string, sheet: Fields): Partial<IWorksheetData> {
  if (typeof sheet.name !== "string" || !isRecord(sheet.cellData)) throw notOurFile();
  const cells = lines(sheet.cellData, mostRows, (row) =>
    isRecord(row) ? lines(row, mostColumns, checkedCell) : undefined,
  );
  const own = plain(sheet) as Partial<IWorksheetData>;
  const counts = {
    rowCount: isCount(sheet.rowCount, mostRows) ? sheet.rowCount : 200,
    columnCount: isCount(sheet.columnCount, mostColumns) ? sheet.columnCount : 26,
  };
  const shaped = {
    rowData: isRecord(own.rowData)
      ? lines(own.rowData, mostRows, (row) => (isRecord(row) ? row : undefined))
      : {},
    columnData: isRecord(own.columnData)
      ? lines(own.columnData, mostColumns, (column) => (isRecord(column) ? column : undefined))
      : {},
    mergeData: Array.isArray(own.mergeData) ? own.mergeData.filter(isRange) : [],
  };
  const { freeze, hidden, tabColor, defaultColumnWidth, defaultRowHeight, showGridlines, custom } = own;
  const rest = {
    freeze: isRecord(freeze) ? freeze : undefined,
    hidden,
    tabColor,
    defaultColumnWidth,
    defaultRowHeight,
    showGridlines,
    custom: { print: isRecord(custom) && isPrintSetUp(custom.print) ? custom.print : null },
  };
  return {
    id,
    name: sheet.name,
    ...counts,
    ...shaped,
    ...defined(rest),
    cellData: cells,
  } as Partial<IWorksheetData>;
}

function checkedCell(cell: unknown): Fields | undefined {
  if (!isRecord(cell)) return undefined;
  const { v, t, f, si, s, p, custom } = plain(cell) as Fields;
  const made: Fields = {};
  if (["string", "number", "boolean"].includes(typeof v)) made.v = v;
  if (isCount(t, 4)) made.t = t;
  if (typeof f === "string" && f.startsWith("=")) made.f = f;
  if (typeof si === "string") made.si = si;
  if (typeof s === "string" || isRecord(s)) made.s = s;
  if (isRecord(p) && isRecord(p.body) && typeof p.body.dataStream === "string") made.p = p;
  if (isRecord(custom))
    made.custom = { input: custom.input === true, note: typeof custom.note === "string" ? custom.note : "" };
  return made;
}

/** The entries of a table whose keys are row or column numbers, each as `check` gives it back. */
function lines(table: object, most: number, check: (entry: unknown) => unknown): Fields {
  const kept = Object.entries(table).filter(([key]) => /^\d+$/.test(key) && Number(key) <= most);
  return defined(Object.fromEntries(kept.map(([key, entry]) => [key, check(entry)])));
}

const defined = (fields: Fields) =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && value !== null));

/** The same data without the keys by which an object could reach its prototype. */
function plain(data: unknown): unknown {
  if (Array.isArray(data)) return data.map(plain);
  if (!isRecord(data)) return data;
  const safe = Object.entries(data).filter(
    ([key]) => !["__proto__", "constructor", "prototype"].includes(key),
  );
  return Object.fromEntries(safe.map(([key, value]) => [key, plain(value)]));
}

function checkedResource(resources: unknown[], name: string, fits: (entry: unknown) => boolean) {
  const given = resources.find((one) => isRecord(one) && one.name === name);
  let entries: unknown;
  try {
    entries = plain(JSON.parse(String((given as Fields | undefined)?.data || "{}")));
  } catch {
    entries = {};
  }
  const kept = isRecord(entries) ? Object.entries(entries).filter(([, entry]) => fits(entry)) : [];
  return { name, data: JSON.stringify(Object.fromEntries(kept)) };
}

function isPrintSetUp(set: unknown): boolean {
  if (!isRecord(set) || !isRecord(set.area) || !isRecord(set.pages) || typeof set.footer !== "string")
    return false;
  const {
    area,
    pages,
    repeatRows,
    repeatFrom = 0,
  } = set as Record<string, unknown> & { area: Fields; pages: Fields };
  const { top, left, bottom, right } = area;
  const lines = [top, left, bottom, right, pages.wide, pages.tall, repeatRows, repeatFrom];
  return lines.every((count) => isCount(count, mostRows));
}

function isRules(rules: unknown): boolean {
  const isRule = (rule: unknown) =>
    isRecord(rule) &&
    typeof rule.uid === "string" &&
    typeof rule.type === "string" &&
    Array.isArray(rule.ranges) &&
    rule.ranges.every(isRange);
  return Array.isArray(rules) && rules.every(isRule);
}

/** A sheet's pictures, held by the file itself: where one would be fetched from elsewhere, all of them are left behind. */
function isDrawings(sheet: unknown): boolean {
  if (!isRecord(sheet) || !isRecord(sheet.data) || !Array.isArray(sheet.order)) return false;
  return Object.values(sheet.data).every(
    (one) =>
      isRecord(one) && isOwnPicture(one.source) && isRecord(one.transform) && isRecord(one.sheetTransform),
  );
}

function isDefinedName(name: unknown): boolean {
  return isRecord(name) && typeof name.name === "string" && typeof name.formulaOrRefString === "string";
}
