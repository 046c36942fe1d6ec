import {
  centralAngle,
  circumcircle,
  fullTurn,
  insideClear,
  longestChord,
  perimeter,
  type Chord,
} from "../geometry/cyclic-polygon";
import { noAnswer, notAllowed } from "../units/refusal";
import { EPSILON, equal, roundDown, roundUp } from "../units/rounding";
import { messages } from "./messages";

/** How whole panels answer a size: distance around nearest, at least that inside clear, at most that pin circle. */
export const fits = ["nearest", "at least", "at most"] as const;
export type Fit = (typeof fits)[number];

/** What of a pen is held against the size asked for, by fit, in ft. */
export const measures: Record<Fit, (chords: readonly Chord[]) => number> = {
  nearest: (chords) => perimeter(chords) / Math.PI,
  "at least": insideClear,
  "at most": (chords) => circumcircle(chords).diameter,
};

/** A pen of one length of panel. Lengths in ft, pin to pin; the gap is what a joint adds to each piece. */
export interface PanelQuestion {
  diameter: number;
  panel: number;
  gates: readonly number[];
  pinGap?: number;
  fit?: Fit;
}

/** The straight pieces of a pen, each as long as its joint makes it. Refuses a gap that leaves no length. */
export function fenceChords(panels: readonly Chord[], gates: readonly number[], pinGap = 0): Chord[] {
  return [...panels, ...gates.map((length) => ({ length, count: 1 }))].map(({ length, count }) => {
    if (count > 0 && length + pinGap <= 0) throw notAllowed(messages.pinGapTooShort);
    return { length: length + pinGap, count };
  });
}

/**
 * Whole panels beside the gates for a pen of this size. Only pens of three or more pieces with the center inside or
 * on the fence count; there may be no panels at all. A tie takes more panels. Refuses (no answer) where every such pen
 * is larger than asked by more than half a panel, and an "at most" that no pen keeps.
 */
export function panelCount({
  diameter,
  panel,
  gates: openings,
  pinGap = 0,
  fit = "nearest",
}: PanelQuestion): number {
  const [{ length }, ...gates] = fenceChords([{ length: panel, count: 1 }], openings, pinGap);
  const size = (count: number) => measures[fit]([{ length, count }, ...gates]);
  const least = leastPanels(length, gates);
  const alone = closesAlone(gates) ? size(0) : undefined;
  const smallest = alone !== undefined && alone < size(least) ? 0 : least;
  const over = Math.PI * (size(smallest) - diameter);
  const wanted = wantedPanels[fit](diameter, length, gates);
  const count = Math.max(least, wanted);
  const kept = fit !== "at most" || wanted >= least ? count : undefined;
  const answer = alone !== undefined && gatesServe(fit, alone, diameter, kept && size(kept)) ? 0 : kept;
  if (answer !== undefined && over - length / 2 <= EPSILON * Math.max(1, over)) return answer;
  const say = gates.length > 0 ? messages.gatesAloneNeed : messages.panelsNeed;
  throw noAnswer(say(circumcircle([{ length, count: smallest }, ...gates]).diameter, smallest));
}

const TURN = 2 * Math.PI;

/** How many panels (not whole) it takes to close the turn that the gates leave on a circle of this diameter. */
const panelsOn = (diameter: number, panel: number, gates: readonly Chord[]) =>
  (TURN - fullTurn(gates, diameter)) / centralAngle(panel, diameter);

/** The count that a fit asks for, whether such a pen closes or not. The circle through the pins is found on the circle that limits it. */
const wantedPanels: Record<Fit, (diameter: number, panel: number, gates: readonly Chord[]) => number> = {
  nearest: (diameter, panel, gates) => roundDown((Math.PI * diameter - perimeter(gates)) / panel + 0.5),
  "at least": (diameter, panel, gates) =>
    roundUp(panelsOn(Math.hypot(diameter, Math.max(panel, longestChord(gates))), panel, gates)),
  "at most": (diameter, panel, gates) =>
    Math.max(panel, longestChord(gates)) > diameter * (1 + EPSILON)
      ? 0
      : roundDown(panelsOn(diameter, panel, gates)),
};

/** The least count of panels, one or more, with which three or more pieces close around their center. */
function leastPanels(panel: number, gates: readonly Chord[]): number {
  const longest = Math.max(panel, longestChord(gates));
  return Math.max(1, 3 - gates.length, Math.ceil(panelsOn(longest, panel, gates) - EPSILON));
}

/** True where the gates close around their center without a panel. */
const closesAlone = (gates: readonly Chord[]) =>
  gates.length >= 3 && fullTurn(gates, longestChord(gates)) >= TURN - 2 * EPSILON;

/** True where the gates alone answer better than the best pen with panels, if there is one. */
function gatesServe(fit: Fit, alone: number, diameter: number, other: number | undefined): boolean {
  if (fit === "at least") return alone >= diameter || equal(alone, diameter);
  if (other === undefined) return alone <= diameter || equal(alone, diameter);
  const [miss, itsMiss] = [Math.abs(alone - diameter), Math.abs(other - diameter)];
  return fit === "nearest" && miss < itsMiss && !equal(miss, itsMiss);
}
