import { type SheetPlan } from "../../sheets/plan";
import { HostError } from "../host";
import { addChart } from "./chart";
import { fillSheet } from "./fill";
import { messages } from "./messages";
import { checkSheetNames } from "./names";
import { type Painter } from "../svg-to-png";
import { asOneStepAsked, codeOf, once, refusal, tracesOf } from "./session";

/** What is known of a write that is under way: the sheets it made, or undefined where Excel did not say. */
interface Progress {
  made: string[] | undefined;
}

/**
 * Writes new sheets, all or none: one request writes them, a second sets the pictures in place and shows the last.
 * Refuses a name that Excel does not take or that exists.
 */
export async function writeSheets(plans: SheetPlan[], paint: Painter): Promise<void> {
  if (plans.length === 0) return;
  const names = plans.map(({ name }) => name);
  checkSheetNames(names);
  const painted = await paintAll(plans, paint);
  const progress: Progress = { made: [] };
  try {
    await asOneStepAsked(
      (context) => askFor(context, plans, painted),
      (context, asked) => send(context, asked, names, progress),
      () => takeBack(names, progress, undefined),
    );
  } catch (error) {
    // A plan that no sheet can be made of is a fault of ours, found before anything was sent.
    if (error instanceof RangeError) throw error;
    throw await explained(error, names, progress);
  }
}

async function paintAll(plans: SheetPlan[], paint: Painter): Promise<string[][]> {
  const painted = ({ pictures }: SheetPlan) =>
    Promise.all(pictures.map(({ svg, width, height }) => paint(svg, width, height)));
  return Promise.all(plans.map(painted)).catch(() => {
    throw new HostError(`${messages.noPicture} ${messages.untouched}`);
  });
}

/** Asks for the sheets and everything on them. */
function askFor(context: Excel.RequestContext, plans: SheetPlan[], painted: string[][]) {
  context.application.suspendScreenUpdatingUntilNextSync();
  // All sheets before any content, so that their formulas may name each other; a trace after each tells how far it came.
  const sheets = plans.map(({ name }) => {
    const sheet = context.workbook.worksheets.add(name);
    context.trace(name);
    return sheet;
  });
  sheets.forEach((sheet, k) => fillSheet(sheet, plans[k]));
  sheets.forEach((sheet, k) => plans[k].charts?.forEach((chart) => addChart(sheet, chart)));
  const pictures = sheets.flatMap((sheet, k) => plans[k].pictures.map((picture, j) => addPicture(sheet, picture, painted[k][j]))); // prettier-ignore
  return { sheets, pictures };
}

async function send(
  context: Excel.RequestContext,
  { sheets, pictures }: ReturnType<typeof askFor>,
  names: string[],
  progress: Progress,
) {
  try {
    await context.sync();
  } catch (error) {
    progress.made = tracesOf(error);
    throw error;
  }
  progress.made = names;
  for (const { shape, corner } of pictures) {
    shape.left = corner.left;
    shape.top = corner.top;
  }
  sheets[sheets.length - 1].activate();
  await context.sync();
}

function addPicture(sheet: Excel.Worksheet, picture: SheetPlan["pictures"][number], png: string) {
  const shape = sheet.shapes.addImage(png);
  shape.lockAspectRatio = false;
  shape.width = picture.width;
  shape.height = picture.height;
  shape.altTextDescription = picture.description;
  const corner = once(sheet.getRangeByIndexes(picture.row, picture.column, 1, 1));
  corner.load({ left: true, top: true });
  return { shape, corner };
}

/** Removes the sheets that a failed write made; the result names those that may still be there. */
async function takeBack(names: string[], progress: Progress, taken: string | undefined): Promise<string[]> {
  const made = progress.made;
  progress.made = [];
  // Without an answer nobody knows whose a sheet of this name is: it is not deleted, but named.
  if (made === undefined) return names;
  if (made.length === 0 && taken !== undefined) return [];
  try {
    return await Excel.run(async (context) => {
      const { worksheets } = context.workbook;
      for (const name of made) worksheets.getItemOrNullObject(name).delete();
      worksheets.load({ name: true });
      await context.sync();
      const present = worksheets.items.map(({ name }) => name.toLowerCase());
      return names.filter((name) => name !== taken && present.includes(name.toLowerCase()));
    });
  } catch {
    return made;
  }
}

async function explained(error: unknown, names: string[], progress: Progress): Promise<HostError> {
  const taken = codeOf(error) === "ItemAlreadyExists" ? names[progress.made?.length ?? 0] : undefined;
  const left = await takeBack(names, progress, taken);
  const why = taken === undefined ? refusal(error).message : messages.nameTaken(taken);
  return new HostError(`${why} ${left.length > 0 ? messages.left(left) : messages.untouched}`);
}
