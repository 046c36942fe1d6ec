import { answerOf, type Job } from "./job";
import { type LineSection } from "./own-lines";
import { type PanelPen } from "./panel-pen";
import { type PricedItem, type PriceKind } from "./prices";
import { type Sand } from "./sand";
import { layoutSupplies } from "./supplies";

/** One line of the takeoff: what, and how much of it is counted, before waste. Null counts are unused slots. */
export interface TakeoffLine extends PricedItem {
  key: string;
  section: LineSection;
  counted: number | null;
  /** Bought in whole pieces, so that waste is rounded up. */
  whole: boolean;
}

/** Every line of the takeoff in the order of the estimate sheet, unused slots included. */
export function takeoff(job: Job, pen: PanelPen, sand: Sand): TakeoffLine[] {
  const inLine = (key: string, section: LineSection, item: PriceKind, size: number | null, counted: number | null) =>
    ({ key, section, item, size, counted, whole: !item.startsWith("sand") }); // prettier-ignore
  const joints = pen.counts.reduce<number>((sum, count) => sum + (count ?? 0), 0) + pen.gates.length;
  const supplies = layoutSupplies(
    joints,
    pen.pinCircle,
    pen.distanceAround,
    answerOf(job, "line_roll"),
    answerOf(job, "paint_reach"),
  );
  const or = (key: string, count: number) => (job[`${key}_use`] as number | null) ?? count;
  const byYard = job.sand_unit === "cu yd";
  return [
    ...pen.counts.map((count, k) => inLine(`panel_${k + 1}`, "fence", "panel", pen.lengths[k], count)),
    ...[1, 2, 3, 4].map((k) => {
      const frame = job[`gate_${k}`] as number | null;
      return inLine(`gate_${k}`, "gates", "gate", frame, frame === null ? null : 1);
    }),
    inLine("sand", "footing", byYard ? "sand_yard" : "sand_ton", null, byYard ? sand.delivered : sand.tons),
    ...sand.counts.map((count, k) => inLine(`truck_${k + 1}`, "hauling", "haul", sand.trucks[k], count)),
    inLine("stakes", "supplies", "stake", null, or("stakes", supplies.stakes)),
    inLine("line", "supplies", "line", null, or("line", supplies.rolls)),
    inLine("paint", "supplies", "paint", null, or("paint", supplies.cans)),
  ];
}
