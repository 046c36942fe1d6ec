import { newJob } from "../../../src/estimate/job";
import { orderDefaults, purchaseOrderPlan } from "../../../src/sheets/documents/purchase-order";
import { readRequest } from "../../../src/sheets/documents/read-request";
import { ticketsPlan } from "../../../src/sheets/documents/tickets";
import { type SheetPlan } from "../../../src/sheets/plan";
import { countingWorkbook } from "../../hosts/excel/stand-in";
import { shownBy } from "../shown";
import { requestOf } from "./requests";

const made = requestOf([{ ...newJob(), customer: "Invented Customer" }]);
const lines = readRequest(shownBy(made.sheet)).lines.map((line) => ({ ...line, price: 10, taxed: true }));
const order = purchaseOrderPlan(lines, { ...made.entries, ...orderDefaults }, "Purchase order");
const log = (supplier: string) => ticketsPlan(["Sand"], [supplier], "Tickets");
const choicesOf = ({ cells }: SheetPlan) =>
  cells.flatMap(({ accepts }) => (accepts?.kind === "list" ? [accepts.options] : []));

describe("a document with choices", () => {
  test.each([
    ["price request", made.request],
    ["purchase order", order],
    ["ticket log", log("Invented Supply")],
  ])("that is a %s is written into Excel with its lists", async (_what, plan) => {
    expect(choicesOf(plan).length).toBeGreaterThan(0);
    const { host } = countingWorkbook({});
    await host.write([...made.plans, plan]);
    expect((await host.look()).sheetNames).toContain(plan.name);
  });

  it("takes any supplier where a name cannot stand in a list", async () => {
    const plan = log("Invented Supply, North");
    expect(choicesOf(plan).flat()).not.toContain("Invented Supply, North");
    const { host } = countingWorkbook({});
    await host.write([plan]);
    expect((await host.look()).sheetNames).toContain("Tickets");
  });
});
