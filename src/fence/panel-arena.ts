import { type Point, ahead, bearingTo, distance, enclosedArea, turned } from "../geometry/point";
import { type Side, sides } from "../geometry/rounded-outline";
import { notAllowed } from "../units/refusal";
import { equal } from "../units/rounding";
import { type ArenaGate } from "./arena-gates";
import { type ArenaStake, arenaStakes } from "./arena-layout";
import { messages } from "./messages";
import { panelLayout } from "./panel-layout";
import { fenceChords } from "./panels";
import { stakeCount } from "./stakes";

/** An arena of panels of one length. Lengths in ft, pin to pin; the gap is what a joint adds to each panel and gate. */
export interface PanelArena {
  length: number;
  width: number;
  panel: number;
  pinGap: number;
  gates: readonly ArenaGate[];
}

/** A side as it is built, ft, with its panels (gates not counted). */
export interface BuiltSide {
  panels: number;
  length: number;
}

/** What an arena of panels is staked from. */
export interface PanelArenaLayout {
  stakes: ArenaStake[];
  built: Record<Side, BuiltSide>;
  /** How much longer the left side is than the right, and the far than the near: 0 where the arena is a rectangle. */
  unlike: { length: number; width: number };
  /** Clockwise from near left. */
  corners: Point[];
  /** Corner 1 to 3 and corner 2 to 4. */
  diagonals: [number, number];
  around: number;
  area: number;
}

/**
 * The stakes of an arena of panels, one a pin, clockwise from the first gate's first pin (without a gate from the near
 * left corner), the left side along the bearing. Opposite sides take the whole panels with which they are most alike,
 * then nearest to the side asked for; a tie takes more. A gate goes to the joint nearest to its place. Where a gate
 * leaves opposite sides unlike, the corners stand on a circle: of all shapes with these sides it holds the most.
 * Refuses gates that together are longer than their side, and over 10 000 stakes.
 */
export function panelArena(arena: PanelArena, bearing: number): PanelArenaLayout {
  const [{ length: panel }, ...gateChords] = fenceChords(
    [{ length: arena.panel, count: 1 }],
    arena.gates.map(({ opening }) => opening),
    arena.pinGap,
  );
  const gatesOn = (side: Side) =>
    arena.gates.reduce((sum, gate, i) => sum + (gate.side === side ? gateChords[i].length : 0), 0);
  sides.forEach((side, i) => {
    const asked = i % 2 === 0 ? arena.length : arena.width;
    const gates = gatesOn(side);
    if (gates > asked && !equal(gates, asked)) throw notAllowed(messages.gatesOverPanels(side, gates, asked));
  });
  const [left, right] = oppositeSides(arena.length, panel, gatesOn("left"), gatesOn("right"));
  const [far, near] = oppositeSides(arena.width, panel, gatesOn("far"), gatesOn("near"));
  const built = { left, far, right, near };
  stakeCount(sides.reduce((sum, side) => sum + built[side].panels, arena.gates.length));

  const corners = cornersOf(
    sides.map((side) => built[side].length),
    bearing,
  );
  const runs = sides.flatMap((side, i) => {
    const heading = bearingTo(corners[i], corners[(i + 1) % 4]);
    let reached = 0;
    return piecesOf(side, built[side], arena, panel).map((gate) => {
      const start = ahead(corners[i], heading, reached);
      const place = reached > 0 ? ("straight" as const) : ("corner" as const);
      reached += gate === undefined ? panel : gateChords[gate].length;
      return { ...start, place, side, gate };
    });
  });
  return {
    stakes: arenaStakes(runs),
    built,
    unlike: { length: left.length - right.length, width: far.length - near.length },
    corners,
    diagonals: [distance(corners[0], corners[2]), distance(corners[1], corners[3])],
    around: sides.reduce((sum, side) => sum + built[side].length, 0),
    area: enclosedArea(corners),
  };
}

/** Two sides across from each other: most alike first, then nearest to the length asked for, then more panels. */
function oppositeSides(asked: number, panel: number, gates1: number, gates2: number): [BuiltSide, BuiltSide] {
  const side = (panels: number, gates: number): BuiltSide => ({ panels, length: panels * panel + gates });
  const fewer = (gates: number) => Math.floor((asked - gates) / panel);
  const tried = [2, 1, 0, -1].flatMap((more) =>
    [2, 1, 0, -1].map((other): [BuiltSide, BuiltSide] => [
      side(fewer(gates1) + more, gates1),
      side(fewer(gates2) + other, gates2),
    ]),
  );
  const miss = ([a, b]: [BuiltSide, BuiltSide]) => [
    Math.abs(a.length - b.length),
    Math.abs(a.length - asked) + Math.abs(b.length - asked),
  ];
  return tried
    .filter(([a, b]) => [a, b].every(({ panels, length }) => panels >= 0 && length > 0))
    .reduce((best, next) => (isLess(miss(next), miss(best)) ? next : best));
}

/** True where the first number that differs is the lesser. */
function isLess(a: number[], b: number[]): boolean {
  const i = a.findIndex((value, k) => !equal(value, b[k]));
  return i >= 0 && a[i] < b[i];
}

/** The corners of four sides on their circle, the first side along the bearing, the circle's center at 0, 0. */
function cornersOf([first, ...rest]: number[], bearing: number): Point[] {
  const panels = rest.map((length) => ({ length, count: 1 }));
  const corners = panelLayout({ panels, gates: [first], pinGap: 0 }, 0);
  const turn = bearing - bearingTo(corners[0], corners[1]);
  return corners.map(({ east, north }) => turned({ east, north }, turn));
}

/** The pieces of a side in the order walked: undefined for a panel, the gate's place in the list for a gate. */
function piecesOf(side: Side, { panels, length }: BuiltSide, arena: PanelArena, panel: number) {
  const gates = arena.gates
    .map((gate, i) => ({ i, at: gate.at, chord: gate.opening + arena.pinGap, side: gate.side }))
    .filter((gate) => gate.side === side)
    .map(({ i, at, chord }) => ({ i, chord, at: at ?? (length - chord) / 2 }))
    .sort((a, b) => a.at - b.at);
  const pieces: (number | undefined)[] = [];
  let [set, gateLength] = [0, 0];
  for (const { i, at, chord } of gates) {
    const before = Math.min(panels, Math.max(set, Math.round((at - gateLength) / panel)));
    pieces.push(...Array<undefined>(before - set).fill(undefined), i);
    set = before;
    gateLength += chord;
  }
  return [...pieces, ...Array<undefined>(panels - set).fill(undefined)];
}
