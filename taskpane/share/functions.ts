import { calls } from "../../functions/calls";
import { type PenFunction } from "../../src/sheets/evaluate";

/** True for the name of a worksheet function of this add-in. */
export const isKnown = (name: string) => Object.hasOwn(calls, name);

/** A worksheet function by its name; one that this add-in does not have gives #NAME?, as the spreadsheet does. */
export const functionOf = (name: string): PenFunction =>
  isKnown(name) ? calls[name] : () => ({ error: "#NAME?" });
