import { type CellStyle } from "../../sheets/styles";
import { repeatedRows, type PrintSetUp } from "../../sheets/plan";
import { type CellData, type SheetData } from "../../sheets/workbook-content";
import { pictureSource } from "./picture";
import { pixelsOfColumn } from "./screen-units";

/** Pixels inside the margins that both common papers have, letter and A4: the lesser width, the lesser height. */
const room = { portrait: { width: 696, height: 940 }, landscape: { width: 956, height: 680 } };

const sheetLook = `
  html { --scale: 1; }
  body { margin: 0; font: calc(10pt * var(--scale)) Arial, Helvetica, sans-serif; color: #000; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  table { border-collapse: collapse; table-layout: fixed; }
  td { position: relative; padding: 0 calc(2pt * var(--scale)); vertical-align: bottom; white-space: pre; line-height: 1.25; }
  td.wrap { white-space: pre-wrap; overflow-wrap: anywhere; vertical-align: top; }
  td.clip { overflow: hidden; }
  tr { break-inside: avoid; }
  img { position: absolute; top: 0; left: 0; }
`;

/**
 * A page made from a sheet, for the printer: the print area alone, hidden rows and columns left out, one page wide,
 * header rows on every page. What cells say enters it as text only.
 */
export function printPage(sheet: SheetData, shown: (row: number, column: number) => string): Document {
  const page = document.implementation.createHTMLDocument(sheet.name);
  const set = sheet.print ?? wholeSheet(sheet);
  const columns = upTo(set.area.left, set.area.right).filter((column) => !sheet.columns[column]?.hidden);
  const rows = upTo(set.area.top, set.area.bottom).filter((row) => !sheet.hiddenRows.includes(row));
  const widths = columns.map((column) => pixelsOfColumn(sheet.columns[column]?.width ?? 10));
  const wide = widths.reduce((sum, width) => sum + width, 0);
  const scale = Math.min(1, (room[turned(set)].width * Math.max(1, set.pages.wide)) / Math.max(1, wide));
  page.documentElement.style.setProperty("--scale", String(scale));
  const style = page.createElement("style");
  style.textContent = `@page { size: ${turned(set)}; margin: 0.5in 0.5in 0.6in; ${footer(set.footer)} }${sheetLook}`;
  page.head.append(style);

  const cells = new Map(sheet.cells.map((cell) => [`${cell.row} ${cell.column}`, cell]));
  const write = { page, sheet, cells, columns, rows, shown };
  const [first, last] = repeatedRows(set) ?? [1, 0];
  const above = rows.filter((row) => row < first - 1);
  const headers = rows.filter((row) => row >= first - 1 && row < last);
  const lines = (some: number[]) => some.map((row) => line(write, row));
  // What stands above the repeated headers is a table of its own: a head shows on its table's first page too.
  if (above.length > 0) page.body.append(tableOf(page, widths, [], lines(above)));
  const below = rows.filter((row) => row >= Math.max(first - 1, last));
  page.body.append(tableOf(page, widths, lines(headers), lines(below)));
  return page;
}

type Row = HTMLTableRowElement;

function tableOf(page: Document, widths: number[], headers: Row[], lines: Row[]): HTMLTableElement {
  const table = page.createElement("table");
  table.style.width = scaled(
    widths.reduce((sum, width) => sum + width, 0),
    "px",
  );
  const group = page.createElement("colgroup");
  for (const width of widths) {
    const column = page.createElement("col");
    column.style.width = scaled(width, "px");
    group.append(column);
  }
  const [head, body] = [page.createElement("thead"), page.createElement("tbody")];
  head.append(...headers);
  body.append(...lines);
  table.append(group, head, body);
  return table;
}

/** Makes a page smaller until it is as few pages tall as its sheet asks for. It must stand in a frame already. */
export function fitHeight(page: Document, set: PrintSetUp | undefined): void {
  if (!set || set.pages.tall < 1) return;
  const root = page.documentElement;
  const most = room[turned(set)].height * set.pages.tall;
  // Wrapped lines do not shrink in proportion, so a second and third look may be needed.
  for (let look = 0; look < 3 && page.body.scrollHeight > most; look++) {
    const scale = Number(root.style.getPropertyValue("--scale")) * (most / page.body.scrollHeight);
    root.style.setProperty("--scale", String(scale));
  }
}

