import ExcelJS from "exceljs";
import JSZip from "jszip";
import { type WorkbookContent } from "../../sheets/workbook-content";
import { HostError } from "../host";
import { LARGEST_WORKBOOK, unpack, type Archive } from "./archive";
import { withinLimits } from "./limits";
import { countLosses, type Lost } from "./losses";
import { refusals } from "./messages";
import { bookParts, type BookParts } from "./parts";
import { readSheet } from "./read-sheet";

const wanted =
  /^xl\/(?:workbook\.xml|styles\.xml|sharedStrings\.xml|_rels\/workbook\.xml\.rels|worksheets\/.*|drawings\/drawing\d+\.xml|comments.*\.xml)$/i;

/** Elements of a sheet that the reader passes over, since nothing is made of them. */
const ignoreNodes = ["hyperlinks", "drawing", "picture", "tableParts", "conditionalFormatting", "extLst", "sheetProtection", "autoFilter", "rowBreaks"]; // prettier-ignore

/**
 * Reads an .xlsx file. `lost` says in sentences what the file had that could not be carried. Throws a HostError, one
 * sentence for the user, where the file is none, is locked, damaged, or larger than `largest` MB unpacked: 32 for
 * what a user opens.
 */
export async function readXlsx(
  bytes: Uint8Array,
  largest = LARGEST_WORKBOOK,
): Promise<{ content: WorkbookContent; lost: string[] }> {
  const archive = await unpack(bytes, (name) => wanted.test(name), largest);
  if (archive.text("xl/workbook.xml") === undefined) throw refusals.notWorkbook();
  const parts = bookParts(archive);
  if (!parts.sheets.length) throw refusals.damaged();
  const lost = countLosses(archive, parts);
  try {
    const book = new ExcelJS.Workbook();
    const file = await reduced(archive, parts, lost);
    await book.xlsx.load(file as unknown as ArrayBuffer, { ignoreNodes });
    const sheets = parts.sheets.map((part, k) => {
      const sheet = book.getWorksheet(k + 1);
      if (!sheet) throw refusals.damaged();
      return readSheet(sheet, part, lost);
    });
    return { content: { sheets, activeSheet: parts.activeSheet ?? sheets[0].name }, lost: lost.sentences() };
  } catch (reason) {
    throw reason instanceof HostError ? reason : refusals.damaged();
  }
}

/** A small file with the sheets, texts and styles alone, under the names that the file library looks for. */
async function reduced(archive: Archive, { sheets, date1904 }: BookParts, lost: Lost): Promise<Uint8Array> {
  const zip = new JSZip();
  const relation = (k: number, target: string) => `<Relationship Id="r${k}" Type="" Target="${target}"/>`;
  const listed = sheets.map((_, k) => `<sheet name="s${k + 1}" sheetId="${k + 1}" r:id="r${k + 1}"/>`);
  const targets = sheets.map((_, k) => relation(k + 1, `worksheets/sheet${k + 1}.xml`));
  zip.file("xl/workbook.xml", `<workbook xmlns:r="r"><workbookPr date1904="${date1904 ? 1 : 0}"/><sheets>${listed.join("")}</sheets></workbook>`); // prettier-ignore
  zip.file("xl/_rels/workbook.xml.rels", `<Relationships>${targets.join("")}</Relationships>`);
  for (const name of ["xl/styles.xml", "xl/sharedStrings.xml"]) {
    const text = archive.text(name);
    if (text !== undefined) zip.file(name, text);
  }
  for (const [k, { path }] of sheets.entries()) {
    const text = archive.text(path);
    if (text === undefined) throw refusals.damaged();
    const { xml, left } = withinLimits(text);
    for (const kind of left) lost.add(kind);
    zip.file(`xl/worksheets/sheet${k + 1}.xml`, xml);
  }
  return zip.generateAsync({ type: "uint8array" });
}
