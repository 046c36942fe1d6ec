import fc from "fast-check";
import { billing, contractTotal } from "../../../src/estimate/contract";
import { contentOfPlans } from "../../../src/sheets/calculate";
import { invoicePlan } from "../../../src/sheets/documents/invoice";
import { messages } from "../../../src/sheets/documents/messages";
import { shownNumber } from "../../../src/sheets/documents/read";
import { pen, wordsOf } from "./books";
import { changeOrder, contractIn, figureIn, issuedBid } from "./issued-bids";

const issued = issuedBid();
const price = shownNumber(contractIn([issued]).bid, "price")!;
const cents = fc.integer({ min: -500_000, max: 500_000 }).map((amount) => amount / 100);

describe("a change order", () => {
  test("carries the contract from the bid to its new total, live and to the cent", () => {
    fc.assert(
      fc.property(cents, fc.option(cents, { nil: null }), (one, other) => {
        const plan = changeOrder(contractIn([issued]), 1, { change_1_amount: one, change_2_amount: other });
        expect(figureIn([issued, plan], "contract_before")).toBe(price);
        expect(figureIn([issued, plan], "contract_after")).toBe(contractTotal(price, [one, other ?? 0]));
      }),
      { numRuns: 25 },
    );
  });

  test("counts those before it that were signed, and no other", () => {
    const first = changeOrder(contractIn([issued]), 1, {
      change_1_amount: 100.1,
      change_signed: "2026-12-01",
    });
    const second = changeOrder(contractIn([issued, first]), 2, { change_1_amount: 50 });
    const third = changeOrder(contractIn([issued, first, second]), 3, { change_1_amount: -0.2 });
    expect(figureIn([issued, first, second, third], "contract_after")).toBe(
      contractTotal(price, [100.1, -0.2]),
    );
    expect(wordsOf(contentOfPlans([issued, first, third], pen).sheets[2])).toContain(
      "Signed change order No. 1",
    );
  });

  test("keeps what was typed a text, and refuses a bid that has lost its price", () => {
    const plan = changeOrder(contractIn([issued]), 1, { change_what: "=1+1", change_1_words: "@SUM(A1)" });
    const words = wordsOf(contentOfPlans([issued, plan], pen).sheets[1]);
    for (const typed of ["=1+1", "@SUM(A1)", "Invented customer", "Invented pens"])
      expect(words).toContain(typed);
    const bare = { ...issued, cells: issued.cells.filter(({ column }) => column !== 6) };
    expect(() => contractIn([bare])).toThrow(messages.contract.broken("Bid 12 issued"));
  });
});

describe("an invoice", () => {
  test("bills draws and signed changes, less paid and held back, as the plain arithmetic does", () => {
    fc.assert(
      fc.property(cents, fc.array(fc.boolean(), { minLength: 3, maxLength: 3 }), fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 300_000 }),
        (extra, billed, quarters, paidCents) => {
          const signed = changeOrder(contractIn([issued]), 1, { change_1_amount: extra, change_signed: "yes" });
          const contract = contractIn([issued, signed]);
          const answers = {
            invoice_retainage: quarters / 4,
            invoice_paid: paidCents / 100,
            ...Object.fromEntries(billed.map((one, k) => [`billed_${k + 1}`, one ? "yes" : "no"])),
          };
          const plans = [issued, signed, invoicePlan(contract, answers, "Invoice 1")];
          const draws = billed.map((one, k) => ({ amount: shownNumber(contract.bid, `draw_${k + 1}`)!, billed: one }));
          const expected = billing({ draws, changes: [extra], retainage: quarters / 4, paid: paidCents / 100 });
          expect(figureIn(plans, "invoice_billed")).toBe(expected.billed);
          expect(figureIn(plans, "invoice_retained")).toBe(quarters > 0 ? expected.retained : undefined);
          expect(figureIn(plans, "invoice_amount_due")).toBe(expected.due);
        }),
      { numRuns: 25, examples: [[-0.01, [false, false, false], 1, 0]] },
    );
  }); // prettier-ignore

  test("comes to the contract and its changes, less paid and held back, once every draw is billed", () => {
    const answers = { billed_1: "yes", billed_2: "yes", billed_3: "yes", invoice_paid: 1000 };
    const plans = [issued, invoicePlan(contractIn([issued]), answers, "Invoice 1")];
    expect(figureIn(plans, "invoice_amount_due")).toBe(contractTotal(price, [-1000]));
  });

  test("never shows minus zero where what is held back rounds to nothing from below", () => {
    expect(billing({ draws: [], changes: [-0.01], retainage: 25, paid: 0 }).retained).toBe(0);
  });
});
