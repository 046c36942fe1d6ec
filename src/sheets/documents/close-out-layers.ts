import { fieldOf } from "../../estimate/fields";
import { baseLayer, footingLayer, type Layer } from "../../estimate/layers";
import { minus, operate, over, plus, times, when, type Expression, type Term } from "../expression";
import { type CloseOutItem } from "./close-out-lines";
import { closeOutWords as say } from "./close-out-words";
import { cellOf, type EstimateSource } from "./source";

/** One figure of a layer on the close-out, below the one before it. */
export interface LayerFact {
  key: string;
  label: string;
  says: Term;
}

/** The layers that a close-out tells of: the footing, and the base under it where there is one. */
export const layersIn = (items: readonly CloseOutItem[]): Layer[] => [
  footingLayer,
  ...(items.some(({ material }) => material === baseLayer.material) ? [baseLayer] : []),
];

/** How many figures each has. */
export const factsEach = 7;

const total = (some: Expression[]) => plus(some[0], ...some.slice(1));

/** Inches from cubic yards over square feet: plain arithmetic, so that tickets can be written into a plain copy, too. */
const inches = (yards: Expression, area: Expression) => over(times(yards, 324), area);

/**
 * What came of a layer in cubic yards and tons, and the depth that it gives where it lies, loose. `fact` is the cell
 * of a figure by its place from 0, `came` what tickets say was delivered of each item.
 */
export function layerFacts(
  { material, tonsPerCy }: Layer,
  sources: readonly EstimateSource[],
  came: readonly { item: CloseOutItem; delivered: Expression }[],
  fact: (place: number) => Expression,
): LayerFact[] {
  const [factor, area, asked, yards, gave] = [0, 1, 2, 3, 5].map(fact);
  const having = sources.filter(({ made }) => made[material].delivered > 0);
  const each = (key: string) =>
    total((having.length > 0 ? having : sources).map((source) => cellOf(source, key)));
  const ofLayer = came
    .filter(({ item }) => item.material === material)
    .map(({ item, delivered }) => (item.unit === "ton" ? over(delivered, factor) : delivered));
  const weight = cellOf(sources[0], tonsPerCy);
  const key = (name: string) => (material === "sand" ? name : `${material}_${name}`);
  return [
    {
      key: key("tons_per_cy"),
      label: say.tonsPerCy,
      says: when(operate(weight, "=", ""), fieldOf(tonsPerCy).default as number, weight),
    },
    { key: key("built_area"), label: say.area, says: each("area") },
    { key: key("depth_bid"), label: say.asked, says: inches(each(`${material}_delivered`), area) },
    { key: key("came_yards"), label: say.came, says: ofLayer.length > 0 ? total(ofLayer) : 0 },
    { key: key("came_tons"), label: say.cameTons, says: times(yards, factor) },
    { key: key("depth_came"), label: say.gave, says: inches(yards, area) },
    { key: key("depth_more"), label: say.offDepth, says: minus(gave, asked) },
  ];
}
