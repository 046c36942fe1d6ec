import { withGatesSpread } from "../fence/gates-spread";
import { centralAngle } from "../geometry/cyclic-polygon";
import { ahead, type Point, turned } from "../geometry/point";
import { type Side } from "../geometry/rounded-outline";
import { type GateOnPosts } from "./hung-gates";
import { piecesAround as panelsAround } from "./panel-pen";
import { circleOf, isArena, isPosted, type Arena, type Pen, type RoundPen } from "./pen";
import { type PostedPen } from "./post-pen";

/** One piece of a fence from stake to stake, clockwise, where it stands, ft. The center is at 0, 0. */
export interface PieceOnGround {
  kind: "panel" | "bay" | "gate";
  /** Of a gate of posts the leaf's. */
  length: number;
  from: Point;
  to: Point;
  /** The side of an arena that it is on; none on an arc. */
  side?: Side;
  /** How a gate of posts is hung. */
  hung?: GateOnPosts;
}

/**
 * The pieces in the order they stand from stake 1 on. The bearing, degrees, is that of a round pen's first gate's
 * middle, without a gate of its first pin or post; of an arena that of its left side from near to far.
 */
export const piecesOnGround = (pen: Pen, bearing: number): PieceOnGround[] =>
  isArena(pen) ? onSides(pen, bearing) : onCircle(pen, bearing);

/** Where a fence is drawn with its near end, or the middle of its first piece, at the foot: its bearing, degrees. */
export function bearingAtFoot(pen: Pen): number {
  if (isArena(pen)) return 0;
  const [first] = piecesAround(pen);
  return 180 - (pen.gates.length > 0 ? 0 : (first.angle * 90) / Math.PI);
}

/** One piece of a round pen, and the angle it spans at the center, radians. */
interface PieceAround {
  kind: PieceOnGround["kind"];
  length: number;
  angle: number;
  hung?: GateOnPosts;
}

/** The pieces of a round pen in the order they stand, gates spread evenly. */
export const piecesAround = (pen: RoundPen): PieceAround[] =>
  isPosted(pen) ? baysAround(pen) : panelsAround(pen);

function baysAround({ postCircle, bays, bay, hung, gateChords }: PostedPen): PieceAround[] {
  const angle = (chord: number) => centralAngle(chord, postCircle);
  return withGatesSpread<PieceAround>(
    hung.map((gate, k) => ({ kind: "gate", length: gate.leaf, angle: angle(gateChords[k]), hung: gate })),
    Array.from({ length: bays }, () => ({ kind: "bay", length: bay, angle: angle(bay) })),
  );
}

function onCircle(pen: RoundPen, bearing: number): PieceOnGround[] {
  const degrees = (radians: number) => (radians * 180) / Math.PI;
  const pieces = piecesAround(pen);
  let at = bearing - (pen.gates.length > 0 ? degrees(pieces[0].angle) / 2 : 0);
  const place = () => ahead({ east: 0, north: 0 }, at, circleOf(pen) / 2);
  return pieces.map(({ angle, ...piece }) => {
    const from = place();
    at += degrees(angle);
    return { ...piece, from, to: place() };
  });
}

function onSides(pen: Arena, bearing: number): PieceOnGround[] {
  const { stakes } = pen.layout;
  const places = stakes.map(({ east, north }) => turned({ east, north }, bearing));
  return stakes.map(({ gate, side }, k) => {
    const next = (k + 1) % stakes.length;
    const fence = isPosted(pen) ? stakes[next].chord : pen.panel;
    return {
      kind: gate !== undefined ? "gate" : isPosted(pen) ? "bay" : "panel",
      length: gate !== undefined ? pen.gates[gate] : fence,
      from: places[k],
      to: places[next],
      side,
      ...(gate !== undefined && isPosted(pen) && { hung: pen.hung[gate] }),
    };
  });
}
