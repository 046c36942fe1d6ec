import { type SheetData, type WorkbookContent } from "../../sheets/workbook-content";
import { areasIn, cellsOf } from "./content-cells";
import { linesOf, printOf, spotOf } from "./content-layout";
import { askRuled, askRules, rulesOf, type Ruled } from "./content-rules";
import { fileMessages } from "./file-messages";
import { once, session } from "./session";
import { wrappedPicture } from "../wrapped-picture";

/** Cells of a sheet beyond which those without content are left out, as where a whole column has a color. */
const mostCells = 200_000;

/** Rows and columns whose sizes are asked for at least, so that a picture beside the cells finds its place. */
const least = { rows: 120, columns: 40 };

type First = ReturnType<typeof askFirst>;

/** The whole workbook as plain data, in two round trips; charts and shapes as pictures. */
export async function workbookContent(): Promise<WorkbookContent> {
  return session(async (context) => {
    const { worksheets } = context.workbook;
    worksheets.load({ name: true });
    const active = worksheets.getActiveWorksheet().load({ name: true });
    await context.sync();
    const first = worksheets.items.map(askFirst);
    await context.sync();
    const rest = first.map(askRest);
    await context.sync();
    const sheets = first.map((sheet, k) => sheetData(sheet, rest[k]));
    return { sheets, activeSheet: active.name };
  });
}

/** Asks how far a sheet goes, and for all that stands beside its cells. */
function askFirst(sheet: Excel.Worksheet) {
  const size = { rowIndex: true, columnIndex: true, rowCount: true, columnCount: true } as const;
  const [all, filled] = [false, true].map((valuesOnly) =>
    once(sheet.getUsedRangeOrNullObject(valuesOnly)).load(size),
  );
  sheet.load({ name: true, standardHeight: true });
  const { pageLayout: page } = sheet;
  page.load({ orientation: true, zoom: true });
  const footer = page.headersFooters.defaultForAllPages.load({ leftFooter: true });
  const area = once(page.getPrintAreaOrNullObject()).load({ address: true });
  const titles = once(page.getPrintTitleRowsOrNullObject()).load({ rowIndex: true, rowCount: true });
  const frozen = once(sheet.freezePanes.getLocationOrNullObject()).load({ rowCount: true });
  const place = { left: true, top: true, width: true, height: true } as const;
  const shapes = sheet.shapes.load({ ...place, altTextDescription: true });
  const charts = sheet.charts.load({ ...place, name: true });
  return { sheet, all, filled, page, footer, area, titles, frozen, shapes, charts, ruled: askRuled(sheet), comments: sheet.comments.getCount() };
} // prettier-ignore

/** Asks for the cells, for the sizes of rows and columns, and for each chart and shape as a picture. */
function askRest({ sheet, all, filled, ruled, shapes, charts }: First) {
  const used = !all.isNullObject && all.rowCount * all.columnCount <= mostCells ? all : filled;
  const at = used.isNullObject ? undefined : { row: used.rowIndex, column: used.columnIndex };
  const [rows, columns] = at ? [at.row + used.rowCount, at.column + used.columnCount] : [0, 0];
  const line = (down: number, across: number) => once(sheet.getRangeByIndexes(0, 0, down, across));
  return {
    columns: line(1, Math.max(columns, least.columns)).getColumnProperties({ columnHidden: true, format: { columnWidth: true } }), // prettier-ignore
    rows: line(Math.max(rows, least.rows), 1).getRowProperties({ rowHidden: true, format: { rowHeight: true } }), // prettier-ignore
    cells: at && askCells(once(sheet.getRangeByIndexes(at.row, at.column, used.rowCount, used.columnCount)), at), // prettier-ignore
    rules: at && !ruled.isNullObject ? askRules(sheet, areasIn(ruled.address), { top: at.row, left: at.column, bottom: rows - 1, right: columns - 1 }) : undefined, // prettier-ignore
    count: { rows, columns },
    images: [
      ...shapes.items.map((shape) => ({ shape, description: shape.altTextDescription, image: shape.getAsImage("PNG") })), // prettier-ignore
      ...charts.items.map((shape) => ({ shape, description: shape.name, image: shape.getImage() })),
    ],
  };
}

function askCells(range: Excel.Range, at: { row: number; column: number }) {
  range.load({ values: true, formulas: true, numberFormat: true });
  const looks = range.getCellProperties({
    format: {
      font: { bold: true, italic: true, size: true, color: true },
      fill: { color: true },
      borders: { style: true },
      horizontalAlignment: true,
      wrapText: true,
    },
  });
  const merged = once(range.getMergedAreasOrNullObject()).load({ address: true });
  return { range, at, looks, merged, conditional: range.conditionalFormats.getCount() };
}

/** The cells that were asked for, as they came. */
export type AskedCells = ReturnType<typeof askCells>;

function sheetData(first: First, { columns, rows, cells, rules: asked, count, images }: ReturnType<typeof askRest>): SheetData {
  const lines = linesOf(columns.value, rows.value, first.sheet.standardHeight, count);
  const { left, top, ...kept } = lines;
  const { rules, lost: lostRules } = asked ? rulesOf(asked) : { rules: new Map<string, Ruled>(), lost: 0 };
  const held = cells ? cellsOf(cells, rules) : [];
  const lost = [
    ...(first.comments.value > 0 ? [fileMessages.lost.comments(first.comments.value)] : []),
    ...(cells && cells.conditional.value > 0 ? [fileMessages.lost.conditional] : []),
    ...(lostRules > 0 ? [fileMessages.lost.rules(lostRules)] : []),
    ...(held.length > 0 ? [fileMessages.lost.notes] : []),
  ];
  return {
    name: first.sheet.name,
    cells: held,
    ...kept,
    frozenRows: first.frozen.isNullObject ? 0 : first.frozen.rowCount,
    merges: cells && !cells.merged.isNullObject ? areasIn(cells.merged.address) : [],
    ...printOf(first),
    pictures: images.map(({ shape, description, image }) => ({
      row: spotOf(shape.top, top),
      column: spotOf(shape.left, left),
      width: shape.width,
      height: shape.height,
      svg: wrappedPicture(`data:image/png;base64,${image.value}`, shape.width, shape.height),
      description,
    })),
    ...(lost.length > 0 ? { lost } : {}),
  };
} // prettier-ignore
