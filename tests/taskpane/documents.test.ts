import { fieldsOf, type Field } from "../../src/estimate/fields";
import { estimate } from "../../src/estimate/estimate";
import { structureOf } from "../../src/estimate/job";
import { together } from "../../src/estimate/together";
import { bidAsked } from "../../src/sheets/documents/bid-entries";
import { issuedCells } from "../../src/sheets/documents/issue";
import { messages } from "../../src/sheets/documents/messages";
import { readDocument } from "../../src/sheets/documents/read";
import { offered, pricedFor } from "../../taskpane/documents/alternates";
import { estimatesIn, readBook, sourcesIn } from "../../taskpane/documents/book";
import { bidStart, newBid, nextBidNumber } from "../../taskpane/documents/new-bid";
import { copy, written } from "./opened";

/** A workbook with an estimate and the bid on it. */
async function withBid(example = true) {
  const all = await written();
  const { host } = all;
  const book = await readBook(host);
  const sources = sourcesIn(book, estimatesIn(book));
  const entries = Object.fromEntries(bidAsked.map(({ key, default: value }) => [key, value]));
  const choice = { answers: { ...entries, ...bidStart(book) }, alternates: [], example };
  const write = async () => host.write(newBid(book, sources, choice));
  return { ...all, book, sources, choice, write };
}

/** Another answer that the field allows. */
function another({ options, range, default: usual }: Field) {
  if (options) return options.find((option) => option !== usual)!;
  return range ? (range[0] + range[1]) / 2 : "changed";
}

describe("documents in the panel", () => {
  it("write a bid with the next free number under its name, and offer the one after it", async () => {
    const { host, write, book } = await withBid();
    expect(nextBidNumber(book)).toBe(1);
    await write();
    expect(host.active).toBe("Bid 1");
    expect(nextBidNumber(await readBook(host))).toBe(2);
  });

  it("refuse a bid on example prices until that is asked for, and write nothing", async () => {
    const { host, write } = await withBid(false);
    const before = host.sheets.length;
    await expect(write()).rejects.toThrow(/example prices\. Type your own prices first/);
    expect(host.sheets).toHaveLength(before);
  });

  it("refuse a bid while prices are missing, and say how many", async () => {
    const { host, sources, choice } = await withBid();
    const { row, column } = sources[0].sheet.cells.total;
    host.type("Estimate", row, column, "3 prices missing");
    const book = await readBook(host);
    const again = sourcesIn(book, ["Estimate"]);
    expect(() => newBid(book, again, choice)).toThrow('"Estimate": 3 prices missing');
  });

  it("name the estimate whose input cannot be read", async () => {
    const { host, sources } = await withBid();
    const { row, column } = sources[0].sheet.cells.depth;
    host.type("Estimate", row, column, "deep");
    const book = await readBook(host);
    expect(() => sourcesIn(book, ["Estimate"])).toThrow('"Estimate", Footing depth: ');
  });

  it("issue a bid that stays as it is after every input of its estimate has changed", async () => {
    const { host, write, sources } = await withBid();
    await write();
    const [draft] = await host.read(["Bid 1"]);
    await host.fillCopy("Bid 1", "Bid 1 issued", issuedCells(draft, "2026-11-26"));
    const [before] = await host.read(["Bid 1 issued"]);
    const [{ sheet, job }] = sources;
    const inputs = fieldsOf(structureOf(job)).filter(({ key, settled }) => !settled && key in sheet.cells);
    expect(inputs.length).toBeGreaterThan(30);
    for (const field of inputs) {
      const { row, column } = sheet.cells[field.key];
      host.type("Estimate", row, column, another(field));
    }
    expect((await host.read(["Bid 1 issued"]))[0]).toEqual(before);
    expect((await host.read(["Bid 1"]))[0].values.flat()).toContain(messages.outOfDate);
  });

  it("find every estimate of a workbook, copies of the user's own among them", async () => {
    const { host } = await withBid();
    copy(host, "Estimate", "Behind the barn");
    expect(estimatesIn(await readBook(host))).toEqual(["Estimate", "Behind the barn"]);
  });

  it("price several estimates as one on a sheet of their own, and bid that", async () => {
    const { host, choice } = await withBid();
    copy(host, "Estimate", "Behind the barn");
    const book = await readBook(host);
    const sources = sourcesIn(book, estimatesIn(book));
    const plans = newBid(book, sources, choice);
    expect(plans.map(({ name }) => name)).toEqual(["Together", "Bid 1"]);
    await host.write(plans);
    const [bid] = await host.read(["Bid 1"]);
    const jobs = sources.map(({ job, sheet }) => ({ job, own: sheet.own }));
    const price = together(jobs, book.prices).charges.total.toNumber();
    expect(readDocument(bid, []).cells.price.value).toBe(price);
    expect(bid.values.flat()).toContain(messages.bid.builtOf(2, "Behind the barn"));
  });

  it("refuse one bid over estimates that name different customers, and name both; a blank one goes along", async () => {
    const { host, choice, sources } = await withBid();
    copy(host, "Estimate", "Behind the barn");
    const { row, column } = sources[0].sheet.cells.customer;
    const bid = async () => {
      const book = await readBook(host);
      return newBid(book, sourcesIn(book, estimatesIn(book)), choice);
    };
    host.type("Estimate", row, column, "First invented customer");
    expect(await bid()).toHaveLength(2);
    host.type("Behind the barn", row, column, "Second invented customer");
    await expect(bid()).rejects.toThrow("First invented customer, Second invented customer. Untick");
  });

  it("refuse to price estimates as one that charge differently, and name what differs", async () => {
    const { host, choice, sources } = await withBid();
    copy(host, "Estimate", "Behind the barn");
    const { row, column } = sources[0].sheet.cells.profit;
    host.type("Behind the barn", row, column, 33);
    const book = await readBook(host);
    expect(() => newBid(book, sourcesIn(book, estimatesIn(book)), choice)).toThrow(/Profit/);
  });

  it("offer deeper sand, a wider gate and the other estimates, each with what it does to the price", async () => {
    const { host } = await withBid();
    copy(host, "Estimate", "Behind the barn");
    const book = await readBook(host);
    const [source, other] = sourcesIn(book, estimatesIn(book));
    const choices = offered(source, [other]);
    expect(choices.map(({ name }) => name)).toEqual([
      "Footing 4 in deep instead of 3 in",
      "A compacted base, 4 in deep",
      "A 12 ft gate instead of 10 ft",
      'The panel pen "Behind the barn" built with it',
    ]);
    const priced = pricedFor(book, source, choices);
    ["depth", "base_depth"].forEach((key, k) => {
      const deeper = estimate({ ...source.job, [key]: 4 }, book.prices).charges.total;
      expect(priced[k].difference).toBe(deeper.minus(source.made.charges.total).toNumber());
    });
    const based = { ...source, job: { ...source.job, base_depth: 4 } };
    expect(offered(based, []).map(({ name }) => name)).toContain("Base 6 in deep instead of 4 in");
  });
});
