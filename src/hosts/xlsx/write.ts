import ExcelJS, { type Cell as FileCell, type CellValue, type Workbook, type Worksheet } from "exceljs";
import JSZip from "jszip";
import { address, isSheetName } from "../../sheets/address";
import { repeatedRows, type PrintSetUp } from "../../sheets/plan";
import { type CellData, type SheetData, type WorkbookContent } from "../../sheets/workbook-content";
import { isError, type Cell } from "../../units/cell";
import { fileStyle } from "./cell-look";
import { fileRule } from "./cell-rule";
import { refusals } from "./messages";
import { storedFormula } from "./stored-formula";

const LONGEST_TEXT = 32_767;
const DOTS_PER_POINT = 96 / 72;

/** Turns an SVG text into the bytes of a PNG; width and height are points. */
export type PictureMaker = (svg: string, width: number, height: number) => Promise<Uint8Array>;

/**
 * The bytes of an .xlsx file. Formulas carry the value they show, texts stay texts whatever they start with, errors
 * are error cells. Pictures are written where `svgToPng` is given, else left out. Nothing of the user or the machine
 * goes into the file's properties. Throws a HostError where the format cannot hold a text or a sheet's name.
 */
export async function writeXlsx(content: WorkbookContent, svgToPng?: PictureMaker): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  book.creator = book.lastModifiedBy = "Penstake";
  const active = Math.max(0, content.sheets.findIndex(({ name }) => name === content.activeSheet)); // prettier-ignore
  book.views = [
    { x: 0, y: 0, width: 24_000, height: 16_000, firstSheet: 0, activeTab: active, visibility: "visible" },
  ];
  for (const [k, sheet] of content.sheets.entries()) await addSheet(book, sheet, k === active, svgToPng);
  const bytes = new Uint8Array(await book.xlsx.writeBuffer());
  return content.sheets.some(({ name, print }) => print && name.includes("'"))
    ? quoteNames(bytes, content)
    : bytes;
}

async function addSheet(book: Workbook, data: SheetData, selected: boolean, svgToPng?: PictureMaker) {
  if (!isSheetName(data.name)) throw refusals.sheetName(data.name);
  const sheet = book.addWorksheet(data.name);
  const frozen = data.frozenRows > 0;
  sheet.views = [frozen ? { state: "frozen", xSplit: 0, ySplit: data.frozenRows } : { state: "normal" }];
  Object.assign(sheet.views[0], { tabSelected: selected });
  data.columns.forEach(({ width, hidden }, k) => Object.assign(sheet.getColumn(k + 1), { width, hidden }));
  for (const [row, height] of Object.entries(data.heights)) sheet.getRow(Number(row) + 1).height = height;
  for (const row of data.hiddenRows) sheet.getRow(row + 1).hidden = true;
  for (const cell of data.cells) fill(sheet.getCell(cell.row + 1, cell.column + 1), cell, data.name);
  for (const { top, left, bottom, right } of data.merges)
    sheet.mergeCells(top + 1, left + 1, bottom + 1, right + 1);
  if (data.print) setUpPrint(sheet, data.print);
  if (svgToPng) for (const picture of data.pictures) {
    const { row, column, width, height, svg } = picture;
    const buffer = (await svgToPng(svg, width, height)) as unknown as ArrayBuffer;
    const ext = { width: width * DOTS_PER_POINT, height: height * DOTS_PER_POINT };
    sheet.addImage(book.addImage({ buffer, extension: "png" }), { tl: { row, col: column }, ext });
  } // prettier-ignore
}

function fill(target: FileCell, cell: CellData, sheet: string): void {
  const { value, formula, style = {}, accepts, note } = cell;
  if (typeof value === "string" && value.length > LONGEST_TEXT)
    throw refusals.textTooLong(sheet, address(cell));
  // Whoever edits a text that starts like a formula gets a text again.
  const keepsText = !formula && typeof value === "string" && /^[=+\-@]/.test(value) && !style.format;
  target.style = fileStyle(keepsText ? { ...style, format: "@" } : style);
  const shown = fileValue(value);
  target.value = formula ? { formula: storedFormula(formula), result: shown as never } : shown;
  if (accepts) {
    const rule = fileRule(accepts);
    if (rule) target.dataValidation = rule;
  }
  if (note) target.note = note;
}

/** Halves of a sign, which no file can hold; the file library leaves out control signs by itself. */
const unfit = /\p{Surrogate}|[\uFFFE\uFFFF]/gu;

function fileValue(value: Cell): CellValue {
  if (isError(value)) return { error: value.error };
  // The format reads _x0041_ as a letter, so a person's own _x is written by its code.
  return typeof value === "string"
    ? value.replace(unfit, "").replace(/_x(?=[0-9A-F]{4}_)/gi, "_x005F_x")
    : value;
}

/** The file library writes the dollar before the column only. */
const corner = (row: number, column: number) => address({ row, column, fixedRow: true });

function setUpPrint(sheet: Worksheet, print: PrintSetUp): void {
  const { top, left, bottom, right } = print.area;
  const repeated = repeatedRows(print);
  Object.assign(sheet.pageSetup, {
    orientation: print.landscape ? "landscape" : "portrait",
    horizontalCentered: true,
    margins: { left: 0.5, right: 0.5, top: 0.5, bottom: 0.6, header: 0.3, footer: 0.3 },
    fitToPage: true,
    fitToWidth: print.pages.wide,
    fitToHeight: print.pages.tall,
    printArea: `${corner(top, left)}:${corner(bottom, right)}`,
    ...(repeated ? { printTitlesRow: repeated.join(":") } : {}),
  });
  // In a footer an ampersand begins a code; two stand for one.
  sheet.headerFooter.oddFooter = `&L&8 ${print.footer.replace(/&/g, "&&")}&R&8 &P / &N`;
}

/** The file library leaves an apostrophe in a sheet's name single where a print area names the sheet. */
async function quoteNames(bytes: Uint8Array, { sheets }: WorkbookContent): Promise<Uint8Array> {
  const zip = await JSZip.loadAsync(bytes);
  let xml = await zip.file("xl/workbook.xml")!.async("string");
  for (const { name } of sheets.filter(({ name }) => name.includes("'"))) {
    const written = name.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;").replace(/'/g, "&apos;"); // prettier-ignore
    xml = xml.replaceAll(
      `&apos;${written}&apos;!`,
      `&apos;${written.replaceAll("&apos;", "&apos;&apos;")}&apos;!`,
    );
  }
  zip.file("xl/workbook.xml", xml);
  return zip.generateAsync({ type: "uint8array", compression: "DEFLATE" });
}
