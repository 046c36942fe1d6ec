import { KNOWN_GATE } from "../fence/hung-gate";
import { slotKeys } from "../estimate/fields";
import { messages as estimateMessages } from "../estimate/messages";
import { railStocks } from "../estimate/post-choices";
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
import { above, blankUnless, cellsOf, isByOther, countOrOwn, roundedUp, type Sheet } from "./formula-terms";
import { messages } from "./messages";
import { postItems } from "./post-items";
import { settingFormulas } from "./post-setting-formulas";
import { chosen, depthOf, half, isWord, shapeOf, square } from "./post-terms";

/** The distance from a pen's center to a chord of a circle. */
const apothem = (chord: Term, circle: Term) =>
  half(call("SQRT", times(minus(circle, chord), plus(circle, chord))));

/** What the formulas of the pen share: its gates, and its posts as the worksheet functions are asked for them. */
function terms(sheet: Sheet) {
  const { at, column, orDefault } = cellsOf(sheet);
  const leaves = column("leaf", "input");
  const beside = plus(number(at("gate_room")), at("gate_post_in"));
  const gates = call("COUNTIF", leaves, ">0");
  const ask = (name: string) => pen(name, at("post_circle"), orDefault("spacing"), leaves, beside);
  const chords = slotKeys("leaf").map((key) => ({
    leaf: number(at(key)),
    chord: plus(number(at(key)), over(beside, 12)),
  }));
  const eachGate = (of: (chord: Expression) => Term) =>
    chords.map(({ leaf, chord }) => when(above(leaf, 0), of(chord), 0));
  return {
    at,
    leaves,
    gates,
    ask,
    eachGate,
    bays: minus(at("posts"), gates),
    widest: call("MAX", leaves),
    beside,
  };
}

/** The thickness of the rails, ft, and whether they are on the inside. */
export const boardFeet = (sheet: Sheet) =>
  over(
    chosen(sheet, "rail_stock", (option) => railStocks[option].thickness),
    12,
  );
export const railsInside = (sheet: Sheet) => operate(cellsOf(sheet).at("rail_side"), "<>", "outside");

/** The three sizes of the pen, its posts, bays, and what it holds, by key. */
function builtFormulas(sheet: Sheet): Record<string, Expression> {
  const { at, gates, ask, eachGate, bays, widest, beside } = terms(sheet);
  const [circle, bay] = [at("post_circle"), at("bay")];
  const meaning = at("post_size_means");
  const isCircle = call("OR", isWord(meaning, "post circle"), isWord(meaning, ""));
  const width = over(at("line_post_in"), 12);
  const depth = over(depthOf(sheet, "line_post"), 12);
  const board = boardFeet(sheet);
  const cosine = over(times(apothem(bay, circle), 2), circle);
  const isInside = railsInside(sheet);
  const isRound = isWord(shapeOf(sheet, "line_post"), "round");
  const edge = plus(half(circle), half(depth));
  const outsideBack = when(
    isRound,
    plus(times(half(circle), cosine), half(depth)),
    plus(times(edge, cosine), times(half(width), over(bay, circle))),
  );
  const insideBack = times(minus(half(circle), half(depth)), cosine);
  const inner = when(isInside, minus(insideBack, board), outsideBack);
  const outer = when(isInside, insideBack, plus(outsideBack, board));
  const gateLine = when(above(widest, 0), apothem(plus(widest, over(beside, 12)), circle), half(circle));
  const corner = call("SQRT", plus(square(edge), when(isRound, 0, square(half(width)))));
  const triangle = (chord: Term) => half(times(chord, apothem(chord, circle)));
  const withBays = (count: Term) =>
    times(circle, call("SIN", over(times(bays, call("ASIN", over(bay, circle))), count)));
  const fewest = call("MAX", 1, gates, minus(3, gates));
  return {
    post_circle: when(isCircle, at("size"), at("post_circle_fixed")),
    inside_clear: times(2, call("MIN", inner, minus(half(circle), half(depth)), gateLine)),
    outside_size: times(2, call("MAX", over(outer, cosine), corner)),
    distance_around: plus(times(bays, bay), ...eachGate((chord) => chord)),
    area: plus(times(bays, triangle(bay)), ...eachGate(triangle)),
    posts: ask("POSTS"),
    bay: ask("BAY"),
    bay_fewer: when(operate(minus(bays, 1), "<", fewest), "", withBays(minus(bays, 1))),
    bay_more: withBays(plus(bays, 1)),
    stakes_count: stakesCount(sheet, at("posts")),
  };
}

/** What is counted of posts, rails and gates, by key. */
function countFormulas(sheet: Sheet, gatePosts: Expression): Record<string, Expression> {
  const { at, widest } = terms(sheet);
  const { column } = cellsOf(sheet);
  const counted = (key: string, otherwise: Term) => ({ [`${key}_count`]: countOrOwn(sheet, key, otherwise) });
  const cut = at("rails_fixed");
  const theirs = minus(call("COUNTIF", column("leaf", "input"), ">0"), call("SUM", column("leaf", "count")));
  const found: Record<string, Expression> = {
    ...counted("line_posts", minus(at("posts"), gatePosts)),
    ...counted("gate_posts", call("MAX", 0, minus(gatePosts, times(2, theirs)))),
    ...counted("rails", roundedUp(times(cut, plus(1, over(number(at("rail_waste")), 100))))),
    ...counted("fasteners", times(at("fasteners_fixed"), number(at("fasteners_each")))),
    ...counted("holes", plus(at("line_posts_count"), at("gate_posts_count"))),
    rail_stock_length: at("rail_stock_length_fixed"),
  };
  slotKeys("leaf").forEach((key, k) => {
    const theirs = isByOther(sheet, k + 1);
    const opening = pen("FEET_INCHES", plus(number(at(key)), over(number(at("gate_room")), 12)));
    const words = text(
      messages.leafItem,
      at(key),
      messages.opening,
      opening,
      when(theirs, messages.byOther, ""),
    );
    found[`${key}_count`] = blankUnless(above(number(at(key)), 0), when(theirs, 0, 1));
    found[`${key}_item`] = blankUnless(above(number(at(key)), 0), words);
  });
  const scale = operate(over(square(widest), KNOWN_GATE.leaf ** 2), "^", over(1, 3));
  const reaches = (nominal: number) => operate(at("gate_post_in"), ">=", times(nominal * (1 - 1e-9), scale));
  const { serves, marginal } = KNOWN_GATE.nominal;
  found.gate_warning = when(
    reaches(serves),
    "",
    when(reaches(marginal), estimateMessages.gatePostMarginal, estimateMessages.gatePostLight),
  );
  return found;
}

/** The formulas of a pen of posts, by key. */
export const postFormulas = (sheet: Sheet): Record<string, Expression> => ({
  ...builtFormulas(sheet),
  ...workFormulas(sheet, times(2, terms(sheet).gates)),
});

/** The formulas of posts, rails, holes and gates, of a pen or an arena, by key; its gate posts are told. */
export function workFormulas(sheet: Sheet, gatePosts: Expression): Record<string, Expression> {
  const items = Object.entries(postItems(sheet)).flatMap(([key, { says, unit }]) => [
    [`${key}_item`, says],
    [`${key}_unit_shown`, unit],
  ]);
  return {
    ...settingFormulas(sheet),
    ...countFormulas(sheet, gatePosts),
    ...Object.fromEntries(items),
  };
}