interface Writing {
  page: Document;
  sheet: SheetData;
  cells: Map<string, CellData>;
  columns: number[];
  rows: number[];
  shown: (row: number, column: number) => string;
}

function line(write: Writing, row: number): HTMLTableRowElement {
  const { page, sheet, columns } = write;
  const made = page.createElement("tr");
  made.style.height = scaled(sheet.heights[row] ?? 15, "pt");
  for (const column of columns) {
    const merge = sheet.merges.find(
      ({ top, left, bottom, right }) => row >= top && row <= bottom && column >= left && column <= right,
    );
    if (merge && (merge.top !== row || merge.left !== column)) continue;
    const cell = made.insertCell();
    if (merge) {
      cell.colSpan = columns.filter((one) => one >= merge.left && one <= merge.right).length;
      cell.rowSpan = write.rows.filter((one) => one >= merge.top && one <= merge.bottom).length;
    }
    fill(cell, write, row, column);
  }
  return made;
}

function fill(made: HTMLTableCellElement, write: Writing, row: number, column: number): void {
  const { page, sheet, cells, shown } = write;
  const cell = cells.get(`${row} ${column}`);
  const next = cells.get(`${row} ${column + made.colSpan}`);
  made.textContent = shown(row, column);
  if (cell?.style) dress(made, cell.style);
  if (!cell?.style?.align && typeof cell?.value === "number") made.style.textAlign = "right";
  // A text runs over its neighbor only where the neighbor is blank, as on the screen.
  if (next && next.value !== null) made.classList.add("clip");
  for (const picture of sheet.pictures.filter((one) => one.row === row && one.column === column)) {
    const image = page.createElement("img");
    image.src = pictureSource(picture.svg);
    image.alt = picture.description;
    image.style.width = scaled(picture.width, "pt");
    image.style.height = scaled(picture.height, "pt");
    made.append(image);
  }
}

function dress({ style, classList }: HTMLTableCellElement, look: CellStyle): void {
  if (look.bold) style.fontWeight = "bold";
  if (look.italic) style.fontStyle = "italic";
  if (look.size) style.fontSize = scaled(look.size, "pt");
  if (look.color) style.color = `#${look.color}`;
  if (look.fill) style.backgroundColor = `#${look.fill}`;
  if (look.align) style.textAlign = look.align;
  if (look.wrap) classList.add("wrap");
  const border = "0.75pt solid #667";
  if (look.line === "box") style.border = border;
  if (look.line === "top") style.borderTop = border;
  if (look.line === "bottom") style.borderBottom = border;
}

const scaled = (size: number, unit: string) => `calc(${size}${unit} * var(--scale))`;
const turned = ({ landscape }: PrintSetUp) => (landscape ? "landscape" : "portrait");
const upTo = (first: number, last: number) =>
  Array.from({ length: Math.max(0, last - first + 1) }, (_, k) => first + k);

/** The set-up of a sheet that has none: all its used cells. */
function wholeSheet({ cells }: SheetData): PrintSetUp {
  const used = cells.filter(({ value, formula }) => value !== null || formula);
  const [bottom, right] = [
    Math.max(0, ...used.map(({ row }) => row)),
    Math.max(0, ...used.map(({ column }) => column)),
  ];
  return {
    area: { top: 0, left: 0, bottom, right },
    landscape: false,
    pages: { wide: 1, tall: 0 },
    repeatRows: 0,
    footer: "",
  };
}

/** The footer as margin boxes: its text at the left, the page's number at the right. */
function footer(text: string): string {
  const small = "font: 8pt Arial, Helvetica, sans-serif; color: #555;";
  return `@bottom-left { content: ${quoted(text)}; ${small} } @bottom-right { content: counter(page) " / " counter(pages); ${small} }`;
}

/** A text for a style sheet: every sign but letters, digits and blanks goes in by its code. */
const quoted = (text: string) =>
  `"${text.replace(/[^A-Za-z0-9 ]/gu, (sign) => `\\${sign.codePointAt(0)!.toString(16)} `)}"`;
