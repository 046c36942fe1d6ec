import { repriced, type Answers, type Repriced } from "./compare";
import { fieldsOf, slotKeys, type SlotList } from "./fields";
import { leavesOf } from "./hung-gates";
import { structureOf, type Job } from "./job";
import { messages } from "./messages";
import { type OwnLine } from "./own-lines";
import { type PriceKind, type PriceRow } from "./prices";
import { structures, type Structure } from "./structures";

/** A change of a job that may bring its price down, and what it then costs, priced as a whole job again. */
export interface Way extends Repriced {
  /** What changes, in words. */
  words: string;
  /** How much less than the job as it is, $; null where either has no price. */
  saves: number | null;
}

/** The least depths that most uses ask for, in: of 2 to 6 in of footing, and of 4 to 8 in of base (Horsekeeping on a Small Acreage, p. 402). */
const LEAST_FOOTING = 2;
const LEAST_BASE = 4;

/**
 * What could bring a job under its budget: less footing, less base or none, narrower gates, the other kind of fence, the owner's own work.
 * Only changes that save something are given, the largest saving first. Prices are those of the jobs priced again.
 */
export function waysUnder(job: Job, prices: readonly PriceRow[], own: readonly OwnLine[] = []): Way[] {
  const now = repriced(job, {}, prices, own).price;
  if (now === null) return [];
  return changesOf(job, prices)
    .map(({ words, answers }) => {
      const again = repriced(job, answers, prices, own);
      return { words, ...again, saves: again.price === null ? null : (Math.round(now * 100) - Math.round(again.price * 100)) / 100 };
    })
    .filter(({ saves }) => saves !== null && saves > 0)
    .sort((a, b) => b.saves! - a.saves!);
} // prettier-ignore

/** A change before it is priced. */
interface Change {
  words: string;
  answers: Answers;
}

function changesOf(job: Job, prices: readonly PriceRow[]): Change[] {
  return [
    ...lessFooting(job),
    ...lessBase(job),
    ...otherFence(job),
    ...narrowerGates(job, prices),
    ...fewerRails(job),
    byOwner,
  ];
}

const { ways } = messages;

/** The owner's own work in the place of hired hours. */
const byOwner: Change = { words: ways.byOwner, answers: { labor_use: 0 } };

/** An inch less, and the least. */
const thinner = (depth: number, least: number) =>
  [...new Set([depth - 1, least])].filter((less) => less >= least && less < depth);

const lessFooting = ({ depth }: Job): Change[] =>
  thinner(Number(depth), LEAST_FOOTING).map((less) => ({
    words: ways.footing(less),
    answers: { depth: less },
  }));

/** The same of a base; or none, its fabric with it. */
function lessBase({ base_depth }: Job): Change[] {
  const depth = Number(base_depth);
  const depths = depth > 0 ? [...thinner(depth, LEAST_BASE), 0] : [];
  return depths.map((less) => ({ words: ways.base(less), answers: { base_depth: less } }));
}

/** The list of slots that holds a structure's gates: frames of panels, leaves hung on posts. */
const gateList = (structure: Structure): SlotList =>
  fieldsOf(structure).some(({ key }) => key === "leaf_1") ? "leaf" : "gate";

/** Panels in the place of posts and the other way about, with gates as wide; on posts each is one leaf. */
function otherFence(job: Job): Change[] {
  const structure = structureOf(job);
  const other = structures.find((one) => one !== structure && one.split(" ")[1] === structure.split(" ")[1]);
  if (!other) return [];
  const [from, to] = [slotKeys(gateList(structure)), slotKeys(gateList(other))];
  const wide = (key: string, k: number) =>
    job[key] && Number(job[key]) * (from[0] === "leaf_1" ? leavesOf(job, k + 1) : 1);
  const gates = Object.fromEntries(to.map((key, k) => [key, wide(from[k], k)]));
  return [{ words: ways.fence(other), answers: { structure: other, gates_of_two: null, ...gates } }];
}

/** The widest gate by the next narrower one that has a price. */
function narrowerGates(job: Job, prices: readonly PriceRow[]): Change[] {
  const list = gateList(structureOf(job));
  const item: PriceKind = list === "leaf" ? "hung_gate" : "gate";
  const keys = slotKeys(list).filter((key) => job[key] !== null);
  const widest = keys.reduce((best, key) => (Number(job[key]) > Number(job[best] ?? 0) ? key : best), "");
  const narrower = prices
    .filter(({ item: kind, price, size }) => kind === item && price !== null && size !== null && size < Number(job[widest] ?? 0))
    .map(({ size }) => size!);
  if (narrower.length === 0) return [];
  const next = Math.max(...narrower);
  return [{ words: ways.gate(next), answers: { [widest]: next } }];
} // prettier-ignore

/** One row of rails fewer, where there are more than three. */
function fewerRails(job: Job): Change[] {
  const rows = Number(job.rail_rows);
  if (structureOf(job).startsWith("panel") || rows <= 3) return [];
  return [{ words: ways.rails(rows - 1), answers: { rail_rows: rows - 1 } }];
}
