import fc from "fast-check";
import { billing, contractTotal } from "../../../src/estimate/contract";
import { newJob } from "../../../src/estimate/job";
import { bidPlan } from "../../../src/sheets/documents/bid";
import { drawsOf } from "../../../src/sheets/documents/bid-draws";
import { changeOrderPlan } from "../../../src/sheets/documents/change-order";
import { contractOf, type Contract } from "../../../src/sheets/documents/contract";
import { invoicePlan } from "../../../src/sheets/documents/invoice";
import { issuedCells } from "../../../src/sheets/documents/issue";
import { messages } from "../../../src/sheets/documents/messages";
import { readDocument, shownNumber } from "../../../src/sheets/documents/read";
import { cellOf } from "../../../src/sheets/documents/source";
import { expression } from "../../../src/sheets/expression";
import { type SheetPlan } from "../../../src/sheets/plan";
import { contentOfPlans } from "../../../src/sheets/calculate";
import { type FieldValue } from "../../../src/estimate/fields";
import { shownBy } from "../shown";
import { contentBy, pen, sourcesOf, wordsOf, worked } from "./books";

type Answers = Record<string, FieldValue>;

/** A bid of a job, issued, as the plan of a sheet without anything live. */
function issuedBid(): SheetPlan {
  const { plans, sources } = sourcesOf([{ ...newJob(), truck_1: 16, customer: "Invented customer" }]);
  const answers = { business: "Invented pens", bid_number: 12, bid_date: "2026-11-25", deposit: 10, milestone_share: 50 }; // prettier-ignore
  const price = cellOf(sources[0], "total");
  const draft = bidPlan({ sources, price, answers, draws: drawsOf(answers), alternates: [] }, "Bid 12");
  const content = contentBy(worked(plans, draft));
  for (const { row, column, says } of issuedCells(content, "2026-11-26"))
    content.values[row][column] = says as string | null;
  const cells = content.values.flatMap((row, at) =>
    row.map((value, column) => ({ row: at, column, says: value === null ? expression("") : expression(value as string), style: "text" as const })),
  ); // prettier-ignore
  return { ...draft, name: "Bid 12 issued", cells };
}

const issued = issuedBid();
const shownOf = (plans: SheetPlan[]) => contentOfPlans(plans, pen).sheets.map(shownBy);
const contractIn = (plans: SheetPlan[]): Contract => {
  const shown = shownOf(plans);
  return contractOf(shown[0], shown);
};
/** A figure of the last sheet; minus zero, which a cell shows as 0, is 0. */
const figure = (plans: SheetPlan[], key: string) => {
  const sheet = shownBy(contentOfPlans(plans, pen).sheets.at(-1)!);
  const shown = shownNumber(readDocument(sheet, []), key);
  return shown === undefined ? undefined : shown + 0;
};

const change = (contract: Contract, k: number, answers: Answers) =>
  changeOrderPlan(contract, { change_number: k, ...answers }, `Change order ${k}`);

const price = shownNumber(contractIn([issued]).bid, "price")!;
const cents = fc.integer({ min: -500_000, max: 500_000 }).map((amount) => amount / 100);

describe("a change order", () => {
  test("carries the contract from the bid to its new total, live and to the cent", () => {
    fc.assert(
      fc.property(cents, fc.option(cents, { nil: null }), (one, other) => {
        const plan = change(contractIn([issued]), 1, { change_1_amount: one, change_2_amount: other });
        expect(figure([issued, plan], "contract_before")).toBe(price);
        expect(figure([issued, plan], "contract_after")).toBe(contractTotal(price, [one, other ?? 0]));
      }),
      { numRuns: 25 },
    );
  });

  test("counts those before it that were signed, and no other", () => {
    const first = change(contractIn([issued]), 1, {
      change_1_amount: 100.1,
      change_signed: "2026-12-01",
    });
    const second = change(contractIn([issued, first]), 2, { change_1_amount: 50 });
    const third = change(contractIn([issued, first, second]), 3, { change_1_amount: -0.2 });
    expect(figure([issued, first, second, third], "contract_after")).toBe(
      contractTotal(price, [100.1, -0.2]),
    );
    expect(wordsOf(contentOfPlans([issued, first, third], pen).sheets[2])).toContain(
      "Signed change order No. 1",
    );
  });

  test("keeps what was typed a text, and refuses a bid that has lost its price", () => {
    const plan = change(contractIn([issued]), 1, { change_what: "=1+1", change_1_words: "@SUM(A1)" });
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
          const signed = change(contractIn([issued]), 1, { change_1_amount: extra, change_signed: "yes" });
          const contract = contractIn([issued, signed]);
          const answers = {
            invoice_retainage: quarters / 4,
            invoice_paid: paidCents / 100,
            ...Object.fromEntries(billed.map((one, k) => [`billed_${k + 1}`, one ? "yes" : "no"])),
          };
          const plans = [issued, signed, invoicePlan(contract, answers, "Invoice 1")];
          const draws = billed.map((one, k) => ({ amount: shownNumber(contract.bid, `draw_${k + 1}`)!, billed: one }));
          const expected = billing({ draws, changes: [extra], retainage: quarters / 4, paid: paidCents / 100 });
          expect(figure(plans, "invoice_billed")).toBe(expected.billed);
          expect(figure(plans, "invoice_retained")).toBe(expected.retained);
          expect(figure(plans, "invoice_amount_due")).toBe(expected.due);
        }),
      { numRuns: 25, examples: [[-0.01, [false, false, false], 1, 0]] },
    );
  }); // prettier-ignore

  test("comes to the contract and its changes, less paid and held back, once every draw is billed", () => {
    const answers = { billed_1: "yes", billed_2: "yes", billed_3: "yes", invoice_paid: 1000 };
    const plans = [issued, invoicePlan(contractIn([issued]), answers, "Invoice 1")];
    expect(figure(plans, "invoice_amount_due")).toBe(contractTotal(price, [-1000]));
  });

  test("never shows minus zero where what is held back rounds to nothing from below", () => {
    expect(billing({ draws: [], changes: [-0.01], retainage: 25, paid: 0 }).retained).toBe(0);
  });
});
