import { onCircle } from "./frame";
import { label } from "./label";
import { type PlacedPiece } from "./pieces";
import { type Shape } from "./shape";

/** Pixels from the pins to the middle of a number, and the room that a number takes. */
const outside = 11;
const room = { across: 19, down: 14 };

/** Which stakes are numbered where there is no room for all: every other, every fifth, …. */
const steps = [1, 2, 5, 10, 20, 50, 100];

/**
 * The numbers of the stakes, outside the pen. Stake 1 and the ends of gates come first, then as many others at even
 * steps as can be read.
 */
export function stakeNumbers(pieces: readonly PlacedPiece[], paper: string): Shape[] {
  const around = pieces.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
  const apart = around / pieces.length;
  const step = steps.find((one) => one * apart >= Math.hypot(room.across, room.down)) ?? pieces.length;
  const isGate = (k: number) => pieces.at(k % pieces.length)!.kind === "gate";
  const stakes = pieces.map(({ from }, k) => ({
    stake: k + 1,
    atGate: isGate(k) || isGate(k - 1),
    at: onCircle(from, outside, outwardAt(pieces, k)),
  }));
  const first = stakes.filter(({ stake, atGate }) => stake === 1 || atGate);
  const others = stakes.filter((one) => !first.includes(one) && one.stake % step === 0);
  const placed: typeof stakes = [];
  for (const one of [...first, ...others]) {
    const meets = ({ at }: typeof one) =>
      Math.abs(at.x - one.at.x) < room.across && Math.abs(at.y - one.at.y) < room.down;
    if (!placed.some(meets)) placed.push(one);
  }
  return placed
    .sort((a, b) => a.stake - b.stake)
    .map(({ stake, atGate, at }) =>
      label(String(stake), { x: at.x, y: at.y + 4.5 }, paper, {
        "font-size": 12.5,
        "data-stake": stake,
        ...(atGate ? { "font-weight": "bold" } : {}),
      }),
    );
}

/** The direction away from the fence at a stake: square to the way from the middle of one piece to that of the next. */
function outwardAt(pieces: readonly PlacedPiece[], k: number): number {
  const way = ({ from, to }: PlacedPiece) => {
    const length = Math.hypot(to.x - from.x, to.y - from.y);
    return { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  };
  const [before, after] = [way(pieces.at(k - 1)!), way(pieces[k])];
  return Math.atan2(before.y + after.y, before.x + after.x) - Math.PI / 2;
}
