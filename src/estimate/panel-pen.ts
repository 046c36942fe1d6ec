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
import { panelMix } from "../fence/panel-mix";
import { Refusal } from "../units/refusal";
import { type Job, lengthsIn } from "./job";
import { slotKeys } from "./fields";

/** A panel pen as its pieces close it. Lengths in ft, area in sq ft, angles in radians. */
export interface PanelPen {
  structure: "panel pen";
  /** Panels of each of the six lengths; null where the job has no such length. */
  counts: (number | null)[];
  lengths: (number | null)[];
  gates: number[];
  /** What a joint adds to each piece. */
  pinGap: number;
  pinCircle: number;
  insideClear: number;
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

/**
 * The pen that a job's panels and gates close: the best counts for its size, with the user's own counts in their
 * place. Throws a Refusal where nothing closes.
 */
export function panelPen(job: Job): PanelPen {
  const pinGap = Number(job.pin_gap ?? 0) / 12;
  const lengths = slotKeys("panel").map((key) => job[key] as number | null);
  const gates = lengthsIn(job, "gate");
  const offered = lengths.flatMap((length, slot) => (length === null ? [] : [{ length, slot }]));
  const best = panelMix({
    diameter: job.size as number,
    panels: offered.map(({ length }) => ({ length })),
    gates,
    pinGap,
    tolerance: 1,
    fit: fitOf[job.size_means as string] ?? "nearest",
    priced: false,
  });
  const counts: (number | null)[] = lengths.map(() => null);
  offered.forEach(
    ({ slot }, k) => (counts[slot] = (job[`panel_${slot + 1}_use`] as number | null) ?? best[k]),
  );
  const chords = (change: number): Chord[] => [
    ...lengths.map((length, k) => ({
      length: (length ?? 0) + pinGap,
      count: (counts[k] ?? 0) + (k === 0 ? change : 0),
    })),
    ...gates.map((gate) => ({ length: gate + pinGap, count: 1 })),
  ];
  const built = chords(0).filter(({ count }) => count > 0);
  return {
    structure: "panel pen",
    counts,
    lengths,
    gates,
    pinGap,
    pinCircle: circumcircle(built).diameter,
    insideClear: insideClear(built),
    distanceAround: perimeter(built),
    area: inscribedArea(built),
    oneUnder: pinCircleOrNone(chords(-1)),
    oneOver: pinCircleOrNone(chords(1)),
  };
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
