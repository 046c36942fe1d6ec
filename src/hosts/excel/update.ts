import { type Cell } from "../../units/cell";
import { type CellChange, HostError } from "../host";
import { areaAddress, groupBy, rectangles, type Area } from "./areas";
import { entryAgain, entryOf, type Entry } from "./entry";
import { messages } from "./messages";
import { asOneStep, once, refusal, session } from "./session";

/** A block of cells that are written together, and what they are to say. */
interface Block {
  area: Area;
  entries: Entry[][];
}

/**
 * Writes the named cells of a sheet and no other. What they said is read first, and written back where Excel
 * refuses a part of the change.
 */
export async function updateCells(sheet: string, changes: CellChange[]): Promise<void> {
  if (changes.length === 0) return;
  const blocks = blocksOf(changes);
  const before = await session(async (context) => {
    const ranges = rangesOf(context, sheet, blocks).map((range) => range.load({ values: true, formulas: true }));
    await context.sync();
    return ranges.map(({ values, formulas }, k) => ({
      area: blocks[k].area,
      entries: (formulas as Entry[][]).map((row, i) => row.map((formula, j) => entryAgain(values[i][j] as Entry, formula))),
    }));
  });
  try {
    await asOneStep((context) => writeBlocks(context, sheet, blocks));
  } catch (error) {
    const why = refusal(error).message;
    const restored = await session((context) => writeBlocks(context, sheet, before)).then(() => true, () => false);
    const places = blocks.map(({ area }) => areaAddress(area));
    throw new HostError(`${why} ${restored ? messages.untouched : messages.notRestored(sheet, places)}`);
  }
} // prettier-ignore

/** The changes as one block a run of neighbors in a column; inputs stand under each other. */
function blocksOf(changes: CellChange[]): Block[] {
  const said = new Map(changes.map(({ row, column, value }) => [`${row} ${column}`, value]));
  const columns = [...groupBy(changes, ({ column }) => column).values()];
  return columns.flatMap(rectangles).map((area) => ({
    area,
    entries: Array.from({ length: area.bottom - area.top + 1 }, (_, k) => [
      entryOf(said.get(`${area.top + k} ${area.left}`) ?? ""),
    ]),
  }));
}

function rangesOf(context: Excel.RequestContext, sheet: string, blocks: Block[]): Excel.Range[] {
  const found = context.workbook.worksheets.getItem(sheet);
  return blocks.map(({ area, entries }) =>
    once(found.getRangeByIndexes(area.top, area.left, entries.length, entries[0].length)),
  );
}

async function writeBlocks(context: Excel.RequestContext, sheet: string, blocks: Block[]): Promise<void> {
  rangesOf(context, sheet, blocks).forEach((range, k) => (range.formulas = blocks[k].entries));
  await context.sync();
}

/** Adds rows below the used cells of a sheet, from column A. */
export async function appendRows(sheet: string, rows: Cell[][]): Promise<void> {
  if (rows.length === 0) return;
  const width = Math.max(...rows.map((row) => row.length));
  const entries = rows.map((row) => Array.from({ length: width }, (_, k) => entryOf(row[k] ?? null)));
  const top = await session(async (context) => {
    const used = once(context.workbook.worksheets.getItem(sheet).getUsedRangeOrNullObject(true));
    used.load({ rowIndex: true, rowCount: true });
    await context.sync();
    return used.isNullObject ? 0 : used.rowIndex + used.rowCount;
  });
  const area = { top, left: 0, bottom: top + rows.length - 1, right: width - 1 };
  await asOneStep((context) => writeBlocks(context, sheet, [{ area, entries }])).catch((error: unknown) => {
    throw refusal(error);
  });
}
