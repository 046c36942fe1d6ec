import { execFile, spawnSync } from "node:child_process";
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";
import { readXlsx } from "../../src/hosts/xlsx/xlsx";
import { type WorkbookContent } from "../../src/sheets/workbook-content";
import { type Cell } from "../../src/units/cell";

const run = promisify(execFile);

/** Every formula of an opened file is worked out anew, whatever values the file brings. */
const settings = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

/** True where LibreOffice can be run. In CI its absence is a failure; elsewhere the checks say that they are skipped. */
export function officeIsHere(): boolean {
  if (spawnSync("soffice", ["--version"]).status === 0) return true;
  if (process.env.CI) throw new Error("soffice is missing, and CI needs it");
  console.log("skipped: no soffice");
  return false;
}

/** `test`, where LibreOffice can be run. */
export const officeTest = officeIsHere() ? test : test.skip;

let last: Promise<unknown> = Promise.resolve();

/** Converts files in one process of LibreOffice with a profile of its own, one process at a time. */
function convert(files: Uint8Array[], to: string): Promise<Uint8Array[]> {
  const next = last.catch(() => undefined).then(() => convertNow(files, to));
  last = next;
  return next;
}

async function convertNow(files: Uint8Array[], to: string): Promise<Uint8Array[]> {
  const folder = await mkdtemp(join(tmpdir(), "penstake-office-"));
  try {
    const [profile, out] = [join(folder, "profile"), join(folder, "out")];
    await mkdir(join(profile, "user"), { recursive: true });
    await writeFile(join(profile, "user", "registrymodifications.xcu"), settings);
    const names = files.map((_, k) => join(folder, `book${k}.xlsx`));
    await Promise.all(files.map((file, k) => writeFile(names[k], file)));
    const options = [`-env:UserInstallation=${pathToFileURL(profile).href}`, "--headless", "--norestore"];
    await run("soffice", [...options, "--convert-to", to, "--outdir", out, ...names], { timeout: 600_000 });
    const made = await readdir(out);
    if (made.length !== files.length)
      throw new Error(`LibreOffice made ${made.length} of ${files.length} files`);
    return await Promise.all(files.map((_, k) => readFile(join(out, `book${k}.${to}`))));
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}

/** The workbooks, of so many MB at most, as LibreOffice shows them after it has worked out every formula anew, in the order given. */
export async function recalculate(files: Uint8Array[], largest?: number): Promise<WorkbookContent[]> {
  const made = await convert(files, "xlsx");
  return Promise.all(made.map(async (file) => (await readXlsx(file, largest)).content));
}

/** The workbook as LibreOffice prints it. */
export async function toPdf(file: Uint8Array): Promise<Uint8Array> {
  return (await convert([file], "pdf"))[0];
}

/** What a cell shows; a blank one is null. */
export function shown(content: WorkbookContent, sheet: string, row: number, column: number): Cell {
  const { cells } = content.sheets.find(({ name }) => name === sheet)!;
  return cells.find((cell) => cell.row === row && cell.column === column)?.value ?? null;
}
