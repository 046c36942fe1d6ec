import { answerOf, type Job } from "../estimate/job";
import { type LaidLayer, type Layer } from "../estimate/layers";
import { amount, ask, countsTerm, eachOf, figureAnswer, listTerm, total, type SheetAnswer } from "./answer-terms"; // prettier-ignore
import { minus, over, times, type Expression } from "./expression";
import { type EstimateSheet } from "./keyed";
import { messages } from "./messages";

/** What a layer needs, what comes of it and in what loads, and how deep it then lies on the built area. */
export function layerAnswers(
  job: Job,
  layer: Layer,
  made: LaidLayer,
  area: Expression,
  written?: EstimateSheet,
): SheetAnswer[] {
  const { material, loadsOf } = layer;
  const trucks = listTerm("truck", job, written);
  const settle = amount(job, layer.settle);
  const need = ask("FILL", area, Number(job[layer.depth] ?? 0), amount(job, layer.overrun), settle);
  const counted = { list: "truck", values: made.counts, keyOf: loadsOf } as const;
  const loads = countsTerm(job, counted, ask("LOADS", need, trucks.term, amount(job, "short")), written);
  const delivered = trucks.term === undefined ? need : total(trucks, loads);
  const loose = ask("DEPTH", delivered, area);
  const compacted = settle === undefined ? loose : times(loose, minus(1, over(settle, 100)));
  const { tons, loadsOf: loadsLabel } = messages.answers.layers[material];
  return [
    figureAnswer(`${material}_need`, made.need, need),
    figureAnswer(`${material}_delivered`, made.delivered, delivered),
    { key: `${material}_tons`, label: tons, unit: "ton", kind: "yards", value: made.tons, says: ask("TONS", delivered, answerOf(job, layer.tonsPerCy)) },
    material === "base"
      ? figureAnswer("base_depth_settled", made.depthSettled, compacted)
      : figureAnswer("depth_loose", made.depthLoose, loose),
    ...eachOf(job, trucks, loads, counted, loadsLabel),
  ];
} // prettier-ignore
