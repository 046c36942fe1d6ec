import { slotKeys } from "../estimate/fields";
import { corners, lineEnds, lineToTieOff } from "../estimate/supplies";
import { sides } from "../geometry/rounded-outline";
import { stakesCount } from "./estimate-formulas";
import {
  call,
  minus,
  number,
  operate,
  over,
  pen,
  plus,
  text,
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import { above, blankUnless, cellsOf, countOrOwn, sum, type Sheet } from "./formula-terms";
import { messages } from "./messages";
import { gateFormulas } from "./panel-formulas";
import { boardFeet, railsInside, workFormulas } from "./post-formulas";
import { chosen, depthOf, half, isWord } from "./post-terms";

/** The feet of line along the four sides of an arena. */
export function arenaLine(sheet: Sheet): Expression {
  const { at } = cellsOf(sheet);
  return plus(times(2, plus(at("built_length"), at("built_width"))), lineEnds * lineToTieOff);
}

/** The numbers of the time of writing of these keys, each as its figure. */
const fromFixed = (sheet: Sheet, keys: readonly string[]) =>
  Object.fromEntries(keys.map((key) => [key, cellsOf(sheet).at(`${key}_fixed`)]));

const onSides = (word: string) => sides.map((side) => `${word}_${side}`);

/**
 * The formulas of an arena of panels, by key. Its corners stand on a circle: Ptolemy gives the diagonals, Brahmagupta
 * the area, and both give those of a rectangle where opposite sides are alike.
 */
export function panelArenaFormulas(sheet: Sheet): Record<string, Expression> {
  const { at, column } = cellsOf(sheet);
  const gap = over(number(at("pin_gap")), 12);
  const gates = slotKeys("gate");
  const gatesOn = (side: string) =>
    gates.map((key, k) =>
      when(
        above(number(at(key)), 0),
        chosen(sheet, `gate_side_${k + 1}`, (word) => (word.startsWith(side) ? plus(at(key), gap) : 0)),
        0,
      ),
    );
  const built = (side: string) =>
    plus(times(at(`panels_${side}`), plus(at("panel_1"), gap)), ...gatesOn(side));
  const [a, b, c, d] = ["built_length", "built_width", "right_side", "near_end"].map(at);
  const crossed = plus(times(a, c), times(b, d));
  const [first, second] = [plus(times(a, d), times(b, c)), plus(times(a, b), times(c, d))];
  const root = (of: Term) => call("SQRT", of);
  const s = half(at("distance_around"));
  const inches = (of: Expression, asked: string) => times(12, minus(of, at(asked)));
  const gateCount = call("COUNTIF", column("gate", "input"), ">0");
  return {
    ...fromFixed(sheet, onSides("panels")),
    ...gateFormulas(sheet),
    built_length: built("left"),
    built_width: built("far"),
    right_side: built("right"),
    near_end: built("near"),
    length_over: inches(a, "arena_length"),
    width_over: inches(b, "arena_width"),
    distance_around: plus(a, b, c, d),
    area: root(times(minus(s, a), minus(s, b), minus(s, c), minus(s, d))),
    diagonal_1: root(over(times(crossed, first), second)),
    diagonal_2: root(over(times(crossed, second), first)),
    diagonal_asked: pen("DIAGONAL", at("arena_length"), at("arena_width")),
    panel_1_count: countOrOwn(sheet, "panel_1", minus(sum(onSides("panels").map(at)), at("panel_1_fixed"))),
    panel_1_item: blankUnless(
      above(number(at("panel_1")), 0),
      text(messages.panelItem, at("panel_1"), " ft"),
    ),
    stakes_count: stakesCount(sheet, plus(sum(onSides("panels").map(at)), gateCount), lineEnds),
  };
}

/** The formulas of an arena of posts, by key. */
export function postArenaFormulas(sheet: Sheet): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const meaning = at("arena_size_means");
  const post = over(depthOf(sheet, "line_post"), 12);
  const boards = times(2, boardFeet(sheet));
  const toClear = plus(post, when(railsInside(sheet), boards, 0));
  const toOutside = plus(post, when(railsInside(sheet), 0, boards));
  const toLine = when(
    isWord(meaning, "inside clear"),
    toClear,
    when(isWord(meaning, "outside"), times(-1, toOutside), 0),
  );
  const [length, width, radius] = ["built_length", "built_width", "built_radius"].map(at);
  const asked = number(at("corner_radius"));
  const isHalf = (side: Expression) => operate(times(2, radius), ">=", times(side, 1 - 1e-9));
  const arcCenters = when(isHalf(length), when(isHalf(width), 1, 2), when(isHalf(width), 2, 4));
  const round = when(operate(radius, "=", 0), 0, plus(corners, arcCenters));
  return {
    ...fromFixed(sheet, ["posts", "bay_longest", ...onSides("bays"), "bays_arcs"]),
    ...workFormulas(sheet),
    built_length: plus(at("arena_length"), toLine),
    built_width: plus(at("arena_width"), toLine),
    built_radius: when(operate(asked, "=", 0), 0, call("MAX", 0, plus(asked, half(toLine)))),
    clear_length: minus(length, toClear),
    clear_width: minus(width, toClear),
    outside_length: plus(length, toOutside),
    outside_width: plus(width, toOutside),
    distance_around: pen("ARENA_PERIMETER", length, width, radius),
    area: pen("ARENA_AREA", length, width, radius),
    diagonal_1: pen("DIAGONAL", length, width),
    stakes_count: stakesCount(sheet, at("posts"), plus(lineEnds, round)),
  };
}
