import { EPSILON } from "../units/rounding";

/** An opening up to the first lets no hoof in, one from the second on lets it out again, in. Extension fence bulletins: at most 3 x 3 in, the bottom rail 8 to 12 in up. */
export const HOOF = { out: 3, free: 8 } as const;

/** Whether an opening between rails, or under the lowest, can catch a hoof, a leg or a head. */
export const trapsHoof = (inches: number) =>
  inches > HOOF.out * (1 + EPSILON) && inches < HOOF.free * (1 - EPSILON);
