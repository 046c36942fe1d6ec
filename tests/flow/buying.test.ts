import { type Page } from "playwright-core";
import { orderEntries } from "../../src/sheets/documents/purchase-order";
import { readDocument } from "../../src/sheets/documents/read";
import { readRequest } from "../../src/sheets/documents/read-request";
import { describeInBrowser, forOneUser } from "../hosts/browser/page";

const active = (page: Page) => page.evaluate(async () => (await window.penstake.host.look()).active);

describeInBrowser("buying in the browser workbook", () => {
  let page: Page;
  const open = (id: string) => page.locator(`#penstake-${id} > summary`).click();
  const press = (name: string) => page.getByRole("button", { name, exact: true }).click();

  forOneUser(async (opened) => {
    page = opened;
    await open("documents");
  });

  test("asks a supplier for the ticked items, without a price", async () => {
    await open("document-price-request");
    await page.fill("#penstake-request-supplier", "Invented Supply");
    await page.locator("label.tick", { hasText: "Layout stake" }).locator("input").uncheck();
    await press("Write price request");
    await page.getByText("Written on the new sheet").waitFor();
    const { name, values } = await active(page);
    expect(name).toBe("Price request");
    const { lines } = readRequest({ values });
    expect(lines.length).toBeGreaterThan(4);
    expect(lines.map(({ item }) => item)).not.toContain("Layout stake");
    expect(lines.every(({ price }) => price === null)).toBe(true);
    expect(values.flat().join()).not.toMatch(/OUT OF DATE|Invented customer/);
  });

  test("reads it filled in, takes a price over on the user's tick, and orders what has a price", async () => {
    const { name, values } = await active(page);
    const { lines, columns } = readRequest({ values });
    const changes = lines.map(({ row }, k) => ({ row, column: columns.price!, value: k === 1 ? "call us" : 20 + k / 4 }));
    await page.evaluate(([sheet, cells]) => window.penstake.host.update(sheet, cells), [name, changes] as const);
    await open("document-purchase-order");
    await press("Read Price request");
    await page.getByText(`${lines.length - 1} of ${lines.length} lines have a price.`).waitFor();
    await page.getByText('"call us" is no price').waitFor();
    await page.locator(".price-line label", { hasText: "Panel, 16 ft, Invented Supply" }).locator("input").check();
    await press("Put 1 line into the prices");
    await page.getByText("1 price is on").waitFor();
    await press("Write purchase order");
    await page.getByText("Quantities and prices on it can be typed over").waitFor();
    const order = await active(page);
    const { cells, entries } = readDocument(order, orderEntries);
    const total = lines.reduce((sum, { quantity }, k) => (k === 1 ? sum : sum + Math.round(100 * quantity! * (20 + k / 4))), 0);
    expect(entries).toMatchObject({ number: 1, supplier: "Invented Supply" });
    expect(cells.total.value).toBe(total / 100);
  });

  test("writes a ticket log and the close-out that follows it", async () => {
    await open("document-close-out");
    await press("Write ticket log and close-out");
    await page.getByText("It follows the tickets on").waitFor();
    const { values, name } = await active(page);
    expect(name).toBe("Close-out");
    expect(values.flat().filter((value) => typeof value === "object" && value !== null)).toEqual([]);
  });
}); // prettier-ignore
