import { piecesByOther, stakesByOther, type StakeRun } from "../fence/shared-fence";
import { slotKeys } from "./fields";
import { numbersOf, type Job } from "./job";
import { isArena, isPosted, type Pen, type Posted } from "./pen";
import { piecesAround } from "./pieces-on-ground";
import { type PanelPen } from "./panel-pen";
import { isByOther } from "./takeoff-line";

/** What of a fence another estimate brings, each in the order it stands from stake 1 on. */
export interface ByOther {
  /** Each piece from a stake to the next. */
  pieces: boolean[];
  /** Each stake: a post that two fences share is set by the one that brings the run or the gate at it. */
  stakes: boolean[];
}

/** The runs of fence by other that a job names, from stake to stake. */
export function sharedRunsOf(job: Job): StakeRun[] {
  const stakes = numbersOf(job, "fence_by_other");
  return stakes.flatMap((from, k) => (k % 2 === 0 ? [{ from, to: stakes[k + 1] }] : []));
}

/** The number of the gate that each piece of a pen is, from 1 in the job's list; undefined for what is no gate. */
function gateNumbers(job: Job, pen: Pen): (number | undefined)[] {
  const numbers = slotKeys(isPosted(pen) ? "leaf" : "gate").flatMap((key, k) =>
    job[key] === null ? [] : [k + 1],
  );
  if (isArena(pen))
    return pen.layout.stakes.map(({ gate }) => (gate === undefined ? undefined : numbers[gate]));
  let gates = 0;
  return piecesAround(pen).map(({ kind }) => (kind === "gate" ? numbers[gates++] : undefined));
}

/** What of a job's fence is by other; undefined where nothing is. Refuses runs as piecesByOther does. */
export function byOtherOf(job: Job, pen: Pen): ByOther | undefined {
  const runs = sharedRunsOf(job);
  if (runs.length === 0 && numbersOf(job, "gates_by_other").length === 0) return undefined;
  const shared = gateNumbers(job, pen).map((gate) => ({
    gate,
    byOther: gate !== undefined && isByOther(job, gate),
  }));
  const pieces = piecesByOther(shared, runs);
  return pieces.includes(true) ? { pieces, stakes: stakesByOther(pieces) } : undefined;
}

/** The runs by other that a job names, each with how many panels or bays stand in it. Refuses as byOtherOf does. */
export function runsByOther(job: Job, pen: Pen): (StakeRun & { fence: number })[] {
  const { length } = byOtherOf(job, pen)?.pieces ?? [];
  const isFence = gateNumbers(job, pen).map((gate) => gate === undefined);
  return sharedRunsOf(job).map(({ from, to }) => {
    const inRun = (k: number) => (k - from + 1 + length) % length < (to - from + length) % length;
    return { from, to, fence: isFence.filter((fence, k) => fence && inRun(k)).length };
  });
}

/** The posts of a pen that its own estimate sets, those at gates apart. */
export function ownPosts(pen: Posted, byOther?: ByOther): { line: number; gate: number } {
  if (!byOther) return { line: pen.posts - pen.gatePosts, gate: pen.gatePosts };
  const isGate = isArena(pen)
    ? pen.layout.stakes.map(({ gate }) => gate !== undefined)
    : piecesAround(pen).map(({ kind }) => kind === "gate");
  const own = byOther.stakes.flatMap((other, k) => (other ? [] : [isGate[k] || isGate.at(k - 1)!]));
  const gate = own.filter(Boolean).length;
  return { line: own.length - gate, gate };
}

/** The panels of each of a pen's lengths that are by other. */
export function panelsByOther(pen: PanelPen, byOther?: ByOther): number[] {
  const order = pen.counts.flatMap((count, slot) => Array<number>(count ?? 0).fill(slot));
  const found = pen.counts.map(() => 0);
  let panel = 0;
  piecesAround(pen).forEach(({ kind }, k) => {
    if (kind === "gate") return;
    if (byOther?.pieces[k]) found[order[panel]]++;
    panel++;
  });
  return found;
}

/** The pieces by other that are no gates: panels or bays. */
export function fenceByOther(pen: Pen, byOther?: ByOther): number {
  const isFence = isArena(pen)
    ? pen.layout.stakes.map(({ gate }) => gate === undefined)
    : piecesAround(pen).map(({ kind }) => kind !== "gate");
  return isFence.filter((fence, k) => fence && byOther?.pieces[k]).length;
}
