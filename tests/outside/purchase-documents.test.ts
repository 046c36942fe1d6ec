import JSZip from "jszip";
import fc from "fast-check";
import { type Job } from "../../src/estimate/job";
import { orderTotal } from "../../src/estimate/order-total";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { contentOfPlans } from "../../src/sheets/calculate";
import { closeOutPlan } from "../../src/sheets/documents/close-out";
import { closeOutItems } from "../../src/sheets/documents/close-out-lines";
import { orderDefaults, purchaseOrderPlan } from "../../src/sheets/documents/purchase-order";
import { readDocument } from "../../src/sheets/documents/read";
import { readRequest } from "../../src/sheets/documents/read-request";
import { newLog, ticketColumns, ticketRows, ticketsPlan } from "../../src/sheets/documents/tickets";
import { plainForm } from "../../src/sheets/plain";
import { type SheetPlan } from "../../src/sheets/plan";
import { type WorkbookContent } from "../../src/sheets/workbook-content";
import { randomJob } from "../estimate/random-job";
import { pen } from "../sheets/documents/books";
import { requestOf, type Made } from "../sheets/documents/requests";
import { shownBy } from "../sheets/shown";
import { agree, told } from "./books";
import { officeTest, recalculate } from "./libreoffice";

/** Two random jobs that lead to an answer, asked for, ordered, delivered in part and settled. */
function boughtJobs(count: number): Made[] {
  const made: Made[] = [];
  for (const job of fc.sample(randomJob, { seed: 2026, numRuns: 60 })) {
    if (made.length === count) break;
    const one: Job = { ...job, customer: "Invented Customer" };
    try {
      made.push(requestOf([one, { ...one, size: Number(one.size) + 6 }]));
    } catch {
      continue;
    }
  }
  return made;
}

const charges = { freight: 120.25, tax: 8.25, tax_status: "taxed" };

function settledBook(made: Made): { book: WorkbookContent; order: SheetPlan; total: number } {
  const lines = readRequest(shownBy(made.sheet)).lines.map((line, k) => ({
    ...line,
    price: 9.37 + k * 3.113,
    taxed: k % 3 > 0,
  }));
  const order = purchaseOrderPlan(lines, { ...made.entries, ...orderDefaults, ...charges }, "Purchase order");
  const filled = readRequest(shownBy(contentOfPlans([order], pen).sheets[0]));
  const items = closeOutItems(made.sources, [
    { sheet: "Purchase order", supplier: "Invented Supply", filled },
  ]);
  const log = ticketsPlan(
    items.map(({ name }) => name),
    ["Invented Supply"],
    "Tickets",
  );
  const typed = items.map(({ name, unit }, k) => ({
    item: name,
    quantity: 3.25 + k,
    unit,
    amount: 41.35 * (k + 1),
    invoice: k % 2 ? "A-1" : null,
  }));
  const cells = log.cells.map((cell) => {
    const ticket = typed[cell.row - ticketRows.first];
    const part = (["item", "quantity", "unit", "amount", "invoice"] as const).find(
      (one) => ticketColumns[one] === cell.column,
    );
    return ticket && part ? { ...cell, says: { kind: "constant" as const, value: ticket[part] } } : cell;
  });
  const closeOut = closeOutPlan(
    {
      sources: made.sources,
      items,
      log: newLog("Tickets"),
      entries: { contract: 12_000, changes: -45.5, paid: 4000 },
    },
    "Close-out",
  );
  const plans = [...made.plans, made.request, order, { ...log, cells }, closeOut];
  const total = orderTotal(lines, { ...charges, status: charges.tax_status }).total.toNumber();
  return { book: plainForm(contentOfPlans(plans, pen), pen).content, order, total };
}

/** Every text of every part of a file, unpacked. */
async function textOfFile(content: WorkbookContent): Promise<string> {
  const zip = await JSZip.loadAsync(await writeXlsx(content));
  return (await Promise.all(Object.values(zip.files).map((file) => file.async("string")))).join("\n");
}

const only = (content: WorkbookContent, name: string) => ({
  sheets: content.sheets.filter((sheet) => sheet.name === name),
});

describe("the documents of buying in LibreOffice", () => {
  officeTest(
    "show every figure as it was worked out here, and the order's total as plain code has it, in plain copies recalculated",
    async () => {
      const books = boughtJobs(6).map(settledBook);
      const recalculated = await recalculate(await Promise.all(books.map(({ book }) => writeXlsx(book))));
      let held = 0;
      recalculated.forEach((content, k) => {
        for (const name of ["Price request", "Purchase order", "Tickets", "Close-out"]) {
          const [ours, theirs] = [books[k].book, content].map(({ sheets }) =>
            sheets.find((sheet) => sheet.name === name)!,
          );
          const shown = new Map(theirs.cells.map(({ row, column, value }) => [`${row},${column}`, value]));
          for (const { row, column, value } of ours.cells) {
            const found = shown.get(`${row},${column}`) ?? null;
            if (!agree(found, value))
              throw new Error(
                `${k}, ${name}: row ${row + 1}, column ${column}: ${told(found)}, here ${told(value)}`,
              );
            held++;
          }
        }
        const order = content.sheets.find(({ name }) => name === "Purchase order")!;
        expect(readDocument(shownBy(order), []).cells.total.value).toBe(books[k].total);
      });
      expect(books).toHaveLength(6);
      expect(held).toBeGreaterThan(6 * 800);
    },
    300_000,
  );
});

describe("the file of a price request or an order", () => {
  it("holds no price, amount, total, markup or customer of the estimates, in any of its parts", async () => {
    let searched = 0;
    for (const made of boughtJobs(3)) {
      const { book } = settledBook(made);
      const words = await Promise.all(["Price request", "Purchase order"].map((name) => textOfFile(only(book, name))));
      for (const text of words) expect(text).not.toMatch(/Invented Customer|markup(?!-compat)|profit|contingency/i);
      for (const { made: figures } of made.sources) {
        const money = [
          ...figures.lines.flatMap(({ price, amount }) => [price, amount]),
          ...Object.values(figures.charges).filter((one) => typeof one === "object"),
        ].flatMap((one) => (one && !one.isInteger() ? [one.toString()] : []));
        for (const figure of money)
          for (const text of words) {
            expect(text).not.toContain(`<v>${figure}</v>`);
            searched++;
          }
      }
    }
    expect(searched).toBeGreaterThan(150);
  });
}); // prettier-ignore
