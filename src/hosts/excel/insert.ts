import { HostError, type IncomingFile, type InsertedSheets } from "../host";
import { fileMessages } from "./file-messages";
import { messages } from "./messages";
import { asOneStep, codeOf, refusal, session } from "./session";

/** What is known of an insertion under way: the ids of the sheets it made, or undefined where Excel did not say. */
interface Progress {
  made: string[] | undefined;
}

/**
 * Adds the sheets of a file behind the others, under names that Excel finds, and shows the first; or leaves the
 * workbook as it was. Excel carries everything over, so nothing is left to say.
 */
export async function insertSheets({ base64 }: IncomingFile): Promise<InsertedSheets> {
  const progress: Progress = { made: [] };
  try {
    return await asOneStep(
      (context) => attempt(context, base64(), progress),
      () => takeBack(progress),
    );
  } catch (error) {
    const untouched = await takeBack(progress);
    const why = codeOf(error) ? (fileMessages.fileRefused[codeOf(error)!] ?? refusal(error).message) : refusal(error).message;
    throw new HostError(`${why} ${untouched ? messages.untouched : fileMessages.leftOfFile}`);
  }
} // prettier-ignore

async function attempt(context: Excel.RequestContext, file: string, progress: Progress): Promise<InsertedSheets> {
  const { worksheets } = context.workbook;
  progress.made = [];
  const ids = context.workbook.insertWorksheetsFromBase64(file, { positionType: "End" });
  try {
    await context.sync();
  } catch (error) {
    // With an answer of Excel's the one request failed whole; without one nobody knows.
    progress.made = codeOf(error) === undefined ? undefined : [];
    throw error;
  }
  progress.made = ids.value;
  if (ids.value.length === 0) throw new HostError(fileMessages.emptyFile);
  const sheets = ids.value.map((id) => worksheets.getItem(id).load({ name: true }));
  sheets[0].activate();
  await context.sync();
  return { names: sheets.map(({ name }) => name), lost: [] };
} // prettier-ignore

/** Removes the sheets that a failed attempt made; false where some may still be there. */
async function takeBack(progress: Progress): Promise<boolean> {
  const { made } = progress;
  if (made === undefined) return false;
  progress.made = [];
  if (made.length === 0) return true;
  return session(async (context) => {
    for (const id of made) context.workbook.worksheets.getItemOrNullObject(id).delete();
    await context.sync();
    return true;
  }).catch(() => false);
}
