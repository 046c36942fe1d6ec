import { type Section } from "../geometry/section";

/** Which side of the posts the boards or rails are on, seen from the horse. */
export type Side = "inside" | "outside";

/** Posts on a circle and a straight piece from one to the next, all in one unit of length. */
export interface CurvedBay {
  /** Of the circle through the post centers. */
  radius: number;
  /** Half the angle that the bay takes at the center, radians. */
  halfAngle: number;
  /** Square posts face the center. */
  post: Section;
  side: Side;
}

/**
 * How far the face that lies against the posts is from the center at the middle of the bay. Pieces meet on the line
 * from the center through the post. Inside, their ends there touch the post's inner face; outside, a piece lies
 * against the round of each post, or against the near corner of its square face.
 */
export function backFace({ radius, halfAngle, post, side }: CurvedBay): number {
  const [cosine, sine] = [Math.cos(halfAngle), Math.sin(halfAngle)];
  if (side === "inside") return (radius - post.depth / 2) * cosine;
  if (post.shape === "round") return radius * cosine + post.depth / 2;
  return (radius + post.depth / 2) * cosine + (post.width / 2) * sine;
}

/** The same of the face toward the center and of the face away from it. */
export function faces(bay: CurvedBay, thickness: number): { inner: number; outer: number } {
  const back = backFace(bay);
  return bay.side === "inside"
    ? { inner: back - thickness, outer: back }
    : { inner: back, outer: back + thickness };
}

/** A straight piece of a bay whose ends are cut on the lines through the posts: its two faces, and the cut off square, degrees. */
export interface BeveledPiece {
  longFace: number;
  shortFace: number;
  bevel: number;
}

/** The piece that closes a bay. On a straight fence (no half angle) both faces are the bay. */
export function beveledPiece(bay: CurvedBay, thickness: number): BeveledPiece {
  const { inner, outer } = faces(bay, thickness);
  const reach = 2 * Math.tan(bay.halfAngle);
  return { longFace: outer * reach, shortFace: inner * reach, bevel: (bay.halfAngle * 180) / Math.PI };
}
