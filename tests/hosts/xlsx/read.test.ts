import { readXlsx } from "../../../src/hosts/xlsx/xlsx";
import { fileOf, oneSheet } from "./book";

const rows = (cells: string) => `<sheetData>${cells}</sheetData>`;
const read = async (xml: string, more?: Record<string, string>) =>
  readXlsx(await fileOf(oneSheet(xml, more)));

test("stored functions of this add-in get their names back", async () => {
  const { content } = await read(
    rows(`<row r="1"><c r="A1"><f>_xldudf_PEN_FEET_INCHES(B1)&amp;"_xldudf_PEN_X"</f><v>3</v></c></row>`),
  );
  expect(content.sheets[0].cells).toEqual([
    { row: 0, column: 0, value: 3, formula: '=PEN.FEET_INCHES(B1)&"_xldudf_PEN_X"' },
  ]);
});

test("a formula shared by a column is read in every cell", async () => {
  const { content } = await read(
    rows(
      `<row r="1"><c r="B1"><f t="shared" ref="B1:B2" si="0">A1*$C$1</f><v>2</v></c></row><row r="2"><c r="B2"><f t="shared" si="0"/><v>4</v></c></row>`,
    ),
  );
  expect(content.sheets[0].cells.map(({ formula }) => formula)).toEqual(["=A1*$C$1", "=A2*$C$1"]);
});

test("dates are the sheet's numbers with their format, in both calendars", async () => {
  const styles = `<styleSheet><numFmts count="1"><numFmt numFmtId="170" formatCode="yyyy-mm-dd"/></numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellXfs count="2"><xf/><xf numFmtId="170" applyNumberFormat="1"/></cellXfs></styleSheet>`;
  const date = (day: number) => rows(`<row r="1"><c r="A1" s="1"><v>${day}</v></c></row>`);
  const { content } = await read(date(46_000.25), { "xl/styles.xml": styles });
  expect(content.sheets[0].cells[0]).toMatchObject({ value: 46_000.25, style: { format: "yyyy-mm-dd" } });
  const parts = oneSheet(date(44_538.25), { "xl/styles.xml": styles });
  parts["xl/workbook.xml"] = parts["xl/workbook.xml"].replace(
    "<sheets>",
    '<workbookPr date1904="1"/><sheets>',
  );
  expect((await readXlsx(await fileOf(parts))).content.sheets[0].cells[0].value).toBe(46_000.25);
});

test("sheets are found by what the file says and not by the names of its parts", async () => {
  const sheet = (value: number) =>
    `<worksheet>${rows(`<row r="1"><c r="A1"><v>${value}</v></c></row>`)}</worksheet>`;
  const { content } = await readXlsx(
    await fileOf({
      "xl/workbook.xml": `<workbook xmlns:r="r"><bookViews><workbookView activeTab="1"/></bookViews><sheets><sheet name="Pat&apos;s &amp; ours" sheetId="7" r:id="b"/><sheet name="Second" sheetId="2" r:id="a"/></sheets></workbook>`,
      "xl/_rels/workbook.xml.rels": `<Relationships><Relationship Id="a" Target="/xl/worksheets/Second.xml" Type="x/worksheet"/><Relationship Id="b" Target="worksheets/other/one.xml" Type="x/worksheet"/></Relationships>`,
      "xl/worksheets/Second.xml": sheet(2),
      "xl/worksheets/other/one.xml": sheet(1),
    }),
  );
  expect(content.sheets.map(({ name, cells }) => [name, cells[0].value])).toEqual([["Pat's & ours", 1], ["Second", 2]]); // prettier-ignore
  expect(content.activeSheet).toBe("Second");
});

