import { newJob } from "../../src/estimate/job";
import { estimate } from "../../src/estimate/estimate";
import { isArena, isPosted } from "../../src/estimate/pen";
import { comparePlan } from "../../src/sheets/documents/compare";
import { bidPlan } from "../../src/sheets/documents/bid";
import { drawsOf } from "../../src/sheets/documents/bid-draws";
import { closeOutItems, type Order } from "../../src/sheets/documents/close-out-lines";
import { closeOutPlan } from "../../src/sheets/documents/close-out";
import { orderDefaults, purchaseOrderPlan } from "../../src/sheets/documents/purchase-order";
import { readRequest } from "../../src/sheets/documents/read-request";
import { cellOf } from "../../src/sheets/documents/source";
import { newLog, ticketsPlan } from "../../src/sheets/documents/tickets";
import { layoutSheetPlan } from "../../src/sheets/layout-sheet";
import { panelPenLayout } from "../../src/sheets/panel-pen-layout";
import { type SheetPlan } from "../../src/sheets/plan";
import { type Painter } from "../../src/hosts/svg-to-png";
import { countingWorkbook } from "../hosts/excel/stand-in";
import { ownPrices } from "../sheets/documents/books";
import { requestOf } from "../sheets/documents/requests";
import { shownBy } from "../sheets/shown";
import { estimatePlaces } from "../sheets/typed-plan";
import { type Row } from "./measure";

const DAY = "2026-11-25";

/** Every document of one job of panels: the sheets that it starts from, then those that are written over them. */
function documentsOfOneJob(): { start: SheetPlan[]; documents: SheetPlan[] } {
  const job = { ...newJob(), customer: "Invented Customer", budget: 9000 };
  const { pen } = estimate(job, ownPrices);
  if (isArena(pen) || isPosted(pen)) throw new Error("a new job is no pen of panels any more");
  const made = requestOf([job]);
  const [source] = made.sources;
  const issue = { revision: 1, date: DAY, estimate: { name: "Estimate", cells: estimatePlaces } };
  const sizes = [50, 60, 66, 80].map((size) => ({ label: `${size} ft`, answers: { size } }));
  const price = cellOf(source, "total");
  const filled = readRequest(shownBy(made.sheet));
  const lines = filled.lines.map((line) => ({ ...line, price: 10, taxed: true }));
  const orders: Order[] = [{ sheet: "Purchase order", supplier: "Invented Supply", filled }];
  const items = closeOutItems(made.sources, orders);
  const names = items.map(({ name }) => name);
  return {
    start: made.plans,
    documents: [
      layoutSheetPlan(panelPenLayout(job, pen, issue), "Layout"),
      comparePlan(source, ownPrices, sizes, "Compare", DAY),
      bidPlan({ sources: made.sources, price, answers: {}, draws: drawsOf({}), alternates: [] }, "Bid 1"),
      made.request,
      purchaseOrderPlan(lines, { ...made.entries, ...orderDefaults }, "Purchase order"),
      ticketsPlan(names, ["Invented Supply"], "Tickets"),
      closeOutPlan({ sources: made.sources, items, log: newLog("Tickets"), entries: {} }, "Close-out"),
    ],
  };
}

/** What all documents of one job ask of Excel, each written on its own, beside the estimate that they stand on. */
export async function documentRows(paint: Painter): Promise<Row[]> {
  const begun = performance.now();
  const { start, documents } = documentsOfOneJob();
  const planned = performance.now() - begun;
  const { host, trips, bytes, reset } = countingWorkbook({ paint });
  const estimated = await counted(() => host.write(start));
  reset();
  const took = await counted(async () => {
    for (const document of documents) {
      await host.look();
      await host.write([document]);
    }
  });
  const what = `to write ${documents.length} documents of one job`;
  return [
    { what: `round trips ${what}`, figure: trips(), unit: "trips" },
    { what: `sent ${what}`, figure: bytes() / 1024, unit: "KB" },
    { what: `time ${what}, Excel's not counted`, figure: took, unit: "ms", peer: "prices and estimate", peerFigure: estimated },
    { what: "time to plan them, worked out in plain code", figure: planned, unit: "ms" },
  ]; // prettier-ignore
}

async function counted(work: () => Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await work();
  return performance.now() - begun;
}
