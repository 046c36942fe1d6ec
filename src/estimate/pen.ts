import { centralAngle } from "../geometry/cyclic-polygon";
import { withGatesSpread } from "../fence/gates-spread";
import { structureOf, type Job } from "./job";
import { panelPen, piecesAround as panelsAround, type PanelPen } from "./panel-pen";
import { postPen, type PostedPen } from "./post-pen";

/** A pen as it is built, of whatever structure. */
export type Pen = PanelPen | PostedPen;

/** True for a pen of posts. */
export const isPosted = (pen: Pen): pen is PostedPen => "postCircle" in pen;

/** The pen of a job. Throws a Refusal where its pieces make none. */
export const penOf = (job: Job): Pen => (structureOf(job) === "post pen" ? postPen(job) : panelPen(job));

/** The diameter, ft, of the circle that is painted on the ground: through the pins or the post centers. */
export const circleOf = (pen: Pen) => (isPosted(pen) ? pen.postCircle : pen.pinCircle);

/** Stakes on that circle: one a joint or a post. */
export const stakesOf = (pen: Pen) =>
  isPosted(pen) ? pen.posts : pen.counts.reduce<number>((sum, count) => sum + (count ?? 0), pen.gates.length);

/** One piece of a pen from stake to stake: what it is, its length, ft, and the angle it spans, radians. */
export interface PieceAround {
  kind: "panel" | "bay" | "gate";
  /** Of a gate of posts the leaf's. */
  length: number;
  angle: number;
}

/** The pieces in the order they stand, gates spread evenly. */
export function piecesAround(pen: Pen): PieceAround[] {
  if (!isPosted(pen)) return panelsAround(pen);
  const { postCircle, bays, bay, gates, gateChords } = pen;
  const piece = (kind: "bay" | "gate", length: number, chord = length) => ({
    kind,
    length,
    angle: centralAngle(chord, postCircle),
  });
  return withGatesSpread<PieceAround>(
    gates.map((leaf, k) => piece("gate", leaf, gateChords[k])),
    Array.from({ length: bays }, () => piece("bay", bay)),
  );
}
