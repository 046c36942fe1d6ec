import { circumcircle, inscribedArea, insideClear, perimeter } from "../../src/geometry/cyclic-polygon";
import { type PanelPen } from "../../src/estimate/panel-pen";

/** The pen that these panels (length, count) and gates close. */
export function penOf(panels: [number, number][], gates: number[] = [], pinGap = 0): PanelPen {
  const chords = [
    ...panels.map(([length, count]) => ({ length: length + pinGap, count })),
    ...gates.map((gate) => ({ length: gate + pinGap, count: 1 })),
  ].filter(({ count }) => count > 0);
  return {
    structure: "panel pen",
    lengths: panels.map(([length]) => length),
    counts: panels.map(([, count]) => count),
    onHand: panels.map(() => 0),
    gates,
    openings: gates.map((gate) => gate - 1 / 3),
    bow: null,
    pinGap,
    pinCircle: circumcircle(chords).diameter,
    outside: circumcircle(chords).diameter,
    insideClear: insideClear(chords),
    distanceAround: perimeter(chords),
    area: inscribedArea(chords),
    oneUnder: null,
    oneOver: null,
  };
}
