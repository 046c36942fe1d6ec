/** The cross section of a post, board or pipe, in any one unit of length. A round one is as wide as it is deep. */
export interface Section {
  shape: "round" | "square";
  /** Along the fence. */
  width: number;
  /** From the inside of the fence to the outside. */
  depth: number;
}

/** A round section of this diameter. */
export const round = (diameter: number): Section => ({ shape: "round", width: diameter, depth: diameter });

/** A section with square corners. */
export const square = (width: number, depth = width): Section => ({ shape: "square", width, depth });

/** The widest measure across a section: the diameter, or the diagonal where it has corners. */
export const across = ({ shape, width, depth }: Section) =>
  shape === "round" ? width : Math.hypot(width, depth);

/** The area of a section, in squares of its unit. */
export const sectionArea = ({ shape, width, depth }: Section) =>
  (shape === "round" ? Math.PI / 4 : 1) * width * depth;
