import { areaAddress, groupBy, rectangles, type Area, type Spot } from "./areas";
import { entryAgain, type Entry } from "./entry";
import { once, session } from "./session";

/** A block of cells that are written together, and what they are to say. */
export interface Block {
  area: Area;
  entries: Entry[][];
}

/** What a block held, and the number formats of its cells. */
export interface Held extends Block {
  formats: string[][];
}

/** The addresses of blocks, as a user reads them. */
export const addressesOf = (blocks: Block[]) => blocks.map(({ area }) => areaAddress(area));

/** Entries as one block a run of neighbors in a column; null clears its cell. Of two entries in one place the later counts. */
export function blocksOf(entries: (Spot & { entry: Entry })[]): Block[] {
  const said = new Map(entries.map(({ row, column, entry }) => [`${row} ${column}`, entry]));
  const columns = [...groupBy(entries, ({ column }) => column).values()];
  return columns.flatMap(rectangles).map((area) => ({
    area,
    entries: Array.from({ length: area.bottom - area.top + 1 }, (_, k) => [
      said.get(`${area.top + k} ${area.left}`) ?? "",
    ]),
  }));
}

/** The ranges of blocks on a sheet, for use within one batch. */
export const rangesOf = (sheet: Excel.Worksheet, blocks: Block[]): Excel.Range[] =>
  blocks.map(({ area, entries }) =>
    once(sheet.getRangeByIndexes(area.top, area.left, entries.length, entries[0].length)),
  );

/** What brings the blocks of a sheet back as they stand now. */
export function readBlocks(sheet: string, blocks: Block[]): Promise<Held[]> {
  return session(async (context) => {
    const found = context.workbook.worksheets.getItem(sheet);
    const ranges = rangesOf(found, blocks).map((range) =>
      range.load({ values: true, formulas: true, numberFormat: true }),
    );
    await context.sync();
    return ranges.map(({ values, formulas, numberFormat }, k) => ({
      area: blocks[k].area,
      formats: numberFormat as string[][],
      entries: (formulas as Entry[][]).map((row, i) =>
        row.map((formula, j) => entryAgain(values[i][j] as Entry, formula)),
      ),
    }));
  });
}

/**
 * Asks for blocks to be written with the next request. `formats` are the number formats of their cells where these may
 * be set: of a formula or a number Excel makes a text in a cell that is formatted as text, so that is General first.
 */
export function writeBlocks(sheet: Excel.Worksheet, blocks: Block[], formats?: string[][][]): void {
  rangesOf(sheet, blocks).forEach((range, k) => {
    const { entries } = blocks[k];
    if (formats) formatTexts(range, formats[k], "General", (i, j) => !isText(entries[i][j]));
    range.formulas = entries;
  });
}

/** Asks for blocks to be as they were. What stood in a cell formatted as text comes back only while that is General. */
export function bringBack(sheet: Excel.Worksheet, blocks: Held[]): void {
  rangesOf(sheet, blocks).forEach((range, k) => {
    const { entries, formats } = blocks[k];
    formatTexts(range, formats, "General");
    range.formulas = entries;
    formatTexts(range, formats, "@");
  });
}

const isText = (entry: Entry) => typeof entry === "string" && !entry.startsWith("=");

/** Sets the number format of those cells that were formatted as text and that are concerned. */
function formatTexts(
  range: Excel.Range,
  formats: string[][],
  to: "General" | "@",
  concerns: (row: number, column: number) => boolean = () => true,
): void {
  const told = formats.map((row, i) =>
    row.map((format, j) => (format === "@" && concerns(i, j) ? to : null)),
  );
  if (told.flat().includes(to)) range.numberFormat = told;
}
