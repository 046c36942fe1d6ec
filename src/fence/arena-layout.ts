import { centralAngle } from "../geometry/cyclic-polygon";
import { type Point, distance, radians } from "../geometry/point";
import {
  type OutlineArc,
  type Side,
  type Straight,
  isStraight,
  placeOn,
  roundedOutline,
  sides,
} from "../geometry/rounded-outline";
import {
  type RoundedRectangle,
  roundedRectangleArea,
  roundedRectanglePerimeter,
} from "../geometry/rounded-rectangle";
import { notAllowed } from "../units/refusal";
import { EPSILON, roundUp } from "../units/rounding";
import { type ArenaGate, gateSpans } from "./arena-gates";
import { type Stake } from "./layout";
import { messages } from "./messages";
import { stakeCount, stakesAt } from "./stakes";

/** An arena of posts. Lengths in ft, through the post centers. */
export interface PostArena extends RoundedRectangle {
  /** The most from one post center to the next, along the chord; over 0. */
  spacing: number;
  gates: readonly ArenaGate[];
  /** Width of a gate post, added to each opening; 0 where openings are center to center. */
  gatePost: number;
}

/** A stake of an arena, whose center is at 0, 0, and the part of the fence that it stands on. */
export interface ArenaStake extends Stake {
  place: "corner" | "tangent point" | "straight" | "arc";
  /** The side that the piece of fence to the next stake is on; none on an arc. */
  side?: Side;
  /** Which gate of those listed that piece is, if any. */
  gate?: number;
}

/** What an arena is staked from. */
export interface ArenaLayout {
  stakes: ArenaStake[];
  /** Of the rectangle without its rounding, clockwise from near left; the diagonals are taped between them. */
  corners: Point[];
  /** Corner 1 to 3 and corner 2 to 4. */
  diagonals: [number, number];
  arcCenters: Point[];
  /** Along straights and arcs. */
  around: number;
  area: number;
  /** Straight from stake to stake, all round. */
  fence: number;
}

/** From one post to the next: where it begins, and which of the gates it is, if any. */
interface Run extends Point {
  place: ArenaStake["place"];
  side?: Side;
  gate?: number;
}

/**
 * The stakes of an arena, one a post, clockwise from the first gate's first post (without a gate from the first corner
 * or tangent point of the left side), its length along the bearing. Corners, tangent points and gates have a post, and
 * between them every straight and arc is shared out in equal bays no longer than the spacing, at least one a quarter
 * turn. Refuses a corner radius over half the shorter side, gates that their side has no room for, and over 10 000
 * stakes.
 */
export function arenaLayout(arena: PostArena, bearing: number): ArenaLayout {
  const { corners, pieces } = roundedOutline(arena, bearing);
  for (const { side } of arena.gates)
    if (!pieces.some((piece) => isStraight(piece) && piece.side === side))
      throw notAllowed(messages.gateOnArc(side));
  const runs = pieces.flatMap((piece) =>
    isStraight(piece) ? straightRuns(piece, arena) : arcRuns(piece, arena),
  );
  stakeCount(runs.length);
  const stakes = arenaStakes(runs);
  return {
    stakes,
    corners,
    diagonals: [distance(corners[0], corners[2]), distance(corners[1], corners[3])],
    arcCenters: pieces.flatMap((piece) => (isStraight(piece) ? [] : [piece.center])),
    around: roundedRectanglePerimeter(arena),
    area: roundedRectangleArea(arena),
    fence: stakes.reduce((sum, { chord }) => sum + chord, 0),
  };
}

/** The stakes at the beginnings of these runs, the first gate first. */
export function arenaStakes(runs: readonly Run[]): ArenaStake[] {
  const first = Math.max(
    0,
    runs.findIndex(({ gate }) => gate === 0),
  );
  const round = [...runs.slice(first), ...runs.slice(0, first)];
  const places = round.map(({ east, north, gate }, i) => ({
    east,
    north,
    atGate: gate !== undefined || round.at(i - 1)?.gate !== undefined,
  }));
  return stakesAt(places).map((stake, i) => {
    const { place, side, gate } = round[i];
    return { ...stake, place, side, gate };
  });
}

function straightRuns(piece: Straight, { cornerRadius, spacing, gates, gatePost }: PostArena): Run[] {
  const { length, side } = piece;
  const runs: Run[] = [];
  const add = (at: number, gate?: number) => {
    const place = at > 0 ? "straight" : cornerRadius > 0 ? "tangent point" : "corner";
    runs.push({ ...placeOn(piece, at / length), place, side, gate });
  };
  const fill = (from: number, to: number) => {
    if (to - from <= EPSILON * Math.max(1, length)) return;
    const bays = stakeCount(roundUp((to - from) / spacing));
    for (let i = 0; i < bays; i++) add(from + ((to - from) * i) / bays);
  };
  let reached = 0;
  for (const { gate, start, end } of gateSpans(piece, gates, gatePost, cornerRadius)) {
    fill(reached, start);
    add(start, gate);
    reached = end;
  }
  fill(reached, length);
  return runs;
}

function arcRuns(arc: OutlineArc, { spacing }: PostArena): Run[] {
  const bayTurn = centralAngle(spacing, 2 * arc.radius);
  const bays = stakeCount(Math.max(arc.turn / 90, roundUp(radians(arc.turn) / bayTurn)));
  const whole = arc.turn === 90 * sides.length;
  return Array.from({ length: bays }, (_, i) => ({
    ...placeOn(arc, i / bays),
    place: i > 0 || whole ? "arc" : "tangent point",
  }));
}
