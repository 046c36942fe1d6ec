import { billing, contractTotal } from "../../src/estimate/contract";
import { writeXlsx } from "../../src/hosts/xlsx/xlsx";
import { contentOfPlans } from "../../src/sheets/calculate";
import { invoicePlan } from "../../src/sheets/documents/invoice";
import { readDocument, shownNumber } from "../../src/sheets/documents/read";
import { plainForm } from "../../src/sheets/plain";
import { type SheetPlan } from "../../src/sheets/plan";
import { pen } from "../sheets/documents/books";
import { changeOrder, contractIn, issuedBid } from "../sheets/documents/issued-bids";
import { shownBy } from "../sheets/shown";
import { officeTest, recalculate } from "./libreoffice";

/** An issued bid, a signed change order and an invoice over both, and what they must show by plain arithmetic. */
function settled(k: number) {
  const bid = issuedBid({ size: 40 + 3 * k, overhead: 7.25 + k, tax: 8.25 }, k);
  const amounts = [123.45 + 77.13 * k, -0.01 * (3 * k + 1)];
  const first = contractIn([bid]);
  const asked = { change_1_amount: amounts[0], change_2_amount: amounts[1], change_signed: "2026-12-01" };
  const order = changeOrder(first, 1, asked, `Change order ${k}`);
  const contract = contractIn([bid, order]);
  const billed = [1, 2, 3].map((draw) => (k + draw) % 2 === 0);
  const terms = { retainage: 2.5 * (k % 5), paid: 10.01 * k };
  const answers = {
    invoice_retainage: terms.retainage,
    invoice_paid: terms.paid,
    ...Object.fromEntries(billed.map((one, draw) => [`billed_${draw + 1}`, one ? "yes" : "no"])),
  };
  const invoice = invoicePlan(contract, answers, `Invoice ${k}`);
  const shown = (key: string) => shownNumber(contract.bid, key)!;
  const draws = billed.map((one, draw) => ({ amount: shown(`draw_${draw + 1}`), billed: one }));
  const due = billing({ draws, changes: [contractTotal(0, amounts)], ...terms });
  const plans: SheetPlan[] = [bid, order, invoice];
  return {
    plans,
    figures: {
      [order.name]: {
        contract_before: shown("price"),
        contract_after: contractTotal(shown("price"), amounts),
      },
      [invoice.name]: {
        invoice_billed: due.billed,
        invoice_retained: due.retained,
        invoice_amount_due: due.due,
      },
    },
  };
}

officeTest("change orders and invoices of twenty bids come to what plain arithmetic says, to the cent", async () => {
  const all = Array.from({ length: 20 }, (_, k) => settled(k + 1));
  const { content } = plainForm(contentOfPlans(all.flatMap(({ plans }) => plans), pen), pen);
  const [{ sheets }] = await recalculate([await writeXlsx(content)]);
  let held = 0;
  for (const { figures } of all)
    for (const [name, expected] of Object.entries(figures)) {
      const found = readDocument(shownBy(sheets.find((sheet) => sheet.name === name)!), []);
      const shown = Object.fromEntries(Object.keys(expected).map((key) => [key, shownNumber(found, key)]));
      expect({ name, ...shown }).toEqual({ name, ...expected });
      held += Object.keys(expected).length;
    }
  expect(held).toBe(100);
}, 300_000); // prettier-ignore
