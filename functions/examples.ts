import { fenceGuides } from "./fence-examples";
import { column, example, type Guide } from "./guide";

const circle = "Plane geometry: with d the diameter, a circle is pi d around and holds pi d²/4.";
const corners =
  "Plane geometry: a quarter circle of radius r in each corner takes (4 - pi) r² from the area and (8 - 2 pi) r from the distance around.";
const volume =
  "Volume is area times depth, 27 cubic feet to the cubic yard (NIST Handbook 44, Appendix C). What settles is bought on top: placed volume over (1 - settle), times (1 + overrun).";
const sand =
  "Dry sand runs about 100 lb a cubic foot, which is 1.35 short tons of 2000 lb a cubic yard. Damp sand is heavier: the pit knows its own.";

/** The guide of every function by its id. */
export const guides: Record<string, Guide> = {
  CIRCUMFERENCE: {
    examples: [
      example("Around a 52 ft circle", 52),
      example("Around three sizes at once", column("44'", 58, "21 m")),
    ],
    source: circle,
  },
  AREA: {
    examples: [
      example("In a 52 ft circle", 52),
      example("In three sizes at once", column(44, 58, "71' 6\"")),
    ],
    source: circle,
  },
  ARENA_AREA: {
    examples: [
      example("An arena of 190 by 90 ft", 190, 90),
      example("The same with corners of 15 ft radius", 190, 90, 15),
    ],
    source: corners,
  },
  ARENA_PERIMETER: {
    examples: [
      example("Around an arena of 190 by 90 ft", 190, 90),
      example("The same with corners of 15 ft radius", 190, 90, 15),
    ],
    source: corners,
  },
  DIAGONAL: {
    examples: [example("To square 190 by 90 ft", 190, 90), example("To square 55 by 25 m", "55 m", "25 m")],
    source: "The theorem of Pythagoras: the square of the diagonal is the sum of the squares of the sides.",
  },
  OUT_OF_SQUARE: {
    examples: [
      example("190 by 90 ft with diagonals of 210 ft 4 in and 210 ft 1 in", 190, 90, "210' 4\"", "210' 1\""),
      example("60 by 20 m with unequal diagonals", "60 m", "20 m", "63.21 m", "63.28 m"),
    ],
    source:
      "Plane geometry: slid along itself by s, the far side of a rectangle of length l leaves diagonals whose squares differ by 4 l s.",
  },
  FOOTING: {
    examples: [
      example("3 in on a 72 ft pen", 72, 3),
      example("Two sizes, 3 in settled, 5 % overrun, 12 % settle", column(52, 72), 3, 5, 12),
    ],
    source: volume,
  },
  FILL: {
    examples: [
      example("4 in over 5200 sq ft", 5200, 4),
      example("100 mm over two areas, 10 % overrun", column(5200, 17100), "100 mm", 10),
    ],
    source: volume,
  },
  DEPTH: {
    examples: [
      example("36 cubic yards over 4000 sq ft", 36, 4000),
      example("115 cubic yards over 17 100 sq ft", 115, 17100),
    ],
    source: "Depth is volume over area, 27 cubic feet to the cubic yard and 12 inches to the foot.",
  },
  TONS: {
    examples: [
      example("36 cubic yards of dry sand", 36),
      example("Three volumes of damp sand", column(16, 26, 36), 1.45),
    ],
    source: sand,
  },
  LOADS: {
    examples: [
      example("37 cubic yards in trucks of 16 and 10, 5 % may be missing", 37, column(16, 10), 5),
      example(
        "83 cubic yards in three sizes, each with its price a load",
        83,
        column(18, 12, 7),
        3,
        column(410, 290, 195),
      ),
    ],
    source:
      "An exact search, proven against a general integer solver: without prices the fewest loads, then the nearest to the need, then the greater volume; with prices the cheapest, then the fewest loads, then as before.",
  },
  TRUCK_YARDS: {
    examples: [
      example("A 16 yard body that may load 15 tons of dry sand", 16, 15),
      example("Two bodies, 13 tons of damp sand", column(8, 12), 13, 1.45),
    ],
    source: `Room or weight, whichever runs out first. ${sand}`,
  },
  HOLE_CONCRETE: {
    examples: [
      example("A 10 in hole, 32 in deep, around a 6 in round post", 10, 32, 6),
      example(
        "A 14 in hole, 40 in deep, around a square post of 5 1/2 in on 4 in of gravel",
        14,
        40,
        5.5,
        "square",
        4,
      ),
    ],
    source:
      "Plane geometry: the hole's circle less the post's section, times the depth above the gravel; 1728 cubic inches to the cubic foot.",
  },
  BAGS: {
    examples: [
      example("80 lb bags for 9 cubic feet", 9),
      example("60 lb bags for 26 cubic feet, 10 % waste", 26, 60, 10),
    ],
    source:
      "Common practice, by the labels of the bags: 80 lb of dry mix make 0.60 cubic feet, which is 0.0075 a pound. Part of a bag is a bag.",
  },
  FEET: {
    examples: [
      example("Feet and inches as decimal feet", "27' 5 3/4\""),
      example("Other notations", column("330 in", "8,4 m", "9 yd", "41 ft 6 in")),
    ],
    source: "Exact by definition: 1 ft is 12 in, 1 yd is 3 ft and 1 in is 25.4 mm (NIST SP 811).",
  },
  FEET_INCHES: {
    examples: [
      example("Decimal feet as feet and inches", 27.479),
      example("To the nearest quarter of an inch", column(8.4, 13.99, "12.5 m"), 4),
    ],
    source:
      "There are 12 inches to the foot; the rest is rounded to the nearest part asked for, and a half goes up.",
  },
  ...fenceGuides,
};
