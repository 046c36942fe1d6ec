import { billing, contractTotal } from "../../src/estimate/contract";
import { draws } from "../../src/estimate/draws";
import { bidPlan } from "../../src/sheets/documents/bid";
import { drawsOf } from "../../src/sheets/documents/bid-draws";
import { contractOf } from "../../src/sheets/documents/contract";
import { invoicePlan } from "../../src/sheets/documents/invoice";
import { changeOrder, issuedOf } from "../sheets/documents/issued-bids";
import { shownBy } from "../sheets/shown";
import { work, type Priced, type Trail } from "./trail";

const bidAnswers = { bid_number: 1, deposit: 12.5, milestone_share: 33, business: "Invented Pens" };
const shares = [{ name: "", percent: 33 }, { name: "", percent: 54.5 }]; // prettier-ignore

/** The bid, the bid issued, a signed change order and an invoice over both. */
export function contractTrail({ sources, price, total, beside, k }: Priced): Trail {
  const answers = { ...bidAnswers, bid_number: k + 1 };
  const draft = bidPlan({ sources, price, answers, draws: drawsOf(answers), alternates: [] }, `Bid ${k}`);
  const [bid] = work([draft], beside);
  const issuedPlan = issuedOf(draft, bid);
  const [issued] = work([issuedPlan], []);
  const amounts = [123.45 + 77.13 * k, -0.01 * (3 * k + 1)].map((amount) => Math.round(amount * 100) / 100);
  const asked = { change_1_amount: amounts[0], change_2_amount: amounts[1], change_signed: "2026-12-01" };
  const [order] = work([changeOrder(contractOf(shownBy(issued), []), 1, asked, `Change order ${k}`)], [issued]);
  const contract = contractOf(shownBy(issued), [issued, order].map(shownBy));
  const dues = draws(total, { percent: 12.5 }, shares);
  const due = dues.length === 3 ? dues : [{ name: "", amount: 0 }, ...dues];
  const isBilled = due.map((_, draw) => (k + draw) % 2 === 0);
  const terms = { retainage: 2.5 * (k % 5), paid: k % 3 === 0 ? 0 : Math.round(1001 * k) / 100 };
  const said = {
    ...(terms.retainage > 0 && { invoice_retainage: terms.retainage }),
    ...(terms.paid > 0 && { invoice_paid: terms.paid }),
    ...Object.fromEntries(isBilled.map((one, draw) => [`billed_${draw + 1}`, one ? "yes" : "no"])),
  };
  const [invoice] = work([invoicePlan(contract, said, `Invoice ${k}`)], [issued, order]);
  const net = contractTotal(0, amounts);
  const bill = billing({ draws: due.map(({ amount }, draw) => ({ amount, billed: isBilled[draw] })), changes: [net], ...terms });
  const bidFigures = { price: total, ...Object.fromEntries(due.map(({ amount }, n) => [`draw_${n + 1}`, amount])) };
  return {
    sheets: [bid, issued, order, invoice],
    held: [
      { name: bid.name, figures: bidFigures },
      { name: issued.name, figures: bidFigures },
      { name: order.name, figures: { contract_before: total, change_net: net, contract_after: contractTotal(total, amounts) } },
      {
        name: invoice.name,
        figures: {
          contract_total: contractTotal(total, amounts),
          invoice_billed: bill.billed,
          ...(terms.retainage > 0 && { invoice_retained: bill.retained }),
          invoice_amount_due: bill.due,
        },
      },
    ],
  };
} // prettier-ignore
