import { depthOf, fill } from "../ground/footing";
import { loads } from "../ground/hauling";
import { tons } from "../ground/weight";
import { slotKeys } from "./fields";
import { answerOf, type Job } from "./job";
import { type LineSection } from "./own-lines";
import { type PriceKind } from "./price-kinds";

/** What a layer is made of: its line, and what the keys of its figures begin with. */
export type Material = "base" | "sand";

/** A layer of the ground inside the fence, and the keys of the fields and counts that are its own. */
export interface Layer {
  material: Material;
  section: LineSection;
  depth: string;
  overrun: string;
  settle: string;
  unit: string;
  tonsPerCy: string;
  /** The key of a truck's loads of it; with `_count` or `_use` after it that of the count, or of the user's own. */
  loadsOf(truck: string): string;
  /** What its line asks the prices for, by how it is sold. */
  items: { ton: PriceKind; "cu yd": PriceKind };
}

const layer = (material: Material, section: LineSection, prefix: string, items: Layer["items"]): Layer => ({
  material,
  section,
  depth: `${prefix}depth`,
  overrun: `${prefix}overrun`,
  settle: `${prefix}settle`,
  unit: `${material}_unit`,
  tonsPerCy: `${prefix}tons_per_cy`,
  loadsOf: (truck) => prefix + truck,
  items,
});

/** Compacted stone on the soil, and loose sand on top of it. */
export const baseLayer = layer("base", "base", "base_", { ton: "base_ton", "cu yd": "base_yard" });
export const footingLayer = layer("sand", "footing", "", { ton: "sand_ton", "cu yd": "sand_yard" });
export const layers: readonly Layer[] = [baseLayer, footingLayer];

/** The keys of the loads that the user sets: those belong to one job alone. */
export const ownLoads = layers.flatMap(({ loadsOf }) =>
  slotKeys("truck").map((truck) => `${loadsOf(truck)}_use`),
);

/** What comes of a material for a need, cubic yards, and the loads that bring it. */
export interface Hauled {
  need: number;
  /** Loads of each of the four trucks; null where the job has no such truck. */
  counts: (number | null)[];
  trucks: (number | null)[];
  delivered: number;
  tons: number;
}

/** A layer of a job: what is needed, what comes, and the depth that it gives, inches. */
export interface LaidLayer extends Hauled {
  /** How far the delivery is over the need (under it: negative), in percent; null where nothing is needed. */
  overPercent: number | null;
  depthLoose: number;
  /** What is left of that once it has settled, or was compacted. */
  depthSettled: number;
}

/**
 * What comes for a need: the exact best loads of the job's trucks, each material by itself, with the user's own counts
 * in their place. Without trucks just the need is delivered. Throws a Refusal where no truck serves.
 */
export function hauled(job: Job, { loadsOf, tonsPerCy }: Layer, need: number): Hauled {
  const keys = slotKeys("truck");
  const trucks = keys.map((key) => job[key] as number | null);
  const offered = trucks.some((truck) => truck !== null);
  const listed = trucks.map((size) => ({ size: size ?? 0 }));
  const best = offered ? loads(need, listed, Number(job.short ?? 0)) : [];
  const counts = trucks.map((truck, k) =>
    truck === null ? null : ((job[`${loadsOf(keys[k])}_use`] as number | null) ?? best[k]),
  );
  const delivered = offered
    ? trucks.reduce<number>((sum, truck, k) => sum + (truck ?? 0) * (counts[k] ?? 0), 0)
    : need;
  return { need, counts, trucks, delivered, tons: tons(delivered, answerOf(job, tonsPerCy)) };
}

/** Whether anything of a layer is needed, or comes. */
export const comes = ({ need, delivered }: Hauled) => need > 0 || delivered > 0;

/** A layer on the built area (sq ft). Throws a Refusal where no answer is found. */
export function laid(job: Job, of: Layer, area: number): LaidLayer {
  const numberOf = (key: string) => Number(job[key] ?? 0);
  const settle = numberOf(of.settle);
  const come = hauled(job, of, fill(area, numberOf(of.depth), numberOf(of.overrun), settle));
  const { need, delivered } = come;
  const depthLoose = depthOf(delivered, area);
  return {
    ...come,
    overPercent: need > 0 ? (delivered / need - 1) * 100 : null,
    depthLoose,
    depthSettled: depthLoose * (1 - settle / 100),
  };
}
