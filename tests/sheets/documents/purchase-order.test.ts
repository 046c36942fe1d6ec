import fc from "fast-check";
import { newJob } from "../../../src/estimate/job";
import { orderTotal, taxStatuses } from "../../../src/estimate/order-total";
import { contentOfPlans } from "../../../src/sheets/calculate";
import {
  purchaseOrderPlan,
  orderDefaults,
  orderEntries,
  type OrderedLine,
} from "../../../src/sheets/documents/purchase-order";
import { readDocument } from "../../../src/sheets/documents/read";
import { readRequest } from "../../../src/sheets/documents/read-request";
import { shownBy } from "../shown";
import { pen, wordsOf } from "./books";
import { filledIn, requestOf } from "./requests";

const made = requestOf([{ ...newJob(), gate_1: 10, customer: "Invented Customer" }]);
const offered = readRequest(shownBy(made.sheet));
const cents = (most: number) => fc.integer({ min: 0, max: most * 100 }).map((n) => n / 100);

const orderedLine: fc.Arbitrary<OrderedLine> = fc.record({
  item: fc.constant("Panel, 12 ft"),
  words: fc.constant("12 ft pin to pin"),
  quantity: fc.oneof(fc.integer({ min: 0, max: 400 }), cents(90), fc.constant(null)),
  unit: fc.constant("each"),
  price: fc.oneof(
    cents(900),
    fc.integer({ min: 1, max: 9999 }).map((n) => n / 1e4),
    fc.constant(null),
  ),
  taxed: fc.boolean(),
});

const charges = fc.record({
  freight: fc.oneof(cents(500), fc.constant(0)),
  tax: fc.constantFrom(0, 6, 6.5, 8.25),
  tax_status: fc.constantFrom(...taxStatuses),
});

const sheetOf = (lines: readonly OrderedLine[], more: object) =>
  contentOfPlans(
    [purchaseOrderPlan(lines, { ...made.entries, ...orderDefaults, ...more }, "Purchase order")],
    pen,
  ).sheets[0];

describe("a purchase order", () => {
  it("comes to the cent to what its lines, its tax and its delivery come to", () => {
    fc.assert(
      fc.property(fc.array(orderedLine, { minLength: 1, maxLength: 12 }), charges, (lines, more) => {
        const { cells } = readDocument(shownBy(sheetOf(lines, more)), []);
        const total = orderTotal(lines, { ...more, status: more.tax_status });
        lines.forEach((_, k) => expect(cells[`line_${k + 1}_amount`].value).toBe(total.amounts[k].toNumber()));
        expect(cells.lines_total.value).toBe(total.lines.toNumber());
        expect(cells.tax_amount.value).toBe(total.tax.toNumber());
        expect(cells.total.value).toBe(total.total.toNumber());
      }),
      { numRuns: 150 },
    );
  });

  it("takes lines, agreed prices and delivery over from a filled-in request, and gives its entries back", () => {
    const { columns, lines } = offered;
    const shown = filledIn(made.sheet, lines.map(({ row }, k) => ({ row, column: columns.price!, value: 10 + k / 100 })));
    const filled = readRequest(shown).lines;
    const sheet = sheetOf(filled.map((line) => ({ ...line, taxed: true })), { number: 12 });
    const read = readDocument(shownBy(sheet), orderEntries);
    expect(read.problems).toEqual({});
    expect(read.entries).toMatchObject({ number: 12, supplier: "Invented Supply", site_phone: "555-0101", job_number: "J-17" });
    expect(readRequest(shownBy(sheet)).lines.map(({ item, words, quantity, unit, price }) => ({ item, words, quantity, unit, price }))).toEqual(
      filled.map(({ item, words, quantity, unit, price }) => ({ item, words, quantity, unit, price })),
    );
    expect(wordsOf(sheet)).toContain("ticket, delivery note and invoice: J-17");
  });

  it("keeps what people wrote as text, and shows nothing of the customer or of the estimates", () => {
    const sheet = sheetOf([{ item: "=cmd()", words: "@x", quantity: 1, unit: "+1", price: 2, taxed: false }], { supplier: "-1+1" });
    for (const word of ["=cmd()", "@x", "+1", "-1+1"])
      expect(sheet.cells.find(({ value }) => value === word)).not.toHaveProperty("formula");
    expect(wordsOf(sheet)).not.toContain("Invented Customer");
    expect(sheet.cells.flatMap(({ formula }) => formula ?? []).join()).not.toMatch(/Estimate|Prices|!/);
  });
}); // prettier-ignore
