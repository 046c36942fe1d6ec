import { fenceChords, fits, panelCount } from "../src/fence/panels";
import { circumcircle, inscribedArea, insideClear, type Chord } from "../src/geometry/cyclic-polygon";
import { option, required, shaped } from "./arguments";
import { guarded, type Call } from "./cells";
import { gatesOf, panelsOf, pinGapFeet } from "./fence-terms";
import { quantities } from "./quantities";

/** A question about a pen of these panels, so many of each, and gates. */
const ofPen = (answer: (chords: Chord[]) => number): Call =>
  guarded((panels, counts, gates, pinGap) => {
    const chords = panelsOf(panels, counts);
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
