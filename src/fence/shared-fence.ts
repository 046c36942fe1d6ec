import { notAllowed } from "../units/refusal";
import { messages } from "./messages";

/** A stretch of fence clockwise from one stake to another, counted from 1. */
export interface StakeRun {
  from: number;
  to: number;
}

/** What stands from one stake to the next: the number of the gate, if it is one, and whether that gate is by other. */
export interface SharedPiece {
  gate?: number;
  byOther: boolean;
}

/**
 * Which pieces of a fence another estimate brings: its gates, and all of the runs. The first piece goes from stake 1 to 2,
 * the last one back to stake 1. Refuses a run whose stakes the fence has not or that are one and the same, one that
 * passes a gate of the fence's own, and runs that overlap.
 */
export function piecesByOther(pieces: readonly SharedPiece[], runs: readonly StakeRun[]): boolean[] {
  const inRun = pieces.map(() => false);
  for (const { from, to } of runs) {
    const strange = [from, to].find((stake) => stake > pieces.length);
    if (strange !== undefined) throw notAllowed(messages.noSuchStake(strange, pieces.length));
    if (from === to) throw notAllowed(messages.runOfNothing(from));
    for (let k = from - 1; k !== to - 1; k = (k + 1) % pieces.length) {
      const { gate, byOther } = pieces[k];
      if (gate !== undefined && !byOther) throw notAllowed(messages.runPassesGate(from, to, gate));
      if (inRun[k]) throw notAllowed(messages.runsOverlap(k + 1));
      inRun[k] = true;
    }
  }
  return pieces.map(({ byOther }, k) => byOther || inRun[k]);
}

/** Which stakes the other estimate sets: those that a piece of its stands at, its end posts too. */
export const stakesByOther = (pieces: readonly boolean[]): boolean[] =>
  pieces.map((piece, k) => piece || pieces.at(k - 1)!);
