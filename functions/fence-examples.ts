import { column, example, type Guide } from "./guide";

const closing =
  "Plane geometry: on the circle through the pins, a straight piece of length a takes the central angle 2 asin(a/d), and all of them together make one turn. The diameter d that does so is found to the last digit.";
const bays =
  "Plane geometry: what the gates' central angles leave of the turn is shared out in equal bays, the fewest that are no longer than the spacing.";
const stakes =
  "Plane geometry: stakes stand on one circle, each further by the central angle of the piece before it; east is the radius times the sine of the bearing, north times its cosine.";

/** The guides of what works out fences: panels, mixes, posts, stakes. */
export const fenceGuides: Record<string, Guide> = {
  PANELS: {
    examples: [
      example("12 ft panels and one 10 ft gate near 72 ft", 72, 12, 10),
      example(
        "At least 66 ft clear with two gates, joints of 1 1/2 in",
        66,
        12,
        column(10, 4),
        1.5,
        "at least",
      ),
    ],
    source: `${closing} The count is the whole number that the chosen fit asks for.`,
  },
  PANEL_MIX: {
    examples: [
      example("Panels of 12 and 8 ft and one 10 ft gate nearest to 72 ft", 72, column(12, 8), 10),
      example(
        "The cheapest from 66 to 68 ft clear, 14 of the 12 ft panels on hand",
        66,
        column(12, 10, 8),
        column(10, 4),
        1,
        column(138, 119, 101),
        2,
        "at least",
        column(14, null, null),
      ),
    ],
    source: `${closing} Every mix is compared or proven worse, checked by trying all and against a general integer solver.`,
  },
  PIN_CIRCLE: {
    examples: [
      example("18 panels of 12 ft and one 10 ft gate", 12, 18, 10),
      example("Panels of 12 and 10 ft mixed, joints of 1 in", column(12, 10), column(14, 3), 10, 1),
    ],
    source: closing,
  },
  INSIDE_CLEAR: {
    examples: [
      example("18 panels of 12 ft and one 10 ft gate", 12, 18, 10),
      example("Panels of 12 and 10 ft mixed, two gates", column(12, 10), column(14, 3), column(10, 6)),
    ],
    source: `${closing} The longest piece comes nearest to the center: twice that distance is the square root of d² - a².`,
  },
  INSIDE_AREA: {
    examples: [
      example("18 panels of 12 ft and one 10 ft gate", 12, 18, 10),
      example("Panels of 12 and 10 ft mixed, two gates", column(12, 10), column(14, 3), column(10, 6)),
    ],
    source: `${closing} The area is the sum of the triangles between the pieces and the center.`,
  },
  POSTS: {
    examples: [
      example("A 72 ft pen with posts up to 8 ft apart and a 12 ft gate", 72, 8, 12),
      example("Three sizes, two gates between faces of 8 in posts", column(52, 64, 72), 8, column(12, 4), 8),
    ],
    source: bays,
  },
  BAY: {
    examples: [
      example("A 72 ft pen with posts up to 8 ft apart and a 12 ft gate", 72, 8, 12),
      example("Three sizes, two gates between faces of 8 in posts", column(52, 64, 72), 8, column(12, 4), 8),
    ],
    source: bays,
  },
  POST_LAYOUT: {
    examples: [
      example("A small pen of 24 ft, its 6 ft gate to the north", 24, 10, 6),
      example(
        "36 ft, two gates between faces of 6 in posts, the first to the southeast",
        36,
        12,
        column(10, 4),
        6,
        135,
      ),
    ],
    source: stakes,
  },
  PANEL_LAYOUT: {
    examples: [
      example("Six panels of 12 ft and a 10 ft gate to the north", 12, 6, 10),
      example(
        "Two lengths, joints of 1 in, the first gate to the west",
        column(12, 10),
        column(5, 4),
        column(10, 4),
        1,
        270,
      ),
    ],
    source: stakes,
  },
};
