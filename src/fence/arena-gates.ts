import { type Side, type Straight } from "../geometry/rounded-outline";
import { notAllowed } from "../units/refusal";
import { EPSILON } from "../units/rounding";
import { messages } from "./messages";

/** A gate on a side of an arena. Lengths in ft. */
export interface ArenaGate {
  side: Side;
  /** Between gate-post faces; of a gate panel, pin to pin. */
  opening: number;
  /**
   * From the side's corner (where the sides meet, or would without the rounding) to the first post or pin of the gate,
   * clockwise: the left-hand corner as seen from inside. Left out, the gate is in the middle.
   */
  at?: number;
}

/** A gate on a straight: which of the gates listed, and where it begins and ends from the start of the straight, ft. */
export interface GateSpan {
  gate: number;
  start: number;
  end: number;
}

/**
 * The gates of a straight in the order walked. The post adds to each opening; the straight begins so far (the inset)
 * from its side's corner. Refuses a gate that is longer than the straight, that runs past its end, or over another.
 */
export function gateSpans(
  { side, length }: Pick<Straight, "side" | "length">,
  gates: readonly ArenaGate[],
  gatePost: number,
  inset: number,
): GateSpan[] {
  const noise = EPSILON * Math.max(1, length + inset);
  const spans = gates.flatMap((gate, i): GateSpan[] => {
    if (gate.side !== side) return [];
    const chord = gate.opening + gatePost;
    const most = length - chord;
    if (most < -noise) throw notAllowed(messages.gateOverSide(side, chord, length));
    const start = gate.at === undefined ? most / 2 : gate.at - inset;
    if (!(start >= -noise && start <= most + noise))
      throw notAllowed(messages.gatePastEnd(side, inset, inset + Math.max(0, most)));
    return [{ gate: i, start: Math.max(0, start), end: Math.min(length, start + chord) }];
  });
  spans.sort((a, b) => a.start - b.start);
  spans.slice(1).forEach(({ start }, i) => {
    if (start < spans[i].end - noise) throw notAllowed(messages.gatesOverlap(side));
  });
  return spans;
}
