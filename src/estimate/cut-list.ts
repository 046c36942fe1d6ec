import { type Bend } from "../fence/bend";
import { type RailTakeoff } from "../fence/rails";
import { feetInches } from "../units/feet-inches";
import { choiceOf, type Job } from "./job";
import { type PostWork } from "./post-work";

/** So many lengths of stock that are cut alike: like pieces of each together, and what is left over of each. Lengths in ft. */
export interface CutAlike {
  count: number;
  pieces: { count: number; length: number }[];
  left: number;
}

/** A piece whose ends are not square: its length along its long face and its short one, ft, and the cut, degrees. */
export interface BeveledCut {
  long: number;
  short: number;
  bevel: number;
}

/** What stock of one size is cut to, and what decided how many bays a piece spans. */
export interface CutList {
  of: "rails" | "kick board";
  size: string;
  /** Its length, ft. */
  stock: number;
  /** Lengths of it, and pieces in all. */
  cut: number;
  pieces: number;
  cuts: CutAlike[];
  /** Whether there are straight runs, and what was found on curves. */
  straight: boolean;
  bends: Bend[];
  beveled: BeveledCut[];
}

/** The cut lists of a job's rails and of its board at the foot. */
export const cutLists = (job: Job, { rails, kick }: PostWork): CutList[] => [
  cutList("rails", choiceOf(job, "rail_stock"), rails),
  ...(kick ? [cutList("kick board", choiceOf(job, "kick_board"), kick)] : []),
];

function cutList(of: CutList["of"], size: string, { stock, runs, cut, pieces }: RailTakeoff): CutList {
  const curved = runs.filter(({ bend }) => bend);
  return {
    of,
    size,
    stock,
    cut,
    pieces,
    cuts: cutsAlike(runs.flatMap(({ cuts }) => cuts), stock),
    straight: curved.length < runs.length,
    bends: once(curved.map(({ bend }) => bend!), ({ sentence }) => sentence),
    beveled: once(
      runs.filter(({ bevel }) => bevel > 0).map(({ length, shortFace, bevel }) => ({ long: length, short: shortFace, bevel })),
      ({ long }) => feetInches(long),
    ),
  };
} // prettier-ignore

/** Lengths that are cut to the same sixteenths of an inch, counted together. */
function cutsAlike(cuts: RailTakeoff["runs"][number]["cuts"], stock: number): CutAlike[] {
  const alike = new Map<string, CutAlike>();
  for (const { count, pieces } of cuts) {
    const lengths = pieces.map(({ length }) => length);
    const key = lengths.map((length) => feetInches(length)).join();
    const before = alike.get(key);
    if (before) before.count += count;
    else alike.set(key, { count, pieces: together(lengths), left: leftOf(stock, lengths) });
  }
  return [...alike.values()];
}

function together(lengths: readonly number[]): CutAlike["pieces"] {
  return once(lengths, (length) => feetInches(length)).map((length) => ({
    length,
    count: lengths.filter((one) => feetInches(one) === feetInches(length)).length,
  }));
}

const leftOf = (stock: number, lengths: readonly number[]) =>
  Math.max(0, stock - lengths.reduce((sum, length) => sum + length, 0));

/** The first of those of which the same is said. */
const once = <T>(all: readonly T[], said: (one: T) => string): T[] => [
  ...new Map([...all].reverse().map((one) => [said(one), one])).values(),
].reverse(); // prettier-ignore
