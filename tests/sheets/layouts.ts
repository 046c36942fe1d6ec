import { calls } from "../../functions/calls";
import { type Job } from "../../src/estimate/job";
import { panelPen } from "../../src/estimate/panel-pen";
import { examplePrices } from "../../src/estimate/prices";
import { contentOfPlans } from "../../src/sheets/calculate";
import { estimatePlan } from "../../src/sheets/estimate";
import { layoutRows, layoutSheetPlan } from "../../src/sheets/layout-sheet";
import { columns } from "../../src/sheets/layout-places";
import { panelPenLayout } from "../../src/sheets/panel-pen-layout";
import { type SheetPlan } from "../../src/sheets/plan";
import { pricesPlan } from "../../src/sheets/prices";
import { pricesName } from "../../src/sheets/prices-layout";
import { type SheetData } from "../../src/sheets/workbook-content";
import { type Cell } from "../../src/units/cell";
import { estimatePlaces } from "./typed-plan";

export const pen = (name: string) => calls[name];

/** A layout's data for a job whose estimate stands on the sheet "Estimate". */
export const layoutOf = (job: Job) =>
  panelPenLayout(job, panelPen(job), {
    revision: 2,
    date: "2026-11-25",
    estimate: { name: "Estimate", cells: estimatePlaces },
  });

/** The sheets of a job: its estimate, its prices, and the layout sheet of `laidOut`, which is the job unless told. */
export const bookOf = (job: Job, laidOut = job): SheetPlan[] => [
  estimatePlan(job, "Estimate", pricesName),
  pricesPlan(examplePrices),
  layoutSheetPlan(layoutOf(laidOut), "Layout"),
];

/** The layout sheet of such a book with every cell worked out. */
export const layoutSheet = (job: Job, laidOut = job): SheetData =>
  contentOfPlans(bookOf(job, laidOut), pen).sheets[2];

/** What a cell of a sheet shows. */
export const shownAt = ({ cells }: SheetData, row: number, column: number): Cell =>
  cells.find((cell) => cell.row === row && cell.column === column)?.value ?? null;

/** One row of the stakes as figures: every length's decimal, and the coordinates beside the printed part. */
export function stakeRows(sheet: SheetData, job: Job) {
  const data = layoutOf(job);
  const { first } = layoutRows(data);
  return data.stakes.map((_, k) => {
    const at = (column: number) => shownAt(sheet, first + k, column) as number;
    return {
      stake: at(columns.stake),
      radius: at(columns.radius + 1),
      chord: at(columns.chord + 1),
      tie1: at(columns.tie1 + 1),
      tie2: at(columns.tie2 + 1),
      running: at(columns.running + 1),
      angle: at(columns.angle),
      bearing: at(columns.bearing),
      east: at(columns.east),
      north: at(columns.north),
    };
  });
}
