import { bidAsked } from "../../src/sheets/documents/bid-entries";
import { contractOf } from "../../src/sheets/documents/contract";
import { invoicePlan } from "../../src/sheets/documents/invoice";
import { issuedCells } from "../../src/sheets/documents/issue";
import { shownNumber } from "../../src/sheets/documents/read";
import { documentsIn, estimatesIn, readBook, sourcesIn } from "../../taskpane/documents/book";
import { closeOutStart } from "../../taskpane/documents/close-out";
import { bidStart, newBid } from "../../taskpane/documents/new-bid";
import { written } from "./opened";

test("a close-out starts with the contract of the bid issued last and what its last invoice bills to date", async () => {
  const { host } = await written();
  const book = await readBook(host);
  const entries = Object.fromEntries(bidAsked.map(({ key, default: value }) => [key, value]));
  const answers = { ...entries, ...bidStart(book), deposit: 10 };
  await host.write(newBid(book, sourcesIn(book, estimatesIn(book)), { answers, alternates: [], example: true }));
  const [draft] = await host.read(["Bid 1"]);
  await host.fillCopy("Bid 1", "Bid 1 issued", issuedCells(draft, "2026-11-26"));
  const issued = await readBook(host);
  const contract = contractOf(documentsIn(issued, "issued")[0], issued.sheets);
  expect(closeOutStart(issued)).not.toHaveProperty("paid");
  await host.write([invoicePlan(contract, { billed_1: "yes" }, "Invoice 1")]);
  expect(closeOutStart(await readBook(host))).toMatchObject({
    contract: shownNumber(contract.bid, "price"),
    paid: shownNumber(contract.bid, "draw_1"),
  });
}); // prettier-ignore
