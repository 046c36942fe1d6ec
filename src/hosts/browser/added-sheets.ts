import { type FWorksheet } from "@univerjs/preset-sheets-core";
import { type SheetData } from "../../sheets/workbook-content";
import { type GridWorkbook } from "./grid-workbook";
import { writeFailed } from "./messages";
import { furnish, gridSheet, selectFirst } from "./sheet-of-content";

/** Adds sheets behind the others and shows the first or the last of them; one step, and all or none. */
export async function addSheets(
  workbook: GridWorkbook,
  contents: readonly SheetData[],
  show: "first" | "last",
): Promise<void> {
  const { book, grid } = workbook;
  const before = book.getActiveSheet();
  const added: FWorksheet[] = [];
  await workbook.asOneStep(async () => {
    for (const content of contents)
      try {
        const sheet = book.insertSheet(content.name, { sheet: gridSheet(content) });
        added.push(sheet);
        await furnish(grid, sheet, content);
        selectFirst(sheet);
      } catch {
        for (const sheet of added.reverse()) book.deleteSheet(sheet);
        before.activate();
        throw writeFailed(content.name);
      }
    if (show === "first" && added.length > 0) selectFirst(added[0]);
  });
}
