import { fileMessages } from "../../../src/hosts/excel/file-messages";
import { messages } from "../../../src/hosts/excel/messages";
import { type IncomingFile } from "../../../src/hosts/host";
import { put, refused, sheetNamed, sheetNames, state } from "./outcomes";
import { countingWorkbook } from "./stand-in";

const file = (text: string): IncomingFile => ({
  base64: () => Buffer.from(text).toString("base64"),
  content: () => Promise.reject(new Error("Excel reads the file itself.")),
});
const twoSheets = file(`PK${JSON.stringify([{ name: "Letter", cells: [["0 0", "Pen of {size}"]] }, { name: "Data", cells: [] }])}`); // prettier-ignore

function withLetter() {
  const excel = countingWorkbook({ sheets: ["Sheet1", "Letter"] });
  put(sheetNamed(excel, "Letter"), 0, 0, "mine");
  return excel;
}

describe("adding the sheets of a file", () => {
  it("gives them names that are free, touches no other sheet, and shows the first, in two round trips", async () => {
    const excel = withLetter();
    const before = structuredClone(excel.book.sheets);
    expect(await excel.host.insertSheets(twoSheets)).toEqual({ names: ["Letter (2)", "Data"], lost: [] });
    expect(excel.trips()).toBe(2);
    expect(excel.book.active.name).toBe("Letter (2)");
    expect(excel.book.sheets.slice(0, 2)).toEqual(before);
    expect(sheetNamed(excel, "Letter (2)").cells.get("0 0")?.value).toBe("Pen of {size}");
  });

  it("is refused in a sentence where Excel cannot read the file, or adds no such sheet", async () => {
    const excel = withLetter();
    const before = state(excel);
    expect(await refused(excel.host.insertSheets(file("no workbook")))).toBe(
      `${fileMessages.fileRefused.InvalidArgument} ${messages.untouched}`,
    );
    expect(await refused(excel.host.insertSheets(file("PK[]")))).toBe(
      `${fileMessages.emptyFile} ${messages.untouched}`,
    );
    excel.reset();
    excel.fail({ request: 0, action: 1, code: "UnsupportedFeature" });
    expect(await refused(excel.host.insertSheets(twoSheets))).toBe(
      `${fileMessages.fileRefused.UnsupportedFeature} ${messages.untouched}`,
    );
    expect(state(excel)).toEqual(before);
  });

  it("leaves the workbook as it was, at whichever action Excel refuses", async () => {
    const first = withLetter();
    await first.host.insertSheets(twoSheets);
    const sizes = [...first.sizes];
    const excel = withLetter();
    const before = state(excel);
    for (const [request, size] of sizes.entries())
      for (let action = 0; action < size; action++) {
        excel.reset();
        excel.fail({ request, action, code: "GeneralException" });
        expect(await refused(excel.host.insertSheets(twoSheets))).toContain(messages.untouched);
        expect([sheetNames(excel), excel.book.sheets]).toEqual([["Sheet1", "Letter"], before[0]]);
        excel.book.active = excel.book.sheets[0];
      }
  });

  it("says that sheets may have been added where Excel no longer answers", async () => {
    const excel = withLetter();
    excel.fail({ request: 0, action: 0, code: "", silent: true });
    expect(await refused(excel.host.insertSheets(twoSheets))).toBe(
      `${messages.silent} ${fileMessages.leftOfFile}`,
    );
  });
});
