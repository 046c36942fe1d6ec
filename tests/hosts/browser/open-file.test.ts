import { readFile } from "node:fs/promises";
import { type Page } from "playwright-core";
import { describeInBrowser, forOneUser } from "./page";
import { samplePlan } from "./sample-plan";

describeInBrowser("a workbook in a file", () => {
  let page: Page;
  forOneUser(async (opened) => {
    page = opened;
    await page.evaluate((plan) => window.penstake.host.write([plan]), samplePlan("Filed"));
  });

  const snapshot = () => page.evaluate(() => window.penstake.workbook.snapshot());
  async function downloaded(button: string) {
    const [file] = await Promise.all([page.waitForEvent("download"), page.click(button)]);
    return { name: file.suggestedFilename(), bytes: await readFile(await file.path()) };
  }
  async function open(name: string, bytes: Buffer, answer = "Replace it") {
    const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.click("#open")]);
    await chooser.setFiles({ name, mimeType: "", buffer: bytes });
    if (answer) await page.getByRole("button", { name: answer }).click();
    await page.waitForFunction(
      () =>
        !document.querySelector<HTMLButtonElement>("#open")!.disabled ||
        document.querySelector("dialog[open]"),
    );
  }

  test("comes back from its own file as it was, whatever was done meanwhile", async () => {
    const before = await snapshot();
    const { name, bytes } = await downloaded("#save");
    expect(name).toMatch(/^Workbook \d{4}-\d\d-\d\d\.penstake$/);
    await page.evaluate(() =>
      window.penstake.workbook.book.deleteSheet(window.penstake.workbook.book.getSheetByName("Filed")!),
    );
    expect((await snapshot()).sheets.map((sheet) => sheet.name)).not.toContain("Filed");
    await open(name, bytes);
    expect(await snapshot()).toEqual(before);
  });

  test("is not opened where the user would rather keep the present one", async () => {
    const { name, bytes } = await downloaded("#save");
    await page.evaluate(() => window.penstake.host.update("Filed", [{ row: 3, column: 2, value: 100 }]));
    const before = await snapshot();
    await open(name, bytes, "Cancel");
    expect(await snapshot()).toEqual(before);
  });

  test.each([
    ["is no text of ours", "hello", "not a workbook file"],
    ["is data of another kind", '{"sheets":{}}', "not a workbook file"],
    ["has no sheet", '{"penstake":1,"workbook":{"sheets":{},"sheetOrder":[]}}', "not a workbook file"],
    ["is of a later version", '{"penstake":99,"workbook":{}}', "newer version"],
  ])("is refused in a sentence where it %s, and the present one stays", async (_, text, sentence) => {
    const before = await snapshot();
    await open("bad.penstake", Buffer.from(text), "");
    expect(await page.textContent("#said")).toContain(sentence);
    expect(await snapshot()).toEqual(before);
  });

  test("brings in nothing that runs or is fetched from elsewhere", async () => {
    const { bytes } = await downloaded("#save");
    const file = JSON.parse(bytes.toString());
    const [id] = file.workbook.sheetOrder;
    file.workbook.sheets[id].name = '<img src="https://example.com/a.png" onerror="window.ran=1">';
    file.workbook.sheets[id].cellData[0] = {
      0: { v: "<script>window.ran=1</script>", t: 1 },
      1: { v: "=1", f: 5, p: 3 },
    };
    for (const resource of file.workbook.resources)
      resource.data = String(resource.data).replace(/data:image[^"]*/g, "https://example.com/b.png");
    await open("hostile.penstake", Buffer.from(JSON.stringify(file)));
    await page.waitForFunction(() =>
      window.penstake.workbook.book.getSheets()[0].getSheetName().startsWith("<img"),
    );
    expect(await page.evaluate(() => "ran" in window)).toBe(false);
    expect((await snapshot()).sheets.flatMap(({ pictures }) => pictures)).toEqual([]);
    await open("good.penstake", bytes);
  });

  test("is downloaded as a plain .xlsx under a name of its own, and opens again with its values", async () => {
    const { name, bytes } = await downloaded("#download");
    expect(name).toMatch(/^Plain copy \d{4}-\d\d-\d\d\.xlsx$/);
    await open(name, bytes);
    const dialog = page.locator("dialog[open]");
    if (await dialog.count()) await page.getByRole("button", { name: "OK" }).click();
    await page.waitForFunction(() => window.penstake.workbook.book.getSheetByName("Filed"));
    await page.evaluate(() => window.penstake.host.show("Filed"));
    const { active } = await page.evaluate(() => window.penstake.host.look());
    expect(active.values[5][2]).toBeCloseTo(100 * Math.PI, 9);
    expect(
      active.formulas.flat().filter((said) => typeof said === "string" && said.includes("PEN.")),
    ).toEqual([]);
  });

  test("is refused in a sentence where an .xlsx is damaged", async () => {
    const before = await snapshot();
    await open("bad.xlsx", Buffer.from("PK no zip"), "");
    expect(await page.textContent("#said")).toMatch(/\.xlsx|workbook/);
    expect(await snapshot()).toEqual(before);
  });
});
