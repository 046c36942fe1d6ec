import { answerOf, type Job } from "./job";
import { type PanelPen } from "./panel-pen";
import { isArena, isPosted, type Pen } from "./pen";
import { type PostWork } from "./post-work";
import { postLines } from "./post-takeoff";
import { type Sand } from "./sand";
import { layoutSupplies } from "./supplies";
import { orOwn, slotLines, takeoffLine, type TakeoffLine } from "./takeoff-line";

/** Every line of the takeoff in the order of the estimate sheet, unused slots included. */
export function takeoff(job: Job, pen: Pen, sand: Sand, work?: PostWork): TakeoffLine[] {
  const supplies = layoutSupplies(pen, answerOf(job, "line_roll"), answerOf(job, "paint_reach"));
  const byYard = job.sand_unit === "cu yd";
  return [
    ...fenceLines(job, pen, work),
    takeoffLine(
      "sand",
      "footing",
      byYard ? "sand_yard" : "sand_ton",
      null,
      byYard ? sand.delivered : sand.tons,
    ),
    ...sand.counts.map((count, k) => takeoffLine(`truck_${k + 1}`, "hauling", "haul", sand.trucks[k], count)),
    takeoffLine("stakes", "supplies", "stake", null, orOwn(job, "stakes", supplies.stakes)),
    takeoffLine("line", "supplies", "line", null, orOwn(job, "line", supplies.rolls)),
    takeoffLine("paint", "supplies", "paint", null, orOwn(job, "paint", supplies.cans)),
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
  ...pen.counts.map((count, k) => takeoffLine(`panel_${k + 1}`, "fence", "panel", pen.lengths[k], count)),
  ...slotLines(job, "gate", "gate"),
];
