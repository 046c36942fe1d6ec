import { feetInches } from "../units/feet-inches";

/** What this room can say to a user. */
export const messages = {
  closesNothing:
    "These close nothing: it takes three or more panels and gates, and the longest must be shorter than all the others together.",
  centerOutside:
    "The center lies outside the fence, so there is no clear circle: use more panels, or none so much longer than the rest.",
  cornerRadius: (most: number) => `corner_radius_ft: at most half the shorter side, ${feetInches(most)}`,
  cannotBelong:
    "These four measures cannot belong together: the diagonals do not fit the sides by over 2 %. Measure again.",
  flatCorner: (side1: number, side2: number, diagonal: number) =>
    `Sides ${side1} and ${side2} do not reach across diagonal ${diagonal}: measure these three again.`,
  sixCannotBelong: (out: number) =>
    `These six measures cannot belong together: a diagonal would be ${Number.isFinite(out) ? feetInches(out) : "far"} out, over 2 %. Measure again.`,
  noRightTriangle: "The arena is too small for a triangle of 3, 4 and 5 ft.",
  chordOverDiameter: (diameter: number) => `a chord is at most the diameter, ${feetInches(diameter)}`,
  arcOverTurn: (around: number) => `an arc is at most the distance around, ${feetInches(around)}`,
  tapesMiss: (apart: number) =>
    `these two distances do not meet from stakes that are ${feetInches(apart)} apart: measure them again`,
  stakesTogether: "the two stakes stand in one place: measure from two that are apart",
};
