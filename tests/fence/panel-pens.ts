import fc from "fast-check";
import { type PanelPen } from "../../src/fence/panel-layout";
import { fenceChords } from "../../src/fence/panels";
import { circumcircle, longestChord, perimeter } from "../../src/geometry/cyclic-polygon";

/** Pens of any mix of up to six panel lengths with up to four gates, to 300 ft, the center inside or out. */
export const anyPanelPen: fc.Arbitrary<PanelPen> = fc
  .record({
    panels: fc.array(
      fc.record({
        length: fc.double({ min: 4, max: 24, noNaN: true }),
        count: fc.integer({ min: 0, max: 30 }),
      }),
      { minLength: 1, maxLength: 6 },
    ),
    gates: fc.array(fc.double({ min: 3, max: 16, noNaN: true }), { maxLength: 4 }),
    pinGap: fc.constantFrom(0, 1 / 24, -1 / 24),
  })
  .filter(({ panels, gates, pinGap }) => {
    const chords = fenceChords(panels, gates, pinGap);
    return perimeter(chords) > 2.01 * longestChord(chords) && circumcircle(chords).diameter <= 300;
  });
