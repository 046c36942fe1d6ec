import { type ArenaStake } from "../fence/arena-layout";
import { arenaStretches } from "../fence/arena-stretches";
import { cornerReach, type FenceRun, flushReach, type RailLine } from "../fence/rails";
import { type Section } from "../geometry/section";
import { equal } from "../units/rounding";
import { isArena, type Posted } from "./pen";
import { piecesAround } from "./pieces-on-ground";
import { type ArenaOfPosts } from "./post-arena";
import { type PostedPen } from "./post-pen";

/**
 * The stretches of bays that rails are cut for: between gates, corners and tangent points, like ones together. Pieces by
 * other take none, and rails end at the center of the post that they share with them.
 */
export const railRuns = (
  pen: Posted,
  line: RailLine,
  gatePost: Section,
  byOther?: readonly boolean[],
): FenceRun[] => {
  if (isArena(pen)) return arenaRuns(pen, line, gatePost, byOther);
  return byOther ? sharedRuns(pen, gatePost, byOther) : penRuns(pen, gatePost);
};

function penRuns({ bays, bay, postCircle, gates }: PostedPen, gatePost: Section): FenceRun[] {
  const radius = postCircle / 2;
  if (gates.length === 0) return [{ bays, bay, radius, reach: [0, 0], runs: 1 }];
  const upTo = (gate: number) => Math.floor((gate * bays) / gates.length);
  const counts = gates.map((_, i) => upTo(i + 1) - upTo(i));
  const flush = flushReach(gatePost);
  return [...new Set(counts)].map((count) => ({
    bays: count,
    bay,
    radius,
    reach: [flush, flush] as const,
    runs: counts.filter((one) => one === count).length,
  }));
}

/** The same of a pen where some pieces are by other. */
function sharedRuns(pen: PostedPen, gatePost: Section, byOther: readonly boolean[]): FenceRun[] {
  const isGate = piecesAround(pen).map(({ kind }) => kind === "gate");
  const isOurs = isGate.map((gate, k) => !gate && !byOther[k]);
  const reach = (gate: boolean) => (gate ? flushReach(gatePost) : 0);
  const runs: FenceRun[] = [];
  isOurs.forEach((ours, begin) => {
    if (!ours || isOurs.at(begin - 1)) return;
    let bays = 1;
    while (isOurs[(begin + bays) % isOurs.length]) bays++;
    const ends = [isGate.at(begin - 1)!, isGate[(begin + bays) % isGate.length]];
    runs.push({
      bays,
      bay: pen.bay,
      radius: pen.postCircle / 2,
      reach: [reach(ends[0]), reach(ends[1])],
      runs: 1,
    });
  });
  return together(runs);
}

/** The boards of the long sides cover the ends of the others at a square corner. */
const covers = (side?: string) => side === "left" || side === "right";

function arenaRuns(
  { layout, line: { cornerRadius } }: ArenaOfPosts,
  line: RailLine,
  gatePost: Section,
  byOther?: readonly boolean[],
): FenceRun[] {
  const reach = ({ place, atGate }: ArenaStake, side?: string) =>
    place === "corner" ? cornerReach(line, covers(side)) : atGate ? flushReach(gatePost) : 0;
  return together(
    arenaStretches(layout.stakes, byOther).map(({ bays, bay, side, from, to }) => {
      const radius = side === undefined ? { radius: cornerRadius } : {};
      return { bays, bay, ...radius, reach: [reach(from, side), reach(to, side)] as const, runs: 1 };
    }),
  );
}

/** Like runs as one. */
const together = (runs: readonly FenceRun[]) =>
  runs.reduce<FenceRun[]>((alike, run) => {
    const same = alike.find((one) => isLike(one, run));
    if (same) same.runs++;
    else alike.push(run);
    return alike;
  }, []);

/** True for runs of the same bays, either way around. */
function isLike(one: FenceRun, other: FenceRun): boolean {
  const [a, b] = [one, other].map(({ reach }) => [...reach].sort((x, y) => x - y));
  return (
    one.bays === other.bays &&
    equal(one.bay, other.bay) &&
    one.radius === other.radius &&
    a.every((reach, i) => equal(reach, b[i]))
  );
}
