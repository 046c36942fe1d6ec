import { slotKeys } from "./fields";
import { type Structure } from "./structures";

/** Panels by other are counted anew where a pen's pin circle is no longer within this of what it was, ft. */
export const COUNTED_WITHIN = 0.001;

const onSides = (word: string) => ["left", "far", "right", "near"].map((side) => `${word}_${side}`);
const ofBoards = ["rail_stock_length", "rails", "kick_stock_length", "kick", "fasteners"];
const ofWork = ["post_depth", "gate_posts", "line_posts", ...ofBoards];

/** The keys of the numbers of the time of writing that a sheet holds (`fixedOf`), by structure. */
export const fixedKeys: Record<Structure, readonly string[]> = {
  "panel pen": ["pin_circle", ...slotKeys("panel")],
  "post pen": ["post_circle", ...ofWork],
  "panel arena": [...onSides("panels"), "panel_1"],
  "post arena": ["posts", "bay_longest", ...onSides("bays"), "bays_arcs", ...ofWork],
};
