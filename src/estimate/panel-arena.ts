import { panelArena, type PanelArenaLayout } from "../fence/panel-arena";
import { sides } from "../geometry/rounded-outline";
import { INCHES_PER_FOOT } from "../units/conversion";
import { arenaGates } from "./arena-gates";
import { answerOf, lengthsIn, type Job } from "./job";

/** An arena of panels as its pieces close it. Lengths in ft, pin to pin, area in sq ft. */
export interface ArenaOfPanels {
  structure: "panel arena";
  asked: { length: number; width: number };
  panel: number;
  /** What a joint adds to each piece. */
  pinGap: number;
  gates: number[];
  /** Panels of all sides. */
  panels: number;
  /** Of the left side and of the far end; the sides across from them differ where a gate is no whole number of panels. */
  length: number;
  width: number;
  distanceAround: number;
  area: number;
  /** With the left side to the north. */
  layout: PanelArenaLayout;
}

/** The stakes of a job's arena with its left side along the bearing, degrees. Refuses as panelArena does. */
export const panelArenaLayout = (job: Job, bearing: number): PanelArenaLayout =>
  panelArena(
    {
      length: answerOf(job, "arena_length"),
      width: answerOf(job, "arena_width"),
      panel: answerOf(job, "panel_1"),
      pinGap: Number(job.pin_gap ?? 0) / INCHES_PER_FOOT,
      gates: arenaGates(job, "gate"),
    },
    bearing,
  );

/** The arena that a job's panels and gates close. Throws a Refusal where nothing closes. */
export function arenaOfPanels(job: Job): ArenaOfPanels {
  const layout = panelArenaLayout(job, 0);
  const { built, around, area } = layout;
  return {
    structure: "panel arena",
    asked: { length: answerOf(job, "arena_length"), width: answerOf(job, "arena_width") },
    panel: answerOf(job, "panel_1"),
    pinGap: Number(job.pin_gap ?? 0) / INCHES_PER_FOOT,
    gates: lengthsIn(job, "gate"),
    panels: sides.reduce((sum, side) => sum + built[side].panels, 0),
    length: built.left.length,
    width: built.far.length,
    distanceAround: around,
    area,
    layout,
  };
}
