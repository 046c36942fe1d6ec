import { type Cell } from "../../units/cell";
import { saying } from "../../sheets/expression";
import { type CellChange, HostError, type RewrittenCell } from "../host";
import { addressesOf, blocksOf, readBlocks, writeBlocks, type Block } from "./blocks";
import { entryFor, entryOf } from "./entry";
import { mark, readMarked, unmark } from "./marks";
import { messages } from "./messages";
import { asOneStep, once, refusal, session } from "./session";

/**
 * Writes the named cells of a sheet and no other. What they said is read first, and written back where Excel
 * refuses a part of the change.
 */
export async function updateCells(sheet: string, changes: CellChange[]): Promise<void> {
  if (changes.length === 0) return;
  const blocks = blocksOf(changes.map(({ value, ...place }) => ({ ...place, entry: entryOf(value) })));
  const before = await readBlocks(sheet, blocks);
  await orAsBefore(sheet, blocks, (found) => writeBlocks(found, blocks), (found) => writeBlocks(found, before));
} // prettier-ignore

/**
 * Replaces what the named cells say, and sets or takes away their marks. What they said and how they looked is read
 * first, and brought back where Excel refuses a part of the change.
 */
export async function rewriteCells(sheet: string, cells: RewrittenCell[]): Promise<void> {
  if (cells.length === 0) return;
  const blocks = blocksOf(cells.map(({ row, column, says }) => ({ row, column, entry: entryFor(saying(says)) })));
  const [before, marked] = [await readBlocks(sheet, blocks), await readMarked(sheet, cells)];
  await orAsBefore(
    sheet,
    blocks,
    (found) => (writeBlocks(found, blocks), mark(found, marked)),
    (found) => (unmark(found, marked), writeBlocks(found, before)),
  );
} // prettier-ignore

/** Sends a change of these blocks as one step; where Excel refuses a part of it, sends what brings them back. */
async function orAsBefore(
  sheet: string,
  blocks: Block[],
  change: (sheet: Excel.Worksheet) => void,
  bringBack: (sheet: Excel.Worksheet) => void,
): Promise<void> {
  const send = (ask: typeof change) => async (context: Excel.RequestContext) => {
    ask(context.workbook.worksheets.getItem(sheet));
    await context.sync();
  };
  try {
    await asOneStep(send(change));
  } catch (error) {
    const why = refusal(error).message;
    const restored = await session(send(bringBack)).then(() => true, () => false);
    throw new HostError(`${why} ${restored ? messages.untouched : messages.notRestored(sheet, addressesOf(blocks))}`);
  }
} // prettier-ignore

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
  await asOneStep(async (context) => {
    writeBlocks(context.workbook.worksheets.getItem(sheet), [{ area, entries }]);
    await context.sync();
  }).catch((error: unknown) => {
    throw refusal(error);
  });
}
