import { answerOf, type Job } from "./job";
import { laborHours } from "./labor";
import { type PanelPen } from "./panel-pen";
import { isArena, isPosted, type Pen } from "./pen";
import { type PostWork } from "./post-work";
import { postLines } from "./post-takeoff";
import { type PriceKind } from "./prices";
import { type Hauled, type Sand } from "./sand";
import { layoutSupplies } from "./supplies";
import { orOwn, slotLines, takeoffLine, type TakeoffLine } from "./takeoff-line";

/** Every line of the takeoff in the order of the estimate sheet, unused slots included. */
export function takeoff(job: Job, pen: Pen, sand: Sand, work?: PostWork): TakeoffLine[] {
  const supplies = layoutSupplies(pen, answerOf(job, "line_roll"), answerOf(job, "paint_reach"));
  const counted = [
    ...fenceLines(job, pen, work),
    ...sandLines(job, sand),
    takeoffLine("stakes", "supplies", "stake", null, orOwn(job, "stakes", supplies.stakes)),
    takeoffLine("line", "supplies", "line", null, orOwn(job, "line", supplies.rolls)),
    takeoffLine("paint", "supplies", "paint", null, orOwn(job, "paint", supplies.cans)),
  ];
  const days = (key: string, item: PriceKind) =>
    takeoffLine(key, "equipment", item, null, Number(job[key]) || null);
  return [
    ...counted,
    days("mobilization", "mobilization"),
    days("auger", "auger_day"),
    days("loader", "loader_day"),
    takeoffLine(
      "labor",
      "labor",
      "labor_hour",
      null,
      orOwn(job, "labor", laborHours(job, counted, sand.delivered)),
    ),
  ];
}

/** The lines of the sand that comes, as the pit sells it, and of its loads. */
export function sandLines(job: Job, { delivered, tons, counts, trucks }: Hauled): TakeoffLine[] {
  const [item, amount] =
    job.sand_unit === "cu yd" ? (["sand_yard", delivered] as const) : (["sand_ton", tons] as const);
  return [
    takeoffLine("sand", "footing", item, null, amount),
    ...counts.map((count, k) => takeoffLine(`truck_${k + 1}`, "hauling", "haul", trucks[k], count)),
  ];
}

/** The lines of the fence and its gates. */
function fenceLines(job: Job, pen: Pen, work?: PostWork): TakeoffLine[] {
  if (isPosted(pen)) return postLines(job, pen, work!);
  if (!isArena(pen)) return panelLines(job, pen);
  const panels = orOwn(job, "panel_1", pen.panels);
  return [takeoffLine("panel_1", "fence", "panel", pen.panel, panels), ...slotLines(job, "gate", "gate")];
}

const panelLines = (job: Job, pen: PanelPen): TakeoffLine[] => [
  ...pen.counts.map((count, k) => ({
    ...takeoffLine(`panel_${k + 1}`, "fence", "panel", pen.lengths[k], count),
    onHand: pen.onHand[k],
  })),
  ...slotLines(job, "gate", "gate"),
];
