import fc from "fast-check";
import { HostError } from "../../../src/hosts/host";
import { readXlsx, writeXlsx } from "../../../src/hosts/xlsx/xlsx";
import { estimateBook, fileOf, oneSheet, partsOf } from "./book";

const text = (words: string) => new TextEncoder().encode(words);
const row = (cells: string, number = 1) => `<sheetData><row r="${number}">${cells}</row></sheetData>`;
const sheet = async (xml: string) => readXlsx(await fileOf(oneSheet(xml)));

test("what is no workbook is refused in a sentence that says what to do", async () => {
  const refusals: [Uint8Array, string][] = [
    [new Uint8Array(), "This file is no .xlsx workbook."],
    [text("size,60\nprice,94"), "This file is no .xlsx workbook."],
    [text("<html></html>"), "This file is no .xlsx workbook."],
    [new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]), "This file is locked with a password"],
    [await fileOf({ "word/document.xml": "<w/>" }), "This file is no .xlsx workbook."],
    [(await writeXlsx(estimateBook())).slice(0, 900), "This workbook is damaged"],
    [await fileOf({ "xl/workbook.xml": "<workbook/>" }), "This workbook is damaged"],
    [await fileOf({ ...oneSheet(""), "xl/worksheets/sheet1.xml": "<worksheet><sheetData><row" }), "This workbook is damaged"],
    [await fileOf({ ...oneSheet(""), "xl/worksheets/sheet1.xml": "<worksheet><a></b></worksheet>" }), "This workbook is damaged"],
    [await fileOf({ ...oneSheet(""), "xl/styles.xml": "\u0000\u0001" }), "This workbook is damaged"],
  ]; // prettier-ignore
  for (const [bytes, sentence] of refusals) {
    const refused = await readXlsx(bytes).catch((reason: unknown) => reason);
    expect(refused).toBeInstanceOf(HostError);
    expect((refused as HostError).message).toContain(sentence);
  }
});

test("a file that swells when unpacked is refused before it fills the memory", async () => {
  const bomb = await fileOf(oneSheet(row(`<c r="A1" t="inlineStr"><is><t>${" ".repeat(40 * 2 ** 20)}</t></is></c>`)));
  expect(bomb.length).toBeLessThan(200_000);
  await expect(readXlsx(bomb)).rejects.toThrow("at most 32 MB once unpacked");
}); // prettier-ignore

test("rows and columns that no sheet has are refused", async () => {
  for (const xml of [row("", 1_048_577), row("", 999_999_999), row(`<c r="XFE1"><v>1</v></c>`), row(`<c r="ABCDE1"><v>1</v></c>`), row(`<c r="A9999999"><v>1</v></c>`), `<cols><col min="1" max="99999999" width="9"/></cols>${row("")}`])
    await expect(sheet(xml)).rejects.toThrow("names rows or columns that no sheet has");
}); // prettier-ignore

test("the last cell of a sheet is read without making the others", async () => {
  const { content } = await sheet(row(`<c r="XFD1048576"><v>7</v></c>`, 1_048_576));
  expect(content.sheets[0].cells).toEqual([{ row: 1_048_575, column: 16_383, value: 7 }]);
});

test("rules and merged areas over whole sheets are left out and said so", async () => {
  const { content, lost } = await sheet(
    `${row(`<c r="A1"><v>7</v></c>`)}<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells><dataValidations><dataValidation type="list" sqref="A1:A1048576 C1:C9"><formula1>"a,b"</formula1></dataValidation></dataValidations>`,
  );
  expect(content.sheets[0].cells).toEqual([{ row: 0, column: 0, value: 7 }]);
  expect(content.sheets[0].merges).toEqual([]);
  expect(lost).toEqual([
    "Rules for what whole rows or columns accept were left out on 1 sheet.",
    "Very large merged areas were left out on 1 sheet.",
  ]);
});

test("a formula longer than any spreadsheet takes becomes what it shows", async () => {
  const { content, lost } = await sheet(row(`<c r="A1"><f>${"1+".repeat(50_000)}1</f><v>50001</v></c><c r="B1"><f>1+1</f><v>2</v></c>`)); // prettier-ignore
  expect(content.sheets[0].cells).toEqual([
    { row: 0, column: 0, value: 50_001 },
    { row: 0, column: 1, value: 2, formula: "=1+1" },
  ]);
  expect(lost).toEqual(["1 formula over 8192 characters became what it shows."]);
});

test("entities of a document type are not unfolded", async () => {
  const parts = oneSheet(row(`<c r="A1" t="str"><v>&amp;b;</v></c>`));
  parts["xl/worksheets/sheet1.xml"] = `<!DOCTYPE x [<!ENTITY a "aaaaaaaaaa"><!ENTITY b "&a;&a;&a;">]>${parts["xl/worksheets/sheet1.xml"]}`;
  const outcome = await readXlsx(await fileOf(parts)).catch((reason: unknown) => reason);
  const value = outcome instanceof HostError ? "" : (outcome as Awaited<ReturnType<typeof readXlsx>>).content.sheets[0].cells[0].value;
  expect(value).not.toContain("aaaa");
}); // prettier-ignore

test("a damaged file is read or refused in a sentence, and never anything else", async () => {
  const parts = await partsOf(await writeXlsx(estimateBook()));
  const names = Object.keys(parts).filter((name) => /^xl\/(workbook|styles|sharedStrings|worksheets|_rels|comments)/.test(name)); // prettier-ignore
  const damage = fc.record({
    name: fc.constantFrom(...names),
    at: fc.double({ min: 0, max: 1, noNaN: true }),
    cut: fc.integer({ min: 0, max: 60 }),
    put: fc.oneof(
      fc.string({ maxLength: 8 }),
      fc.constantFrom("<", ">", "&", '"', "<c>", "</row>", "-1", "1e9", "NaN"),
    ),
  });
  await fc.assert(
    fc.asyncProperty(damage, async ({ name, at, cut, put }) => {
      const from = Math.floor(at * parts[name].length);
      const broken = parts[name].slice(0, from) + put + parts[name].slice(from + cut);
      const outcome = await readXlsx(await fileOf({ ...parts, [name]: broken })).catch(
        (reason: unknown) => reason,
      );
      return outcome instanceof HostError || Array.isArray((outcome as { lost?: string[] }).lost);
    }),
    { numRuns: 150 },
  );
});
