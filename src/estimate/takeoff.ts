import { byOtherOf, fenceByOther, panelsByOther } from "./by-other";
import { equipmentItem, equipmentKeys } from "./equipment";
import { fabricPlaces, slotKeys } from "./fields";
import { answerOf, choiceOf, type Job } from "./job";
import { laborHours } from "./labor";
import { baseLayer, layers, type Hauled, type Layer, type Material } from "./layers";
import { type PanelPen } from "./panel-pen";
import { isArena, isPosted, type Pen } from "./pen";
import { type PostWork } from "./post-work";
import { postLines } from "./post-takeoff";
import { layoutSupplies } from "./supplies";
import { orOwn, slotLines, takeoffLine, type TakeoffLine } from "./takeoff-line";

/** Every line of the takeoff in the order of the estimate sheet, unused slots included. */
export function takeoff(job: Job, pen: Pen, ground: Ground, work?: PostWork): TakeoffLine[] {
  const supplies = layoutSupplies(pen, answerOf(job, "line_roll"), answerOf(job, "paint_reach"));
  const counted = [
    ...fenceLines(job, pen, work),
    takeoffLine("fabric", "base", "fabric", null, fabricArea(job, pen.area)),
    ...hauledLines(job, ground),
    takeoffLine("stakes", "supplies", "stake", null, orOwn(job, "stakes", supplies.stakes)),
    takeoffLine("line", "supplies", "line", null, orOwn(job, "line", supplies.rolls)),
    takeoffLine("paint", "supplies", "paint", null, orOwn(job, "paint", supplies.cans)),
  ];
  return [
    ...counted,
    ...equipmentKeys.map((key) =>
      takeoffLine(key, "equipment", equipmentItem(key), null, Number(job[key]) || null),
    ),
    takeoffLine(
      "labor",
      "labor",
      "labor_hour",
      null,
      orOwn(job, "labor", laborHours(job, counted, ground.base.delivered + ground.sand.delivered)),
    ),
  ];
}

/** The base and the sand that come. */
export type Ground = Record<Material, Hauled>;

/** The lines of base and sand, each as it is sold, and of the loads that bring them: base and sand never on one truck. */
export function hauledLines(job: Job, ground: Ground): TakeoffLine[] {
  const { base, sand } = ground;
  return [
    ...layers.map((layer) => materialLine(job, layer, ground[layer.material])),
    ...slotKeys("truck").map((key, k) => ({
      ...takeoffLine(key, "hauling", "haul", sand.trucks[k], sand.counts[k]),
      also: base.counts[k] ?? 0,
    })),
  ];
}

function materialLine(job: Job, { material, section, unit, items }: Layer, { delivered, tons }: Hauled) {
  const [item, amount] = job[unit] === "cu yd" ? [items["cu yd"], delivered] : [items.ton, tons];
  return takeoffLine(material, section, item, null, amount);
}

/** The square feet of fabric, lap apart, which is bought as waste: the built area under a base. */
const fabricArea = (job: Job, area: number) =>
  choiceOf(job, "fabric") === fabricPlaces[1] && Number(job[baseLayer.depth]) > 0 ? area : 0;

/** The lines of the fence and its gates. */
function fenceLines(job: Job, pen: Pen, work?: PostWork): TakeoffLine[] {
  if (isPosted(pen)) return postLines(job, pen, work!);
  if (!isArena(pen)) return panelLines(job, pen, panelsByOther(pen, byOtherOf(job, pen)));
  const panels = orOwn(job, "panel_1", pen.panels - fenceByOther(pen, byOtherOf(job, pen)));
  return [takeoffLine("panel_1", "fence", "panel", pen.panel, panels), ...slotLines(job, "gate", "gate")];
}

const panelLines = (job: Job, pen: PanelPen, byOther: readonly number[]): TakeoffLine[] => [
  ...pen.counts.map((count, k) => ({
    ...takeoffLine(`panel_${k + 1}`, "fence", "panel", pen.lengths[k], count),
    byOther: byOther[k],
    onHand: pen.onHand[k],
  })),
  ...slotLines(job, "gate", "gate"),
];
