import { type Cell } from "../../units/cell";
import { saying } from "../../sheets/expression";
import { type CellChange, HostError, type RewrittenCell } from "../host";
import { groupBy } from "./areas";
import { addressesOf, blocksOf, bringBack, readBlocks, writeBlocks, type Block, type Held } from "./blocks";
import { entryFor, entryOf } from "./entry";
import { mark, readMarked, unmark, type Before } from "./marks";
import { messages } from "./messages";
import { asOneStep, once, refusal, session } from "./session";

/**
 * Writes the named cells of a sheet and no other. What they said is read first, and written back where Excel
 * refuses a part of the change.
 */
export async function updateCells(sheet: string, changes: CellChange[]): Promise<void> {
  if (changes.length === 0) return;
  const blocks = blocksOf(changes.map(({ value, ...place }) => ({ ...place, entry: entryOf(value) })));
  await changeOrBringBack([{ sheet, blocks, before: await readBlocks(sheet, blocks), marked: [] }]);
}

/**
 * Replaces what the named cells say, and sets or takes away their marks. What they said and how they looked is read
 * first, and brought back where Excel refuses a part of the change.
 */
export async function rewriteCells(sheet: string, cells: RewrittenCell[]): Promise<void> {
  const changes: Change[] = [];
  for (const [on, alike] of groupBy(cells, (cell) => cell.sheet ?? sheet)) {
    const entries = alike.map(({ row, column, says }) => ({ row, column, entry: entryFor(saying(says)) }));
    const blocks = blocksOf(entries);
    changes.push({ sheet: on, blocks, before: await readBlocks(on, blocks), marked: await readMarked(on, alike) });
  }
  if (changes.length > 0) await changeOrBringBack(changes);
} // prettier-ignore

/** What is to change on a sheet, and what it was before. */
interface Change {
  sheet: string;
  blocks: Block[];
  before: Held[];
  marked: Before[];
}

/** Sends changes as one step; where Excel refuses a part of them, sends what brings all of them back. */
async function changeOrBringBack(changes: Change[]): Promise<void> {
  const send = (ask: (sheet: Excel.Worksheet, change: Change) => void) => async (context: Excel.RequestContext) => {
    for (const change of changes) ask(context.workbook.worksheets.getItem(change.sheet), change);
    await context.sync();
  };
  const formats = (before: Held[]) => before.map((held) => held.formats);
  try {
    await asOneStep(
      send((sheet, { blocks, before, marked }) => (writeBlocks(sheet, blocks, formats(before)), mark(sheet, marked))),
    );
  } catch (error) {
    const back = send((sheet, { before, marked }) => (unmark(sheet, marked), bringBack(sheet, before)));
    const restored = await session(back).then(() => true, () => false);
    const touched = changes.map(({ sheet, blocks }) => messages.notRestored(sheet, addressesOf(blocks)));
    throw new HostError([refusal(error).message, ...(restored ? [messages.untouched] : touched)].join(" "));
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
