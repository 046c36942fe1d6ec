/** The distance around a circle, in the unit of its diameter. */
export const circumference = (diameter: number) => Math.PI * diameter;

/** The area of a circle, in squares of the unit of its diameter. */
export const circleArea = (diameter: number) => (Math.PI / 4) * diameter * diameter;
