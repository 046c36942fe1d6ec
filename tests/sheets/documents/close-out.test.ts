import fc from "fast-check";
import { newJob } from "../../../src/estimate/job";
import { settle, settledLayer, type SettledItem, type Ticket } from "../../../src/estimate/settle-up";
import { contentOfPlans } from "../../../src/sheets/calculate";
import { closeOutColumns, closeOutPlan } from "../../../src/sheets/documents/close-out";
import { closeOutItems } from "../../../src/sheets/documents/close-out-lines";
import { closeOutWords } from "../../../src/sheets/documents/close-out-words";
import { orderDefaults, purchaseOrderPlan } from "../../../src/sheets/documents/purchase-order";
import { readDocument, type DocumentSheet } from "../../../src/sheets/documents/read";
import { readRequest } from "../../../src/sheets/documents/read-request";
import { logOf, newLog, ticketColumns, ticketRows, ticketsPlan } from "../../../src/sheets/documents/tickets";
import { shownBy } from "../shown";
import { contentBy, pen } from "./books";
import { requestOf } from "./requests";
import { withTickets } from "./ticket-books";

const jobs = [
  { ...newJob(), job_name: "Copperleaf Bend (invented)", gate_1: 10 },
  {
    ...newJob(),
    size: 50,
    depth: 4,
    sand_unit: "cu yd",
    structure: "post pen",
    base_depth: 5,
    base_settle: 10,
    fabric: "under base",
  },
];
const made = requestOf(jobs);
const offered = readRequest(shownBy(made.sheet)).lines;
const lines = [
  ...offered.map((line, k) => ({ ...line, price: 10.35 + k, taxed: false })),
  { item: "Pallet, returned", words: "", quantity: 3, unit: "each", price: 12.5, taxed: false },
];
const order = purchaseOrderPlan(lines, { ...made.entries, ...orderDefaults }, "Purchase order");
const orderSheet = contentOfPlans([order], pen).sheets[0];
const items = closeOutItems(made.sources, [
  { sheet: "Purchase order", supplier: "Invented Supply", filled: readRequest(shownBy(orderSheet)) },
]);
const log = ticketsPlan(
  items.map(({ name }) => name),
  ["Invented Supply"],
  "Tickets",
);
const tonsPerCy = { sand: 1.35, base: 1.4 };

const money = { contract: 9000, changes: -150.5, extras: 210.25, paid: 4000 };
const closeOut = closeOutPlan(
  { sources: made.sources, items, log: newLog("Tickets"), entries: money },
  "Close-out",
);

/** The close-out and the log with these tickets, worked out. */
function settledWith(tickets: readonly Ticket[]) {
  const { sheets } = contentOfPlans([...made.plans, order, withTickets(log, tickets), closeOut], pen);
  const [logged, closed] = sheets.slice(-2).map(shownBy);
  return { logged: logged.values, values: closed.values, document: readDocument(closed, []) };
}

const bidOf = (name: string, part: "quantity" | "amount") =>
  made.sources.reduce(
    (sum, { made: figures, sheet }) =>
      sum +
      figures.takeoff.reduce((all, { key, item, size }) => {
        const found = made.items.find((one) => one.name.replaceAll(",", "") === name);
        const is = found && found.item === item && found.size === size;
        return is ? all + Number(sheet.cells[`${key}_${part}`].value || 0) : all;
      }, 0),
    0,
  );

const settledItems: SettledItem[] = items.map(({ name, unit, material }) => ({
  name,
  unit,
  material,
  bid: { quantity: bidOf(name, "quantity"), money: Math.round(100 * bidOf(name, "amount")) / 100 },
}));

const ticket: fc.Arbitrary<Ticket> = fc.record({
  item: fc.constantFrom(...items.map(({ name }) => name), "other"),
  quantity: fc.integer({ min: -200, max: 4000 }).map((n) => n / 100),
  unit: fc.constantFrom("ton", "cu yd"),
  amount: fc.integer({ min: -5000, max: 90_000 }).map((n) => n / 100),
  invoice: fc.constantFrom("", "", "A-1", "7"),
});

const figure = ({ cells }: DocumentSheet, key: string) => cells[key].value as number;

