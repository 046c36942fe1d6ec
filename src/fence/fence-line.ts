import { type Point } from "../geometry/point";

/** A fence, a post or a pillar that is round: its center and its outside diameter, ft. */
export interface RoundFence {
  center: Point;
  diameter: number;
}

/** A straight run of fence, ft. */
export interface StraightFence {
  from: Point;
  to: Point;
}

/** True for a round one. */
export const isRound = (fence: RoundFence | StraightFence): fence is RoundFence => "center" in fence;
