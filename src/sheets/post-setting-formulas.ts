import { POST_LENGTHS } from "../fence/post-depth";
import { messages as estimateMessages } from "../estimate/messages";
import { postSizes } from "../estimate/post-choices";
import { AUGERS } from "../ground/holes";
import {
  call,
  expression,
  minus,
  number,
  operate,
  over,
  pen,
  plus,
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import { blankUnless, cellsOf, countOrOwn, sum, type Sheet } from "./formula-terms";
import { acrossOf, chosen, filledWidthOf, half, isDriven, isWord, shapeOf, square } from "./post-terms";

/** The first of some sizes, in rising order, that is no less than a term; nothing where none is. */
const firstFrom = (sizes: readonly number[], least: Term) =>
  [...sizes].reverse().reduce<Term>((next, size) => when(operate(least, "<=", size), size, next), "");

/** How posts are set: depth, length, holes, and what fills them, by key. */
export function settingFormulas(sheet: Sheet): Record<string, Expression> {
  const { at, orDefault } = cellsOf(sheet);
  const height = orDefault("post_height");
  const byRule: Record<string, Term> = {
    "third of length": half(height),
    "third of height": over(height, 3),
    "ASTM F567": over(plus(24, times(3, call("MAX", 0, minus(height, 4)))), 12),
    "building code": at("post_depth_fixed"),
  };
  const ground = (then: Term) => when(isDriven(sheet), "", then);
  const gravel = number(at("hole_gravel"));
  const hole = (kind: "line" | "gate") => ({
    // In a cell of its own, since every size of auger is held against it.
    [`${kind}_hole_least`]: call(
      "ROUND",
      plus(acrossOf(sheet, `${kind}_post`), times(2, orDefault("room_round"))),
      6,
    ),
    [`${kind}_hole`]: ground(firstFrom(AUGERS, at(`${kind}_hole_least`))),
  });
  const inHoles = (of: (kind: "line" | "gate") => Term) =>
    sum((["line", "gate"] as const).map((kind) => times(at(`${kind}_posts_count`), of(kind))));
  const around = at("filled_around");
  const filled = inHoles((kind) =>
    pen(
      "HOLE_CONCRETE",
      at(`${kind}_hole`),
      at("hole_depth"),
      filledWidthOf(sheet, `${kind}_post`),
      shapeOf(sheet, `${kind}_post`),
      gravel,
    ),
  );
  const under = over(
    times(
      inHoles((kind) => square(at(`${kind}_hole`))),
      call("PI"),
      gravel,
    ),
    4 * 1728,
  );
  const setting = at("setting");
  return {
    line_post_in: chosen(sheet, "line_post", (option) => postSizes[option].width),
    gate_post_in: chosen(sheet, "gate_post", (option) => postSizes[option].width),
    post_depth: call(
      "MAX",
      chosen(sheet, "depth_rule", (rule) => byRule[rule]),
      over(number(at("frost")), 12),
    ),
    post_length: plus(height, at("post_depth")),
    post_bought: expression(firstFrom(POST_LENGTHS, call("ROUND", at("post_length"), 6))),
    ...hole("line"),
    ...hole("gate"),
    filled_around: when(call("OR", isWord(setting, "concrete"), isWord(setting, "crushed stone")), filled, 0),
    hole_depth: ground(plus(times(at("post_depth"), 12), gravel)),
    bags_count: when(
      isWord(setting, "concrete"),
      countOrOwn(sheet, "bags", pen("BAGS", around, orDefault("bag_size"))),
      "",
    ),
    stone_count: ground(over(plus(under, when(isWord(setting, "crushed stone"), around, 0)), 27)),
    depth_warning: blankUnless(isWord(at("depth_rule"), "building code"), estimateMessages.screeningDepth),
  };
}
