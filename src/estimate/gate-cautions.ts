import { EPSILON } from "../units/rounding";
import { messages } from "./messages";
import { type PanelPen } from "./panel-pen";

/** What a horse and its rider need under a bow, ft (common practice, no source). */
export const riderHeight = 9;

/** The legal width of a truck, ft: 102 in (23 CFR 658.15). */
export const truckWidth = 102 / 12;

/** What to think over about the gates of a panel pen: a bow that a rider may not clear, and no way in for a truck with base or sand. */
export function gateCautions({ openings, bow }: PanelPen, hauled: number): string[] {
  const shut = openings.length > 0 && Math.max(...openings) < truckWidth - EPSILON;
  return [
    ...(bow !== null && bow < riderHeight ? [messages.bowLow] : []),
    ...(shut && hauled > 0 ? [messages.noTruck] : []),
  ];
}
