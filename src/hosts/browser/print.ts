import { type SheetData } from "../../sheets/workbook-content";
import { fitHeight, printPage } from "./print-page";

/** Prints a sheet through a hidden frame that holds the page made from it. Settles when the printer's dialog is done. */
export async function printSheet(
  sheet: SheetData,
  shown: (row: number, column: number) => string,
): Promise<void> {
  const frame = document.createElement("iframe");
  frame.className = "printed";
  frame.title = sheet.name;
  frame.srcdoc = `<!doctype html>${printPage(sheet, shown).documentElement.outerHTML}`;
  const loaded = new Promise((done) => frame.addEventListener("load", done, { once: true }));
  document.body.append(frame);
  await loaded;
  fitHeight(frame.contentDocument!, sheet.print);
  const printed = new Promise((done) =>
    frame.contentWindow!.addEventListener("afterprint", done, { once: true }),
  );
  frame.contentWindow!.focus();
  frame.contentWindow!.print();
  await printed;
  frame.remove();
}