describe("the close-out of a job", () => {
  it("names every job that it settles, one without a name by its estimate", () => {
    const { values } = settledWith([]);
    expect(values.flat()).toContain("Copperleaf Bend (invented); Estimate 2");
  });

  it("settles every item by its tickets as plain code does, base and sand in tons and yards alike", () => {
    fc.assert(
      fc.property(fc.array(ticket, { maxLength: 40 }), (tickets) => {
        const { values, document, logged } = settledWith(tickets);
        const settled = settle(settledItems, tickets, tonsPerCy);
        settled.forEach((one, k) => {
          const row = values[5 + k];
          expect(row[closeOutColumns.item]).toBe(items[k].name);
          expect(row[closeOutColumns.bid]).toBeCloseTo(settledItems[k].bid.quantity, 9);
          expect(row[closeOutColumns.delivered]).toBeCloseTo(one.delivered, 9);
          expect(row[closeOutColumns.more]).toBeCloseTo(one.moreThanBid, 9);
          expect(row[closeOutColumns.ticketMoney]).toBe(one.ticketed.toNumber());
          expect(row[closeOutColumns.billedMoney]).toBe(one.billed.toNumber());
          expect(row[closeOutColumns.moreMoney]).toBe(one.moreMoney.toNumber());
        });
        for (const [material, before] of [["sand", ""], ["base", "base_"]] as const) {
          const on = made.sources.filter(({ made: ground }) => ground[material].delivered > 0);
          expect(on).toHaveLength(material === "base" ? 1 : 2);
          const area = on.reduce((sum, { made: { pen: built } }) => sum + built.area, 0);
          const came = settledLayer(material, settledItems, settled, tonsPerCy, area);
          expect(figure(document, `${before}came_yards`)).toBeCloseTo(came.cubicYards, 9);
          if (came.cubicYards >= 0) expect(figure(document, `${before}depth_came`)).toBeCloseTo(came.depth, 9);
        }
        const cents = (of: (one: Ticket) => number) => Math.round(tickets.reduce((sum, one) => sum + 100 * of(one), 0)) / 100;
        const all = values[5 + items.length + 1];
        expect(all[closeOutColumns.ticketMoney]).toBe(cents(({ amount }) => amount) + 0);
        expect(figure(document, "unbilled")).toBe(cents(({ amount, invoice }) => (invoice ? 0 : amount)) + 0);
        const last = logged[ticketRows.first + tickets.length - 1];
        if (tickets.length > 0) expect(last[ticketColumns.running]).toBeCloseTo(cents(({ amount }) => amount), 9);
      }),
      { numRuns: 12 },
    );
  });

  it("shows what was ordered, live on the order, and what is left to bill", () => {
    const { values, document } = settledWith([]);
    const row = (name: string) => values.find((cells) => cells[closeOutColumns.item] === name)!;
    expect(row("Panel 12 ft")[closeOutColumns.ordered]).toBe(lines[0].quantity);
    expect(row("Panel 12 ft")[closeOutColumns.orderedMoney]).toBe(Math.round(lines[0].quantity! * 1035) / 100);
    expect(row("Pallet returned")).toMatchObject({ [closeOutColumns.bid]: 0, [closeOutColumns.ordered]: 3, [closeOutColumns.orderedMoney]: 37.5 });
    expect(figure(document, "left")).toBe(5059.75);
    expect(figure(document, "depth_came")).toBe(0);
    expect(figure(document, "depth_bid")).toBeGreaterThan(3);
    // 5 in compacted take 5 / 0.9 in loose, and whole loads bring at most 5 % less.
    expect(figure(document, "base_depth_bid")).toBeGreaterThan((0.95 * 5) / 0.9);
    expect(figure(document, "base_depth_more")).toBe(-figure(document, "base_depth_bid"));
  });

  it("marks tickets for what is not on the list, and leaves blank rows blank", () => {
    const odd = (item: string): Ticket => ({ item, quantity: 1, unit: "ton", amount: 1, invoice: "" });
    const { logged } = settledWith([odd("Gravel"), odd("other"), odd("panel 12 ft")]);
    const said = logged.slice(ticketRows.first).map((row) => row[ticketColumns.check] ?? "");
    expect(said.slice(0, 4)).toEqual([closeOutWords.notOrdered, "", "", ""]);
    expect(logged[ticketRows.first + 3][ticketColumns.running]).toBe("");
    expect(logged).toHaveLength(ticketRows.first + ticketRows.count);
  });

  it("finds a log again after rows were put in, and none where its columns were moved", () => {
    const content = () => contentBy(contentOfPlans([log], pen).sheets[0]);
    expect(logOf(content())).toEqual(newLog("Tickets"));
    const longer = content();
    longer.values.splice(10, 0, longer.values[10], longer.values[10]);
    longer.formulas.splice(10, 0, longer.formulas[10], longer.formulas[10]);
    expect(logOf(longer)).toEqual({ ...newLog("Tickets"), last: newLog("Tickets").last + 2 });
    const moved = content();
    for (const rows of [moved.values, moved.formulas]) for (const row of rows) row.splice(2, 0, null);
    expect(logOf(moved)).toBeUndefined();
  });

  it("has rules of choices that a spreadsheet can hold, with no comma in a choice", () => {
    const lists = log.cells.flatMap(({ accepts }) => (accepts?.kind === "list" ? [accepts.options] : []));
    expect(lists.length).toBeGreaterThanOrEqual(2 * ticketRows.count);
    for (const options of lists) {
      expect(options.join(",").length).toBeLessThanOrEqual(255);
      expect(options.join("")).not.toContain(",");
    }
    expect(log.frozenRows).toBe(ticketRows.first);
  });
}); // prettier-ignore
