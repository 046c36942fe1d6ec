import {
  type Chord,
  circumcircle,
  insideClear,
  longestChord,
  perimeter,
} from "../../src/geometry/cyclic-polygon";
import { type PanelMixJob } from "../../src/fence/panel-mix";

interface Tried {
  counts: number[];
  cost: number;
  off: number;
  pieces: number;
}

/** The best mix by trying every one of them, `null` where none answers. Only for small jobs. */
export const exhaustiveMix = (job: PanelMixJob): number[] | null => exhaustiveMixes(job, 1)[0] ?? null;

/** The best so many, the best first. */
export function exhaustiveMixes(job: PanelMixJob, many: number): number[][] {
  const lengths = job.panels.map(({ length }) => length + job.pinGap);
  const gates = job.gates.map((length) => ({ length: length + job.pinGap, count: 1 }));
  const longest = Math.max(...lengths, ...gates.map(({ length }) => length));
  const farthest = 5 * Math.hypot(job.diameter, longest) + many * longest;
  const best: Tried[] = [];
  let smallest = Infinity;
  for (const counts of mixes(job, lengths, farthest)) {
    const chords = [...lengths.map((length, i) => ({ length, count: counts[i] })), ...gates];
    const size = penSize(chords, job.fit);
    if (size === null) continue;
    smallest = Math.min(smallest, size);
    const over = size - job.diameter;
    if ((job.fit === "at least" && over < -1e-9) || (job.fit === "at most" && over > 1e-9)) continue;
    if (job.priced && Math.abs(over) > job.tolerance + 1e-9) continue;
    const cost = job.priced ? counts.reduce((sum, n, i) => sum + n * (job.panels[i].price ?? 0), 0) : 0;
    const tried = { counts, cost, off: Math.abs(over), pieces: counts.reduce((a, b) => a + b, 0) };
    let at = best.length;
    while (at > 0 && comesFirst(tried, best[at - 1])) at--;
    if (at < many) best.splice(at, 0, tried);
    if (best.length > many) best.pop();
  }
  const tooLarge = smallest > job.diameter + Math.min(...lengths) / 2 / Math.PI + 1e-9;
  return tooLarge ? [] : best.map(({ counts }) => counts);
}

function* mixes(
  job: PanelMixJob,
  lengths: number[],
  left: number,
  counts: number[] = [],
): Generator<number[]> {
  const i = counts.length;
  if (i === lengths.length) return yield counts;
  const { price, stock = Infinity } = job.panels[i];
  const most = job.priced && price === undefined ? 0 : Math.min(stock, Math.floor(left / lengths[i]));
  for (let n = 0; n <= most; n++) yield* mixes(job, lengths, left - n * lengths[i], [...counts, n]);
}

function penSize(chords: Chord[], fit: PanelMixJob["fit"]): number | null {
  const pieces = chords.reduce((sum, { count }) => sum + count, 0);
  if (pieces < 3 || perimeter(chords) - 2 * longestChord(chords) < 1e-8) return null;
  const { diameter, centerInside } = circumcircle(chords);
  if (!centerInside) return null;
  return fit === "nearest"
    ? perimeter(chords) / Math.PI
    : fit === "at least"
      ? insideClear(chords)
      : diameter;
}

function comesFirst(a: Tried, b: Tried): boolean {
  if (Math.abs(a.cost - b.cost) > 1e-9) return a.cost < b.cost;
  if (Math.abs(a.off - b.off) > 1e-9) return a.off < b.off;
  if (a.pieces !== b.pieces) return a.pieces < b.pieces;
  const i = a.counts.findIndex((n, k) => n !== b.counts[k]);
  return i >= 0 && a.counts[i] > b.counts[i];
}
