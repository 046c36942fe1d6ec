import { type FWorksheet } from "@univerjs/preset-sheets-core";
import { type FilledCell } from "../host";
import { type GridWorkbook } from "./grid-workbook";
import { writeFailed } from "./messages";
import { putCells } from "./put-cells";
import { selectFirst } from "./sheet-of-content";

/** Copies a sheet under a new name, with content in cells of the copy, and shows it; one step, and all or nothing. */
export async function filledCopy(
  workbook: GridWorkbook,
  source: FWorksheet,
  name: string,
  cells: FilledCell[],
): Promise<string[]> {
  const { book } = workbook;
  const before = book.getActiveSheet();
  await workbook.asOneStep(async () => {
    let copy: FWorksheet | undefined;
    try {
      copy = book.duplicateSheet(source);
      copy.setName(name);
      putCells(copy, cells);
      selectFirst(copy);
    } catch {
      if (copy) book.deleteSheet(copy);
      before.activate();
      throw writeFailed(name);
    }
  });
  return [];
}
