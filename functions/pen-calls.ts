import { fenceChords, fits, panelCount } from "../src/fence/panels";
import { circumcircle, inscribedArea, insideClear, type Chord } from "../src/geometry/cyclic-polygon";
import { notAllowed } from "../src/units/refusal";
import { beside, numbers, option, required, shaped } from "./arguments";
import { guarded, type Call } from "./cells";
import { gatesOf, pinGapFeet } from "./fence-terms";
import { messages } from "./messages";
import { quantities } from "./quantities";

/** A question about a pen of these panels, so many of each, and gates. */
const ofPen = (answer: (chords: Chord[]) => number): Call =>
  guarded((panels, counts, gates, pinGap) => {
    const lengths = numbers(panels, quantities.panels);
    const many = beside(lengths, quantities.panels.name, counts, quantities.counts);
    if (lengths.some((length, k) => length === 0 && many[k] > 0))
      throw notAllowed(messages.about(quantities.counts.name, messages.countWithoutLength));
    const chords = lengths.map((length, k) => ({ length, count: many[k] })).filter(({ count }) => count > 0);
    return answer(fenceChords(chords, gatesOf(gates), pinGapFeet(pinGap)));
  });

/** Panel pens: how many panels, and what they close. */
export const penCalls: Record<string, Call> = {
  PANELS: guarded((diameter, panel, gates, pinGap, fit) => {
    const pen = {
      panel: required(panel, quantities.panel),
      gates: gatesOf(gates),
      pinGap: pinGapFeet(pinGap),
      fit: option(fit, "fit", fits),
    };
    return shaped(diameter, quantities.diameter, (across) => panelCount({ diameter: across, ...pen }));
  }),
  PIN_CIRCLE: ofPen((chords) => circumcircle(chords).diameter),
  INSIDE_CLEAR: ofPen(insideClear),
  INSIDE_AREA: ofPen(inscribedArea),
};
