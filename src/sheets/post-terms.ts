import { fieldOf } from "../estimate/fields";
import { postSizes } from "../estimate/post-choices";
import { across, sectionArea, type Section } from "../geometry/section";
import { call, expression, operate, over, times, when, type Expression, type Term } from "./expression";
import { cellsOf, isNumber, type Sheet } from "./formula-terms";

/** A term times itself, and half of one. */
export const square = (term: Term) => times(term, term);
export const half = (term: Term) => over(term, 2);
/** Whether a cell holds a word. */
export const isWord = (test: Term, word: string) => operate(test, "=", word);
/** Whether the posts are driven, so that there are no holes. */
export const isDriven = (sheet: Sheet) => isWord(cellsOf(sheet).at("setting"), "driven");

/** Whether there is a board at the foot: one is named by its size, such as 2x10. */
export const hasKick = (sheet: Sheet) => isNumber(call("FIND", "x", cellsOf(sheet).at("kick_board")));

/**
 * What belongs to the word in a choice's cell; to its default where the cell is blank. Words to which the same belongs
 * are asked for together, and where that is the word itself only a blank is, so that the formula stays short.
 */
export function chosen(sheet: Sheet, key: string, each: (option: string) => Term): Expression {
  const { options, default: usual } = fieldOf(key);
  const at = cellsOf(sheet).at(key);
  if (options!.every((option) => each(option) === option)) return when(isWord(at, ""), String(usual), at);
  const otherwise = each(String(usual));
  const alike = new Map<string, { then: Term; words: string[] }>();
  for (const option of options!) {
    const then = each(option);
    const same = JSON.stringify(then);
    if (same === JSON.stringify(otherwise)) continue;
    alike.set(same, { then, words: [...(alike.get(same)?.words ?? []), option] });
  }
  return [...alike.values()].reduce<Expression>((rest, { then, words }) => {
    const tests = words.map((word) => isWord(at, word));
    return when(tests.length === 1 ? tests[0] : call("OR", ...tests), then, rest);
  }, expression(otherwise));
}

/** The shape of a chosen post, as HOLE_CONCRETE is told of it. */
export const shapeOf = (sheet: Sheet, key: string) => chosen(sheet, key, (option) => postSizes[option].shape);

const widthOf = (sheet: Sheet, key: string) => cellsOf(sheet).at(`${key}_in`);
const isOblong = (section: Section) => section.shape === "square" && section.depth !== section.width;

/** How deep a chosen post is from the inside of the fence to the outside, in. */
export const depthOf = (sheet: Sheet, key: string) =>
  chosen(sheet, key, (option) =>
    isOblong(postSizes[option]) ? postSizes[option].depth : widthOf(sheet, key),
  );

/** How far a chosen post reaches across its hole, in: round posts by their width, others by their diagonal. */
export const acrossOf = (sheet: Sheet, key: string) =>
  chosen(sheet, key, (option) => {
    const section = postSizes[option];
    if (isOblong(section)) return across(section);
    const width = widthOf(sheet, key);
    return section.shape === "round" ? width : times(width, call("SQRT", 2));
  });

/** The width, in, of the post that HOLE_CONCRETE is told of: of an oblong one, the square that fills as much of the hole. */
export const filledWidthOf = (sheet: Sheet, key: string) =>
  chosen(sheet, key, (option) =>
    isOblong(postSizes[option]) ? Math.sqrt(sectionArea(postSizes[option])) : widthOf(sheet, key),
  );
