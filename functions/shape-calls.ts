import { circleArea, circumference } from "../src/geometry/circle";
import {
  diagonal,
  roundedRectangleArea,
  roundedRectanglePerimeter,
  type RoundedRectangle,
} from "../src/geometry/rounded-rectangle";
import { outOfSquare } from "../src/geometry/squaring";
import { type Value } from "../src/units/cell";
import { INCHES_PER_FOOT } from "../src/units/conversion";
import { optional, required, shaped } from "./arguments";
import { guarded, type Call } from "./cells";
import { quantities } from "./quantities";

type Term = Value | undefined;

const arena = (length: Term, width: Term, cornerRadius: Term): RoundedRectangle => ({
  length: required(length, quantities.length),
  width: required(width, quantities.width),
  cornerRadius: optional(cornerRadius, quantities.cornerRadius, 0),
});

/** Circles and arenas: distance around, area, diagonals. */
export const shapeCalls: Record<string, Call> = {
  CIRCUMFERENCE: guarded((diameter) => shaped(diameter, quantities.diameter, circumference)),
  AREA: guarded((diameter) => shaped(diameter, quantities.diameter, circleArea)),
  ARENA_AREA: guarded((length, width, radius) => roundedRectangleArea(arena(length, width, radius))),
  ARENA_PERIMETER: guarded((length, width, radius) =>
    roundedRectanglePerimeter(arena(length, width, radius)),
  ),
  DIAGONAL: guarded((length, width) =>
    diagonal(required(length, quantities.length), required(width, quantities.width)),
  ),
  OUT_OF_SQUARE: guarded(
    (length, width, first, second) =>
      INCHES_PER_FOOT *
      outOfSquare(
        required(length, quantities.length),
        required(width, quantities.width),
        required(first, quantities.diagonal1),
        required(second, quantities.diagonal2),
      ),
  ),
};
