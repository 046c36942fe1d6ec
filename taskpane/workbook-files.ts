import { fileNotShown } from "../src/hosts/browser/messages";
import { type Started } from "../src/hosts/browser/start";
import { fileEnding, fileText, readFile } from "../src/hosts/browser/workbook-file";
import { svgToPng } from "../src/hosts/svg-to-png";
import { dayText } from "./day";
import { aboutEstimates } from "./opened-estimates";
import { ask, download } from "./workbook-ask";

const xlsxType = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

/** A file's name with the day in it, so that a later copy does not look like this one. */
function fileName(kind: string, ending: string): string {
  return `${kind} ${dayText(new Date())}${ending}`;
}

/** Saves the whole workbook as a file that this page opens again. */
export function saveCopy({ workbook }: Started): void {
  download(
    fileName("Workbook", fileEnding),
    new Blob([fileText(workbook.save())], { type: "application/json" }),
  );
}

/** Downloads the workbook for people without the add-in: no function of its own stays live. */
export async function downloadXlsx({ workbook, pen }: Started): Promise<void> {
  const [{ writeXlsx }, { plainForm }] = await Promise.all([
    import("../src/hosts/xlsx/xlsx"),
    import("../src/sheets/plain"),
  ]);
  const bytes = await writeXlsx(plainForm(workbook.snapshot(), pen).content, async (svg, width, height) =>
    Uint8Array.from(atob(await svgToPng(svg, width, height)), (sign) => sign.charCodeAt(0)),
  );
  download(fileName("Plain copy", ".xlsx"), new Blob([bytes as Uint8Array<ArrayBuffer>], { type: xlsxType }));
}

/** Asks before the present workbook gives way. False where the user would rather keep it. */
export async function mayReplace(started: Started, question: string): Promise<boolean> {
  const answer = await ask(question, ["Save a copy first", "Replace it", "Cancel"]);
  if (answer === 0) saveCopy(started);
  return answer === 0 || answer === 1;
}

/** Opens a file of the user's choice in place of the present workbook, and lists what could not be carried. */
export async function openFile(started: Started): Promise<void> {
  const file = await pickFile();
  if (!file) return;
  const { lost, put } = await read(file, started);
  if (!(await mayReplace(started, `Opening ${file.name} replaces the workbook in this page.`))) return;
  await put().catch(() => {
    throw fileNotShown();
  });
  await started.keep();
  if (lost.length > 0)
    await ask(`${file.name} is open. This could not be carried over, or is left to you:`, ["OK"], lost);
}

/** The file, read and checked to the end before anything of the present workbook is touched. */
async function read(file: File, { workbook }: Started): Promise<{ lost: string[]; put(): Promise<void> }> {
  if (!/\.xlsx$/i.test(file.name)) {
    const saved = readFile(await file.text());
    return { lost: [], put: () => workbook.restore(saved) };
  }
  const { readXlsx } = await import("../src/hosts/xlsx/xlsx");
  const { content, lost } = await readXlsx(new Uint8Array(await file.arrayBuffer()));
  return { lost: [...lost, ...aboutEstimates(content)], put: () => workbook.load(content) };
}

function pickFile(): Promise<File | undefined> {
  const input = document.getElementById("file") as HTMLInputElement;
  input.value = "";
  return new Promise((picked) => {
    input.onchange = () => picked(input.files?.[0]);
    input.oncancel = () => picked(undefined);
    input.click();
  });
}
