import { type Chord, centralAngle, circumcircle, longestChord } from "../geometry/cyclic-polygon";
import { type Piece, type Stake, layOut } from "./layout";
import { fenceChords } from "./panels";

/** A pen of panels. Lengths in ft, pin to pin; the gap is what a joint adds to each panel and gate. */
export interface PanelPen {
  panels: readonly Chord[];
  gates: readonly number[];
  pinGap: number;
}

/**
 * The stakes of a panel pen, one a pin, panels in the order listed, with the first gate's middle (without a gate the
 * first pin) at the bearing, degrees. Where the center lies outside, the longest piece is the one that all others face.
 * Refuses as fenceChords, circumcircle and layOut do.
 */
export function panelLayout({ panels, gates, pinGap }: PanelPen, bearing: number): Stake[] {
  const chords = fenceChords(panels, gates, pinGap);
  const { diameter, centerInside } = circumcircle(chords);
  const longest = longestChord(chords);
  const piece = (chord: number): Piece => {
    const angle = centralAngle(chord, diameter);
    return { chord, angle: centerInside || chord < longest ? angle : 2 * Math.PI - angle };
  };
  const gatePieces = chords.slice(panels.length).map(({ length }) => piece(length));
  const panelPieces = chords
    .slice(0, panels.length)
    .map(({ length, count }) => ({ ...piece(length), count }));
  return layOut(diameter, gatePieces, panelPieces, bearing);
}
