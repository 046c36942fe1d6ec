import { sides } from "../geometry/rounded-outline";
import { diagonal } from "../geometry/rounded-rectangle";
import { INCHES_PER_FOOT } from "../units/conversion";
import { type Figure } from "./figure-list";
import { type ArenaOfPanels } from "./panel-arena";
import { type ArenaOfPosts } from "./post-arena";

/** What stands on one side of an arena, or on all its arcs, by the figure's key. */
export type SideCounts = Record<string, number>;

/** The figures of an arena of panels as built, and how far that is from what was asked for, by key. */
export function panelArenaFigures({ asked, length, width, layout }: ArenaOfPanels): Record<string, Figure> {
  const { built, diagonals } = layout;
  return {
    built_length: length,
    built_width: width,
    right_side: built.right.length,
    near_end: built.near.length,
    length_over: (length - asked.length) * INCHES_PER_FOOT,
    width_over: (width - asked.width) * INCHES_PER_FOOT,
    diagonal_1: diagonals[0],
    diagonal_2: diagonals[1],
    diagonal_asked: diagonal(asked.length, asked.width),
    ...panelsOnSides(layout),
  };
}

/** Panels of each side, by the figure's key. */
export const panelsOnSides = ({ built }: ArenaOfPanels["layout"]): SideCounts =>
  Object.fromEntries(sides.map((side) => [`panels_${side}`, built[side].panels]));

/** The figures of an arena of posts as built, by key. */
export function postArenaFigures({ sizes, line, posts, bay, layout }: ArenaOfPosts): Record<string, Figure> {
  return {
    built_length: line.length,
    built_width: line.width,
    built_radius: line.cornerRadius,
    clear_length: sizes["inside clear"].length,
    clear_width: sizes["inside clear"].width,
    outside_length: sizes.outside.length,
    outside_width: sizes.outside.width,
    diagonal_1: layout.diagonals[0],
    posts,
    bay_longest: bay,
    ...baysOnSides(layout),
  };
}

/** Bays of each side and of all arcs, by the figure's key. */
export function baysOnSides({ stakes }: ArenaOfPosts["layout"]): SideCounts {
  const bays = (on?: string) => stakes.filter(({ side, gate }) => gate === undefined && side === on).length;
  return { ...Object.fromEntries(sides.map((side) => [`bays_${side}`, bays(side)])), bays_arcs: bays() };
}
