import JSZip from "jszip";
import { styles } from "../../../src/sheets/styles";
import { type CellData, type SheetData, type WorkbookContent } from "../../../src/sheets/workbook-content";

export const cell = (row: number, column: number, value: CellData["value"], more: Partial<CellData> = {}): CellData => ({ row, column, value, ...more }); // prettier-ignore

export const sheet = (name: string, cells: CellData[], more: Partial<SheetData> = {}): SheetData => ({
  name, cells, columns: [], hiddenRows: [], heights: {}, frozenRows: 0, merges: [], pictures: [], ...more,
}); // prettier-ignore

/** A workbook with everything that a document of ours can hold but pictures. */
export const estimateBook = (): WorkbookContent => ({
  activeSheet: "Pat's pen & barn",
  sheets: [
    sheet("Prices", [cell(0, 0, "penstake prices 1"), cell(1, 1, 94.5, { style: styles.inputMoney, input: true })], {
      columns: [{ width: 12, hidden: true }, { width: 20 }],
    }),
    sheet(
      "Pat's pen & barn",
      [
        cell(0, 0, "penstake estimate 1", { style: styles.key }),
        cell(0, 1, "Estimate", { style: styles.title }),
        cell(2, 0, "size", { style: styles.key }),
        cell(2, 1, "Size", { style: styles.label }),
        cell(2, 2, 60, {
          style: styles.inputNumber,
          input: true,
          accepts: { kind: "number", least: 20, most: 300, message: "20 to 300 ft" },
        }),
        cell(3, 2, "at least", {
          style: styles.inputText,
          input: true,
          accepts: { kind: "list", options: ["nearest", "at least"], message: "nearest or at least" },
          note: "Fixed in this copy",
        }),
        cell(4, 2, 2, { style: styles.inputNumber, input: true, accepts: { kind: "number", least: 0, most: 4, whole: true, message: "whole" } }),
        cell(5, 2, 120, { formula: "=C3*2", style: styles.figure }),
        cell(6, 2, 94.5, { formula: "=Prices!B2", style: styles.total }),
        cell(7, 2, "94.5 a panel", { formula: `='Pat''s pen & barn'!C7&" a panel"`, style: styles.text }),
        cell(8, 2, { error: "#N/A" }, { formula: "=IF(C3>0,#N/A,0)" }),
        cell(9, 2, { error: "#DIV/0!" }),
        cell(10, 2, 0, { formula: "=C3-60" }),
        cell(11, 2, false, { formula: "=C3>61" }),
        cell(12, 2, true),
        cell(13, 2, null, { style: styles.inputNumber, input: true }),
        cell(14, 1, "A caution that is long enough to wrap", { style: styles.caution }),
      ],
      {
        columns: [{ width: 10, hidden: true }, { width: 30 }, { width: 14 }, { width: 9 }],
        hiddenRows: [12],
        heights: { 0: 24, 14: 36 },
        frozenRows: 2,
        merges: [{ top: 14, left: 1, bottom: 14, right: 2 }],
        print: { area: { top: 0, left: 1, bottom: 14, right: 3 }, landscape: true, pages: { wide: 1, tall: 1 }, repeatRows: 2, footer: "Fence & footing" },
      },
    ),
  ],
}); // prettier-ignore

/** The parts of a written file by name. */
export async function partsOf(bytes: Uint8Array): Promise<Record<string, string>> {
  const { files } = await JSZip.loadAsync(bytes);
  const all = Object.values(files).filter(({ dir }) => !dir);
  return Object.fromEntries(
    await Promise.all(all.map(async (file) => [file.name, await file.async("string")])),
  );
}

/** A file made of parts, as other programs may have written it. */
export async function fileOf(parts: Record<string, string | Uint8Array>): Promise<Uint8Array> {
  const zip = new JSZip();
  for (const [name, part] of Object.entries(parts)) zip.file(name, part);
  return zip.generateAsync({ type: "uint8array", compression: "DEFLATE" });
}

/** The least parts of a workbook with one sheet. */
export const oneSheet = (sheetXml: string, more: Record<string, string> = {}): Record<string, string> => ({
  "xl/workbook.xml": `<workbook xmlns:r="r"><sheets><sheet name="Job" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  "xl/_rels/workbook.xml.rels": `<Relationships><Relationship Id="rId1" Type="http://x/worksheet" Target="worksheets/sheet1.xml"/></Relationships>`,
  "xl/worksheets/sheet1.xml": `<worksheet>${sheetXml}</worksheet>`,
  ...more,
});
