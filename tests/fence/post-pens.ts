import fc from "fast-check";
import { type PostPen, postCount } from "../../src/fence/posts";

const canBeBuilt = (pen: PostPen) => {
  try {
    return postCount(pen) > 0;
  } catch {
    return false;
  }
};

/** Post pens from 20 to 300 ft with up to four gates that leave room for a bay each. */
export const anyPostPen: fc.Arbitrary<PostPen> = fc
  .record({
    diameter: fc.double({ min: 20, max: 300, noNaN: true }),
    spacing: fc.double({ min: 2, max: 14, noNaN: true }),
    gates: fc.array(fc.double({ min: 3, max: 16, noNaN: true }), { maxLength: 4 }),
    gatePost: fc.constantFrom(0, 0.5, 10 / 12),
  })
  .filter(canBeBuilt);
