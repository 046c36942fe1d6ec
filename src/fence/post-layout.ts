import { type Stake, layOut } from "./layout";
import { type PostPen, bayLength, postCircle } from "./posts";

/**
 * The stakes of a post pen, one a post, with the first gate's middle (without a gate the first post) at the bearing,
 * degrees. Refuses as postCircle and layOut do.
 */
export function postLayout(pen: PostPen, bearing: number): Stake[] {
  const { bays, bayAngle, gateChords, gateAngles } = postCircle(pen);
  const gates = gateChords.map((chord, i) => ({ chord, angle: gateAngles[i] }));
  const bay = { chord: bayLength(pen), angle: bayAngle, count: bays };
  return layOut(pen.diameter, gates, [bay], bearing);
}
