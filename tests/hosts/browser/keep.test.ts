import { describeInBrowser, startPages, type Pages } from "./page";
import { samplePlan } from "./sample-plan";

describeInBrowser("a workbook kept in the browser", () => {
  let pages: Pages;
  beforeAll(async () => (pages = await startPages()));
  afterAll(() => pages?.close());
  afterEach(() => expect(pages.faults).toEqual([]));

  test("starts with the first sheets, every figure of them worked out", async () => {
    const page = await pages.open(await pages.newUser());
    const { sheetNames, active } = await page.evaluate(() => window.penstake.host.look());
    expect(sheetNames.length).toBeGreaterThan(2);
    expect(active.name).toBe(sheetNames[0]);
    const errors = active.values.flat().filter((value) => typeof value === "object" && value !== null);
    expect(errors).toEqual([]);
  });

  test("comes back after a reload with the same figures, messages, pictures, rules and print set-up", async () => {
    const page = await pages.open(await pages.newUser());
    await page.evaluate((plan) => window.penstake.host.write([plan]), samplePlan("Kept"));
    await page.evaluate(() => {
      const sheet = window.penstake.workbook.book.getActiveSheet();
      sheet.getRange(25, 1).setValue({ f: "=PEN.AREA(C4:C4*{1,2})" });
      window.penstake.workbook.book.insertDefinedName("wide", "Kept!$C$4");
      sheet.getRange(26, 1).setValue({ f: "=wide*2" });
      return window.penstake.workbook.computed();
    });
    const before = await page.evaluate(() => ({ view: window.penstake.workbook.snapshot() }));
    await page.evaluate(() => window.penstake.keep());
    await pages.open(page.context(), page);
    expect(await page.evaluate(() => ({ view: window.penstake.workbook.snapshot() }))).toEqual(before);
    expect(before.view.activeSheet).toBe("Kept");
    const kept = before.view.sheets.find(({ name }) => name === "Kept")!;
    expect(kept.pictures).toEqual(samplePlan("").pictures);
    expect(kept.print).toEqual(samplePlan("").print);
    expect(kept.cells.filter(({ input }) => input)).toHaveLength(2);
    expect(kept.cells.find(({ row }) => row === 26)!.value).toBe(144);
    expect(kept.cells.filter(({ row, value }) => row === 25 && typeof value === "number")).toHaveLength(2);
  });

  test("saves a change by itself within a second or two", async () => {
    const page = await pages.open(await pages.newUser());
    await page.evaluate((plan) => window.penstake.host.write([plan]), samplePlan("By itself"));
    await page.waitForFunction(
      () =>
        new Promise((found) => {
          const opening = indexedDB.open("penstake");
          opening.onsuccess = () => {
            const reading = opening.result.transaction("workbooks").objectStore("workbooks").get("workbook");
            reading.onsuccess = () => {
              opening.result.close();
              found(JSON.stringify(reading.result ?? "").includes("By itself"));
            };
          };
        }),
    );
  });

  test("keeps the print area round the rows that a user puts into it and takes out of it", async () => {
    const page = await pages.open(await pages.newUser());
    await page.evaluate((plan) => window.penstake.host.write([plan]), samplePlan("Rows"));
    const area = () => page.evaluate(() => window.penstake.workbook.activeSheet().sheet.print!.area);
    const { area: first } = samplePlan("").print;
    await page.evaluate(() => void window.penstake.workbook.book.getActiveSheet().insertRows(5, 3));
    expect(await area()).toEqual({ ...first, bottom: first.bottom + 3 });
    await page.evaluate(() => void window.penstake.workbook.book.getActiveSheet().deleteRows(6, 1));
    expect(await area()).toEqual({ ...first, bottom: first.bottom + 2 });
    await page.evaluate(() => void window.penstake.workbook.book.getActiveSheet().insertColumns(0, 1));
    expect(await area()).toEqual({ ...first, bottom: first.bottom + 2, left: 2, right: 5 });
  });

  test("is read-only in a second tab, which says so, and free again once the first is closed", async () => {
    const user = await pages.newUser();
    const first = await pages.open(user);
    await first.evaluate((plan) => window.penstake.host.write([plan]), samplePlan("Shared"));
    await first.evaluate(() => window.penstake.keep());
    const second = await pages.open(user);
    expect(await second.textContent("#said")).toContain("open in another tab");
    expect((await second.evaluate(() => window.penstake.host.look())).sheetNames).toContain("Shared");
    const write = (plan: ReturnType<typeof samplePlan>) => second.evaluate((given) => window.penstake.host.write([given]), plan); // prettier-ignore
    await expect(write(samplePlan("Refused"))).rejects.toThrow("open in another tab");
    expect(await second.isDisabled("#new")).toBe(true);
    await first.close();
    await second.getByText("The other tab has let go").waitFor();
    await pages.open(user, second);
    await write(samplePlan("Taken"));
    expect((await second.evaluate(() => window.penstake.host.look())).sheetNames).toContain("Taken");
  });

  test("that cannot be shown is set aside, not lost, and a new one is started", async () => {
    const user = await pages.newUser();
    const page = await pages.open(user);
    await page.evaluate(() => {
      window.penstake.keep = async () => {};
      return new Promise((done) => {
        const opening = indexedDB.open("penstake");
        opening.onsuccess = () => {
          const change = opening.result.transaction("workbooks", "readwrite");
          change.objectStore("workbooks").put({ broken: "by hand" }, "workbook");
          change.oncomplete = done;
        };
      });
    });
    await pages.open(user, page);
    expect(await page.textContent("#said")).toContain("set aside, not deleted");
    const aside = await page.evaluate(
      () =>
        new Promise((found) => {
          const opening = indexedDB.open("penstake");
          opening.onsuccess = () => {
            const store = opening.result.transaction("workbooks").objectStore("workbooks");
            store.get("workbook set aside").onsuccess = ({ target }) => found((target as IDBRequest).result);
          };
        }),
    );
    expect(aside).toEqual({ broken: "by hand" });
  });
});
