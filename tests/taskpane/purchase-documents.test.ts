import { boughtItems } from "../../src/estimate/bought-items";
import { readPriceTable } from "../../src/estimate/price-import";
import { closeOutColumns } from "../../src/sheets/documents/close-out";
import { priceRequestPlan } from "../../src/sheets/documents/price-request";
import { orderEntries } from "../../src/sheets/documents/purchase-order";
import { purchaseWords } from "../../src/sheets/documents/purchase-words";
import { readDocument } from "../../src/sheets/documents/read";
import { readRequest, requestAnswers } from "../../src/sheets/documents/read-request";
import { boughtOf } from "../../src/sheets/documents/source";
import { ticketColumns, ticketRows } from "../../src/sheets/documents/tickets";
import { priceChanges } from "../../src/sheets/price-changes";
import { readPrices } from "../../src/sheets/price-rows";
import { pricesLayoutOf } from "../../src/sheets/prices-layout";
import { documentsIn, readBook, sourcesIn } from "../../taskpane/documents/book";
import { closeOutStart, newCloseOut } from "../../taskpane/documents/close-out";
import { newOrder, orderStart, priceTableOf } from "../../taskpane/documents/new-order";
import { newRequest, newRequests, requestStart } from "../../taskpane/documents/new-request";
import { type FakeHost } from "./fake-host";
import { written } from "./opened";

const today = new Date(2026, 10, 25);
const supplier = "Invented Supply";

/** A workbook with an estimate, and a request over it as the panel starts it. */
async function asking() {
  const { host } = await written();
  const book = await readBook(host);
  const sources = sourcesIn(book, ["Estimate"]);
  const items = boughtItems(sources.map(boughtOf));
  return { host, book, sources, items, entries: { ...requestStart(book, sources, items, today), supplier } };
}

/** The same with the request written, and each line filled in at `price`. */
async function filledIn(price = (k: number) => 10 + k / 4) {
  const all = await asking();
  const plan = newRequest(all.book, all);
  await all.host.write([plan]);
  const { lines, columns } = readRequest(await contentOf(all.host, plan.name));
  lines.forEach(({ row }, k) => all.host.type(plan.name, row, columns.price!, price(k)));
  return { ...all, request: plan.name };
}

const contentOf = async (host: FakeHost, name: string) => (await host.read([name]))[0];

