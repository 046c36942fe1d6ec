import {
  centralAngle,
  circumcircle,
  inscribedArea,
  insideClear,
  perimeter,
  type Chord,
} from "../geometry/cyclic-polygon";
import { type Fit } from "../fence/panels";
import { withGatesSpread } from "../fence/gates-spread";
import { panelMix, type PanelMixJob } from "../fence/panel-mix";
import { Refusal } from "../units/refusal";
import { INCHES_PER_FOOT } from "../units/conversion";
import { beyondStock, slotKeys } from "./fields";
import { type Job, lengthsIn } from "./job";

/** A panel pen as its pieces close it. Lengths in ft, area in sq ft, angles in radians. */
export interface PanelPen {
  structure: "panel pen";
  /** Panels of each of the six lengths; null where the job has no such length. */
  counts: (number | null)[];
  lengths: (number | null)[];
  /** Panels on hand of each of the six lengths. */
  onHand: number[];
  /** Gate frames, pin to pin. */
  gates: number[];
  /** What passes through each gate's frame, and under the bow over it where there is one. */
  openings: number[];
  bow: number | null;
  /** What a joint adds to each piece. */
  pinGap: number;
  pinCircle: number;
  /** Between the faces of the panels. */
  insideClear: number;
  /** Across the circle outside of which nothing of the panels stands. */
  outside: number;
  distanceAround: number;
  area: number;
  /** The pin circle with one panel of the first length fewer and one more; null where that closes nothing. */
  oneUnder: number | null;
  oneOver: number | null;
}

/** How whole panels are fitted to the size, by what the size means. */
export const fitOf: Record<string, Fit> = {
  "pin circle": "nearest",
  "inside clear": "at least",
  outside: "at most",
};

/** What a panel's thickness adds to the size across the pins that the fit is held to: inside it takes away, outside it adds. */
export const thicknessOn: Record<Fit, -1 | 0 | 1> = { nearest: 0, "at least": 1, "at most": -1 };

/**
 * The pen that a job's panels and gates close: the best counts for its size, with the user's own counts in their
 * place. Throws a Refusal where nothing closes.
 */
export function panelPen(job: Job): PanelPen {
  const pinGap = Number(job.pin_gap ?? 0) / INCHES_PER_FOOT;
  const thickness = Number(job.panel_thickness ?? 0) / INCHES_PER_FOOT;
  const lengths = slotKeys("panel").map((key) => job[key] as number | null);
  const gates = lengthsIn(job, "gate");
  const counts = panelCounts(job);
  const chords = (change: number): Chord[] => [
    ...lengths.map((length, k) => ({
      length: (length ?? 0) + pinGap,
      count: (counts[k] ?? 0) + (k === 0 ? change : 0),
    })),
    ...gates.map((gate) => ({ length: gate + pinGap, count: 1 })),
  ];
  const built = chords(0).filter(({ count }) => count > 0);
  const pinCircle = circumcircle(built).diameter;
  return {
    structure: "panel pen",
    counts,
    lengths,
    onHand: slotKeys("panel").map((key) => Number(job[`${key}_stock`] ?? 0)),
    gates,
    openings: gates.map((gate) => gate - Number(job.frame_less_opening ?? 0) / INCHES_PER_FOOT),
    bow: job.bow_height as number | null,
    pinGap,
    pinCircle,
    insideClear: Math.max(0, insideClear(built) - thickness),
    outside: pinCircle + thickness,
    distanceAround: perimeter(built),
    area: inscribedArea(built),
    oneUnder: pinCircleOrNone(chords(-1)),
    oneOver: pinCircleOrNone(chords(1)),
  };
}

/** What the mix of a job's panels is asked for; lengths that the job does not list are left out. */
export function mixOf(job: Job): Omit<PanelMixJob, "priced" | "tolerance"> {
  const fit = fitOf[job.size_means as string] ?? "nearest";
  const thickness = Number(job.panel_thickness ?? 0) / INCHES_PER_FOOT;
  const isLimited = job.beyond_stock === beyondStock[1];
  return {
    diameter: (job.size as number) + thicknessOn[fit] * thickness,
    panels: offered(job).map(({ key, length }) => ({
      length,
      stock: isLimited ? Number(job[`${key}_stock`] ?? 0) : Infinity,
    })),
    gates: lengthsIn(job, "gate"),
    pinGap: Number(job.pin_gap ?? 0) / INCHES_PER_FOOT,
    fit,
  };
}

/** The lengths that a job lists. */
const offered = (job: Job) =>
  slotKeys("panel").flatMap((key, slot) =>
    job[key] === null ? [] : [{ key, slot, length: job[key] as number }],
  );

/** Counts of the panels that are listed, in the places of all six. */
export function inPlaces(job: Job, counts: readonly number[]): (number | null)[] {
  const places: (number | null)[] = slotKeys("panel").map(() => null);
  offered(job).forEach(({ slot }, k) => (places[slot] = counts[k]));
  return places;
}

/** Panels of each length: the user's own counts, and where one is left open the best mix. */
function panelCounts(job: Job): (number | null)[] {
  const own = offered(job).map(({ key }) => (job[`${key}_use`] ?? null) as number | null);
  if (own.every((count) => count !== null)) return inPlaces(job, own);
  const best = panelMix({ ...mixOf(job), priced: false, tolerance: Infinity });
  return inPlaces(
    job,
    best.map((count, k) => own[k] ?? count),
  );
}

function pinCircleOrNone(chords: Chord[]): number | null {
  if (chords.some(({ count }) => count < 0)) return null;
  try {
    return circumcircle(chords.filter(({ count }) => count > 0)).diameter;
  } catch (refusal) {
    if (refusal instanceof Refusal) return null;
    throw refusal;
  }
}

/** The pieces in the order they stand, gates spread evenly: each one's length, kind, and the angle it spans. */
export function piecesAround(pen: PanelPen): { kind: "panel" | "gate"; length: number; angle: number }[] {
  const piece = (kind: "panel" | "gate", length: number) => ({
    kind,
    length,
    angle: centralAngle(length + pen.pinGap, pen.pinCircle),
  });
  const panels = pen.lengths.flatMap((length, k) =>
    Array.from({ length: pen.counts[k] ?? 0 }, () => piece("panel", length!)),
  );
  return withGatesSpread(
    pen.gates.map((gate) => piece("gate", gate)),
    panels,
  );
}
