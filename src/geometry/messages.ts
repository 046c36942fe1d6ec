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
};