describe("buying from the panel", () => {
  it("numbers requests on, and starts a new one with what the last one said", async () => {
    const { host, book, sources, items, entries } = await asking();
    expect(entries).toMatchObject({ number: 1, date: "2026-11-25", trucks: "up to 16 cu yd" });
    await host.write([newRequest(book, { sources, items, entries: { ...entries, business: "Invented Pens", panel_height: 6 } })]);
    const next = await readBook(host);
    expect(requestStart(next, sources, items, today)).toMatchObject({ number: 2, business: "Invented Pens", panel_height: 6, supplier: null });
    expect(newRequest(next, { sources, items, entries }).name).toBe("Price request 2");
  });

  it("writes one request for each supplier that the prices name, and says for which items none is named", async () => {
    const { book, sources, items, entries } = await asking();
    const named = (item: string) => (item === "panel" ? "North (invented)" : item.startsWith("sand") ? "Pit (invented)" : "");
    const prices = book.prices.map((row) => ({ ...row, supplier: named(row.item) }));
    const { plans, without } = newRequests(book, prices, { sources, items, entries });
    expect(plans.map(({ name }) => name)).toEqual(["Price request", "Price request 2"]);
    const says = plans.map(({ cells }) => cells.map(({ says: one }) => (one.kind === "constant" ? one.value : "")));
    expect(says[0]).toContain("North (invented)");
    expect(says[0]).toContain("Panel, 12 ft");
    expect(says[0]).not.toContain("Sand, by the ton");
    expect(says[1]).toContain("Sand, by the ton");
    expect(without.map(({ item }) => item)).toEqual(items.map(({ item }) => item).filter((item) => named(item) === ""));
  });

  it("puts what a supplier filled in into the prices, with supplier and date, and loses no row", async () => {
    const { host, request } = await filledIn();
    const { lines } = readRequest(await contentOf(host, request));
    const { prices } = await host.look();
    const before = readPrices(prices!.values);
    const table = readPriceTable(priceTableOf(lines, supplier), before, 46_351);
    expect(table.passedOver).toEqual([]);
    expect(table.lines.map(({ kind }) => kind)).not.toContain("not understood");
    expect(table.lines).toHaveLength(lines.length);
    await host.update(prices!.name, priceChanges(table.lines, pricesLayoutOf(prices!.name, prices!.values), prices!.values.length));
    const after = readPrices((await host.look()).prices!.values);
    expect(after.length).toBeGreaterThanOrEqual(before.length);
    for (const { price } of lines) expect(after.find((row) => row.price === price && row.supplier === supplier)).toMatchObject({ date: 46_351 });
  });

  it("makes an order of what was filled in, taxed as the prices say, and refuses one without a price", async () => {
    const { host, request, book } = await filledIn();
    const sheet = await contentOf(host, request);
    const { lines } = readRequest(sheet);
    const answers = orderStart(await readBook(host), requestAnswers(sheet, orderEntries), today);
    expect(answers).toMatchObject({ number: 1, supplier, trucks: "up to 16 cu yd", tax_status: "taxed" });
    const plan = newOrder(book, lines, answers);
    await host.write([plan]);
    const order = readDocument(await contentOf(host, plan.name), orderEntries);
    expect(plan.name).toBe("Purchase order 1");
    const haul = lines.findIndex(({ item }) => item.startsWith("Truck load"));
    expect(order.cells[`line_${haul + 1}_taxed`].value).toBe("no");
    expect(order.cells.line_1_taxed.value).toBe("yes");
    expect(() => newOrder(book, lines.map((line) => ({ ...line, price: null })), answers)).toThrow(purchaseWords.nothingPriced);
    const again = orderStart(await readBook(host), {}, today);
    expect(again.number).toBe(2);
  });

  it("reads the entries of a request also from a copy without its keys", async () => {
    const { host, request } = await filledIn();
    const sheet = await contentOf(host, request);
    const bare = { ...sheet, values: sheet.values.slice(1).map((row) => row.slice(1)) };
    const [keyed, copied] = [sheet, bare].map((one) => requestAnswers(one, orderEntries));
    for (const key of ["supplier", "date", "trucks", "number", "freight"]) expect(copied[key]).toEqual(keyed[key]);
    expect(readRequest(bare).lines.map(({ price }) => price)).toEqual(readRequest(sheet).lines.map(({ price }) => price));
  });

  it("settles on the tickets of the workbook's log, and writes a new log where there is none", async () => {
    const { host, request, sources, items } = await filledIn();
    const sheet = await contentOf(host, request);
    const book = await readBook(host);
    await host.write([newOrder(book, readRequest(sheet).lines, orderStart(book, requestAnswers(sheet, orderEntries), today))]);
    const ordered = await readBook(host);
    expect(closeOutStart(ordered, today)).toEqual({ closed_on: "2026-11-25" });
    const first = newCloseOut(ordered, sources, closeOutStart(ordered, today), false);
    expect(first.plans.map(({ name }) => name)).toEqual(["Tickets", "Close-out"]);
    await host.write(first.plans);
    host.type("Tickets", ticketRows.first, ticketColumns.item, "Panel 12 ft");
    host.type("Tickets", ticketRows.first, ticketColumns.quantity, 7);
    const again = newCloseOut(await readBook(host), sources, {}, false);
    expect(again).toMatchObject({ name: "Close-out 2", log: "Tickets" });
    await host.write(again.plans);
    const { values } = await contentOf(host, "Close-out 2");
    expect(values.find((row) => row[closeOutColumns.item] === "Panel 12 ft")![closeOutColumns.delivered]).toBe(7);
    expect(documentsIn(await readBook(host), "tickets")).toHaveLength(1);
    expect(items.length).toBeGreaterThan(4);
  });

  it("says so where an estimate has lost the cell of a quantity, and writes nothing", async () => {
    const { book, sources, items, entries } = await asking();
    const [source] = sources;
    const { stakes_quantity: _, ...cells } = source.sheet.cells;
    const broken = [{ ...source, sheet: { ...source.sheet, cells } }];
    expect(_.row).toBeGreaterThan(0);
    expect(() => priceRequestPlan({ sources: broken, items, entries }, "x")).toThrow('"Estimate" has no cell for stakes quantity');
    expect(() => boughtItems(broken.map(boughtOf))).toThrow('"Estimate" has no cell for stakes quantity');
    const shown = [{ ...source, sheet: { ...source.sheet, cells: { ...source.sheet.cells, stakes_quantity: { row: 1, column: 1, value: { error: "#REF!" as const } } } } }];
    expect(() => boughtItems(shown.map(boughtOf))).toThrow('"Estimate", stakes: #REF!');
    expect(() => newRequest(book, { sources: broken, items, entries })).toThrow(/Put its keys back/);
  });
}); // prettier-ignore
