import JSZip from "jszip";
import { estimate, totalOf, type Estimate } from "../../src/estimate/estimate";
import { figureFields } from "../../src/estimate/figure-list";
import { figuresOf } from "../../src/estimate/figures";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { contentOfPlans } from "../../src/sheets/calculate";
import { cellOf, estimateSource } from "../../src/sheets/documents/source";
import { plainCopy } from "../../src/sheets/plain-copy";
import { type SheetData, type WorkbookContent } from "../../src/sheets/workbook-content";
import { contentBy, pen } from "../sheets/documents/books";
import { contractTrail } from "./contract-trail";
import { plansOf, randomBooks, type Book } from "./job-books";
import { purchaseTrail } from "./purchase-trail";

const JOBS = 4;
const [customer, supplier] = ["Invented Customer", "Invented Yard of the Prices"];

/** Every text of every part of a file, unpacked. */
async function textOfFile(content: WorkbookContent): Promise<string> {
  const zip = await JSZip.loadAsync(await writeXlsx(content));
  return (await Promise.all(Object.values(zip.files).map((file) => file.async("string")))).join("\n");
}

/** What only the house may see of a job, as it would stand in a file: each sum with cents, bare and written out. */
function secrets(job: Book["jobs"][number]["job"], made: Estimate, seen: readonly number[]): string[] {
  const figures = figuresOf(job, made);
  const money = [
    ...figureFields.filter(({ kind }) => kind === "money").map(({ key }) => figures[key]),
    ...made.lines.flatMap(({ price, amount }) => [price?.toNumber(), amount?.toNumber()]),
  ].filter((one) => typeof one === "number");
  const hidden = [...new Set(money)].filter((one) => !Number.isInteger(one) && Math.abs(one) > 10 && !seen.includes(one));
  return hidden.flatMap((one) => [`<v>${one}</v>`, Math.abs(one).toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 })]);
} // prettier-ignore

/** Those of some sums that a text shows, each by itself and not as a part of another number. */
const shownIn = (text: string, sums: readonly string[]) =>
  sums.filter(
    (one) => text.includes(one) && new RegExp(`(?<![\\d,.])${one.replace(/[.]/g, "\\.")}(?!\\d)`).test(text),
  );

/** The documents of some jobs that leave the house, those for the customer and those for a supplier, with all that they stand on. */
function outgoing() {
  const [book] = randomBooks(1, JOBS);
  const prices = book.prices.map((row) => ({ ...row, supplier }));
  const jobs = book.jobs.map((one) => ({ ...one, job: { ...one.job, customer } }));
  const estimates = contentOfPlans(plansOf({ ...book, prices, jobs }), pen).sheets;
  return jobs.flatMap(({ job, own }, k) => {
    const made = estimate(job, prices, own);
    const total = totalOf(made);
    if (typeof total !== "number") return [];
    const source = estimateSource(contentBy(estimates[k]), prices);
    const priced = { sources: [source], made: [made], price: cellOf(source, "total"), total, beside: [estimates[k]], k };
    const [contract, bought] = [contractTrail(priced), purchaseTrail(priced)];
    const toCustomer = contract.sheets;
    const toSupplier = bought.sheets.slice(0, 2);
    const seen = [...contract.held, ...bought.held.slice(0, 2)].flatMap(({ figures }) => Object.values(figures));
    const all = { sheets: [estimates[k], estimates.at(-1)!, ...toCustomer, ...toSupplier] };
    return [{ toCustomer, toSupplier, all, secret: secrets(job, made, seen), total }];
  });
} // prettier-ignore

/** The file of one sheet alone, as it stands and as a plain copy. */
const filesOf = (sheet: SheetData, all: WorkbookContent) =>
  Promise.all([
    textOfFile({ sheets: [sheet] }),
    textOfFile(plainCopy(all, pen, { sheets: [sheet.name], keepKeys: false })),
  ]);

/** What only the house says; a gate may have a bow overhead. */
const houseWords = /markup(?!-compat)|profit|contingency|(?<!bow )overhead|burden/i;

const leaving = outgoing();

describe("a file that leaves the house", () => {
  it("shows a customer no cost, no unit price, no markup and no supplier: bid, issued bid, change order, invoice and their plain copies", async () => {
    let searched = 0;
    for (const { toCustomer, all, secret } of leaving)
      for (const sheet of toCustomer)
        for (const text of await filesOf(sheet, all)) {
          expect([sheet.name, houseWords.exec(text)]).toEqual([sheet.name, null]);
          expect([sheet.name, text.includes(supplier)]).toEqual([sheet.name, false]);
          expect([sheet.name, shownIn(text, secret)]).toEqual([sheet.name, []]);
          searched += secret.length;
        }
    expect(searched).toBeGreaterThan(JOBS * 4 * 2 * 40);
  });

  it("shows a supplier no cost, no price to the customer, no markup and no customer: price request, purchase order and their plain copies", async () => {
    let searched = 0;
    for (const { toSupplier, all, secret, total } of leaving)
      for (const sheet of toSupplier)
        for (const text of await filesOf(sheet, all)) {
          expect([sheet.name, houseWords.exec(text)]).toEqual([sheet.name, null]);
          expect([sheet.name, text.includes(customer)]).toEqual([sheet.name, false]);
          expect([sheet.name, text.includes(supplier)]).toEqual([sheet.name, false]);
          const hidden = [...secret, `<v>${total}</v>`];
          expect([sheet.name, shownIn(text, hidden)]).toEqual([sheet.name, []]);
          searched += hidden.length;
        }
    expect(searched).toBeGreaterThan(JOBS * 2 * 2 * 40);
  });

  it("links to no sheet of the house in a plain copy", async () => {
    for (const { toCustomer, toSupplier, all } of leaving)
      for (const { name } of [...toCustomer, ...toSupplier])
        for (const { cells } of plainCopy(all, pen, { sheets: [name], keepKeys: false }).sheets)
          for (const { formula = "" } of cells) expect(formula).not.toMatch(/!|PEN/);
  });
}); // prettier-ignore
