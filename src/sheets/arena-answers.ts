import { type Arena, isPosted } from "../estimate/pen";
import { figureAnswer, type SheetAnswer } from "./answer-terms";
import { diagonal } from "../geometry/rounded-rectangle";
import { equal } from "../units/rounding";
import { expression, pen } from "./expression";

/** What an arena is built to, each as a formula of the built length and width where a function gives it. */
export function arenaAnswers(arena: Arena): SheetAnswer[] {
  const { length, width, cornerRadius } = isPosted(arena) ? arena.line : { ...arena, cornerRadius: 0 };
  const { diagonals } = arena.layout;
  const sized = cornerRadius > 0 ? [length, width, cornerRadius] : [length, width];
  const isRectangle = equal(diagonals[0], diagonal(length, width)) && equal(diagonals[0], diagonals[1]);
  const ask = (name: string, value: number, ...terms: number[]) =>
    isRectangle ? pen(name, ...terms) : expression(value);
  return [
    figureAnswer("built_length", length, expression(length)),
    figureAnswer("built_width", width, expression(width)),
    figureAnswer("diagonal_1", diagonals[0], ask("DIAGONAL", diagonals[0], length, width)),
    figureAnswer(
      "distance_around",
      arena.distanceAround,
      ask("ARENA_PERIMETER", arena.distanceAround, ...sized),
    ),
    figureAnswer("area", arena.area, ask("ARENA_AREA", arena.area, ...sized)),
  ];
}
