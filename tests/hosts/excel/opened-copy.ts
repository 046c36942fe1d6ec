import { readXlsx } from "../../../src/hosts/xlsx/xlsx";
import { type CountingWorkbook } from "./stand-in";

/** What the workbook holds that Excel was last asked to open beside the present one. */
export async function openedCopy({ book }: CountingWorkbook) {
  const { content } = await readXlsx(new Uint8Array(Buffer.from(book.opened.at(-1)!, "base64")));
  return content;
}
