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
  times,
  when,
  type Expression,
  type Term,
} from "./expression";
import { above, blankUnless, cellsOf, countOrOwn, roundedUp, type Sheet } from "./formula-terms";
import { gateTerms, hungGateFormulas } from "./hung-gate-formulas";
import { postItems } from "./post-items";
import { settingFormulas } from "./post-setting-formulas";
import { chosen, depthOf, half, hasKick, isWord, shapeOf, square } from "./post-terms";

/** The distance from a pen's center to a chord of a circle. */
const apothem = (chord: Term, circle: Term) =>
  half(call("SQRT", times(minus(circle, chord), plus(circle, chord))));

/** What the formulas of the pen share: its gates, and its posts as the worksheet functions are asked for them. */
function terms(sheet: Sheet) {
  const { at, orDefault } = cellsOf(sheet);
  const { gates, openings, widestOpening, chords } = gateTerms(sheet);
  const ask = (name: string) =>
    pen(name, at("post_circle"), orDefault("spacing"), openings, at("gate_post_in"));
  const eachGate = (of: (chord: Expression) => Term) =>
    chords.map(({ isGate, chord }) => when(isGate, of(chord), 0));
  return { at, gates, ask, eachGate, bays: minus(at("posts"), gates), widestOpening };
}

/** The thickness of the rails, ft, and whether they are on the inside. */
export const boardFeet = (sheet: Sheet) => cellsOf(sheet).at("rail_thickness");
export const railsInside = (sheet: Sheet) => operate(cellsOf(sheet).at("rail_side"), "<>", "outside");

/** The three sizes of the pen, its posts, bays, and what it holds, by key. */
function builtFormulas(sheet: Sheet): Record<string, Expression> {
  const { at, gates, ask, eachGate, bays, widestOpening } = terms(sheet);
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
  const gateChord = plus(widestOpening, over(at("gate_post_in"), 12));
  const gateLine = when(above(widestOpening, 0), apothem(gateChord, circle), half(circle));
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
function countFormulas(sheet: Sheet): Record<string, Expression> {
  const { at } = cellsOf(sheet);
  const counted = (key: string, otherwise: Term) => ({ [`${key}_count`]: countOrOwn(sheet, key, otherwise) });
  const bought = (key: string) => {
    const withWaste = times(at(`${key}_fixed`), plus(1, over(number(at("rail_waste")), 100)));
    return countOrOwn(sheet, key, roundedUp(withWaste));
  };
  return {
    ...counted("line_posts", minus(at("posts"), at("line_posts_fixed"))),
    ...counted("gate_posts", at("gate_posts_fixed")),
    rails_count: bought("rails"),
    kick_count: blankUnless(hasKick(sheet), bought("kick")),
    kick_stock_length: blankUnless(hasKick(sheet), at("kick_stock_length_fixed")),
    ...counted("fasteners", times(at("fasteners_fixed"), number(at("fasteners_each")))),
    ...counted("holes", plus(at("line_posts_count"), at("gate_posts_count"))),
    rail_stock_length: at("rail_stock_length_fixed"),
    rail_thickness: over(
      chosen(sheet, "rail_stock", (option) => railStocks[option].thickness),
      12,
    ),
  };
}

/** The formulas of a pen of posts, by key. */
export const postFormulas = (sheet: Sheet): Record<string, Expression> => ({
  ...builtFormulas(sheet),
  ...workFormulas(sheet),
});

/** The formulas of posts, rails, holes and gates, of a pen or an arena, by key. */
export function workFormulas(sheet: Sheet): Record<string, Expression> {
  const items = Object.entries(postItems(sheet)).flatMap(([key, { says, unit }]) => [
    [`${key}_item`, says],
    [`${key}_unit_shown`, unit],
  ]);
  return {
    ...settingFormulas(sheet),
    ...countFormulas(sheet),
    ...hungGateFormulas(sheet),
    ...Object.fromEntries(items),
  };
}
