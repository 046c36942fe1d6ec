import { compass } from "../geometry/point";
import { withGatesSpread } from "./gates-spread";
import { stakeCount } from "./stakes";

/** A straight piece of fence from one stake to the next clockwise: its length, ft, and the angle it takes at the center, radians. */
export interface Piece {
  chord: number;
  angle: number;
}

/** So many like pieces, one after the other. */
export interface Pieces extends Piece {
  count: number;
}

/** A stake of a layout. Lengths in ft, bearing in degrees clockwise from north. The center is at 0, 0. */
export interface Stake {
  stake: number;
  /** Whether it stands at the end of a gate. */
  atGate: boolean;
  /** Straight from the stake before; the first one's from the last. */
  chord: number;
  /** Straight from the first stake, and from the second. */
  tie1: number;
  tie2: number;
  bearing: number;
  east: number;
  north: number;
}

/**
 * The stakes of a fence on a circle, clockwise. The gates keep their order, and the other pieces theirs: after gate i
 * of k come floor(iN/k) - floor((i - 1)N/k) of N. The first gate's middle is at the bearing (degrees) and its first
 * end is stake 1; without a gate, stake 1 itself is there. The angles make one turn. Refuses over 10 000 stakes.
 */
export function layOut(
  diameter: number,
  gates: readonly Piece[],
  others: readonly Pieces[],
  bearing: number,
): Stake[] {
  stakeCount(others.reduce((sum, { count }) => sum + count, gates.length));
  const round = inOrder(gates, others);
  const first = gates.length > 0 ? -middle(gates[0]) : 0;
  const stakes: Stake[] = [];
  let turned = 0;
  round.forEach(({ isGate }, i) => {
    const before = round[(i + round.length - 1) % round.length];
    const angle = (bearing * Math.PI) / 180 + first + turned;
    const east = (diameter / 2) * Math.sin(angle);
    const north = (diameter / 2) * Math.cos(angle);
    stakes.push({
      stake: i + 1,
      atGate: isGate || before.isGate,
      chord: before.chord,
      tie1: tie(diameter, turned),
      tie2: tie(diameter, turned - round[0].angle),
      bearing: compass((angle * 180) / Math.PI),
      east,
      north,
    });
    turned += round[i].angle;
  });
  return stakes;
}

/** Where a piece's middle is seen from the center, from its first end: over half a turn, it is seen from behind. */
const middle = ({ angle }: Piece) => (angle > Math.PI ? angle / 2 - Math.PI : angle / 2);

interface PlacedPiece extends Piece {
  isGate: boolean;
}

function inOrder(gates: readonly Piece[], others: readonly Pieces[]): PlacedPiece[] {
  const plain = others.flatMap(({ chord, angle, count }) =>
    Array<PlacedPiece>(count).fill({ chord, angle, isGate: false }),
  );
  return withGatesSpread(
    gates.map((gate) => ({ ...gate, isGate: true })),
    plain,
  );
}

const tie = (diameter: number, angle: number) => diameter * Math.abs(Math.sin(angle / 2));
