import { type Stake } from "../fence/layout";
import { stakesAt } from "../fence/stakes";
import { type Pen } from "./pen";
import { piecesOnGround } from "./pieces-on-ground";

/** The stakes of a pen's fence in order, at a bearing as piecesOnGround takes it, degrees. */
export function stakesOnGround(pen: Pen, bearing: number): Stake[] {
  const pieces = piecesOnGround(pen, bearing);
  const isGate = (k: number) => pieces.at(k)!.kind === "gate";
  return stakesAt(pieces.map(({ from }, k) => ({ ...from, atGate: isGate(k) || isGate(k - 1) })));
}
