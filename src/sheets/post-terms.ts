import { fieldOf } from "../estimate/fields";
import { postSizes } from "../estimate/post-choices";
import { expression, operate, over, times, when, type Expression, type Term } from "./expression";
import { cellsOf, type Sheet } from "./formula-terms";

/** A term times itself, and half of one. */
export const square = (term: Term) => times(term, term);
export const half = (term: Term) => over(term, 2);
/** Whether a cell holds a word. */
export const isWord = (test: Term, word: string) => operate(test, "=", word);
/** Whether the posts are driven, so that there are no holes. */
export const isDriven = (sheet: Sheet) => isWord(cellsOf(sheet).at("setting"), "driven");

/** What belongs to the word in a choice's cell; to its default where the cell is blank. */
export function chosen(sheet: Sheet, key: string, each: (option: string) => Term): Expression {
  const { options, default: usual } = fieldOf(key);
  const others = options!.filter((option) => option !== usual);
  return others.reduce<Expression>(
    (otherwise, option) => when(isWord(cellsOf(sheet).at(key), option), each(option), otherwise),
    expression(each(String(usual))),
  );
}

/** The shape of a chosen post, as HOLE_CONCRETE is told of it. */
export const shapeOf = (sheet: Sheet, key: string) => chosen(sheet, key, (option) => postSizes[option].shape);
