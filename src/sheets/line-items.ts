import { equipmentItem, equipmentKeys } from "../estimate/equipment";
import { fieldOf } from "../estimate/fields";
import { type PriceKind } from "../estimate/prices";
import { messages } from "./messages";

/** The kind of item that each line asks the prices for; panels, gates and loads also by their size. */
const itemOf: Record<string, PriceKind> = {
  panel: "panel",
  gate: "gate",
  truck: "haul",
  stakes: "stake",
  line: "line",
  paint: "paint",
  leaf: "hung_gate",
  hinges: "hinge_set",
  latches: "latch",
  drop: "drop_rod",
  ...Object.fromEntries(equipmentKeys.map((key) => [key, equipmentItem(key)])),
  fabric: "fabric",
  labor: "labor_hour",
};

/** The kind of item of a line, by its key. */
export const kindOfLine = (key: string): PriceKind | undefined => itemOf[key.split("_")[0]];

/** What lines are called whose name hangs on nothing. */
export const namedItems: Record<string, string> = {
  sand: messages.sandItem,
  fabric: messages.fabricItem,
  ...messages.suppliesItems,
};

/** What a count is called whose input says only what it stands in the place of. */
export const countedBy = (key: string) => fieldOf(`${key}_use`).label.en.replace(/:[^:]*$/, "");
