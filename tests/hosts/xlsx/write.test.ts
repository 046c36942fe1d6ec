import { HostError } from "../../../src/hosts/host";
import { readXlsx, writeXlsx } from "../../../src/hosts/xlsx/xlsx";
import { cell, estimateBook, partsOf, sheet } from "./book";

test("a workbook comes back as it was written, keys and inputs included", async () => {
  const written = estimateBook();
  const { content, lost } = await readXlsx(await writeXlsx(written));
  expect(lost).toEqual([]);
  const sizes = content.sheets.map(({ columns }) => columns.length);
  const expected = {
    ...written,
    sheets: written.sheets.map((one, k) => ({
      ...one,
      columns: one.columns.slice(0, sizes[k]).map(({ width, hidden }) => ({ width, ...(hidden ? { hidden } : {}) })),
      cells: one.cells.map(({ style: { size, ...style } = {}, ...rest }) => {
        const look = { ...style, ...(size && size !== 11 ? { size } : {}) };
        return Object.keys(look).length ? { ...rest, style: look } : rest;
      }),
    })),
  }; // prettier-ignore
  expect(content).toEqual(expected);
});

test("a text never becomes a formula, whatever it starts with", async () => {
  const texts = ["=1+1", "+5", "-3", "@A1", "\t=1", "\n=1", '=HYPERLINK("x")', "'=1", "_x0041_", "<b>&amp;</b>", " two  spaces ", "60'", "12-6", "TRUE", "1e5"]; // prettier-ignore
  const bytes = await writeXlsx({
    sheets: [
      sheet(
        "Job",
        texts.map((text, row) => cell(row, 0, text)),
      ),
    ],
  });
  const xml = (await partsOf(bytes))["xl/worksheets/sheet1.xml"];
  expect(xml).not.toContain("<f");
  expect(xml.match(/<c [^>]*t="s"/g)).toHaveLength(texts.length);
  const { content } = await readXlsx(bytes);
  expect(content.sheets[0].cells.map(({ value }) => value)).toEqual(texts);
  expect(content.sheets[0].cells[0].style).toEqual({ format: "@" });
});

test("what no file can hold is left out of a text or refused with the cell's address", async () => {
  const { content } = await readXlsx(await writeXlsx({ sheets: [sheet("Job", [cell(0, 0, "a\u0000b\u0007\ud800c\uffff 😀")])] })); // prettier-ignore
  expect(content.sheets[0].cells[0].value).toBe("abc 😀");
  const long = { sheets: [sheet("Job", [cell(3, 1, "x".repeat(32_768))])] };
  await expect(writeXlsx(long)).rejects.toThrow('B4 on "Job" holds more than 32,767 characters');
  for (const name of ["", "a".repeat(32), "a/b", "a:b", "[a]", "'a'"])
    await expect(writeXlsx({ sheets: [sheet(name, [])] })).rejects.toThrow(HostError);
});

test("errors are error cells and formulas carry what they show", async () => {
  const parts = await partsOf(await writeXlsx(estimateBook()));
  const xml = parts["xl/worksheets/sheet2.xml"];
  expect(xml).toContain('t="e"><v>#DIV/0!</v>');
  expect(xml).toContain("<f>C3*2</f><v>120</v>");
  expect(xml).toContain("<f>C3-60</f><v>0</v>");
  expect(xml).toMatch(/t="e"><f>IF\(C3&gt;0,#N\/A,0\)<\/f><v>#N\/A<\/v>/);
});

test("no name but print areas and titles is defined, and a quote in a sheet's name is doubled there", async () => {
  const { "xl/workbook.xml": xml } = await partsOf(await writeXlsx(estimateBook()));
  const names = [...xml.matchAll(/<definedName name="([^"]*)"[^>]*>([^<]*)/g)].map(([, name, area]) => [name, area]);
  const quoted = "&apos;Pat&apos;&apos;s pen &amp; barn&apos;";
  expect(names).toEqual([
    ["_xlnm.Print_Area", `${quoted}!$B$1:$D$15`],
    ["_xlnm.Print_Titles", `${quoted}!$1:$2`],
  ]);
}); // prettier-ignore

test("header rows below the top of a sheet are repeated from where they stand, and read back so", async () => {
  const print = { ...estimateBook().sheets[1].print!, repeatRows: 2, repeatFrom: 6 };
  const bytes = await writeXlsx({ sheets: [sheet("Job", [cell(0, 0, 1)], { print })] });
  expect((await partsOf(bytes))["xl/workbook.xml"]).toContain("!$7:$8</definedName>");
  expect((await readXlsx(bytes)).content.sheets[0].print).toEqual(print);
});

test("the file's properties name no person, company or path", async () => {
  const parts = await partsOf(await writeXlsx(estimateBook()));
  const properties = parts["docProps/core.xml"] + parts["docProps/app.xml"];
  expect(properties).toContain("<dc:creator>Penstake</dc:creator><dc:title></dc:title>");
  expect(properties).toContain("<cp:lastModifiedBy>Penstake</cp:lastModifiedBy>");
  expect(properties).toContain("<Company></Company><Manager></Manager>");
  for (const [name, part] of Object.entries(parts)) expect([name, /file:|\/home|\/tmp|[A-Z]:\\/.test(part)]).toEqual([name, false]); // prettier-ignore
});

test("pictures are drawn by the maker that is given, at their size, and left out without one", async () => {
  const asked: unknown[][] = [];
  const maker = async (...terms: unknown[]) => {
    asked.push(terms);
    return new Uint8Array([0x89, 0x50, 0x4e, 0x47]);
  };
  const picture = { row: 2, column: 1, width: 300, height: 150, svg: "<svg/>", description: "plan" };
  const book = { sheets: [sheet("Job", [cell(0, 0, 1)], { pictures: [picture] })] };
  const parts = await partsOf(await writeXlsx(book, maker));
  expect(asked).toEqual([["<svg/>", 300, 150]]);
  expect(parts["xl/drawings/drawing1.xml"]).toContain('<xdr:ext cx="3810000" cy="1905000"/>');
  expect(Object.keys(await partsOf(await writeXlsx(book))).some((name) => name.includes("media"))).toBe(
    false,
  );
  expect((await readXlsx(await writeXlsx(book, maker))).lost).toEqual(["1 picture was left out."]);
});

test("functions younger than the format are stored with the format's prefix and read back without", async () => {
  const formula = `=XLOOKUP(A1,B:B,C:C)&CONCAT("IFS(",'IFS('!A1)&IFS(A1,2)`;
  const bytes = await writeXlsx({ sheets: [sheet("Job", [cell(0, 3, "x", { formula })])] });
  expect((await partsOf(bytes))["xl/worksheets/sheet1.xml"]).toContain("_xlfn.XLOOKUP(A1,B:B,C:C)&amp;_xlfn.CONCAT(&quot;IFS("); // prettier-ignore
  expect((await readXlsx(bytes)).content.sheets[0].cells[0].formula).toBe(formula);
});
