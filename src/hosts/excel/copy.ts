import { saying } from "../../sheets/expression";
import { HostError, type FilledCell } from "../host";
import { blocksOf, rangesOf, writeBlocks, type Block } from "./blocks";
import { entryFor } from "./entry";
import { messages } from "./messages";
import { checkSheetNames } from "./names";
import { asOneStep, codeOf, refusal, session, tracesOf } from "./session";

/** The sheets of the workbook before a copy was made, and whether one was: undefined where Excel did not say. */
interface Progress {
  before: string[];
  copied: boolean | undefined;
}

/**
 * Copies a sheet with all it holds under a new name and puts content into cells of the copy, or leaves the workbook
 * as it was. Excel carries everything over, so nothing is left to say.
 */
export async function fillCopy(sheet: string, name: string, cells: FilledCell[]): Promise<string[]> {
  checkSheetNames([name]);
  const blocks = blocksOf(cells.map(({ row, column, says }) => ({ row, column, entry: entryFor(saying(says)) })));
  const { before, formats } = await formatsOf(sheet, name, blocks);
  const progress: Progress = { before, copied: false };
  try {
    await asOneStep(
      (context) => attempt(context, { sheet, name }, blocks, formats, progress),
      () => takeBack(progress),
    );
  } catch (error) {
    throw await explained(error, name, progress);
  }
  return [];
} // prettier-ignore

/** The names that are taken, and the number formats of the cells to fill. */
function formatsOf(sheet: string, name: string, blocks: Block[]) {
  return session(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load({ name: true });
    const ranges = rangesOf(worksheets.getItem(sheet), blocks).map((range) => range.load({ numberFormat: true }));
    await context.sync();
    const before = worksheets.items.map((item) => item.name);
    if (before.some((taken) => taken.toLowerCase() === name.toLowerCase())) throw new HostError(messages.nameTaken(name));
    return { before, formats: ranges.map(({ numberFormat }) => numberFormat as string[][]) };
  });
} // prettier-ignore

async function attempt(
  context: Excel.RequestContext,
  { sheet, name }: { sheet: string; name: string },
  blocks: Block[],
  formats: string[][][],
  progress: Progress,
): Promise<void> {
  context.application.suspendScreenUpdatingUntilNextSync();
  const copy = context.workbook.worksheets.getItem(sheet).copy("End");
  context.trace(name);
  copy.name = name;
  writeBlocks(copy, blocks, formats);
  copy.activate();
  try {
    await context.sync();
  } catch (error) {
    const traces = tracesOf(error);
    progress.copied = traces && traces.length > 0;
    throw error;
  }
}

/** Removes the copy that a failed attempt made; false where it may still be there. */
async function takeBack({ before, copied }: Progress): Promise<boolean> {
  if (copied === false) return true;
  if (copied === undefined) return false;
  try {
    return await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.load({ name: true });
      await context.sync();
      const added = worksheets.items.filter(({ name }) => !before.includes(name));
      // The user may have added a sheet just now: then nobody knows which one is the copy.
      if (added.length !== 1) return added.length === 0;
      added[0].delete();
      await context.sync();
      return true;
    });
  } catch {
    return false;
  }
}

async function explained(error: unknown, name: string, progress: Progress): Promise<HostError> {
  const untouched = await takeBack(progress);
  const why = codeOf(error) === "ItemAlreadyExists" ? messages.nameTaken(name) : refusal(error).message;
  return new HostError(`${why} ${untouched ? messages.untouched : messages.left([name])}`);
}