test("everything that could not be carried is said in a sentence of its own", async () => {
  const xml = `<sheetProtection sheet="1"/>${rows(
    `<row r="1"><c r="A1" t="inlineStr"><is><r><rPr><b/></rPr><t>Pa</t></r><r><t>nel</t></r></is></c><c r="B1"><f t="array" ref="B1">SUM(A1:A2)</f><v>5</v></c><c r="C1"><f t="shared" si="9"/><v>6</v></c></row>`,
  )}<autoFilter ref="A1:B2"/><conditionalFormatting sqref="A1"/><dataValidations><dataValidation type="custom" sqref="A1:A2"><formula1>A1&gt;2</formula1></dataValidation></dataValidations><hyperlinks><hyperlink ref="A1" r:id="x"/></hyperlinks>`;
  const parts = oneSheet(xml);
  parts["xl/workbook.xml"] = `<workbook xmlns:r="r"><sheets><sheet name="Job" sheetId="1" r:id="rId1" state="hidden"/><sheet name="Chart" sheetId="2" r:id="rId2"/></sheets><definedNames><definedName name="Tax">Job!$A$1</definedName><definedName name="_xlnm.Print_Area" localSheetId="0">Job!$A$1:$B$2</definedName><definedName name="Huge">Job!$A$1:$XFD$1048576</definedName></definedNames></workbook>`;
  parts["xl/_rels/workbook.xml.rels"] = parts["xl/_rels/workbook.xml.rels"].replace("</Rel", `<Relationship Id="rId2" Type="x/chartsheet" Target="chartsheets/sheet1.xml"/></Rel`);
  for (const name of ["charts/chart1.xml", "charts/chart2.xml", "media/image1.png", "pivotTables/pivotTable1.xml", "tables/table1.xml", "vbaProject.bin", "externalLinks/externalLink1.xml", "threadedComments/threadedComment1.xml"]) parts[`xl/${name}`] = "x";
  parts["xl/drawings/drawing1.xml"] = "<xdr:wsDr><xdr:sp><xdr:txBody/></xdr:sp></xdr:wsDr>";
  const { content, lost } = await readXlsx(await fileOf(parts));
  expect(lost).toEqual([
    "2 charts were left out.",
    "1 picture was left out.",
    "Shapes and drawings on 1 sheet were left out.",
    "1 pivot table was left out; the cells it filled keep what they show.",
    "1 table became plain cells.",
    "Macros were left out.",
    "1 link to another workbook was left out; cells keep what they show.",
    "2 defined names were left out; formulas that use one show #NAME?.",
    "Threads of comments on 1 sheet were left out.",
    "1 sheet that is one chart was left out.",
    "1 hidden sheet is shown here.",
    "Conditional formatting on 1 sheet was left out.",
    "The protection of 1 sheet was left out.",
    "The filter on 1 sheet was left out.",
    "Links on 1 sheet were left out; their text stays.",
    "Rules for what 1 cell accepts were left out.",
    "1 array formula became what it shows.",
    "1 formula that could not be read became what it shows.",
    "1 text with more than one font became plain.",
  ]);
  expect(content.sheets).toHaveLength(1);
  expect(content.sheets[0].print?.area).toEqual({ top: 0, left: 0, bottom: 1, right: 1 });
  expect(content.sheets[0].cells.map(({ value, formula }) => [value, formula])).toEqual([["Panel", undefined], [5, undefined], [6, undefined]]);
}); // prettier-ignore

test("notes are read from wherever the file keeps them", async () => {
  const { content } = await read(rows(`<row r="2"><c r="B2"><v>60</v></c></row>`), {
    "xl/worksheets/_rels/sheet1.xml.rels": `<Relationships><Relationship Id="r" Type="x/comments" Target="../comments/comment1.xml"/></Relationships>`,
    "xl/comments/comment1.xml": `<comments><commentList><comment ref="B2" authorId="0"><text><r><t>Measured </t></r><r><t xml:space="preserve">&amp; checked</t></r></text></comment></commentList></comments>`,
  });
  expect(content.sheets[0].cells).toEqual([{ row: 1, column: 1, value: 60, note: "Measured & checked" }]);
});
