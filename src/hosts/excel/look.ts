import { pricesMark, pricesName } from "../../sheets/prices-layout";
import { HostError, type SheetContent, type WorkbookView } from "../host";
import { cellOf, type Entry } from "./entry";
import { messages } from "./messages";
import { once, session } from "./session";

/** Reads what the panel needs in one round trip; two more when the sheet of prices bears another name. */
export async function look(): Promise<WorkbookView> {
  return session(async (context) => {
    const { workbook } = context;
    const sheets = workbook.worksheets.load({ name: true });
    const active = workbook.worksheets.getActiveWorksheet().load({ name: true });
    const used = usedCells(active);
    const usual = workbook.worksheets.getItemOrNullObject(pricesName).load({ name: true });
    const usualUsed = usedCells(usual);
    const selected = once(workbook.getActiveCell()).load({ rowIndex: true, columnIndex: true });
    await context.sync();
    const sheetNames = sheets.items.map(({ name }) => name);
    const expected = usual.isNullObject ? undefined : contentOf(usual.name, usualUsed);
    return {
      sheetNames,
      active: contentOf(active.name, used),
      prices: isPrices(expected) ? expected : await findPrices(context, sheetNames),
      selected: { sheet: active.name, row: selected.rowIndex, column: selected.columnIndex },
    };
  });
}

/** Reads several sheets in one round trip, in the order asked for. */
export async function readSheets(names: string[]): Promise<SheetContent[]> {
  if (names.length === 0) return [];
  return session(async (context) => {
    const sheets = names.map((name) => context.workbook.worksheets.getItemOrNullObject(name).load({ name: true }));
    const used = sheets.map(usedCells);
    await context.sync();
    if (sheets.some(({ isNullObject }) => isNullObject)) throw new HostError(messages.gone);
    return sheets.map(({ name }, k) => contentOf(name, used[k]));
  });
} // prettier-ignore

const isPrices = (content: SheetContent | undefined) => content?.values[0]?.[0] === pricesMark;

async function findPrices(context: Excel.RequestContext, names: string[]): Promise<SheetContent | undefined> {
  const sheet = (name: string) => context.workbook.worksheets.getItem(name);
  const corners = names.map((name) => once(sheet(name).getRangeByIndexes(0, 0, 1, 1)).load({ values: true }));
  await context.sync();
  const name = names[corners.findIndex(({ values }) => values[0][0] === pricesMark)];
  if (name === undefined) return undefined;
  const used = usedCells(sheet(name));
  await context.sync();
  return contentOf(name, used);
}

/** The cells of a sheet that hold something, asked for with the next request. */
export const usedCells = (sheet: Excel.Worksheet): Excel.Range =>
  once(sheet.getUsedRangeOrNullObject(true)).load({
    values: true,
    formulas: true,
    rowIndex: true,
    columnIndex: true,
  });

/** A sheet's used cells as content from A1. */
export function contentOf(name: string, used: Excel.Range): SheetContent {
  if (used.isNullObject) return { name, values: [], formulas: [] };
  const { rowIndex, columnIndex } = used;
  const fromA1 = (block: Entry[][]) => {
    const width = columnIndex + block[0].length;
    const before = new Array<null>(columnIndex).fill(null);
    const above = Array.from({ length: rowIndex }, () => new Array<null>(width).fill(null));
    return [...above, ...block.map((row) => [...before, ...row.map(cellOf)])];
  };
  return { name, values: fromA1(used.values as Entry[][]), formulas: fromA1(used.formulas as Entry[][]) };
}
