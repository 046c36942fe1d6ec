import { type Estimate, totalOf } from "./estimate";
import { slotKeys } from "./fields";
import { type Figure } from "./figure-list";
import { structureOf, type Job } from "./job";
import { baseLayer } from "./layers";
import { messages } from "./messages";
import { lineSectionsOf } from "./own-lines";
import { panelArenaFigures, postArenaFigures } from "./arena-figures";
import { openingFigures, postFigures, workFigures } from "./post-figures";
import { leftOver } from "./takeoff-line";

export { type Figure };

/** Every figure that the estimate sheet computes, by its key: what a sheet without own changes shows. */
export function figuresOf(job: Job, made: Estimate): Record<string, Figure> {
  const { pen, base, sand, charges } = made;
  const total = totalOf(made);
  const perUnit = (units: number) => (typeof total === "number" ? total / units : "");
  const figures: Record<string, Figure> = {
    distance_around: pen.distanceAround,
    area: pen.area,
    ...builtFigures(job, made),
    base_need: base.need,
    base_delivered: base.delivered,
    base_depth_settled: base.depthSettled,
    sand_need: sand.need,
    sand_delivered: sand.delivered,
    sand_over: sand.overPercent ?? "",
    depth_loose: sand.depthLoose,
    depth_settled: sand.depthSettled,
    direct: charges.direct.toNumber(),
    burden_amount: charges.burden.toNumber(),
    tax_amount: charges.tax.toNumber(),
    contingency_amount: charges.contingency.toNumber(),
    overhead_amount: charges.overhead.toNumber(),
    markup_amount: charges.markup.toNumber(),
    profit_amount: charges.profit.toNumber(),
    adjustment: charges.adjustment.toNumber(),
    sales_tax_amount: charges.salesTax.toNumber(),
    total,
    per_foot: perUnit(pen.distanceAround),
    per_square_foot: perUnit(pen.area),
    budget_left: typeof total === "number" && job.budget !== null ? Number(job.budget) - total : "",
  };
  for (const section of lineSectionsOf(structureOf(job)))
    figures[`sum_${section}`] = made.sums[section].toNumber();
  for (const line of made.takeoff) {
    figures[`${line.key}_count`] = line.counted ?? "";
    if (line.onHand !== undefined) figures[`${line.key}_left`] = leftOver(line) ?? "";
  }
  slotKeys("truck").forEach(
    (truck, k) => (figures[`${baseLayer.loadsOf(truck)}_count`] = base.counts[k] ?? ""),
  );
  for (const line of made.takeoff) lineFigures(figures, line.key, made);
  for (const line of made.lines) if (line.key.startsWith("own_")) lineFigures(figures, line.key, made);
  return figures;
}

/** The figures of a pen or an arena that other structures have not. */
function builtFigures(job: Job, { pen, work }: Estimate): Record<string, Figure> {
  switch (pen.structure) {
    case "panel pen": {
      const { insideClear, pinCircle, outside, oneUnder, oneOver } = pen;
      return {
        inside_clear: insideClear,
        pin_circle: pinCircle,
        outside_size: outside,
        one_under: oneUnder ?? "",
        one_over: oneOver ?? "",
      };
    }
    case "post pen":
      return { ...postFigures(job, pen, work!), ...openingFigures(job) };
    case "panel arena":
      return panelArenaFigures(pen);
    case "post arena":
      return { ...postArenaFigures(pen), ...workFigures(job, work!), ...openingFigures(job) };
  }
}

function lineFigures(figures: Record<string, Figure>, key: string, made: Estimate): void {
  const line = made.lines.find((one) => one.key === key);
  const money = (value: { toNumber(): number } | null) => value?.toNumber() ?? messages.priceMissing;
  figures[`${key}_amount`] = line ? money(line.amount) : "";
  if (key.startsWith("own_")) return;
  figures[`${key}_quantity`] = line ? line.quantity : "";
  figures[`${key}_price`] = line ? money(line.price) : "";
  figures[`${key}_taxed`] = line?.taxed ? "yes" : "";
}
