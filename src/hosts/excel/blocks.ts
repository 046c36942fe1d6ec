import { areaAddress, groupBy, rectangles, type Area, type Spot } from "./areas";
import { entryAgain, type Entry } from "./entry";
import { once, session } from "./session";

/** A block of cells that are written together, and what they are to say. */
export interface Block {
  area: Area;
  entries: Entry[][];
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
export function readBlocks(sheet: string, blocks: Block[]): Promise<Block[]> {
  return session(async (context) => {
    const found = context.workbook.worksheets.getItem(sheet);
    const ranges = rangesOf(found, blocks).map((range) => range.load({ values: true, formulas: true }));
    await context.sync();
    return ranges.map(({ values, formulas }, k) => ({
      area: blocks[k].area,
      entries: (formulas as Entry[][]).map((row, i) =>
        row.map((formula, j) => entryAgain(values[i][j] as Entry, formula)),
      ),
    }));
  });
}

/** Asks for blocks to be written with the next request. */
export function writeBlocks(sheet: Excel.Worksheet, blocks: Block[]): void {
  rangesOf(sheet, blocks).forEach((range, k) => (range.formulas = blocks[k].entries));
}
