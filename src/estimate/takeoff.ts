import { answerOf, type Job } from "./job";
import { type PanelPen } from "./panel-pen";
import { circleOf, isPosted, stakesOf, type Pen } from "./pen";
import { type PostWork } from "./post-work";
import { postLines } from "./post-takeoff";
import { type Sand } from "./sand";
import { layoutSupplies } from "./supplies";
import { orOwn, slotLines, takeoffLine, type TakeoffLine } from "./takeoff-line";

/** Every line of the takeoff in the order of the estimate sheet, unused slots included. */
export function takeoff(job: Job, pen: Pen, sand: Sand, work?: PostWork): TakeoffLine[] {
  const supplies = layoutSupplies(
    stakesOf(pen),
    circleOf(pen),
    pen.distanceAround,
    answerOf(job, "line_roll"),
    answerOf(job, "paint_reach"),
  );
  const byYard = job.sand_unit === "cu yd";
  return [
    ...(isPosted(pen) ? postLines(job, pen, work!) : panelLines(job, pen)),
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

const panelLines = (job: Job, pen: PanelPen): TakeoffLine[] => [
  ...pen.counts.map((count, k) => takeoffLine(`panel_${k + 1}`, "fence", "panel", pen.lengths[k], count)),
  ...slotLines(job, "gate", "gate"),
];
